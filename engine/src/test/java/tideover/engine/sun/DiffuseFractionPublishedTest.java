package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.quantity.Units;

/** Erbs, Klein &amp; Duffie 1982 (Solar Energy 28, 293). All coefficients from memory, the values recomputed from them. */
class DiffuseFractionPublishedTest {
    /** At .5 the value is .65915 exactly, which rounds up: hence a hair over half the last digit. */
    @ParameterizedTest
    @CsvSource({
        "0, 1",
        ".1, .9910",
        ".2, .9820",
        ".3, .9486",
        ".4, .8400",
        ".5, .6592",
        ".6, .4395",
        ".7, .2440",
        ".8, .1653",
        ".9, .1650",
    })
    void hourly(double clearness, double fraction) {
        assertThat(DiffuseFraction.hourly(clearness)).isCloseTo(fraction, within(5.001e-5));
    }

    /** Duffie &amp; Beckman, example 2.15.1 (from memory). */
    @Test
    void hourlyOfTheTextbookCase() {
        assertThat(DiffuseFraction.hourly(0.4454)).isCloseTo(0.7655, within(1e-4));
    }

    @Test
    void hourlyJoinsCloseSmoothly() {
        assertThat(DiffuseFraction.hourly(0.22)).isCloseTo(0.98020, within(1e-5));
        assertThat(DiffuseFraction.hourly(Math.nextUp(0.22))).isCloseTo(0.97993, within(1e-5));
        assertThat(DiffuseFraction.hourly(0.80)).isCloseTo(0.16527, within(1e-5));
        assertThat(DiffuseFraction.hourly(Math.nextUp(0.80))).isCloseTo(0.165, within(1e-12));
    }

    /** The printed polynomial turns up by 7e-4 just before its upper end; apart from that a clearer hour is never more diffuse. */
    @Test
    void hourlyFallsAsTheSkyClears() {
        double before = 1;
        for (int i = 0; i <= 1200; i++) {
            double fraction = DiffuseFraction.hourly(i / 1000.0);
            assertThat(fraction).isGreaterThan(0).isLessThanOrEqualTo(1);
            assertThat(fraction).isLessThan(before + (i >= 790 && i <= 800 ? 2e-4 : 1e-12));
            before = fraction;
        }
    }

    @Test
    void hourlyRefusesWhatIsNoClearness() {
        assertThatIllegalArgumentException().isThrownBy(() -> DiffuseFraction.hourly(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> DiffuseFraction.hourly(-0.01));
        assertThatIllegalArgumentException().isThrownBy(() -> DiffuseFraction.hourly(Double.POSITIVE_INFINITY));
    }

    @ParameterizedTest
    @CsvSource({
        ".2, .9612, .9628",
        ".3, .8778, .8920",
        ".4, .7584, .7583",
        ".5, .6083, .5688",
        ".6, .4323, .3534",
        ".7, .2357, .1641"
    })
    void daily(double clearness, double longDay, double shortDay) {
        assertThat(MonthlyMethod.dailyDiffuseFraction(clearness, 90)).isCloseTo(longDay, within(1e-4));
        assertThat(MonthlyMethod.dailyDiffuseFraction(clearness, 80)).isCloseTo(shortDay, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({".3, .6637, .6423", ".4, .5340, .5005", ".5, .4291, .3911", ".6, .3382, .3014", ".7, .2502, .2186"})
    void monthly(double clearness, double longDay, double shortDay) {
        assertThat(MonthlyMethod.monthlyDiffuseFraction(clearness, 90)).isCloseTo(longDay, within(1e-4));
        assertThat(MonthlyMethod.monthlyDiffuseFraction(clearness, 80)).isCloseTo(shortDay, within(1e-4));
    }

    /** Duffie &amp; Beckman, example 2.11.1: 3 September, latitude 38.6, 23.0 MJ/m2; printed about .25 to .26. */
    @Test
    void dailyOfTheTextbookCase() {
        Almanac day = TextbookSun.day(246);
        double outside = 3.6 * day.dayKwhM2(Units.radians(38.6));
        assertThat(outside).isCloseTo(33.25, within(0.01));
        double sunsetDeg = Units.degrees(day.sunsetAngleRad(Units.radians(38.6)));
        assertThat(MonthlyMethod.dailyDiffuseFraction(23.0 / outside, sunsetDeg))
                .isCloseTo(.253, within(.005));
    }

    /** Liu &amp; Jordan's monthly cubic meets its two outer constants, .595774 and .215246 (public source code), at .3 and .7. */
    @Test
    void liuAndJordansMonthlyEnds() {
        assertThat(liuJordan(.3)).isCloseTo(.5958, within(1e-3));
        assertThat(liuJordan(.7)).isCloseTo(.2153, within(1e-3));
    }

    private static double liuJordan(double k) {
        return 1.39 + k * (-4.027 + k * (5.531 - k * 3.108));
    }
}
