package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What the tape of a life on the grid knows of the moments between two switchings. */
class GridLifeTest {
    /** An hour too warm in its second third, and well again in the last, every hour. */
    private static final class Thirds implements Keeper {
        private static final double THIRD_H = 1.0 / 3;

        private double intoH;

        @Override
        public void onto(Stretch stretch) {}

        @Override
        public void begin(int hourOfStretch) {}

        @Override
        public void step(int hourOfStretch, int stepOfDay, double hourOfOutage, double arrayW, boolean gridOn) {
            intoH = 0;
        }

        @Override
        public boolean allowed() {
            return true;
        }

        @Override
        public double plugW() {
            return motor() ? 60 : 0;
        }

        @Override
        public boolean motor() {
            return uneasy();
        }

        @Override
        public boolean starting() {
            return false;
        }

        @Override
        public double untilSwitchH(double most, boolean live) {
            return THIRD_H;
        }

        @Override
        public void pass(double hours, boolean live) {
            intoH += hours;
        }

        @Override
        public @Nullable Ending broken() {
            return null;
        }

        @Override
        public boolean uneasy() {
            return intoH > 0.3 && intoH < 0.6;
        }

        @Override
        public double kept() {
            return 0;
        }

        @Override
        public double air() {
            return 0;
        }

        @Override
        public double imbalance() {
            return 0;
        }

        @Override
        public int figures() {
            return 1;
        }

        @Override
        public void save(double[] figures, int from) {
            figures[from] = intoH;
        }

        @Override
        public void restore(double[] figures, int from) {
            intoH = figures[from];
        }

        @Override
        public void restored() {}
    }

    @Test
    void tapeKnowsWhatIsOutsideItsLimitsOnlyBetweenTwoSwitchings() {
        GridTape tape = GridLife.of(life -> new Thirds(), 24, 1).tape();
        for (int step = 0; step < 24; step++) {
            assertThat(tape.isUneasy(step)).as("step %d", step).isTrue();
            assertThat(tape.end(step) - tape.first(step)).as("switchings").isGreaterThanOrEqualTo(2);
        }
    }
}
