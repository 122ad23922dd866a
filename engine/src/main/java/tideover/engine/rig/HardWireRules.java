package tideover.engine.rig;

import static tideover.engine.why.Finding.inWords;

import java.util.List;
import tideover.engine.load.Load;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * What hangs on the wires of the house. How it is joined to a rig is for a licensed electrician; the price holds the household's
 * allowance for that, so the rule only says how it must not be done.
 */
final class HardWireRules {
    private HardWireRules() {}

    static void find(Sockets sockets, List<Finding> found) {
        for (Sockets.Plugged plugged : sockets.plugged()) {
            Load load = plugged.load();
            // What is nice to have and finds no outlet is not joined to the rig at all.
            if (plugged.outlet() == null && !load.essential()) {
                continue;
            }
            if (load.nature().hardWired()) {
                found.add(inWords(
                        "hard-wired",
                        Verdict.CAUTION,
                        Basis.COMMON_PRACTICE,
                        "house circuits are fed through a listed transfer device or inlet; NFPA 70 article 702 and the local code"
                                + " say how",
                        "%s is hard-wired: only through a listed transfer device or inlet, by a licensed electrician; never by"
                                + " a cord with two plugs.",
                        load.name()));
            }
            if (load.nature().sensesFlame() && load.supply().isAc()) {
                found.add(inWords(
                        "flame-sensing",
                        Verdict.CAUTION,
                        Basis.COMMON_PRACTICE,
                        "a flame is proven by a current to ground, which needs neutral and ground to be joined somewhere",
                        "%s may prove its flame by a current to ground: where the inverter's neutral floats it may light and lock"
                                + " out. Test it on the rig, from cold to warm, before relying on it; whether and where neutral and"
                                + " ground are joined is for a licensed electrician.",
                        load.name()));
            }
        }
    }
}
