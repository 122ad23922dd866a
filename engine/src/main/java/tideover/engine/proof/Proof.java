package tideover.engine.proof;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.Series;
import tideover.engine.site.Room;

/**
 * What came of walking one rig through every outage.
 *
 * @param share            over every start hour of the asked months
 * @param darkest          over starts on the darkest twentieth of those days
 * @param coldest          over starts on the coldest twentieth; these and the darkest with all that storms do
 * @param storm            of both together; null where storms only take the grid
 * @param hoursCarried     of every outage of the asked months, in rising order, capped at the tide line's cap
 * @param tideLine         whole year
 * @param starts           counts by month and hour of the day, whole year
 * @param noSunHours       hours carried with no sun at all, by the hour of the day in which the outage begins
 * @param worst            the outage carried shortest, or with the emptiest store
 * @param median           the one in the middle of that order
 * @param energy           summed over every outage of the asked months, walked to its end
 * @param endings          how many of the outages of the asked months that failed did so for which reason
 * @param battery          how cold and how warm the battery, or the room of a plain store, gets in the asked months
 * @param lifts            each limit lifted in turn, greatest gain first
 * @param habits           what the owners of cold boxes could do otherwise, greatest gain first
 * @param bareShare        of outages in which everything is kept without any power; NaN where a need follows the clock
 */
public record Proof(
        RigFigures figures,
        int years,
        CarriedShare share,
        CarriedShare darkest,
        CarriedShare coldest,
        @Nullable StormProof storm,
        Series hoursCarried,
        TideLine tideLine,
        StartTable starts,
        Series noSunHours,
        Trace worst,
        Trace median,
        Ledger energy,
        List<Lift> lifts,
        Map<Ending, Integer> endings,
        Room.Extremes battery,
        List<Lift> habits,
        double bareShare) {
    public Proof {
        endings = Collections.unmodifiableMap(new EnumMap<>(endings));
        lifts = List.copyOf(lifts);
        habits = List.copyOf(habits);
    }

    /** Hours that the outage carried shortest lasted, among those of the asked months. */
    public double worstHours() {
        return hoursCarried.at(0);
    }

    /** One outage in twenty of the asked months is carried no longer. */
    public double oneIn20Hours() {
        return Quantile.of(hoursCarried, 0.05);
    }

    /** Half the outages of the asked months are carried no longer. */
    public double medianHours() {
        return Quantile.of(hoursCarried, 0.5);
    }

    /** The limit whose lifting gains most; it may gain nothing where all is well. */
    public Lift binding() {
        return lifts.get(0);
    }
}
