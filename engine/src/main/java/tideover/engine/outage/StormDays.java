package tideover.engine.outage;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import tideover.engine.quantity.ModelYear;
import tideover.engine.site.Weather;

/**
 * The days on which outages really come: the darkest and the coldest twentieth of the asked months' days over all years.
 * Storms are known to bring outages; that darkness and cold stand in for them is common practice, no source.
 */
public final class StormDays {
    /** Share of days that count. */
    public static final double SHARE = 0.05;

    private final BitSet darkest;
    private final BitSet coldest;

    private StormDays(BitSet darkest, BitSet coldest) {
        this.darkest = darkest;
        this.coldest = coldest;
    }

    public static StormDays of(Weather weather, List<Integer> months) {
        List<Integer> days = new ArrayList<>();
        for (int day = 0; day < weather.days(); day++) {
            if (months.contains(ModelYear.monthOfDay(day % ModelYear.DAYS))) {
                days.add(day);
            }
        }
        return new StormDays(lowest(days, weather::dayKwhM2), lowest(days, weather::dayMeanDegC));
    }

    private static BitSet lowest(List<Integer> days, IntToDoubleFunction figure) {
        record Rated(int day, double figure) {}
        BitSet chosen = new BitSet();
        days.stream()
                .map(day -> new Rated(day, figure.applyAsDouble(day)))
                .sorted(Comparator.comparingDouble(Rated::figure).thenComparingInt(Rated::day))
                .limit((long) Math.ceil(SHARE * days.size()))
                .forEach(rated -> chosen.set(rated.day()));
        return chosen;
    }

    /** Days counted through all weather years. */
    public boolean isDarkest(int day) {
        return darkest.get(day);
    }

    /** Whether it is one of either. */
    public boolean isEither(int day) {
        return isDarkest(day) || isColdest(day);
    }

    public boolean isColdest(int day) {
        return coldest.get(day);
    }
}
