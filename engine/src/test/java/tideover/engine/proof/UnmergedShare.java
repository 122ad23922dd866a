package tideover.engine.proof;

import java.util.List;
import java.util.function.Supplier;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Series;
import tideover.engine.rig.Rig;
import tideover.engine.site.Weather;

/**
 * The carried share without a short cut: every outage by itself from its first step to its last, with every flow accounted for
 * and whatever switches itself reckoned from its state. Nothing is known again from another outage or another rig, nothing
 * ends early, one thread. The list of starts is its own.
 */
public final class UnmergedShare {
    private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    private final YearsShelf shelf;
    private final int years;
    private final double noonHour;
    private final int stepsPerHour;

    public UnmergedShare(Weather weather, PlaneWeather plane, Series roomDegC, double noonHour, int stepsPerHour) {
        this.shelf = new YearsShelf(weather, plane, roomDegC);
        this.years = weather.years();
        this.noonHour = noonHour;
        this.stepsPerHour = stepsPerHour;
    }

    public double of(Rig rig, List<Load> loads, Outage outage) {
        Supplier<Walk> walks =
                Setup.of(rig, loads, shelf, noonHour, stepsPerHour, outage).walks(outage.hours(), true);
        int starts = 0;
        int carried = 0;
        for (int year = 0; year < years; year++) {
            int day = 0;
            for (int month = 0; month < DAYS.length; month++) {
                for (int ofMonth = 0; ofMonth < DAYS[month]; ofMonth++, day++) {
                    if (!outage.months().contains(month)) {
                        continue;
                    }
                    Walk walk = walks.get();
                    walk.onto(new Stretch((365 * year + day) * 24, 24, outage.hours()));
                    for (int hour = 0; hour < 24; hour++) {
                        starts++;
                        carried += walk.account(hour, outage.hours(), new Ledger(), null) >= outage.hours() ? 1 : 0;
                    }
                }
            }
        }
        return (double) carried / starts;
    }
}
