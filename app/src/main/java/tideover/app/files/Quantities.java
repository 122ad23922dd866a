package tideover.app.files;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.IncommensurableException;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/**
 * Figures with their unit, as people write them ({@code 25 lb}, {@code -5 degF}, {@code 1.2 kWh}), turned into the one
 * unit that the engine wants. The only place that reads foot and pound; the factors are the units
 * library's. That library is woken only for a figure that needs converting.
 */
final class Quantities {
    /** What kind of figure is wanted, and the units it may be written in. The first one is the engine's. */
    enum Measure {
        POWER("a power", "120 W", "W", "kW"),
        APPARENT_POWER("volt-amperes", "1200 VA", "VA", "kVA"),
        ENERGY("an energy", "1200 Wh", "Wh", "kWh", "kJ", "MJ"),
        MASS("a mass", "12 kg", "kg", "g", "lb", "oz"),
        LENGTH("a length", "4 m", "m", "cm", "mm", "km", "ft", "in", "yd"),
        ANGLE("an angle", "60 deg", "deg", "rad"),
        TEMPERATURE("a temperature", "-5 degC", "degC", "degF", "K"),
        VOLUME("a volume", "198 L", "L", "gal", "ft3"),
        FLOW("a flow", "6000 L/h", "L/h", "L/min", "gal/h", "gal/min"),
        ENERGY_OF_A_DAY("the energy of a day", "0.8 kWh", "kWh", "Wh", "kWh/day"),
        ENERGY_OF_A_YEAR("the energy of a year", "220 kWh", "kWh", "kWh/year"),
        HEAT_FLOW("heat for each kelvin", "1.2 W/K", "W/K"),
        TIME("a time", "72 h", "h", "min", "s", "d"),
        BRIDGE("a time", "30 s", "s", "min", "h", "d"),
        MOMENT("a moment", "0.4 s", "s", "min"),
        PERCENT("a percentage", "85 %", "%"),
        VOLTAGE("a voltage", "12 V", "V", "mV", "kV"),
        CURRENT("a current", "10 A", "A", "mA"),
        FREQUENCY("a frequency", "60 Hz", "Hz");

        private final String words;
        private final String example;

        @SuppressWarnings("ImmutableEnumChecker") // made by List.of, so it is
        private final List<String> units;

        Measure(String words, String example, String... units) {
            this.words = words;
            this.example = example;
            this.units = List.of(units);
        }

        /** The engine's unit, as people write it. */
        String unit() {
            return units.get(0);
        }

        /** Such as "a power, such as 120 W". */
        String expected() {
            return words + ", such as " + example;
        }

        String words() {
            return words;
        }
    }

    /**
     * What a text turned out to be: a value in the engine's unit and the text put tidily, or what was wrong with it.
     *
     * @param value      in the engine's unit; NaN where something is wrong
     * @param shown      such as "25 lb"
     * @param suggestion what to write instead; empty where nothing can be guessed
     */
    record Outcome(double value, String shown, @Nullable String expected, String suggestion) {
        boolean wrong() {
            return expected != null;
        }
    }

    private static final Pattern NUMBER_THEN_UNIT =
            Pattern.compile("([+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+))\\s*(.*)");
    private static final Pattern RANGE =
            Pattern.compile("([0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)([^0-9]*?)\\s*(?:-|\u2013|\u2014|\\bto\\b)\\s*"
                    + "([0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(.*)");
    private static final Pattern COMMA_NUMBER = Pattern.compile("([+-]?[0-9]+),([0-9]+)(.*)");
    private static final Pattern THOUSANDS =
            Pattern.compile("([+-]?[0-9]{1,3}(?:[,' ][0-9]{3})+(?:\\.[0-9]+)?)(\\D.*)?");
    private static final Pattern POWER_OF_TEN = Pattern.compile("[+-]?[0-9.]+[eE][+-]?[0-9]+.*");
    private static final int MOST_DIGITS = 30;

    /** Longer than any figure with its unit; the patterns above would take long over a long text. */
    private static final int LONGEST = 200;

    /** Other ways people write a unit; what a unit means is decided in one place, {@link #library}. */
    private static final Map<String, String> SPELT = spellings();

    private Quantities() {}

    /**
     * The two ends of a range, {@code 30-60 W} or {@code 30 W to 60 W}, each with its unit; null where the text is none.
     */
    static @Nullable List<String> ends(String typed) {
        Matcher match = RANGE.matcher(tidy(typed));
        if (isLong(typed) || !match.matches()) {
            return null;
        }
        String unit = match.group(4).strip();
        String first = match.group(2).strip();
        return List.of(match.group(1) + " " + (first.isEmpty() ? unit : first), match.group(3) + " " + unit);
    }

    /** Reads a figure that must carry its unit. */
    static Outcome read(String typed, Measure measure) {
        if (isLong(typed)) {
            return wrong(measure.expected(), "");
        }
        String text = tidy(typed);
        Matcher match = NUMBER_THEN_UNIT.matcher(text);
        String digits = match.matches() ? match.group(1) : "";
        String unit = match.matches() ? match.group(2) : "";
        String known = SPELT.getOrDefault(unit, unit);
        if (!digits.isEmpty() && digits.length() <= MOST_DIGITS && measure.units.contains(known)) {
            double value = inEngineUnit(Double.parseDouble(digits), known, measure);
            return new Outcome(value, digits + " " + known, null, "");
        }
        String trouble = numberTrouble(text);
        if (digits.isEmpty() || trouble != null) {
            return wrong(measure.expected(), trouble == null ? "" : trouble);
        }
        if (unit.isEmpty() && measure == Measure.PERCENT) {
            double number = Double.parseDouble(digits);
            boolean share = number > 0 && number <= 1 && digits.contains(".");
            return wrong(
                    "a percentage with its sign",
                    "Write " + (share ? Range.shown(100 * number, "%") : digits + " %") + ".");
        }
        if (unit.isEmpty()) {
            return wrong(
                    measure.words() + " with its unit",
                    "Write " + digits + " " + measure.unit() + "." + others(measure));
        }
        String near = nearestUnit(unit, measure);
        return wrong(
                measure.words() + " in " + String.join(" or ", measure.units),
                near == null ? "" : "Write " + digits + " " + near + ".");
    }

    /** Reads a bare number whose unit stands elsewhere (a column's name, a list's last figure). */
    static Outcome bareNumber(String typed, String expected) {
        if (isLong(typed)) {
            return wrong(expected, "");
        }
        String text = tidy(typed);
        Matcher match = NUMBER_THEN_UNIT.matcher(text);
        boolean number = match.matches();
        if (number && match.group(2).isEmpty() && text.length() <= MOST_DIGITS) {
            return new Outcome(Double.parseDouble(text), text, null, "");
        }
        String trouble = numberTrouble(text);
        if (trouble != null) {
            return wrong(expected, trouble);
        }
        return wrong(expected, number ? "Write the number alone, " + match.group(1) + "." : "");
    }

    /** A number by itself in the unit that is meant, or with that unit or another of its measure behind it. */
    static Outcome maybeWithUnit(String typed, String expected, String unit) {
        Outcome bare = bareNumber(typed, expected);
        Matcher match = NUMBER_THEN_UNIT.matcher(tidy(typed));
        if (!bare.wrong() || isLong(typed) || !match.matches()) {
            return bare;
        }
        if (match.group(2).equals(unit) && match.group(1).length() <= MOST_DIGITS) {
            return new Outcome(Double.parseDouble(match.group(1)), tidy(typed), null, "");
        }
        for (Measure measure : Measure.values()) {
            if (measure.unit().equals(unit)) {
                Outcome outcome = read(typed, measure);
                if (!outcome.wrong()) {
                    return outcome;
                }
            }
        }
        return bare;
    }

    private static boolean isLong(String typed) {
        return tidy(typed).length() > LONGEST;
    }

    /** A value in one of the measure's units, in the engine's unit. */
    static double inEngineUnit(double value, String unit, Measure measure) {
        String target = measure.unit();
        if (unit.equals(target)) {
            return value;
        }
        try {
            return library(unit).getConverterToAny(library(target)).convert(value);
        } catch (IncommensurableException e) {
            throw new IllegalStateException(unit + " does not measure " + measure, e);
        }
    }

    /** Typographic minus, no-break spaces and the like, brought down to what a keyboard has. */
    static String tidy(String typed) {
        return typed.replace('\u2212', '-')
                .replace('\u00A0', ' ')
                .replace('\u202F', ' ')
                .replace('\u2009', ' ')
                .strip();
    }

    /** What to do about a number in a form that we do not take; null where that is not what is wrong. */
    private static @Nullable String numberTrouble(String text) {
        if (text.chars().filter(Character::isDigit).count() > MOST_DIGITS) {
            return "No figure here needs so many digits.";
        }
        if (POWER_OF_TEN.matcher(text).matches()) {
            return "Write the number out in plain digits.";
        }
        Matcher thousands = THOUSANDS.matcher(text);
        if (thousands.matches()) {
            String joined = thousands.group(1).replaceAll("[,' ]", "");
            String tail =
                    thousands.group(2) == null ? "" : " " + thousands.group(2).strip();
            return "Write thousands without a separator: " + joined + tail + ".";
        }
        Matcher comma = COMMA_NUMBER.matcher(text);
        if (comma.matches()) {
            String tail = comma.group(3).isBlank() ? "" : " " + comma.group(3).strip();
            return "Write a point, not a comma: " + comma.group(1) + "." + comma.group(2) + tail + ".";
        }
        return null;
    }

    private static Outcome wrong(String expected, String suggestion) {
        return new Outcome(Double.NaN, "", expected, suggestion);
    }

    private static String others(Measure measure) {
        List<String> rest = measure.units.subList(1, measure.units.size());
        return rest.isEmpty() ? "" : " Also possible: " + String.join(", ", rest) + ".";
    }

    /** The unit meant by a slip of capitals, such as KWH; null where that does not decide it. */
    private static @Nullable String nearestUnit(String unit, Measure measure) {
        for (String right : measure.units) {
            if (right.equalsIgnoreCase(unit)) {
                return right;
            }
        }
        return SPELT.entrySet().stream()
                .filter(spelt -> spelt.getKey().equalsIgnoreCase(unit) && measure.units.contains(spelt.getValue()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(null);
    }

    private static Unit<?> library(String unit) {
        Supplier<Unit<?>> known = LibraryUnits.BY_NAME.get(unit);
        if (known == null) {
            throw new IllegalStateException("no unit " + unit);
        }
        return known.get();
    }

    private static Map<String, String> spellings() {
        Map<String, String> spelt = new LinkedHashMap<>();
        put(spelt, "W", "watt", "watts");
        put(spelt, "Wh", "watt hours", "watt-hours");
        put(spelt, "VA", "volt-amperes", "volt-ampere", "volt amperes");
        put(spelt, "kg", "kilogram", "kilograms");
        put(spelt, "lb", "lbs", "pound", "pounds");
        put(spelt, "oz", "ounce", "ounces");
        put(spelt, "L", "litre", "litres", "liter", "liters", "l");
        put(spelt, "gal", "gallon", "gallons");
        put(spelt, "ft3", "cubic foot", "cubic feet", "cu ft", "cu. ft.", "ft\u00B3");
        put(spelt, "L/h", "l/h", "litres an hour", "liters an hour", "litres per hour", "liters per hour");
        put(spelt, "L/min", "l/min");
        put(spelt, "gal/h", "gph", "GPH", "gallons an hour", "gallons per hour");
        put(spelt, "gal/min", "gpm", "GPM", "gallons a minute", "gallons per minute");
        put(spelt, "kWh/day", "kWh a day", "kWh/d");
        put(spelt, "kWh/year", "kWh a year", "kWh/yr", "kWh/a");
        put(spelt, "ft", "foot", "feet", "'");
        put(spelt, "in", "inch", "inches");
        put(spelt, "m", "metre", "metres", "meter", "meters");
        put(spelt, "deg", "degree", "degrees", "\u00B0");
        put(spelt, "degC", "\u00B0C", "deg C", "\u00B0 C", "C");
        put(spelt, "degF", "\u00B0F", "deg F", "\u00B0 F", "F");
        put(spelt, "h", "hour", "hours", "hr", "hrs");
        put(spelt, "min", "minute", "minutes");
        put(spelt, "s", "second", "seconds");
        put(spelt, "d", "day", "days");
        put(spelt, "%", "percent", "per cent");
        put(spelt, "V", "volt", "volts");
        put(spelt, "A", "amp", "amps", "ampere", "amperes");
        put(spelt, "Hz", "hertz", "HZ");
        return Collections.unmodifiableMap(spelt);
    }

    private static void put(Map<String, String> spelt, String unit, String... ways) {
        for (String way : ways) {
            spelt.put(way, unit);
        }
    }

    /** In a class of its own, so that the library stays asleep until a figure needs it. */
    private static final class LibraryUnits {
        static final Map<String, Supplier<Unit<?>>> BY_NAME = Map.ofEntries(
                unit("W", () -> Units.WATT),
                unit("kW", () -> Units.WATT.prefix(MetricPrefix.KILO)),
                unit("VA", () -> Units.WATT),
                unit("kVA", () -> Units.WATT.prefix(MetricPrefix.KILO)),
                unit("Wh", () -> Units.WATT.multiply(Units.HOUR)),
                unit("kWh", () -> Units.WATT.prefix(MetricPrefix.KILO).multiply(Units.HOUR)),
                unit("kWh/day", () -> Units.WATT.prefix(MetricPrefix.KILO).multiply(Units.HOUR)),
                unit("kWh/year", () -> Units.WATT.prefix(MetricPrefix.KILO).multiply(Units.HOUR)),
                unit("L", () -> Units.LITRE),
                unit("gal", () -> USCustomary.GALLON_LIQUID),
                unit("ft3", () -> USCustomary.CUBIC_FOOT),
                unit("L/h", () -> Units.LITRE.divide(Units.HOUR)),
                unit("L/min", () -> Units.LITRE.divide(Units.MINUTE)),
                unit("gal/h", () -> USCustomary.GALLON_LIQUID.divide(Units.HOUR)),
                unit("gal/min", () -> USCustomary.GALLON_LIQUID.divide(Units.MINUTE)),
                unit("kJ", () -> Units.JOULE.prefix(MetricPrefix.KILO)),
                unit("MJ", () -> Units.JOULE.prefix(MetricPrefix.MEGA)),
                unit("kg", () -> Units.KILOGRAM),
                unit("g", () -> Units.GRAM),
                unit("lb", () -> USCustomary.POUND),
                unit("oz", () -> USCustomary.OUNCE),
                unit("m", () -> Units.METRE),
                unit("cm", () -> Units.METRE.prefix(MetricPrefix.CENTI)),
                unit("mm", () -> Units.METRE.prefix(MetricPrefix.MILLI)),
                unit("km", () -> Units.METRE.prefix(MetricPrefix.KILO)),
                unit("ft", () -> USCustomary.FOOT),
                unit("in", () -> USCustomary.INCH),
                unit("yd", () -> USCustomary.YARD),
                unit("deg", () -> USCustomary.DEGREE_ANGLE),
                unit("rad", () -> Units.RADIAN),
                unit("degC", () -> Units.CELSIUS),
                unit("degF", () -> USCustomary.FAHRENHEIT),
                unit("K", () -> Units.KELVIN),
                unit("h", () -> Units.HOUR),
                unit("min", () -> Units.MINUTE),
                unit("s", () -> Units.SECOND),
                unit("d", () -> Units.DAY),
                unit("V", () -> Units.VOLT),
                unit("mV", () -> Units.VOLT.prefix(MetricPrefix.MILLI)),
                unit("kV", () -> Units.VOLT.prefix(MetricPrefix.KILO)),
                unit("A", () -> Units.AMPERE),
                unit("mA", () -> Units.AMPERE.prefix(MetricPrefix.MILLI)));

        private static Map.Entry<String, Supplier<Unit<?>>> unit(String name, Supplier<Unit<?>> unit) {
            return Map.entry(name, unit);
        }
    }
}
