package tideover.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LifeTest {
    @ParameterizedTest
    @EnumSource
    void deeperAndWarmerIsShorter(Chemistry chemistry) {
        Life life = Life.of(chemistry);
        assertThat(life.years(200, .8, 25)).isLessThan(life.years(200, .4, 25));
        assertThat(life.years(200, .5, 35)).isLessThan(life.years(200, .5, 25));
        assertThat(life.years(200, .5, 10)).isEqualTo(life.years(200, .5, 25));
        assertThat(life.years(0, .5, 25)).isCloseTo(life.calendarYears(), within(1e-12));
    }

    @Test
    void leadLosesHalfItsYearsWithTenKelvin() {
        Life life = Life.of(Chemistry.AGM_LEAD);
        assertThat(life.calendarYears(35)).isCloseTo(life.calendarYears(25) / 2, within(1e-12));
    }

    /** By hand: 600 cycles at .5 and 6 years; 100 a year use 1/6 a year each way, so 3 years. */
    @Test
    void wearOfBothKindsAdds() {
        assertThat(Life.of(Chemistry.AGM_LEAD).years(100, .5, 25)).isCloseTo(3, within(1e-12));
        // 300.00 for .6 kWh a cycle: 300 cycles, 180 kWh.
        assertThat(Life.of(Chemistry.AGM_LEAD).centsPerKwh(30_000, .6, 100, .5, 25))
                .isCloseTo(30_000 / 180.0, within(1e-9));
        assertThat(Life.of(Chemistry.AGM_LEAD).centsPerStandbyYear(30_000, 25)).isCloseTo(5000, within(1e-9));
    }

    /** Counted swings wear as so many of their depth. */
    @Test
    void countedSwingsWear() {
        Life life = Life.of(Chemistry.AGM_LEAD);
        double[] history = new double[2 * 600 + 1];
        for (int i = 0; i < history.length; i++) {
            history[i] = i % 2 == 0 ? 1 : .5;
        }
        assertThat(life.worn(CycleCount.of(history))).isCloseTo(1, within(1e-9));
    }
}
