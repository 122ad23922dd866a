package tideover.engine.answer;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.proof.CarriedShare;
import tideover.engine.proof.Doubts;
import tideover.engine.proof.Proof;
import tideover.engine.rig.Rig;
import tideover.engine.why.Finding;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.Price;

/**
 * One rig fully simulated.
 *
 * @param build     its circuit, small parts and tools
 * @param findings  what the rule book and the rules of wiring say of it
 * @param confirmed the carried share on the confirming seed; null where the weather cannot be drawn again
 * @param starts    every start of motors that may come
 * @param doubts    what the unknown does to the share, and what to measure first
 * @param cost      what its batteries cost over the years; null where that cannot be told
 * @param medical   one for each load that somebody's health hangs on
 */
public record ProvenRig(
        Rig rig,
        Build build,
        Price price,
        List<Finding> findings,
        Proof proof,
        @Nullable CarriedShare confirmed,
        List<JudgedStart> starts,
        Doubts doubts,
        @Nullable StandbyCost cost,
        List<MedicalNote> medical) {
    public ProvenRig {
        medical = List.copyOf(medical);
        findings = List.copyOf(findings);
        starts = List.copyOf(starts);
    }

    /** The start that leaves least; empty where nothing spins up. */
    public Optional<JudgedStart> hardestStart() {
        return JudgedStart.hardest(starts);
    }

    /** What its own engine costs a year while it waits: aging fuel and a service; NaN without one. */
    public double engineStandbyCentsPerYear() {
        return rig.engine() == null || build.fuel() == null
                ? Double.NaN
                : EngineStandby.centsPerYear(rig.engine(), build.fuel().litres());
    }
}
