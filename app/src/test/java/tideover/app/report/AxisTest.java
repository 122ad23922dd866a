package tideover.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;

/** Ticks are few and round; labels keep their distance and their order. */
class AxisTest {
    @Test
    void ticksAreFewRoundAndInside() {
        Invented random = new Invented(21);
        for (int i = 0; i < 500; i++) {
            double from = random.between(-50, 900);
            double to = from + Math.pow(10, random.between(-1, 4));
            int most = random.whole(2, 8);
            Axis axis = new Axis(from, to, 0, 100);
            List<Double> ticks = axis.ticks(most);
            assertThat(ticks.size()).isBetween(most / 3, most + 1);
            double step = Axis.roundStep(to - from, most);
            String digits = String.format(java.util.Locale.ROOT, "%.0e", step).substring(0, 1);
            assertThat(digits).isIn("1", "2", "5");
            for (double tick : ticks) {
                assertThat(axis.of(tick)).isBetween(-1e-6, 100 + 1e-6);
                assertThat(Math.abs(tick / step - Math.rint(tick / step))).isLessThan(1e-6);
            }
        }
    }

    @Test
    void hourTicksOfThreeDaysAreHalfDays() {
        assertThat(new Axis(0, 72, 0, 1).hourTicks(6)).containsExactly(0.0, 12.0, 24.0, 36.0, 48.0, 60.0, 72.0);
        assertThat(new Axis(0, 144, 0, 1).hourTicks(6)).containsExactly(0.0, 24.0, 48.0, 72.0, 96.0, 120.0, 144.0);
    }

    @Test
    void labelsKeepTheirDistanceAndTheirOrder() {
        Invented random = new Invented(22);
        for (int i = 0; i < 500; i++) {
            double[] wanted = new double[4];
            for (int k = 0; k < 4; k++) {
                wanted[k] = random.chance(0.3) ? 28 : random.between(28, 260);
            }
            Arrays.sort(wanted);
            double[] places = Axis.apart(wanted, 14, 28, 258);
            assertThat(places[0]).isGreaterThanOrEqualTo(28 - 1e-9);
            assertThat(places[3]).isLessThanOrEqualTo(258 + 1e-9);
            for (int k = 1; k < 4; k++) {
                assertThat(places[k] - places[k - 1]).isGreaterThanOrEqualTo(14 - 1e-9);
            }
        }
    }

    @Test
    void labelsWithRoomStayWhereTheyBelong() {
        assertThat(Axis.apart(new double[] {40, 90, 200}, 14, 28, 258)).containsExactly(40, 90, 200);
    }
}
