package tideover.engine.wiring;

import java.util.List;
import java.util.Optional;
import tideover.engine.electronics.ConductorSize;
import tideover.engine.quantity.Require;

/**
 * What a copper conductor may carry for hours, and so what it may be protected at: NFPA 70, table 310.16 (not more than
 * three current-carrying conductors in a raceway, cable or the earth, 30 degC around them), its factors for warmer places
 * and fuller bundles, the terminals' limit 110.14(C)(1) and the caps on small wires 240.4(D). Values from secondary sources;
 * check the edition in force, and the local code before it.
 *
 * <p>Editions to 2011 give 110 A for 3 AWG and 150 A for 1 AWG in the column of 90 degC; here stands the later table. The
 * much higher figures of boat practice are for short runs in free air and are not used.
 *
 * <p>A metric size is not in the table: it takes the row of the largest gauge whose area is not larger than its own.
 *
 * <p>Left out: the next standard rating up that 240.4(B) allows above a conductor's own value (so what is told here is on
 * the careful side), flexible cords (article 400), free air (310.17), sun on roofs, aluminium.
 */
public final class Ampacity {
    /** One row of table 310.16, A; NaN where it is blank. */
    private record Row(String gauge, double at60, double at75, double at90) {
        double at(int columnDegC) {
            return switch (column(columnDegC)) {
                case 0 -> at60;
                case 1 -> at75;
                default -> at90;
            };
        }
    }

    private static final double NONE = Double.NaN;

    /** Columns 60, 75, 90 degC. */
    private static final List<Row> TABLE_310_16 = List.of(
            new Row("18 AWG", NONE, NONE, 14),
            new Row("16 AWG", NONE, NONE, 18),
            new Row("14 AWG", 15, 20, 25),
            new Row("12 AWG", 20, 25, 30),
            new Row("10 AWG", 30, 35, 40),
            new Row("8 AWG", 40, 50, 55),
            new Row("6 AWG", 55, 65, 75),
            new Row("4 AWG", 70, 85, 95),
            new Row("3 AWG", 85, 100, 115),
            new Row("2 AWG", 95, 115, 130),
            new Row("1 AWG", 110, 130, 145),
            new Row("1/0 AWG", 125, 150, 170),
            new Row("2/0 AWG", 145, 175, 195),
            new Row("3/0 AWG", 165, 200, 225),
            new Row("4/0 AWG", 195, 230, 260));

    /** Warmest whole degree of each band of table 310.15(B)(1); the first band has no lower end. */
    private static final int[] UP_TO_DEG_C = {10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85};

    /**
     * Its columns 60, 75, 90 degC, each as far as it goes. Found printed up to 70 degC; the last three of 90 degC are borne
     * out by the formula alone that gives all the others, {@code sqrt((Tc - Ta) / (Tc - 30))}. One published file has the
     * factors of 75 degC in the row of 60 degC, which would let a wire carry too much.
     */
    private static final double[][] AMBIENT_FACTOR = {
        {1.29, 1.22, 1.15, 1.08, 1.00, .91, .82, .71, .58, .41},
        {1.20, 1.15, 1.11, 1.05, 1.00, .94, .88, .82, .75, .67, .58, .47, .33},
        {1.15, 1.12, 1.08, 1.04, 1.00, .96, .91, .87, .82, .76, .71, .65, .58, .50, .41, .29}
    };

    /** Table 310.15(C)(1): most conductors of each band, the last without end. */
    private static final int[] UP_TO_CONDUCTORS = {3, 6, 9, 20, 30, 40, Integer.MAX_VALUE};

    private static final double[] BUNDLE_FACTOR = {1, .80, .70, .50, .45, .40, .35};

    /** 110.14(C)(1), from memory: terminals of circuits up to this count as good for 60 degC only. */
    private static final double COOL_TERMINALS_TO_A = 100;

    private Ampacity() {}

    private static int column(int columnDegC) {
        return switch (columnDegC) {
            case 60 -> 0;
            case 75 -> 1;
            case 90 -> 2;
            default ->
                throw new IllegalArgumentException("columnDegC is " + columnDegC + " degC, expected 60, 75 or 90 degC");
        };
    }

    /** The column that what bears {@code ratedDegC} may use: rounded down to 60, 75 or 90; 0 below 60. */
    static int columnFor(double ratedDegC) {
        return ratedDegC >= 90 ? 90 : ratedDegC >= 75 ? 75 : ratedDegC >= 60 ? 60 : 0;
    }

    /** Its own row, or that of the largest gauge not thicker; empty for what is thinner than all. */
    private static Optional<Row> row(ConductorSize size) {
        List<ConductorSize> gauges = ConductorSize.gauges();
        for (int i = gauges.size() - 1; i >= 0; i--) {
            ConductorSize gauge = gauges.get(i);
            if (gauge.compareTo(size) <= 0) {
                return TABLE_310_16.stream()
                        .filter(row -> row.gauge().equals(gauge.words()))
                        .findFirst();
            }
        }
        return Optional.empty();
    }

    /**
     * Table 310.16, A; NaN where it has no value.
     *
     * @param columnDegC 60, 75 or 90
     */
    public static double columnA(ConductorSize size, int columnDegC) {
        column(columnDegC);
        return row(size).map(row -> row.at(columnDegC)).orElse(NONE);
    }

    /**
     * Table 310.15(B)(1). It is of whole degrees; what lies between two bands takes the warmer one. NaN where it is too warm
     * for the column, and the wire may carry nothing.
     *
     * @param columnDegC 60, 75 or 90
     */
    public static double ambientFactor(int columnDegC, double ambientDegC) {
        double[] factors = AMBIENT_FACTOR[column(columnDegC)];
        Require.within(-100, 200, "ambientDegC", ambientDegC, "degC");
        for (int band = 0; band < factors.length; band++) {
            if (ambientDegC <= UP_TO_DEG_C[band]) {
                return factors[band];
            }
        }
        return NONE;
    }

    /**
     * Table 310.15(C)(1).
     *
     * @param currentCarrying conductors that carry current, side by side or in one raceway or cable
     */
    public static double bundleFactor(int currentCarrying) {
        Require.within(1, Integer.MAX_VALUE, "currentCarrying", currentCarrying);
        int band = 0;
        while (currentCarrying > UP_TO_CONDUCTORS[band]) {
            band++;
        }
        return BUNDLE_FACTOR[band];
    }

    /** 110.14(C)(1), from memory: the column for a circuit's terminals, degC, unless the equipment is marked otherwise. */
    public static int terminalColumn(double circuitA) {
        Require.atLeast(0, "circuitA", circuitA, "A");
        return circuitA <= COOL_TERMINALS_TO_A ? 60 : 75;
    }

    /**
     * 240.4(D), from memory: the most that a small wire may be protected at whatever its column says, A. Infinite for 8 AWG
     * and thicker, NaN for what is thinner than 18 AWG.
     */
    public static double smallWireCapA(ConductorSize size) {
        return row(size)
                .map(row -> switch (row.gauge()) {
                    case "18 AWG" -> 7.0;
                    case "16 AWG" -> 10.0;
                    case "14 AWG" -> 15.0;
                    case "12 AWG" -> 20.0;
                    case "10 AWG" -> 30.0;
                    default -> Double.POSITIVE_INFINITY;
                })
                .orElse(NONE);
    }

    /**
     * What a wire may be protected at, A: the least of its insulation's column with both factors, its terminals' column
     * without them, and the cap on small wires. 0 where a table has no value. Table 310.16 has none for the terminals of 18
     * and 16 AWG; there the cap, which is lower anyway, stands alone.
     *
     * @param insulationDegC     what its insulation bears; above 90 counts as 90, below 60 is not in the table
     * @param terminalColumnDegC 60, 75 or 90: the lower of its two ends
     */
    public static double allowedA(
            ConductorSize size,
            double insulationDegC,
            double ambientDegC,
            int currentCarrying,
            int terminalColumnDegC) {
        double bundle = bundleFactor(currentCarrying);
        double terminalA = columnA(size, terminalColumnDegC);
        int column = columnFor(insulationDegC);
        if (column == 0) {
            return 0;
        }
        double wireA = columnA(size, column) * ambientFactor(column, ambientDegC) * bundle;
        if (Double.isNaN(wireA)) {
            return 0;
        }
        double cappedA = Math.min(wireA, smallWireCapA(size));
        return Double.isNaN(terminalA) ? cappedA : Math.min(cappedA, terminalA);
    }
}
