package tideover.engine.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.proof.CarriedShare;
import tideover.engine.proof.Proof;
import tideover.engine.rig.Rig;
import tideover.engine.why.Finding;
import tideover.engine.wiring.Price;

/**
 * One rig fully simulated.
 *
 * @param findings  what the rule book says of it
 * @param confirmed the carried share on the confirming seed; null where the weather cannot be drawn again
 */
public record ProvenRig(
        Rig rig,
        Price price,
        List<Finding> findings,
        Proof proof,
        @Nullable CarriedShare confirmed) {
    public ProvenRig {
        findings = List.copyOf(findings);
    }
}
