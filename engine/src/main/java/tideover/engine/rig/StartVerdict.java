package tideover.engine.rig;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tideover.engine.why.Verdict;

/**
 * What each link of the chain says to a start.
 *
 * @param links in the order of the chain, from the plug to the battery
 * @param endV  volts at the inverter under the surge; NaN where the store's volts are not known, or where it cannot give it
 */
public record StartVerdict(List<Link> links, double endV) {
    public StartVerdict {
        links = List.copyOf(links);
    }

    /** A link of the chain. */
    public enum Kind {
        INVERTER_VA("the inverter's surge"),
        INVERTER_SECONDS("how long the inverter's surge lasts"),
        STORE_AMPS("the store's surge current"),
        STORE_SECONDS("how long the store's surge current lasts"),
        SAG("the fall of the volts");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * @param value   asked, in {@code unit}
     * @param limit   the most it gives, in {@code unit}; NaN for seconds that nobody tells
     * @param told    whether the limit is the part's own figure; else it is a stand-in that is likely too low
     * @param verdict what to make of it
     */
    public record Link(Kind kind, double value, double limit, String unit, boolean told, Verdict verdict) {
        public double margin() {
            return limit - value;
        }

        /** Limit for each asked: below 1 it does not hold; NaN where nobody tells. */
        public double ratio() {
            return limit / value;
        }
    }

    /** Whether no link is known to break. */
    public boolean holds() {
        return links.stream().noneMatch(link -> link.verdict() == Verdict.FAIL);
    }

    /** The link with the least left; a tie goes to the one nearer to the plug, what nobody tells comes last. */
    public Optional<Link> weakest() {
        return links.stream().min(Comparator.comparingDouble(Link::ratio));
    }

    public Optional<Link> link(Kind kind) {
        return links.stream().filter(link -> link.kind() == kind).findFirst();
    }
}
