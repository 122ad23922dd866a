package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tideover.engine.rig.RigKit.rig;
import static tideover.engine.rig.RigKit.verdict;

import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.electronics.Tracking;
import tideover.engine.part.ChargeController;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Panel;
import tideover.engine.sun.PanelSheet;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/** Panels against the input of their controller. */
class PanelRulesTest {
    /** 22 V open, -.3 % a kelvin: 19.36 V at 65 degC. A 12 V store and start volts of s need 12 + s. */
    @Test
    void theControllerBegins() {
        assertThat(starting(7.3)).contains(Verdict.PASS);
        assertThat(starting(7.4)).as("not when hot").contains(Verdict.CAUTION);
        assertThat(starting(10)).contains(Verdict.CAUTION);
        assertThat(starting(10.1)).contains(Verdict.FAIL);
    }

    /** 8 A shorted, ten with the code's quarter. */
    @Test
    void theInputTakesTheShortCircuitAmps() {
        assertThat(verdict(taking(Tracking.BEST_POINT, 10), "panel-input-amps")).contains(Verdict.PASS);
        assertThat(verdict(taking(Tracking.BEST_POINT, 9.9), "panel-input-amps"))
                .contains(Verdict.FAIL);
        assertThat(verdict(taking(Tracking.BEST_POINT, Double.NaN), "panel-input-amps"))
                .as("not told")
                .isEmpty();
    }

    /** One that holds the panels at the store's volts passes what comes in; its 20 A stand for its input. */
    @Test
    void outputCurrentStandsForTheInputOfOneThatHoldsTheVolts() {
        Panel large = new Panel(
                Invented.listing("P", 100, 8),
                PanelSheet.of(300, 22, 17, Double.NaN, 0, Double.NaN, -0.003, -0.004),
                45);
        assertThat(verdict(
                        rig(RigKit.agm(), controller(Tracking.AT_STORE_VOLTS, 4, Double.NaN), large),
                        "panel-input-amps"))
                .contains(Verdict.CAUTION);
        assertThat(verdict(taking(Tracking.AT_STORE_VOLTS, Double.NaN), "panel-input-amps"))
                .contains(Verdict.PASS);
    }

    /** 22 V, -.3 % a kelvin, -20 degC: 22 x 1.135 = 24.97 V; by the table's 1.18, 25.96 V. */
    @Test
    void theCodesTableStandsBesideTheMakersCoefficient() {
        Rig rig = rig(RigKit.agm(), RigKit.controller(), Invented.panel("P", 100, 100));
        Finding finding = RuleBook.partFindings(rig, new Site(-20, false)).stream()
                .filter(one -> one.rule().equals("panel-voltage"))
                .findFirst()
                .orElseThrow();
        assertThat(finding.value()).isCloseTo(24.97, within(1e-9));
        assertThat(finding.sentence()).contains("25.0 V open at -20 degC").contains("26.0 V by the code's table");
    }

    private static java.util.Optional<Verdict> starting(double startV) {
        Rig rig = rig(RigKit.agm(), controller(Tracking.BEST_POINT, startV, 40), Invented.panel("P", 100, 100));
        return verdict(rig, "panel-start-volts");
    }

    private static Rig taking(Tracking tracking, double mostA) {
        Panel panel = new Panel(
                Invented.listing("P", 100, 8),
                PanelSheet.of(140, 22, 8, Double.NaN, 0, Double.NaN, -0.003, -0.004),
                45);
        return rig(RigKit.agm(), controller(tracking, 4, mostA), panel);
    }

    private static ChargeController controller(Tracking tracking, double startV, double mostA) {
        return RigKit.controller(tracking, new ControllerRating.PanelInput(startV, mostA, Stated.YES), RigKit.ALL);
    }
}
