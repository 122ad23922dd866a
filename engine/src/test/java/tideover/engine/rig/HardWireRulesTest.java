package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static tideover.engine.rig.RigKit.findings;
import static tideover.engine.rig.RigKit.verdict;

import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/** What hangs on the wires of the house is joined by an electrician, and what proves its flame is tried. */
class HardWireRulesTest {
    private static final Rig RIG = RigKit.rig(RigKit.agm(), RigKit.inverter());

    private static Load load(Supply supply, boolean essential, boolean hardWired, boolean sensesFlame) {
        return new SteadyLoad(
                "blower",
                supply,
                100,
                essential,
                new Need.AlwaysOn(),
                RoomKind.INDOORS,
                Nature.PLAIN.wired(hardWired, sensesFlame));
    }

    @Test
    void aHardWiredLoadIsACaution() {
        assertThat(verdict(RIG, "hard-wired", load(Invented.MAINS, true, true, false)))
                .contains(Verdict.CAUTION);
        assertThat(findings(RIG, "hard-wired", load(Invented.MAINS, false, true, false)))
                .singleElement()
                .extracting(Finding::sentence)
                .isEqualTo("blower is hard-wired: only through a listed transfer device or inlet, by a licensed"
                        + " electrician; never by a cord with two plugs.");
        assertThat(verdict(RIG, "hard-wired", RigKit.lamp("lamp", 9, true))).isEmpty();
    }

    @Test
    void whatIsNiceToHaveAndFindsNoOutletIsNotJoined() {
        Supply other = Supply.ac(230, 50, "hard-wired");
        assertThat(verdict(RIG, "hard-wired", load(other, false, true, false))).isEmpty();
        assertThat(verdict(RIG, "hard-wired", load(other, true, true, false))).contains(Verdict.CAUTION);
    }

    @Test
    void aFlameProvenToGroundIsToBeTested() {
        assertThat(findings(RIG, "flame-sensing", load(Invented.MAINS, true, true, true)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.CAUTION);
                    assertThat(finding.sentence()).contains("blower", "Test it on the rig");
                });
        assertThat(verdict(RIG, "flame-sensing", load(Invented.MAINS, true, false, true)))
                .as("on a plug too")
                .contains(Verdict.CAUTION);
        assertThat(verdict(RIG, "flame-sensing", load(Invented.MAINS, true, true, false)))
                .isEmpty();
        assertThat(verdict(RIG, "flame-sensing", load(Invented.SOCKET, true, false, true)))
                .isEmpty();
    }
}
