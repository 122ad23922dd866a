package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tideover.engine.electronics.ConductorSize;

/**
 * NFPA 70 as found printed at second hand: tables 310.16, 310.15(B)(1), 310.15(C)(1); 240.4(D) and 110.14(C)(1) from memory.
 * Check the edition in force.
 */
class AmpacityPublishedTest {
    private static final int[] COLUMNS = {60, 75, 90};
    private static final double NONE = Double.NaN;
    private static final double NO_CAP = Double.POSITIVE_INFINITY;

    /** Table 310.16 (60, 75, 90 degC) and 240.4(D), A. */
    private record Row(String size, double at60, double at75, double at90, double cap) {
        double at(int column) {
            return new double[] {at60, at75, at90}[column];
        }
    }

    private static final List<Row> GAUGES = List.of(
            new Row("18 AWG", NONE, NONE, 14, 7),
            new Row("16 AWG", NONE, NONE, 18, 10),
            new Row("14 AWG", 15, 20, 25, 15),
            new Row("12 AWG", 20, 25, 30, 20),
            new Row("10 AWG", 30, 35, 40, 30),
            new Row("8 AWG", 40, 50, 55, NO_CAP),
            new Row("6 AWG", 55, 65, 75, NO_CAP),
            new Row("4 AWG", 70, 85, 95, NO_CAP),
            new Row("3 AWG", 85, 100, 115, NO_CAP),
            new Row("2 AWG", 95, 115, 130, NO_CAP),
            new Row("1 AWG", 110, 130, 145, NO_CAP),
            new Row("1/0 AWG", 125, 150, 170, NO_CAP),
            new Row("2/0 AWG", 145, 175, 195, NO_CAP),
            new Row("3/0 AWG", 165, 200, 225, NO_CAP),
            new Row("4/0 AWG", 195, 230, 260, NO_CAP));

    /** The largest gauge not thicker, looked up by hand among the areas. */
    private static final String[][] METRIC_AS_GAUGE = {
        {"1 mm2", "18 AWG"}, {"1.5 mm2", "16 AWG"}, {"2.5 mm2", "14 AWG"}, {"4 mm2", "12 AWG"}, {"6 mm2", "10 AWG"},
        {"10 mm2", "8 AWG"}, {"16 mm2", "6 AWG"}, {"25 mm2", "4 AWG"}, {"35 mm2", "2 AWG"}, {"50 mm2", "1 AWG"},
        {"70 mm2", "2/0 AWG"}, {"95 mm2", "3/0 AWG"}
    };

    /** Table 310.15(B)(1): from, to (degC; the first row from below), factors of 60, 75, 90 degC. */
    private static final double[][] AMBIENT = {
        {-40, 10, 1.29, 1.20, 1.15},
        {11, 15, 1.22, 1.15, 1.12},
        {16, 20, 1.15, 1.11, 1.08},
        {21, 25, 1.08, 1.05, 1.04},
        {26, 30, 1.00, 1.00, 1.00},
        {31, 35, .91, .94, .96},
        {36, 40, .82, .88, .91},
        {41, 45, .71, .82, .87},
        {46, 50, .58, .75, .82},
        {51, 55, .41, .67, .76},
        {56, 60, NONE, .58, .71},
        {61, 65, NONE, .47, .65},
        {66, 70, NONE, .33, .58},
        {71, 75, NONE, NONE, .50},
        {76, 80, NONE, NONE, .41},
        {81, 85, NONE, NONE, .29},
        {86, 90, NONE, NONE, NONE},
    };

    // Double.valueOf below: boxed, NaN equals NaN.

    private static ConductorSize size(String words) {
        return ConductorSize.named(words).orElseThrow();
    }

    private static List<ConductorSize> allByArea() {
        return Stream.concat(ConductorSize.gauges().stream(), ConductorSize.metrics().stream())
                .sorted()
                .toList();
    }

    @Test
    void theWholeOfTable310_16() {
        assertThat(GAUGES).hasSameSizeAs(ConductorSize.gauges());
        for (Row row : GAUGES) {
            for (int column = 0; column < COLUMNS.length; column++) {
                assertThat(Ampacity.columnA(size(row.size()), COLUMNS[column]))
                        .as("%s at %d", row.size(), COLUMNS[column])
                        .isEqualTo(Double.valueOf(row.at(column)));
            }
            assertThat(Ampacity.smallWireCapA(size(row.size()))).as(row.size()).isEqualTo(row.cap());
        }
    }

    /** Editions to 2011 had 110 and 150 A here, and one current source still mixes them in. */
    @Test
    void theOlderEditionIsNotMixedIn() {
        assertThat(Ampacity.columnA(size("3 AWG"), 90)).isEqualTo(115);
        assertThat(Ampacity.columnA(size("1 AWG"), 90)).isEqualTo(145);
    }

    @Test
    void aMetricSizeTakesTheLargestGaugeNotThicker() {
        for (String[] pair : METRIC_AS_GAUGE) {
            for (int column : COLUMNS) {
                assertThat(Ampacity.columnA(size(pair[0]), column))
                        .as("%s at %d", pair[0], column)
                        .isEqualTo(Double.valueOf(Ampacity.columnA(size(pair[1]), column)));
            }
            assertThat(Ampacity.smallWireCapA(size(pair[0])))
                    .as(pair[0])
                    .isEqualTo(Ampacity.smallWireCapA(size(pair[1])));
        }
        assertThat(METRIC_AS_GAUGE.length + 1).isEqualTo(ConductorSize.metrics().size());
    }

    @Test
    void thinnerThanTheThinnestCarriesNothing() {
        ConductorSize thin = size("0.75 mm2");
        assertThat(Ampacity.columnA(thin, 90)).isNaN();
        assertThat(Ampacity.smallWireCapA(thin)).isNaN();
        assertThat(Ampacity.allowedA(thin, 90, 30, 2, 75)).isZero();
    }

    @Test
    void bothEdgesOfEveryBand() {
        for (double[] band : AMBIENT) {
            for (int column = 0; column < COLUMNS.length; column++) {
                for (int edge = 0; edge < 2; edge++) {
                    assertThat(Ampacity.ambientFactor(COLUMNS[column], band[edge]))
                            .as("%d at %.0f degC", COLUMNS[column], band[edge])
                            .isEqualTo(Double.valueOf(band[2 + column]));
                }
            }
        }
    }

    /** The table is of whole degrees; the safe side lies warmer. */
    @Test
    void betweenTwoBandsTheWarmerOneCounts() {
        for (int i = 0; i + 1 < AMBIENT.length; i++) {
            double between = AMBIENT[i][1] + .5;
            for (int column = 0; column < COLUMNS.length; column++) {
                assertThat(Ampacity.ambientFactor(COLUMNS[column], between))
                        .as("%d at %.1f degC", COLUMNS[column], between)
                        .isEqualTo(Double.valueOf(AMBIENT[i + 1][2 + column]));
            }
        }
    }

    /** The heat that may flow is as the warmth to spare: every factor again, to its two digits, at its band's warm end. */
    @Test
    void theFactorsFollowFromTheColumnsOwnTemperature() {
        int checked = 0;
        for (double[] band : AMBIENT) {
            for (int column : COLUMNS) {
                double factor = Ampacity.ambientFactor(column, band[1]);
                if (!Double.isNaN(factor)) {
                    assertThat(factor)
                            .as("%d at %.0f degC", column, band[1])
                            .isCloseTo(Math.sqrt((column - band[1]) / (column - 30.0)), within(.005));
                    checked++;
                }
            }
        }
        assertThat(checked).isEqualTo(10 + 13 + 16);
    }

    /** One published file has the factors of 75 degC in the row of 60 degC. */
    @Test
    void theRowsOf60And75AreNotMixedUp() {
        assertThat(Ampacity.ambientFactor(60, 50)).isEqualTo(.58).isNotEqualTo(Ampacity.ambientFactor(75, 50));
        assertThat(Ampacity.ambientFactor(60, 60)).isNaN();
        for (double degC = 31; degC <= 55; degC++) {
            assertThat(Ampacity.ambientFactor(60, degC)).isLessThan(Ampacity.ambientFactor(75, degC));
            assertThat(Ampacity.ambientFactor(75, degC)).isLessThan(Ampacity.ambientFactor(90, degC));
        }
    }

    /** Table 310.15(C)(1): from, to, factor. */
    @Test
    void bundles() {
        double[][] table = {
            {1, 3, 1}, {4, 6, .80}, {7, 9, .70}, {10, 20, .50}, {21, 30, .45}, {31, 40, .40}, {41, 1000, .35}
        };
        for (double[] band : table) {
            assertThat(Ampacity.bundleFactor((int) band[0])).as("%.0f", band[0]).isEqualTo(band[2]);
            assertThat(Ampacity.bundleFactor((int) band[1])).as("%.0f", band[1]).isEqualTo(band[2]);
        }
        assertThatThrownBy(() -> Ampacity.bundleFactor(0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** 110.14(C)(1), from memory. */
    @Test
    void terminals() {
        assertThat(Ampacity.terminalColumn(15)).isEqualTo(60);
        assertThat(Ampacity.terminalColumn(100)).isEqualTo(60);
        assertThat(Ampacity.terminalColumn(100.1)).isEqualTo(75);
    }

    /** 8 AWG of 90 degC at 50 degC: 55 x .82 = 45.1 A; its terminals may ask for less. */
    @Test
    void workedEightGaugeInTheHeat() {
        assertThat(Ampacity.allowedA(size("8 AWG"), 90, 50, 3, 75)).isCloseTo(45.1, within(1e-9));
        assertThat(Ampacity.allowedA(size("8 AWG"), 90, 50, 3, 60)).isEqualTo(40);
    }

    /** 10 AWG of 90 degC at 58 degC: 40 x .71 = 28.4 A; at 30 degC 40 A, but the terminals' 35 and the cap of 30 come first. */
    @Test
    void workedTenGaugeOnARoof() {
        assertThat(Ampacity.allowedA(size("10 AWG"), 90, 58, 3, 75)).isCloseTo(28.4, within(1e-9));
        assertThat(Ampacity.allowedA(size("10 AWG"), 90, 30, 3, 75)).isEqualTo(30);
        assertThat(Ampacity.columnA(size("10 AWG"), 75)).isEqualTo(35);
    }

    /** NFPA 70 690.8 and 690.9(B), worked: 9.5 A of short-circuit current. */
    @Test
    void workedPanelCircuit() {
        double currentA = 1.25 * 9.5;
        assertThat(currentA).isCloseTo(11.875, within(1e-9));
        assertThat(1.25 * currentA).isCloseTo(14.844, within(5e-4));
        double fuseA = StandardRatings.atLeastA(1.25 * currentA);
        assertThat(fuseA).isEqualTo(15);
        assertThat(Ampacity.columnA(size("14 AWG"), 75)).isEqualTo(20);
        assertThat(Ampacity.allowedA(size("14 AWG"), 75, 30, 2, 75)).isEqualTo(fuseA);
    }

    @Test
    void insulationIsRoundedDownToAColumn() {
        ConductorSize six = size("6 AWG");
        assertThat(Ampacity.allowedA(six, 70, 30, 3, 75)).isEqualTo(55);
        assertThat(Ampacity.allowedA(six, 75, 30, 3, 90)).isEqualTo(65);
        assertThat(Ampacity.allowedA(six, 105, 30, 3, 90))
                .isEqualTo(Ampacity.allowedA(six, 90, 30, 3, 90))
                .isEqualTo(75);
        assertThat(Ampacity.allowedA(six, 59, 30, 3, 75)).isZero();
    }

    @Test
    void cordWiresAreHeldByTheirCap() {
        assertThat(Ampacity.allowedA(size("18 AWG"), 90, 30, 3, 60)).isEqualTo(7);
        assertThat(Ampacity.allowedA(size("16 AWG"), 105, 30, 3, 75)).isEqualTo(10);
        assertThat(Ampacity.allowedA(size("16 AWG"), 90, 70, 7, 75)).isCloseTo(18 * .58 * .70, within(1e-9));
        assertThat(Ampacity.allowedA(size("16 AWG"), 75, 30, 3, 60)).isZero();
    }

    @Test
    void tooWarmCarriesNothing() {
        assertThat(Ampacity.allowedA(size("4/0 AWG"), 60, 56, 2, 75)).isZero();
        assertThat(Ampacity.allowedA(size("4/0 AWG"), 90, 86, 2, 75)).isZero();
    }

    /** Cold air lifts the wire's own value and never the terminals'. */
    @Test
    void coldNeverLiftsTheTerminals() {
        assertThat(Ampacity.allowedA(size("4 AWG"), 90, -20, 2, 75)).isEqualTo(85);
        assertThat(Ampacity.allowedA(size("4 AWG"), 75, -20, 2, 90)).isEqualTo(95);
    }

    /** All sizes of both lists in one order, through all columns, places and bundles. */
    @Test
    void thickerBetterInsulatedCoolerAndLooserNeverCarriesLess() {
        for (int column : COLUMNS) {
            for (double ambientDegC = -10; ambientDegC <= 90; ambientDegC += 5) {
                for (int bundle : new int[] {2, 4, 9, 25, 50}) {
                    for (double insulationDegC : new double[] {60, 75, 90}) {
                        double thinnerA = 0;
                        for (ConductorSize size : allByArea()) {
                            double allowedA = Ampacity.allowedA(size, insulationDegC, ambientDegC, bundle, column);
                            assertThat(allowedA)
                                    .as("%s, %.0f degC in %.0f degC, %d", size, insulationDegC, ambientDegC, bundle)
                                    .isGreaterThanOrEqualTo(thinnerA)
                                    .isGreaterThanOrEqualTo(
                                            Ampacity.allowedA(size, insulationDegC - 15, ambientDegC, bundle, column))
                                    .isGreaterThanOrEqualTo(
                                            Ampacity.allowedA(size, insulationDegC, ambientDegC + 5, bundle, column))
                                    .isGreaterThanOrEqualTo(
                                            Ampacity.allowedA(size, insulationDegC, ambientDegC, bundle + 3, column));
                            thinnerA = allowedA;
                        }
                    }
                }
            }
        }
    }

    @Test
    void aMetricSizeNeverCarriesMoreThanTheNextGauge() {
        for (ConductorSize metric : ConductorSize.metrics()) {
            ConductorSize next = ConductorSize.gauges().stream()
                    .filter(gauge -> gauge.compareTo(metric) > 0)
                    .findFirst()
                    .orElseThrow();
            assertThat(Ampacity.allowedA(metric, 90, 30, 2, 75))
                    .as(metric.words())
                    .isLessThan(Ampacity.allowedA(next, 90, 30, 2, 75));
        }
    }

    @Test
    void onlyTheColumnsOfTheTableAreAskedFor() {
        assertThatThrownBy(() -> Ampacity.columnA(size("6 AWG"), 70)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Ampacity.columnA(size("0.75 mm2"), 105)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Ampacity.ambientFactor(105, 30)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Ampacity.ambientFactor(60, NONE)).isInstanceOf(IllegalArgumentException.class);
    }
}
