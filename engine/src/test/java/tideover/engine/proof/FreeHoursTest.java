package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.Invented;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Need;

class FreeHoursTest {
    @Test
    void withoutSunItRunsAtTheLastMoment() {
        double[] share = plan(new Need.HoursInWindow(2.5, new DayWindow(8, 20)), new double[24 * 4], true);
        for (int step = 0; step < share.length; step++) {
            assertThat(share[step]).as("step %d", step).isEqualTo(step >= 70 && step < 80 ? 1.0 : 0.0);
        }
    }

    @Test
    void itTakesTheFirstSunThatCoversIt() {
        double[] spare = new double[24 * 4];
        Arrays.fill(spare, 40, 44, 60.0);
        double[] share = plan(new Need.HoursInWindow(2, new DayWindow(8, 20)), spare, true);
        assertThat(Arrays.stream(share, 40, 44).sum()).isEqualTo(4);
        assertThat(Arrays.stream(share, 76, 80).sum())
                .as("the other hour waits")
                .isEqualTo(4);
        assertThat(Arrays.stream(share).sum()).isEqualTo(8);
    }

    @Test
    void withoutForceOnlyTheSunCounts() {
        double[] spare = new double[24 * 4];
        Arrays.fill(spare, 40, 44, 60.0);
        double[] share = plan(new Need.HoursInWindow(2, new DayWindow(8, 20)), spare, false);
        assertThat(Arrays.stream(share).sum()).isEqualTo(4);
    }

    /** Every whole window gets exactly its hours, whatever the sun, also past midnight and off the step's grid. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyWindowGetsItsHours(long seed) {
        Invented invented = new Invented(seed);
        double from = invented.between(0, 23.9);
        DayWindow window = new DayWindow(from, invented.between(0.1, 24));
        double hours = invented.between(0.05, 1) * window.lengthHours();
        double[] spare = new double[24 * 4 * 6];
        for (int i = 0; i < spare.length; i++) {
            spare[i] = invented.between(-100, 100);
        }
        double[] share = plan(new Need.HoursInWindow(hours, window), spare, true);
        // Windows that begin on days 0 to 4 lie wholly inside; those before and after are cut by the edges.
        int first = (int) Math.floor(window.fromHour() * 4);
        int last = (int) Math.ceil((96 + window.fromHour() + window.lengthHours()) * 4);
        if (window.lengthHours() <= 23) {
            double ran =
                    Arrays.stream(share, first, Math.min(share.length, last)).sum() / 4;
            assertThat(ran).as("seed %d", seed).isCloseTo(5 * hours, within(1e-9));
        }
        assertThat(Arrays.stream(share).max().orElseThrow()).isLessThanOrEqualTo(1.0 + 1e-12);
        assertThat(Arrays.stream(share).min().orElseThrow()).isGreaterThanOrEqualTo(0.0);
    }

    private static double[] plan(Need.HoursInWindow need, double[] spare, boolean forced) {
        double[] share = new double[spare.length];
        FreeHours.plan(need, spare, 50, forced, 4, share);
        return share;
    }
}
