package tideover.engine.cold;

import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.Require;
import tideover.engine.quantity.Units;

/**
 * The most that a cold box sold in the United States may use in a year, by product class: 10 CFR 430.32(a), lines
 * {@code perFt3 * adjusted volume + base}, in kWh.
 *
 * <p><b>These are maxima by a test in a room of 32.2 degC with the door shut, not what anybody measured at home.</b> A cool
 * room takes less, an opened door and warm food more; a box may be built better than its limit. They stand in where neither
 * the label nor a meter reading is at hand. Check the edition in force.
 *
 * <p>Built-in boxes, those with an ice maker, and freezers beside or below the fresh food have other lines, most of them
 * higher: take the figure of the box's own label for those.
 */
public enum LabelStandard {
    CLASS_1("1", Line.memory(8.82, 248.4), Line.memory(7.99, 225.0), null),
    CLASS_1A("1A", null, Line.memory(6.79, 193.6), null),
    CLASS_3("3", Line.read(9.80, 276.0), Line.read(8.07, 233.7), Line.read(6.86, 198.6)),
    CLASS_3A("3A", null, Line.memory(7.07, 201.6), null),
    CLASS_8("8", Line.memory(7.55, 258.3), Line.memory(5.57, 193.7), Line.read(5.57, 193.7)),
    CLASS_9("9", Line.memory(12.43, 326.1), Line.memory(8.62, 228.3), null),
    CLASS_10("10", Line.memory(9.88, 143.7), Line.memory(7.29, 107.8), Line.read(7.29, 107.8)),
    CLASS_10A("10A", null, Line.memory(10.24, 148.1), Line.read(10.24, 148.1)),
    CLASS_11("11", Line.memory(10.70, 299.0), Line.memory(9.03, 252.3), Line.read(7.68, 214.5)),
    CLASS_11A("11A", null, Line.memory(7.84, 219.1), Line.read(6.66, 186.2)),
    CLASS_13("13", Line.memory(12.70, 355.0), Line.memory(11.80, 339.2), null),
    CLASS_13A("13A", null, Line.memory(9.17, 259.3), null),
    CLASS_16("16", Line.memory(9.78, 250.8), Line.memory(8.65, 225.7), Line.read(7.35, 191.8)),
    CLASS_17("17", Line.memory(11.40, 391.0), Line.memory(10.17, 351.9), Line.read(9.15, 316.7)),
    CLASS_18("18", Line.memory(10.45, 152.0), Line.memory(9.25, 136.8), Line.read(7.86, 107.8));

    /** Which edition of the table a box was made under. */
    public enum Rule {
        /** Boxes made from July 2001 on. */
        OF_2001,
        /** Made from September 2014 on. */
        OF_2014,
        /** Made from January 2029 on, or 2030 in some classes. */
        OF_2029
    }

    /**
     * One line of the table.
     *
     * @param fromMemory whether it could not be confirmed
     */
    private record Line(double perFt3, double base, boolean fromMemory) {
        static Line read(double perFt3, double base) {
            return new Line(perFt3, base, false);
        }

        static Line memory(double perFt3, double base) {
            return new Line(perFt3, base, true);
        }
    }

    /**
     * The limit of one box.
     *
     * @param productClass the line it comes from
     * @param kWhPerYear   whole
     */
    public record Limit(LabelStandard productClass, double kWhPerYear) {}

    /**
     * From memory, not applied: the test of freezers is said to multiply what was measured by so much "to adjust for average
     * household usage", 10 CFR 430 subpart B, appendix B. Then a box would use more in the test room than its label tells.
     */
    static final double CHEST_HOUSEHOLD_SHARE = 0.7;

    /** Likewise, of uprights. */
    static final double UPRIGHT_HOUSEHOLD_SHARE = 0.85;

    /** The kilowatt-hours come from decimals; an exact half must not be lost to their binary form. */
    private static final double HALF_UP = 0.5 + 1e-9;

    private final String number;
    private final @Nullable Line of2001;
    private final @Nullable Line of2014;
    private final @Nullable Line of2029;

    LabelStandard(String number, @Nullable Line of2001, @Nullable Line of2014, @Nullable Line of2029) {
        this.number = number;
        this.of2001 = of2001;
        this.of2014 = of2014;
        this.of2029 = of2029;
    }

    /** As the regulation numbers it. */
    public String number() {
        return number;
    }

    /**
     * The class of a box. Medicine fridges for the home count as refrigerators without a freezer part; what is sold to
     * clinics is under no such rule.
     *
     * @param selfDefrosting frost-free, as against defrosted by hand
     * @param compact        below 7.75 ft3 (220 L), older rules also at most 36 in high (from memory)
     * @param withFreezer    whether a refrigerator has a freezer part, above its fresh food
     */
    public static LabelStandard of(BoxKind kind, boolean selfDefrosting, boolean compact, boolean withFreezer) {
        return switch (kind) {
            case CHEST_FREEZER -> compact ? CLASS_18 : selfDefrosting ? CLASS_10A : CLASS_10;
            case UPRIGHT_FREEZER ->
                compact ? (selfDefrosting ? CLASS_17 : CLASS_16) : selfDefrosting ? CLASS_9 : CLASS_8;
            case REFRIGERATOR, MEDICINE_FRIDGE -> refrigerator(selfDefrosting, compact, withFreezer);
            case COOLER -> throw noLabel();
        };
    }

    private static LabelStandard refrigerator(boolean selfDefrosting, boolean compact, boolean withFreezer) {
        if (withFreezer) {
            return compact ? (selfDefrosting ? CLASS_13 : CLASS_11) : selfDefrosting ? CLASS_3 : CLASS_1;
        }
        return compact ? (selfDefrosting ? CLASS_13A : CLASS_11A) : selfDefrosting ? CLASS_3A : CLASS_1A;
    }

    /**
     * The limit of a box by the rule of 2014: the one most boxes in use were made under, and never below that of 2029.
     *
     * @param litres       of its main part: all of a freezer, the fresh food's part of a refrigerator
     * @param freezerPartL of a refrigerator, 0 where it has none
     */
    public static Limit of(BoxKind kind, boolean selfDefrosting, boolean compact, double litres, double freezerPartL) {
        LabelStandard productClass = of(kind, selfDefrosting, compact, freezerPartL > 0);
        return new Limit(productClass, productClass.kWhPerYear(Rule.OF_2014, litres, freezerPartL));
    }

    /** Whether a rule has a line of this class here. */
    public boolean has(Rule rule) {
        return line(rule) != null;
    }

    /** Whether that line is from memory. */
    public boolean fromMemory(Rule rule) {
        return theLine(rule).fromMemory();
    }

    /**
     * Adjusted volume in ft3: frozen litres count by how much colder than the test room they are kept than fresh food,
     * (90 - 0)/(90 - 39) degF since 2014; before, (90 - 0)/(90 - 38) in freezers (from memory) and (90 - 5)/(90 - 38) in the
     * freezer part of a refrigerator.
     *
     * @param litres       as in {@link #of(BoxKind, boolean, boolean, double, double)}
     * @param freezerPartL likewise
     */
    public double adjustedFt3(Rule rule, double litres, double freezerPartL) {
        Require.above(0, "litres", litres, "L");
        Require.atLeast(0, "freezerPartL", freezerPartL, "L");
        boolean older = rule == Rule.OF_2001;
        if (isFreezer()) {
            return (older ? 1.73 : 1.76) * Units.cubicFeet(litres);
        }
        return Units.cubicFeet(litres) + (older ? 1.63 : 1.76) * Units.cubicFeet(freezerPartL);
    }

    /** The limit rounded to whole kWh, halves up, as the regulation wants it; refused where the rule's line is not known. */
    public double kWhPerYear(Rule rule, double litres, double freezerPartL) {
        return rounded(exactKwh(rule, adjustedFt3(rule, litres, freezerPartL)));
    }

    double exactKwh(Rule rule, double adjustedFt3) {
        Line line = theLine(rule);
        return line.perFt3() * adjustedFt3 + line.base();
    }

    static double rounded(double kWh) {
        return StrictMath.floor(kWh + HALF_UP);
    }

    /** What the test keeps inside: 0 degF in freezers, 39 degF where the fresh food lies (from memory). */
    public static double insideDegC(BoxKind kind) {
        if (kind == BoxKind.COOLER) {
            throw noLabel();
        }
        return Units.degC(kind.freezes() ? 0 : 39);
    }

    /**
     * The walls of a box known by its label may let through so many times what the label alone tells: the upper end of the
     * doubt. Of freezers what {@link #CHEST_HOUSEHOLD_SHARE} would make of them, of others common practice, no source.
     */
    public static double wallsMostTimes(BoxKind kind) {
        return switch (kind) {
            case CHEST_FREEZER -> 1 / CHEST_HOUSEHOLD_SHARE;
            case UPRIGHT_FREEZER -> 1 / UPRIGHT_HOUSEHOLD_SHARE;
            default -> 1.3;
        };
    }

    private static IllegalArgumentException noLabel() {
        return new IllegalArgumentException("a cooler has no energy label");
    }

    private boolean isFreezer() {
        return switch (this) {
            case CLASS_8, CLASS_9, CLASS_10, CLASS_10A, CLASS_16, CLASS_17, CLASS_18 -> true;
            default -> false;
        };
    }

    private Line theLine(Rule rule) {
        Line line = line(rule);
        if (line == null) {
            throw new IllegalArgumentException("class " + number + " has no known line " + rule);
        }
        return line;
    }

    private @Nullable Line line(Rule rule) {
        return switch (rule) {
            case OF_2001 -> of2001;
            case OF_2014 -> of2014;
            case OF_2029 -> of2029;
        };
    }
}
