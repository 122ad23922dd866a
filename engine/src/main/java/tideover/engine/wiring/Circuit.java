package tideover.engine.wiring;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.rig.Rig;
import tideover.engine.why.Finding;

/**
 * All runs of a rig with what was chosen for them.
 *
 * @param runs     in order: at the battery, between batteries, panels, engine, cords. A run for which nothing suits is not among
 *                 them, and a finding that fails says so
 * @param findings what the rules of wiring say of the whole
 * @param leads    what its cables do to the proof
 */
public record Circuit(List<WiredRun> runs, List<Finding> findings, Rig.Leads leads) {
    public Circuit {
        runs = List.copyOf(runs);
        findings = List.copyOf(findings);
    }

    /** The first of a kind; null where there is none. */
    public @Nullable WiredRun of(Run.Kind kind) {
        return runs.stream()
                .filter(wired -> wired.run().kind() == kind)
                .findFirst()
                .orElse(null);
    }
}
