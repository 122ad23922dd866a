package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tideover.engine.electronics.ConductorSize;

/**
 * Faults worked by hand; two-point formula after IEC 60896-21, k after IEC 60364-4-43 and interrupting ratings, all from
 * memory. Check the editions in force.
 */
class ShortCircuitPublishedTest {
    /** Four iron-phosphate cells of .5 mOhm and 1 mOhm of links, 12.8 V: 4267 A. */
    @Test
    void fourCellsAndTheirLinks() {
        assertThat(ShortCircuit.boltedA(12.8, .0005, .0005, .0005, .0005, .001)).isCloseTo(4267, within(.5));
    }

    /** Lead, 12.7 V, 5 mOhm: 2540 A; with a loop of 2 m of 35 mm2, 2079 A. */
    @Test
    void leadBareAndBehindItsCable() {
        assertThat(ShortCircuit.boltedA(12.7, .005)).isCloseTo(2540, within(1e-9));
        double loopOhm = 2 * ConductorSize.named("35 mm2").orElseThrow().ohmPerM(20);
        assertThat(ShortCircuit.boltedA(12.7, .005, loopOhm)).isCloseTo(2079, within(.5));
    }

    /** 40 A at 12.2 V and 200 A at 11.6 V: 3.75 mOhm, 3293 A; the order of the two does not matter. */
    @Test
    void twoPoints() {
        double faultA = ShortCircuit.fromTwoPoints(12.2, 40, 11.6, 200);
        assertThat(faultA).isCloseTo(3293, within(.5));
        assertThat(ShortCircuit.fromTwoPoints(11.6, 200, 12.2, 40)).isCloseTo(faultA, within(1e-9));
        // The same line, by its resistance and its volts without load.
        assertThat(ShortCircuit.boltedA(12.2 + 40 * .00375, .00375)).isCloseTo(faultA, within(1e-6));
    }

    /** Which fuse may stand at the terminals of the four cells: not one of 1000 A, nor a typical small part of 2000 A. */
    @Test
    void theFuseMustInterruptWhatFlows() {
        double faultA = ShortCircuit.boltedA(12.8, 4 * .0005, .001);
        assertThat(faultA).isGreaterThan(1000).isGreaterThan(2000).isLessThan(20_000);
    }

    /** 1500 A for .1 s: 4.125 mm2 in PVC, 3.317 mm2 in XLPE. */
    @Test
    void copperThatTakesTheHeat() {
        assertThat(ShortCircuit.adiabaticMm2(1500, .1, ShortCircuit.K_PVC)).isCloseTo(4.125, within(5e-4));
        assertThat(ShortCircuit.adiabaticMm2(1500, .1, ShortCircuit.K_XLPE)).isCloseTo(3.317, within(5e-4));
    }

    /**
     * k from the heat in the copper itself (volumetric heat 3.45e-3 J/(K mm3), 17.241e-6 ohm mm at 20 degC, 234.5 K; from
     * memory): the formula of the standard gives both constants as printed.
     */
    @Test
    void kFollowsFromCopper() {
        assertThat(k(70, 160)).isCloseTo(ShortCircuit.K_PVC, within(.5));
        assertThat(k(90, 250)).isCloseTo(ShortCircuit.K_XLPE, within(.5));
    }

    private static double k(double fromDegC, double toDegC) {
        double beta = 234.5;
        return Math.sqrt(3.45e-3 * (beta + 20) / 17.241e-6 * StrictMath.log((beta + toDegC) / (beta + fromDegC)));
    }

    @Test
    void whatIsNoFaultIsRefused() {
        assertThatThrownBy(() -> ShortCircuit.boltedA(12.8)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ShortCircuit.boltedA(12.8, .01, -.001)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ShortCircuit.fromTwoPoints(12.2, 40, 12.2, 200))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ShortCircuit.fromTwoPoints(12.2, 200, 11.6, 40))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ShortCircuit.fromTwoPoints(12.2, 40, 11.6, 40))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
