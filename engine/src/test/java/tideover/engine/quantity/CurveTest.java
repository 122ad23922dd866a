package tideover.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CurveTest {
    private final Curve curve = Curve.of(0, 1, 1, 3, 3, 4);

    @Test
    void goesStraightBetweenItsPointsAndFlatBeyondThem() {
        assertThat(curve.at(0.5)).isEqualTo(2);
        assertThat(curve.at(1)).isEqualTo(3);
        assertThat(curve.at(2)).isEqualTo(3.5);
        assertThat(curve.at(-9)).isEqualTo(1);
        assertThat(curve.at(9)).isEqualTo(4);
        assertThat(Curve.flat(7).at(-1)).isEqualTo(7);
    }

    @Test
    void tellsWhereItRisesTo() {
        assertThat(curve.whereRisesTo(2)).isEqualTo(0.5);
        assertThat(curve.whereRisesTo(3.5)).isEqualTo(2);
        assertThat(curve.whereRisesTo(0)).isEqualTo(0);
        assertThat(curve.whereRisesTo(5)).isInfinite();
    }

    @Test
    void knowsItsMean() {
        assertThat(curve.mean()).isEqualTo((2 + 3.5 * 2) / 3);
    }

    @Test
    void refusesPointsOutOfOrder() {
        assertThatThrownBy(() -> Curve.of(1, 0, 0, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
