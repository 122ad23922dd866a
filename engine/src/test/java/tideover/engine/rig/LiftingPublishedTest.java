package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tideover.engine.rig.Lifting.Form;
import tideover.engine.rig.Lifting.Posture;

/** NIOSH 94-110 (1994, revised 2021), the revised lifting equation and its examples. */
class LiftingPublishedTest {
    private static double limit(Form form, double horizontal, double vertical, double travel, double grip) {
        return Lifting.limit(form, new Posture(horizontal, vertical, travel, 0), Lifting.ONE, grip);
    }

    @Test
    void theLoadConstantIsTheBestPosture() {
        assertThat(limit(Form.METRIC, 25, 75, 25, 1)).isCloseTo(23, within(1e-9));
        assertThat(limit(Form.INCH, 10, 30, 10, 1)).isCloseTo(51, within(1e-9));
    }

    /** Manual, example 1, 44 lb, figures from memory: 16.3 and 14.5 lb with rounded multipliers, index 2.7 and 3.0. The form gives 16.03 and 14.31. */
    @Test
    void exampleOneAtBothEnds() {
        double origin = limit(Form.INCH, 23, 15, 48, .95);
        double destination = limit(Form.INCH, 23, 63, 48, 1);
        assertThat(origin).isCloseTo(16.03, within(.005)).isCloseTo(16.3, within(.02 * 16.3));
        assertThat(destination).isCloseTo(14.31, within(.005)).isCloseTo(14.5, within(.02 * 14.5));
        assertThat(44 / origin).isCloseTo(2.7, within(.05));
        assertThat(44 / destination).isCloseTo(3.0, within(.08));
    }

    /** Worked by hand: 23 x .625 x .835 x .884 = 10.61 kg; a battery of 30 kg has an index of 2.83. */
    @Test
    void aBatteryFromTheFloorToABench() {
        assertThat(limit(Form.METRIC, 40, 20, 70, 1)).isCloseTo(10.61, within(.005));
        assertThat(Lifting.floorToBenchKg()).isCloseTo(10.61, within(.005));
        assertThat(30 / Lifting.floorToBenchKg()).isCloseTo(2.83, within(.005));
    }

    /** A course page prints 18.4 lb with multipliers .50, .82, .93. */
    @Test
    void aWorkedRowOfACourse() {
        assertThat(limit(Form.INCH, 20, 6, 16, .95))
                .isCloseTo(18.52, within(.005))
                .isCloseTo(18.4, within(.01 * 18.4));
    }

    /** The two forms are of one equation: they part by no more than their rounding. */
    @Test
    void theFormsAgree() {
        double metric = limit(Form.METRIC, 23 * 2.54, 15 * 2.54, 48 * 2.54, .95) / .45359237;
        assertThat(metric).isCloseTo(16.03, within(.025 * 16.03));
    }

    /** Twist by .0032 a degree (from memory); none of it further than arms reach. */
    @Test
    void twistAndReach() {
        assertThat(Lifting.limit(Form.METRIC, new Posture(25, 75, 25, 90), 1, 1))
                .isCloseTo(23 * .712, within(1e-9));
        assertThat(Lifting.limit(Form.METRIC, new Posture(25, 75, 25, 136), 1, 1))
                .isZero();
        assertThat(limit(Form.METRIC, 64, 75, 25, 1)).isZero();
        assertThat(limit(Form.METRIC, 25, 176, 25, 1)).isZero();
        assertThat(limit(Form.METRIC, 25, 75, 176, 1)).isZero();
        assertThat(limit(Form.METRIC, 20, 75, 10, 1))
                .as("closer and shorter than the best gains nothing")
                .isCloseTo(23, within(1e-9));
    }
}
