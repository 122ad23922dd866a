package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;

/** The screening against a plain loop over starts that knows nothing of drawdowns. */
class DrawdownTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void equalsAPlainLoopOnRandomSeries(long seed) {
        Invented invented = new Invented(seed);
        int stepsPerSpan = invented.whole(1, 4);
        int starts = invented.whole(1, 400);
        int length = invented.whole(1, 100);
        int dark = invented.whole(0, 12);
        double charge = invented.between(0.3, 1);
        double[] sunny = new double[(starts + length) * stepsPerSpan];
        double[] gloom = new double[invented.whole(1, 30) * stepsPerSpan];
        Arrays.setAll(sunny, i -> invented.between(-10, 10));
        Arrays.setAll(gloom, i -> invented.between(-10, 2));
        double[] fast = Drawdown.neededWh(gloom, sunny, starts, stepsPerSpan, dark, length, charge);
        for (int start = 0; start < starts; start++) {
            double slow = smallestStoreWh(
                    gloom, sunny, start * stepsPerSpan, dark * stepsPerSpan, length * stepsPerSpan, charge);
            assertThat(fast[start]).as("seed %d, start %d", seed, start).isCloseTo(slow, within(1e-6));
        }
    }

    /** By halving: the smallest store that a plain walk does not empty. Knows nothing of drawdowns. */
    private static double smallestStoreWh(
            double[] gloom, double[] sunny, int first, int darkSteps, int steps, double charge) {
        double fails = 0;
        double holds = 1e5;
        if (plainWalkHolds(gloom, sunny, first, darkSteps, steps, charge, 0)) {
            return 0;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (fails + holds) / 2;
            if (plainWalkHolds(gloom, sunny, first, darkSteps, steps, charge, middle)) {
                holds = middle;
            } else {
                fails = middle;
            }
        }
        return holds;
    }

    private static boolean plainWalkHolds(
            double[] gloom, double[] sunny, int first, int darkSteps, int steps, double charge, double capacityWh) {
        double wh = charge * capacityWh;
        for (int i = 0; i < steps; i++) {
            wh = Math.min(capacityWh, wh + (i < darkSteps ? gloom[(first + i) % gloom.length] : sunny[first + i]));
            if (wh < 0) {
                return false;
            }
        }
        return true;
    }

    /** A step that asks more than the store can give at once is carried by no store, in exactly the windows over it. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6})
    void stepBeyondTheStoreNeedsAnInfiniteOne(int dark) {
        Invented invented = new Invented(71);
        double[] sunny = new double[60];
        double[] gloom = new double[12];
        Arrays.setAll(sunny, i -> invented.between(-10, 10));
        Arrays.setAll(gloom, i -> invented.between(-10, 0));
        sunny[23] = Double.NEGATIVE_INFINITY;
        sunny[25] = Double.NEGATIVE_INFINITY;
        gloom[7] = Double.NEGATIVE_INFINITY;
        double[] needed = Drawdown.neededWh(gloom, sunny, 40, 1, dark, 6, 0.8);
        for (int start = 0; start < needed.length; start++) {
            boolean over = false;
            for (int i = 0; i < 6; i++) {
                over |= i < dark ? (start + i) % 12 == 7 : start + i == 23 || start + i == 25;
            }
            if (over) {
                assertThat(needed[start]).as("start %d", start).isEqualTo(Double.POSITIVE_INFINITY);
            } else {
                assertThat(needed[start]).as("start %d", start).isLessThan(100);
            }
        }
    }

    @Test
    void windowOfOneSpanIsTheSpan() {
        double[] gain = {1, -3, 2, -1};
        double[] needed = Drawdown.neededWh(gain, gain, 4, 1, 0, 1, 0.5);
        assertThat(needed).containsExactly(0, 6, 0, 2);
    }
}
