package tideover.engine.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Units;

/** Hour from day: Collares-Pereira &amp; Rabl 1979 for the global, Liu &amp; Jordan 1960 for the diffuse share; recomputed rows. */
class DayShapePublishedTest {
    private static DayShape dayOf(double hours) {
        return DayShape.of(hours * Math.PI / 24);
    }

    /** Day length, a, b, integral of rt, then pairs (rt, rd) at 0.5, 1.5 ... h from noon. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "8 .4090 .6609 1.0017 .1999 .1879 .1652 .1620 .1047 .1121 .0337 .0416",
                "10 .5388 .5375 .9927 .1639 .1529 .1437 .1388 .1077 .1116 .0633 .0730 .0192 .0259",
                "12 .6598 .4226 .9917 .1400 .1298 .1270 .1209 .1033 .1038 .0731 .0797 .0412 .0501 .0122 .0171",
                "14 .7637 .3238 .9978 .1233 .1136 .1142 .1075 .0976 .0956 .0758 .0789 .0518 .0583 .0285 .0354 .0084"
                        + " .0117",
                "16 .8434 .2481 1.0072 .1112 .1020 .1045 .0974 .0920 .0885 .0754 .0759 .0567 .0604 .0378 .0431 .0205"
                        + " .0253 .0060 .0080",
            })
    void rows(String row) {
        String[] cells = row.split(" ");
        DayShape day = dayOf(Double.parseDouble(cells[0]));
        assertThat(day.a()).isCloseTo(Double.parseDouble(cells[1]), within(1e-4));
        assertThat(day.b()).isCloseTo(Double.parseDouble(cells[2]), within(1e-4));
        for (int i = 4; i < cells.length; i += 2) {
            double hourAngle = Units.radians(15 * ((i - 4) / 2 + 0.5));
            assertThat(day.globalShare(hourAngle)).isCloseTo(Double.parseDouble(cells[i]), within(1e-4));
            assertThat(day.diffuseShare(hourAngle)).isCloseTo(Double.parseDouble(cells[i + 1]), within(1e-4));
        }
        int steps = 20_000;
        double global = 0;
        double diffuse = 0;
        double stepRad = 2 * day.sunsetRad() / steps;
        for (int i = 0; i < steps; i++) {
            double at = -day.sunsetRad() + (i + 0.5) * stepRad;
            global += day.globalShare(at) * stepRad * 12 / Math.PI;
            diffuse += day.diffuseShare(at) * stepRad * 12 / Math.PI;
        }
        assertThat(global).isCloseTo(Double.parseDouble(cells[3]), within(1e-4));
        assertThat(diffuse).as("the diffuse share sums to 1 by itself").isCloseTo(1, within(1e-6));
    }

    /** Duffie &amp; Beckman, example 2.13.1: 38 S, 17 January, 8 to 9 solar time; printed .076. The sign before .4767 hangs on it. */
    @Test
    void morningHourMatchesTheTextbook() {
        double sunset = TextbookSun.day(17).sunsetAngleRad(Units.radians(-38));
        assertThat(Units.degrees(sunset)).isCloseTo(107.37, within(0.01));
        assertThat(DayShape.of(sunset).globalShare(Units.radians(-52.5))).isCloseTo(.0759, within(1e-4));
    }

    /**
     * The printed global shares do not sum to 1 (.992 to 1.007), which would lose or make sun: the year's shares are brought to
     * 1, and so differ from the printed ones by just that factor. Asked where clock noon is solar noon, equinox, 12 h.
     */
    @Test
    void theYearsSharesSumToOneEachDay() {
        for (double lat : new double[] {-55, 0, 35, 64, 80}) {
            SunYear sun = SunYear.at(lat, 12, 1);
            for (int day = 0; day < ModelYear.DAYS; day++) {
                double sum = 0;
                double outside = 0;
                for (int hour = day * 24; hour < day * 24 + 24; hour++) {
                    sum += sun.hourShare(hour);
                    outside += sun.horizontalWm2(hour);
                }
                assertThat(sum).isCloseTo(outside > 0 ? 1 : 0, within(1e-12));
            }
        }
        int equinox = 78;
        SunYear sun = SunYear.at(40, 15 * (SunYear.at(40, 0, 0).solarNoonHour(equinox) - 12), 0);
        double noonHour = sun.hourShare(equinox * 24 + 12);
        assertThat(noonHour).isCloseTo(.1400 / .9917, within(.001));
        assertThat(noonHour).isGreaterThan(.1405);
    }
}
