package tideover.engine.wiring;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.electronics.ConductorSize;
import tideover.engine.part.SmallPart;
import tideover.engine.why.Finding;

/**
 * A run with what was chosen for it.
 *
 * @param conductor  cable, cord or panel lead
 * @param pieces     how many of a cable lie side by side for each pole; of panel leads, how many one after another
 * @param allowedA   that the conductor may be protected at, where and how it lies
 * @param protection null where the source limits itself
 * @param parting    what parts it by hand, where its protection does not; null where nothing needs to
 * @param dropV      lost on it at the lasting current, out and back
 * @param sagV       lost on it at the hardest start, fuse and joints included
 * @param ohm        out and back, fuse and joints included, of one of the alike runs
 * @param needs      what it takes, all alike runs together: pieces, or metres of cable
 * @param findings   what the rules of wiring say of it
 */
public record WiredRun(
        Run run,
        SmallPart conductor,
        ConductorSize size,
        int pieces,
        double allowedA,
        @Nullable Protection protection,
        @Nullable SmallPart parting,
        double dropV,
        double sagV,
        double ohm,
        Map<SmallPart, Double> needs,
        List<Finding> findings) {
    public WiredRun {
        needs = Collections.unmodifiableMap(new LinkedHashMap<>(needs));
        findings = List.copyOf(findings);
    }

    public double dropShare() {
        return dropV / run.systemV();
    }
}
