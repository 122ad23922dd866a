package tideover.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Against the library's own functions. */
class DecayTest {
    @Test
    void goneIsTheStrictLibrarysToAFewRoundings() {
        for (double x = 1e-12; x < 40; x *= 1.01) {
            double strict = -StrictMath.expm1(-x);
            assertThat(Decay.gone(x)).as("x %s", x).isCloseTo(strict, within(1e-15 * strict + Math.ulp(strict)));
        }
        assertThat(Decay.gone(0)).isZero();
    }

    @Test
    void untilIsTheStrictLibrarysToABillionth() {
        for (double left = 1 - 1e-9; left > 1e-6; left -= left > 0.5 ? 1e-4 : left / 100) {
            double strict = -StrictMath.log(left);
            assertThat(Decay.until(left)).as("left %s", left).isCloseTo(strict, within(1e-9 * strict));
        }
        assertThat(Decay.until(1)).isZero();
    }
}
