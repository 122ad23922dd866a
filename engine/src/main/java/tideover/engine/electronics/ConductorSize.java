package tideover.engine.electronics;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tideover.engine.quantity.Require;

/**
 * Sizes of stranded copper conductors, by American gauge and in square millimetres; ordered by area.
 *
 * <p>A gauge is geometry, {@code d = 0.127 mm 92^((36 - n) / 39)} of a solid wire of the same copper, 1/0 being 0 and 2/0
 * -1 (ASTM B258). Its ohms are those of NFPA 70 chapter 9, table 8, copper uncoated stranded at 75 degC, elsewhere
 * {@code R2 = R1 (1 + 0.00323 (T - 75))}. A metric size is a name: its ohms are the most that IEC 60228 allows class 5
 * (flexible, plain copper) at 20 degC, elsewhere {@code (1 + 0.00393 (T - 20))}, and the copper in it may weigh less than
 * its name says. So 35 mm2 may have more ohms than the thinner 2 AWG, and 70 mm2 more than 2/0 AWG.
 *
 * <p>Direct current, or alternating at house frequency where skin effect is small up to these sizes. Left out: tinned
 * copper (up to 3 % more), aluminium, joints. Both standards come from secondary sources: check the editions in force.
 */
public final class ConductorSize implements Comparable<ConductorSize> {
    /** Table 8 is printed in ohm per 1000 ft. */
    private static final double M_PER_KFT = 304.8;

    private static final double TABLE_8_DEG_C = 75;
    /** Of copper from 75 degC, note to table 8. */
    private static final double TABLE_8_PER_K = .00323;

    private static final double IEC_DEG_C = 20;
    /** Of copper from 20 degC. */
    private static final double IEC_PER_K = .00393;

    private static final double M_PER_KM = 1000;

    /** Name, number in the formula, table 8 ohm per 1000 ft at 75 degC. Rows 18 and 16 from memory, the others found printed. */
    private static final List<ConductorSize> GAUGES = List.of(
            gauge("18", 18, 7.95),
            gauge("16", 16, 4.99),
            gauge("14", 14, 3.14),
            gauge("12", 12, 1.98),
            gauge("10", 10, 1.24),
            gauge("8", 8, .778),
            gauge("6", 6, .491),
            gauge("4", 4, .308),
            gauge("3", 3, .245),
            gauge("2", 2, .194),
            gauge("1", 1, .154),
            gauge("1/0", 0, .122),
            gauge("2/0", -1, .0967),
            gauge("3/0", -2, .0766),
            gauge("4/0", -3, .0608));

    /** Name, mm2, class 5 most ohm per km at 20 degC. Rows 1 to 25 found printed, the others from memory. */
    private static final List<ConductorSize> METRICS = List.of(
            metric("0.75", .75, 26.0),
            metric("1", 1, 19.5),
            metric("1.5", 1.5, 13.3),
            metric("2.5", 2.5, 7.98),
            metric("4", 4, 4.95),
            metric("6", 6, 3.30),
            metric("10", 10, 1.91),
            metric("16", 16, 1.21),
            metric("25", 25, .780),
            metric("35", 35, .554),
            metric("50", 50, .386),
            metric("70", 70, .272),
            metric("95", 95, .206));

    /** No space within the number: "1 0 AWG" may mean ten or 1/0. */
    private static final Pattern NAME =
            Pattern.compile("(?:([0-9]{1,2}(?:/0)?)\\s*awg|([0-9]*\\.?[0-9]+)\\s*mm(?:2|\u00b2))");

    private final String words;
    private final boolean metric;
    private final double areaMm2;
    /** At the temperature of its table. */
    private final double tableOhmPerM;

    private ConductorSize(String words, boolean metric, double areaMm2, double tableOhmPerM) {
        this.words = words;
        this.metric = metric;
        this.areaMm2 = areaMm2;
        this.tableOhmPerM = tableOhmPerM;
    }

    private static ConductorSize gauge(String name, int number, double ohmPerKft) {
        double diameterMm = .127 * StrictMath.pow(92, (36 - number) / 39.0);
        return new ConductorSize(name + " AWG", false, Math.PI / 4 * diameterMm * diameterMm, ohmPerKft / M_PER_KFT);
    }

    private static ConductorSize metric(String name, double areaMm2, double ohmPerKm) {
        return new ConductorSize(name + " mm2", true, areaMm2, ohmPerKm / M_PER_KM);
    }

    /** Of "10 AWG", "1/0 awg", "6 mm2", "1.5mm\u00b2"; empty for what is no size of the two lists. */
    public static Optional<ConductorSize> named(String words) {
        Matcher name = NAME.matcher(words.strip().toLowerCase(Locale.ROOT));
        if (!name.matches()) {
            return Optional.empty();
        }
        String gauge = name.group(1);
        if (gauge != null) {
            return GAUGES.stream()
                    .filter(size -> size.words.equals(gauge + " AWG"))
                    .findFirst();
        }
        double areaMm2 = Double.parseDouble(name.group(2));
        return METRICS.stream().filter(size -> size.areaMm2 == areaMm2).findFirst();
    }

    /** 18 to 4/0, thinnest first. */
    public static List<ConductorSize> gauges() {
        return GAUGES;
    }

    /** 0.75 to 95 mm2, thinnest first. */
    public static List<ConductorSize> metrics() {
        return METRICS;
    }

    /** As {@link #named} reads it. */
    public String words() {
        return words;
    }

    public boolean isMetric() {
        return metric;
    }

    /** By geometry for a gauge; the nominal one for a metric size. */
    public double areaMm2() {
        return areaMm2;
    }

    /** Of one conductor. Copper's ohms are close to a straight line over the temperatures that insulation bears. */
    public double ohmPerM(double conductorDegC) {
        Require.within(-60, 250, "conductorDegC", conductorDegC, "degC");
        return tableOhmPerM
                * (metric
                        ? 1 + IEC_PER_K * (conductorDegC - IEC_DEG_C)
                        : 1 + TABLE_8_PER_K * (conductorDegC - TABLE_8_DEG_C));
    }

    /** By area; no two sizes share one, so this agrees with equals. */
    @Override
    public int compareTo(ConductorSize other) {
        return Double.compare(areaMm2, other.areaMm2);
    }

    @Override
    public String toString() {
        return words;
    }
}
