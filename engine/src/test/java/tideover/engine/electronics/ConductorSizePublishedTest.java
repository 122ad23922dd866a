package tideover.engine.electronics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Conductors against their standards, which were read at second hand: ASTM B258 (geometry; diameters, areas and ohms at 20
 * degC computed from it), NFPA 70 chapter 9 table 8 (circular mils; ohms of stranded copper at 75 degC: 14 to 4/0 found
 * printed, 18 and 16 and all solid ones from memory), IEC 60228 class 5 (1 to 25 mm2 found printed, the others from memory).
 */
class ConductorSizePublishedTest {
    private static final double NONE = Double.NaN;

    private record Gauge(
            String name,
            double diameterMm,
            double areaMm2,
            double circularMils,
            double solidOhmPerKm20,
            double strandedOhmPerKft75,
            double solidOhmPerKft75) {}

    private static final List<Gauge> GAUGES = List.of(
            new Gauge("18", 1.0237, .823, 1620, 20.948, 7.95, 7.77),
            new Gauge("16", 1.2908, 1.309, 2580, 13.174, 4.99, 4.89),
            new Gauge("14", 1.6277, 2.081, 4110, 8.285, 3.14, 3.07),
            new Gauge("12", 2.0525, 3.309, 6530, 5.211, 1.98, 1.93),
            new Gauge("10", 2.5882, 5.261, 10380, 3.277, 1.24, 1.21),
            new Gauge("8", 3.2636, 8.366, 16510, 2.061, .778, .764),
            new Gauge("6", 4.1154, 13.302, 26240, 1.296, .491, NONE),
            new Gauge("4", 5.1894, 21.151, 41740, .8152, .308, NONE),
            new Gauge("3", NONE, 26.67, 52620, NONE, .245, NONE),
            new Gauge("2", 6.5437, 33.631, 66360, .5127, .194, NONE),
            new Gauge("1", 7.3481, 42.408, 83690, .4066, .154, NONE),
            new Gauge("1/0", 8.2515, 53.475, 105600, .3224, .122, NONE),
            new Gauge("2/0", 9.2658, 67.431, 133100, .2557, .0967, NONE),
            new Gauge("3/0", 10.4049, 85.029, 167800, .2028, .0766, NONE),
            new Gauge("4/0", 11.6840, 107.219, 211600, .1608, .0608, NONE));

    /** mm2, ohm per km at 20 degC. */
    private static final double[][] CLASS_5 = {
        {.75, 26.0},
        {1, 19.5},
        {1.5, 13.3},
        {2.5, 7.98},
        {4, 4.95},
        {6, 3.30},
        {10, 1.91},
        {16, 1.21},
        {25, .780},
        {35, .554},
        {50, .386},
        {70, .272},
        {95, .206}
    };

    private static final double M_PER_KFT = 304.8;
    /** (pi / 4) of a thousandth of an inch squared. */
    private static final double MM2_PER_CIRCULAR_MIL = Math.PI / 4 * .0254 * .0254;
    /** 100 % IACS, ohm mm2 / m at 20 degC, and its rise per K. */
    private static final double IACS = 1 / 58.0;

    private static final double IACS_PER_K = .00393;

    private static ConductorSize size(String words) {
        return ConductorSize.named(words).orElseThrow();
    }

    @Test
    void theListsHoldTheSizesOfTheTables() {
        assertThat(ConductorSize.gauges())
                .extracting(ConductorSize::words)
                .containsExactlyElementsOf(
                        GAUGES.stream().map(row -> row.name() + " AWG").toList());
        assertThat(ConductorSize.metrics()).hasSize(CLASS_5.length);
        for (int i = 0; i < CLASS_5.length; i++) {
            assertThat(ConductorSize.metrics().get(i).areaMm2()).isEqualTo(CLASS_5[i][0]);
        }
        assertThat(ConductorSize.gauges()).noneMatch(ConductorSize::isMetric).isSorted();
        assertThat(ConductorSize.metrics()).allMatch(ConductorSize::isMetric).isSorted();
    }

    /** The table's circular mils are printed to ten at best, and from rounded diameters: a tenth of a percent. */
    @Test
    void geometryOfTheGauges() {
        for (Gauge row : GAUGES) {
            double areaMm2 = size(row.name() + " AWG").areaMm2();
            assertThat(areaMm2).as(row.name()).isCloseTo(row.areaMm2(), withinPercentage(.1));
            assertThat(areaMm2 / MM2_PER_CIRCULAR_MIL)
                    .as(row.name())
                    .isCloseTo(row.circularMils(), within(Math.max(5, .001 * row.circularMils())));
            if (!Double.isNaN(row.diameterMm())) {
                assertThat(Math.sqrt(areaMm2 / (Math.PI / 4))).as(row.name()).isCloseTo(row.diameterMm(), within(5e-5));
                assertThat(IACS / areaMm2 * 1000).as(row.name()).isCloseTo(row.solidOhmPerKm20(), withinPercentage(.1));
            }
        }
    }

    @Test
    void strandedCopperAt75DegC() {
        for (Gauge row : GAUGES) {
            assertThat(size(row.name() + " AWG").ohmPerM(75) * M_PER_KFT)
                    .as(row.name())
                    .isCloseTo(row.strandedOhmPerKft75(), within(1e-12));
        }
    }

    /** Table 8 against pure copper: strands take 2 % more way; without them it is the solid column. */
    @Test
    void theTableAgreesWithTheResistivityOfCopper() {
        for (Gauge row : GAUGES) {
            ConductorSize size = size(row.name() + " AWG");
            double solidOhmPerM = IACS * (1 + IACS_PER_K * 55) / size.areaMm2();
            assertThat(size.ohmPerM(75)).as(row.name()).isCloseTo(solidOhmPerM * 1.02, withinPercentage(.6));
            if (!Double.isNaN(row.solidOhmPerKft75())) {
                assertThat(solidOhmPerM * M_PER_KFT)
                        .as(row.name())
                        .isCloseTo(row.solidOhmPerKft75(), withinPercentage(.4));
            }
        }
    }

    /** Note to table 8, worked: 12 AWG at 25 degC. */
    @Test
    void gaugesAtAnotherTemperature() {
        assertThat(size("12 AWG").ohmPerM(25) * M_PER_KFT).isCloseTo(1.660, within(5e-4));
    }

    @Test
    void flexibleCopperAt20DegCAndWarm() {
        for (double[] row : CLASS_5) {
            assertThat(ConductorSize.metrics().stream()
                            .filter(size -> size.areaMm2() == row[0])
                            .findFirst()
                            .orElseThrow()
                            .ohmPerM(20))
                    .as("%s mm2", row[0])
                    .isCloseTo(row[1] / 1000, within(1e-12));
        }
        assertThat(size("6 mm2").ohmPerM(70) / size("6 mm2").ohmPerM(20)).isCloseTo(1.1965, within(5e-5));
    }

    @Test
    void thickerNeverHasMoreOhms() {
        for (List<ConductorSize> list : List.of(ConductorSize.gauges(), ConductorSize.metrics())) {
            for (double degC : new double[] {-40, 20, 75, 105}) {
                for (int i = 0; i + 1 < list.size(); i++) {
                    assertThat(list.get(i + 1).ohmPerM(degC))
                            .as(list.get(i + 1).words())
                            .isLessThan(list.get(i).ohmPerM(degC));
                }
            }
        }
    }

    /** Across the two lists that holds but for two: a metric size is a name, and class 5 may hold less copper. */
    @Test
    void twoMetricSizesMayHaveMoreOhmsThanAThinnerGauge() {
        List<String> pairs = new ArrayList<>();
        for (ConductorSize metric : ConductorSize.metrics()) {
            for (ConductorSize gauge : ConductorSize.gauges()) {
                if (gauge.compareTo(metric) < 0 && gauge.ohmPerM(75) < metric.ohmPerM(75)) {
                    pairs.add(metric + " > " + gauge);
                }
                // The other way round there is no exception.
                if (gauge.compareTo(metric) > 0) {
                    assertThat(gauge.ohmPerM(75)).as(gauge.words()).isLessThan(metric.ohmPerM(75));
                }
            }
        }
        assertThat(pairs).containsExactly("35 mm2 > 2 AWG", "70 mm2 > 2/0 AWG");
        assertThat(size("35 mm2").ohmPerM(75) / size("2 AWG").ohmPerM(75)).isBetween(1.05, 1.06);
        assertThat(size("70 mm2").ohmPerM(75) / size("2/0 AWG").ohmPerM(75)).isBetween(1.04, 1.05);
    }

    @Test
    void warmerNeverHasFewerOhms() {
        for (List<ConductorSize> list : List.of(ConductorSize.gauges(), ConductorSize.metrics())) {
            for (ConductorSize size : list) {
                for (double degC = -60; degC < 250; degC += 10) {
                    assertThat(size.ohmPerM(degC)).as(size.words()).isPositive().isLessThan(size.ohmPerM(degC + 10));
                }
            }
        }
        assertThatThrownBy(() -> size("6 mm2").ohmPerM(251)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void namesAreReadAsPeopleWriteThem() {
        for (List<ConductorSize> list : List.of(ConductorSize.gauges(), ConductorSize.metrics())) {
            for (ConductorSize size : list) {
                assertThat(ConductorSize.named(size.words())).contains(size);
                assertThat(size).hasToString(size.words());
            }
        }
        assertThat(ConductorSize.named(" 10awg ")).contains(size("10 AWG"));
        assertThat(ConductorSize.named("1/0 Awg")).contains(size("1/0 AWG"));
        assertThat(ConductorSize.named("6 mm\u00b2")).contains(size("6 mm2"));
        assertThat(ConductorSize.named("6.0MM2")).contains(size("6 mm2"));
        assertThat(ConductorSize.named(".75 mm2")).contains(size("0.75 mm2"));
        assertThat(ConductorSize.named("10 mm2")).contains(size("10 mm2")).isNotEqualTo(ConductorSize.named("10 AWG"));
    }

    /** A guess would be worse than a question: 10 AWG and 1/0 AWG are a factor of ten apart. */
    @Test
    void whatIsNoSizeIsNotGuessed() {
        for (String words : List.of(
                "", "10", "1 0 AWG", "0 AWG", "5 AWG", "7 mm2", "10 mm", "-6 mm2", "AWG", ". mm2", "6 mm2 x 2")) {
            assertThat(ConductorSize.named(words)).as(words).isEmpty();
        }
    }
}
