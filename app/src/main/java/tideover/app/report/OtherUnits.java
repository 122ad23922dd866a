package tideover.app.report;

import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToIntFunction;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.jspecify.annotations.Nullable;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/**
 * Writes figures of finished words a second time, in brackets behind the first: kilograms in pounds, sums in another currency. What
 * was there stays, so that nothing rounded takes the place of what was worked out. Factors are the units library's; the rate of a
 * currency is whatever was typed.
 *
 * @param customary pounds, feet, inches, gallons, degrees Fahrenheit
 * @param rate      null where sums stay in their own currency
 */
public record OtherUnits(boolean customary, @Nullable Rate rate) {
    public static final OtherUnits NONE = new OtherUnits(false, null);

    private static final String NUMBER = "-?\\d[\\d,]*(?:\\.\\d+)?";
    private static final String NUMBERS = "(?<![\\w.,-])(" + NUMBER + "(?:(?: x | to | and )" + NUMBER + ")*)";

    /** Not behind it: part of a longer unit, or the same already told in other units. */
    private static final String END = "(?![\\w/\\u00b2\\u00b3-])(?! \\(\\d)";

    private static final Pattern METRIC = Pattern.compile(NUMBERS + " (kg|degC|\\u00b0C|km|cm2|cm|mm|m3|m|L)" + END);
    private static final Pattern ONE = Pattern.compile(NUMBER);

    /** What is inside them was typed, or is drawn to a scale of its own. */
    private static final Set<String> LEFT_ALONE =
            Set.of("textarea", "script", "style", "svg", "title", "select", "code", "pre");

    private static final Pattern TAG = Pattern.compile("<(/?)([a-zA-Z][a-zA-Z0-9]*)(?:\"[^\"]*\"|'[^']*'|[^'\">])*>");

    private static final Pattern UNIT_OF_CELL = Pattern.compile("^<td[^>]* data-unit=\"([^\"]+)\"");

    /** Shorter lengths in metres lose too much as whole feet. */
    private static final double SHORT_M = 10;

    /** What stands for a unit, and how to get there. */
    private record Other(String unit, UnitConverter converter) {
        double factor() {
            return converter.convert(1.0) - converter.convert(0.0);
        }
    }

    /** Woken only where somebody wants other units. */
    private static final class Others {
        static final Map<String, Other> BY_UNIT = Map.of(
                "\u00b0C", other("\u00b0F", Units.CELSIUS, USCustomary.FAHRENHEIT),
                "kg", other("lb", Units.KILOGRAM, USCustomary.POUND),
                "degC", other("degF", Units.CELSIUS, USCustomary.FAHRENHEIT),
                "km", other("mi", Units.METRE.multiply(1000), USCustomary.MILE),
                "m", other("ft", Units.METRE, USCustomary.FOOT),
                "cm", other("in", Units.METRE.divide(100), USCustomary.INCH),
                "mm", other("in", Units.METRE.divide(1000), USCustomary.INCH),
                "cm2", new Other("in2", squared(USCustomary.INCH)),
                "m3", other("ft3", Units.CUBIC_METRE, USCustomary.CUBIC_FOOT),
                "L", other("gal", Units.CUBIC_METRE.divide(1000), USCustomary.GALLON_LIQUID));

        private static <Q extends javax.measure.Quantity<Q>> Other other(String name, Unit<Q> from, Unit<Q> to) {
            return new Other(name, from.getConverterTo(to));
        }

        private static UnitConverter squared(Unit<javax.measure.quantity.Length> inch) {
            return Units.SQUARE_METRE
                    .divide(10_000)
                    .getConverterTo(inch.multiply(inch).asType(javax.measure.quantity.Area.class));
        }
    }

    /**
     * What one of a plan's currency costs in another.
     *
     * @param from  three capitals
     * @param to    three capitals
     * @param price above 0
     */
    public record Rate(String from, String to, double price) {
        private static final Pattern TYPED = Pattern.compile(
                "1 ?([A-Za-z]{3}) ?(?:=|is|are) ?(\\d{1,7}(?:\\.\\d{1,6})?|0?\\.\\d{1,6}) ?([A-Za-z]{3})");

        /**
         * Reads such as "1 USD = 0.92 EUR".
         *
         * @throws IllegalArgumentException in a whole sentence
         */
        public static Rate of(String typed) {
            Matcher matcher = TYPED.matcher(typed.strip());
            if (!matcher.matches() || Double.parseDouble(matcher.group(2)) == 0) {
                throw new IllegalArgumentException(
                        "A rate is written like 1 USD = 0.92 EUR, with the currency of the plan first.");
            }
            return new Rate(
                    matcher.group(1).toUpperCase(Locale.ROOT),
                    matcher.group(3).toUpperCase(Locale.ROOT),
                    Double.parseDouble(matcher.group(2)));
        }

        private Pattern sums() {
            return Pattern.compile(NUMBERS + " (" + from + ")" + END);
        }
    }

    public boolean isNone() {
        return !customary && rate == null;
    }

    /**
     * The text between the tags of a page or of a piece of one; attributes, fields and drawings stay as they are. A bare figure is
     * restated where its cell names the unit in {@code data-unit}.
     */
    public String inPage(String html) {
        if (isNone()) {
            return html;
        }
        StringBuilder out = new StringBuilder(html.length() + html.length() / 8);
        Matcher tag = TAG.matcher(html);
        int from = 0;
        Pattern sums = sums();
        String inside = "";
        String unit = "";
        while (tag.find(from)) {
            String text = html.substring(from, tag.start());
            out.append(inside.isEmpty() ? restated(text, unit, sums) : text).append(tag.group());
            from = tag.end();
            Matcher of = UNIT_OF_CELL.matcher(tag.group());
            unit = of.find() ? String.valueOf(of.group(1)) : "";
            String name = tag.group(2).toLowerCase(Locale.ROOT);
            if (!tag.group(1).isEmpty()) {
                inside = name.equals(inside) ? "" : inside;
            } else if (inside.isEmpty()
                    && LEFT_ALONE.contains(name)
                    && !tag.group().endsWith("/>")) {
                inside = name;
            }
        }
        return out.append(html, from, html.length()).toString();
    }

    private String restated(String text, String unit, @Nullable Pattern sums) {
        if (unit.isEmpty()) {
            return inText(text, sums);
        }
        String whole = text + " " + unit;
        String told = inText(whole, sums);
        return told.startsWith(whole) ? text + told.substring(whole.length()) : text;
    }

    /** One for a whole page, which has thousands of texts. */
    private @Nullable Pattern sums() {
        return rate == null ? null : rate.sums();
    }

    String inText(String text) {
        return inText(text, sums());
    }

    private String inText(String text, @Nullable Pattern sums) {
        String told = customary ? METRIC.matcher(text).replaceAll(OtherUnits::converted) : text;
        Rate now = rate;
        return now == null || sums == null ? told : sums.matcher(told).replaceAll(found -> converted(found, now));
    }

    private static String converted(MatchResult found, Rate rate) {
        String beside = restated(found.group(1), sum -> sum * rate.price(), OtherUnits::told);
        return Matcher.quoteReplacement(found.group() + " (" + beside + " " + rate.to() + ")");
    }

    private static String converted(MatchResult found) {
        String unit = found.group(2);
        Other other = Objects.requireNonNull(Others.BY_UNIT.get(unit));
        String beside = restated(found.group(1), other.converter()::convert, one -> {
            double finest = Math.pow(10, -told(one)) * other.factor();
            int more = unit.equals("m") && told(one) == 0 && Math.abs(number(one)) < SHORT_M ? 1 : 0;
            return Math.max(0, (int) Math.ceil(-Math.log10(finest))) + more;
        });
        return Matcher.quoteReplacement(found.group() + " (" + beside + " " + other.unit() + ")");
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(",", ""));
    }

    /** Digits behind the point. */
    private static int told(String figure) {
        int point = figure.indexOf('.');
        return point < 0 ? 0 : figure.length() - point - 1;
    }

    /** Every number in a row of them, what stands between left as it is. */
    private static String restated(String numbers, DoubleUnaryOperator to, ToIntFunction<String> decimals) {
        return ONE.matcher(numbers).replaceAll(found -> {
            String one = found.group();
            String figure =
                    String.format(Locale.ROOT, "%,." + decimals.applyAsInt(one) + "f", to.applyAsDouble(number(one)));
            return figure.matches("-0(?:\\.0+)?") ? figure.substring(1) : figure;
        });
    }
}
