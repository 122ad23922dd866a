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
 * and whatever switches itself reckoned from its state. No tape is read, nothing is known again from another outage or another
 * rig, nothing ends early, one thread. The list of starts is its own.
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
        Setup setup = Setup.of(rig, loads, shelf, noonHour, stepsPerHour, outage);
        Supplier<Walk> walks = setup.with(reckoning(setup.kept())).walks(outage.hours());
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

    /** The same without their tapes. */
    private Kept reckoning(Kept kept) {
        List<Kept.One> all = kept.all().stream()
                .map(one -> new Kept.One(one.load(), one.ac(), one.busPerPlugW(), (storm, foreseen, looked) -> {
                    boolean follows = one.maker().keeper(storm, foreseen, false) instanceof Follower;
                    Keeper keeper = one.maker().keeper(storm, foreseen, true);
                    Keeper scout = one.maker().keeper(storm, foreseen, true);
                    return follows ? new PatientKeeper(keeper, scout, stepsPerHour, 8760 * years) : keeper;
                }))
                .toList();
        return new Kept(all, kept.loss(), kept.standingW());
    }
}
