package tideover.app.report;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Writes one SVG drawing, to stand inside a page whose style knows its classes. One unit is meant to be shown as about
 * one CSS pixel. Texts are escaped here; a number is cut to a tenth of a unit.
 */
final class Svg {
    private final StringBuilder out = new StringBuilder();
    private final String id;

    private Svg(String id) {
        this.id = id;
    }

    /** A drawing that is read out as its title and description; {@code id} is its own on the page. */
    static Svg told(String id, double width, double height, String title, String description) {
        Svg svg = new Svg(id);
        svg.out.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %s %s\" role=\"img\""
                        + " aria-labelledby=\"%s-t %s-d\"><title id=\"%s-t\">%s</title><desc id=\"%s-d\">%s</desc>",
                number(width),
                number(height),
                id,
                id,
                id,
                escaped(title),
                id,
                escaped(description)));
        return svg;
    }

    /** A drawing with links in it, which are reached one by one when the page is read out. */
    static Svg toldWithLinks(String id, double width, double height, String title, String description) {
        Svg svg = told(id, width, height, title, description);
        int role = svg.out.indexOf("role=\"img\"");
        svg.out.replace(role, role + "role=\"img\"".length(), "role=\"group\"");
        return svg;
    }

    /** What follows until {@link #linkTo} leads to an address. */
    Svg linkFrom(String style, String address, String words) {
        out.append(String.format(
                Locale.ROOT,
                "<a class=\"%s\" href=\"%s\" aria-label=\"%s\"><title>%s</title>",
                style,
                escaped(address),
                escaped(words),
                escaped(words)));
        return this;
    }

    Svg linkTo() {
        out.append("</a>");
        return this;
    }

    /** Text as a value within an address. */
    static String inAddress(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** A drawing beside the figures it shows, passed over when the page is read out. */
    static Svg silent(double width, double height) {
        Svg svg = new Svg("");
        svg.out.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %s %s\" aria-hidden=\"true\">",
                number(width),
                number(height)));
        return svg;
    }

    /** Slanted lines for what falls short, under the class "hatched". */
    Svg hatching() {
        out.append("<defs><pattern id=\"")
                .append(id)
                .append("-h\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\""
                        + " patternTransform=\"rotate(45)\"><line class=\"slant\" x1=\"0\" y1=\"0\" x2=\"0\" y2=\"5\"/>"
                        + "</pattern></defs>");
        return this;
    }

    Svg hatched(double x, double y, double width, double height) {
        out.append(String.format(
                Locale.ROOT,
                "<rect fill=\"url(#%s-h)\" x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"/>",
                id,
                number(x),
                number(y),
                number(width),
                number(height)));
        return this;
    }

    Svg line(String style, double x1, double y1, double x2, double y2) {
        out.append(String.format(
                Locale.ROOT,
                "<line class=\"%s\" x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\"/>",
                style,
                number(x1),
                number(y1),
                number(x2),
                number(y2)));
        return this;
    }

    Svg rect(String style, double x, double y, double width, double height) {
        out.append(String.format(
                Locale.ROOT,
                "<rect class=\"%s\" x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"/>",
                style,
                number(x),
                number(y),
                number(width),
                number(height)));
        return this;
    }

    Svg dot(String style, double x, double y, double radius) {
        out.append(String.format(
                Locale.ROOT,
                "<circle class=\"%s\" cx=\"%s\" cy=\"%s\" r=\"%s\"/>",
                style,
                number(x),
                number(y),
                number(radius)));
        return this;
    }

    Svg path(String style, String d) {
        out.append("<path class=\"").append(style).append("\" d=\"").append(d).append("\"/>");
        return this;
    }

    Svg textFrom(String style, double x, double y, String text) {
        return text(style, "start", x, y, text);
    }

    Svg textAround(String style, double x, double y, String text) {
        return text(style, "middle", x, y, text);
    }

    Svg textUpTo(String style, double x, double y, String text) {
        return text(style, "end", x, y, text);
    }

    private Svg text(String style, String anchor, double x, double y, String text) {
        out.append(String.format(
                Locale.ROOT,
                "<text class=\"%s\" text-anchor=\"%s\" x=\"%s\" y=\"%s\">%s</text>",
                style,
                anchor,
                number(x),
                number(y),
                escaped(text)));
        return this;
    }

    String done() {
        return out.append("</svg>").toString();
    }

    /** The outline of figures that each hold from one x to the next; {@code xs} has one more. */
    static String steps(double[] xs, double[] ys) {
        StringBuilder d = new StringBuilder("M" + number(xs[0]) + " " + number(ys[0]));
        for (int i = 0; i < ys.length; i++) {
            if (i == 0 || !number(ys[i]).equals(number(ys[i - 1]))) {
                d.append(i == 0 ? "" : "V" + number(ys[i]));
            }
            if (i == ys.length - 1 || !number(ys[i]).equals(number(ys[i + 1]))) {
                d.append("H").append(number(xs[i + 1]));
            }
        }
        return d.toString();
    }

    /** The outline from point to point. */
    static String points(double[] xs, double[] ys) {
        StringBuilder d = new StringBuilder();
        for (int i = 0; i < xs.length; i++) {
            d.append(i == 0 ? "M" : "L").append(number(xs[i])).append(" ").append(number(ys[i]));
        }
        return d.toString();
    }

    /** An outline closed down to a base line. */
    static String closedTo(String outline, double firstX, double lastX, double baseY) {
        return outline + "L" + number(lastX) + " " + number(baseY) + "L" + number(firstX) + " " + number(baseY) + "Z";
    }

    static String number(double value) {
        double tenths = Math.rint(value * 10) / 10;
        return tenths == Math.rint(tenths)
                ? String.format(Locale.ROOT, "%.0f", tenths == 0 ? 0.0 : tenths)
                : String.format(Locale.ROOT, "%.1f", tenths);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&#34;");
    }
}
