package tideover.engine.answer;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.proof.CarriedShare;
import tideover.engine.proof.Proof;
import tideover.engine.proof.StormProof;

/**
 * The worst that was found of a rig with everything essential on it, for loads that somebody's health hangs on. There a share
 * says nothing: what counts is whether any outage at all ended it, and after how long.
 *
 * @param years          weather years walked, an outage begun at every hour of the asked months
 * @param askedHours     how long an outage lasts
 * @param capHours       no walk goes on for longer: hours at the cap mean that long or longer
 * @param worstHours     the shortest that it lasted, storm starts apart
 * @param stormHours     the shortest that it lasted on storm starts, followed to {@code askedHours}; NaN where storms do no more
 *                       than take the grid
 * @param outages        the asked months' starts
 * @param darkest        starts on the darkest twentieth of days, with all that storms do
 * @param coldest        on the coldest twentieth
 * @param confirmed      the asked months' starts on other years; null where the weather cannot be drawn again
 * @param stormConfirmed storm starts on other years; null there too, and where storms do no more than take the grid
 * @param confirmYears   how many other years
 */
public record WorstCase(
        int years,
        int askedHours,
        int capHours,
        double worstHours,
        double stormHours,
        CarriedShare outages,
        CarriedShare darkest,
        CarriedShare coldest,
        @Nullable CarriedShare confirmed,
        @Nullable CarriedShare stormConfirmed,
        int confirmYears) {
    static WorstCase of(
            Proof proof, @Nullable CarriedShare confirmed, @Nullable CarriedShare stormConfirmed, int confirmYears) {
        StormProof storm = proof.storm();
        return new WorstCase(
                proof.years(),
                proof.tideLine().askedHours(),
                proof.tideLine().capHours(),
                proof.worstHours(),
                storm == null ? Double.NaN : storm.worst().hoursCarried(),
                proof.share(),
                proof.darkest(),
                proof.coldest(),
                confirmed,
                stormConfirmed,
                confirmYears);
    }

    /** Whether nothing that was walked ended it before its time. It is no promise. */
    public boolean nothingEndedIt() {
        return failed(outages) + failed(darkest) + failed(coldest) + failed(confirmed) + failed(stormConfirmed) == 0;
    }

    /** Hours of the shortest; where a storm start failed sooner, that one. */
    public double shortestHours() {
        return stormHours < askedHours ? Math.min(stormHours, worstHours) : worstHours;
    }

    /** How many were not carried; 0 of what was not walked. */
    public static int failed(@Nullable CarriedShare share) {
        return share == null ? 0 : share.outages() - share.carried();
    }

    /** Such as "31 h of 72 h asked"; cut off, not rounded up. */
    String shortestWords() {
        double hours = Math.floor(shortestHours());
        String words = String.format(Locale.ROOT, "%.0f h", hours);
        if (hours >= capHours) {
            words += " or more";
        }
        return words + (hours < askedHours ? " of " : ", with ") + askedHours + " h asked";
    }

    /** How much longer than asked the shortest lasted, as a sentence; empty where it was not followed to its end. */
    String spareWords() {
        double hours = Math.floor(shortestHours() - askedHours);
        if (shortestHours() >= capHours || hours < 0) {
            return "";
        }
        return hours == 0
                ? " That leaves less than an hour to spare."
                : String.format(Locale.ROOT, " That leaves %.0f h to spare.", hours);
    }
}
