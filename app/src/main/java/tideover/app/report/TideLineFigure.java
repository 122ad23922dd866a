package tideover.app.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import tideover.engine.outage.Outage;
import tideover.engine.proof.TideLine;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;

/**
 * The tide line: hours carried by the week in which the outage begins, as worst, 1 in 20 and median, against the hours
 * asked. The year is filled up to the worst line as a quay is to low water; where that stands below the hours asked, the
 * gap is hatched.
 */
final class TideLineFigure {
    private static final double TOP = 28;
    private static final double LEFT = 34;
    private static final double NARROW = 500;
    private static final double LABEL_GAP = 14;

    private final TideLine tide;
    private final Outage outage;
    private final int years;

    private TideLineFigure(TideLine tide, Outage outage, int years) {
        this.tide = tide;
        this.outage = outage;
        this.years = years;
    }

    static Figure of(TideLine tide, Outage outage, int years) {
        TideLineFigure figure = new TideLineFigure(tide, outage, years);
        return new Figure(
                figure.drawn("tide-wide", 660, 300, 6),
                figure.drawn("tide-narrow", 350, 260, 4),
                figure.caption(),
                figure.table());
    }

    private String drawn(String id, double width, double height, int mostTicks) {
        double edge = width - (width < NARROW ? 66 : 92);
        double bottom = height - 40;
        Axis week = new Axis(0, ModelYear.WEEKS, LEFT, edge);
        Axis day = new Axis(0, ModelYear.DAYS, LEFT, edge);
        Axis hours = new Axis(0, tide.capHours(), bottom, TOP);
        Svg svg = Svg.told(id, width, height, "Tide line", told()).hatching();
        svg.textFrom("axisName", 0, 11, "hours carried");
        for (double tick : hours.hourTicks(mostTicks)) {
            if (tick < tide.capHours() || tick == 0) {
                svg.line("grid", LEFT, hours.of(tick), edge, hours.of(tick));
                if (Math.abs(hours.of(tick) - hours.of(tide.capHours())) > 11) {
                    svg.textUpTo("tick", LEFT - 5, hours.of(tick) + 4, String.format(Locale.ROOT, "%.0f", tick));
                }
            }
        }
        svg.line("grid", LEFT, TOP, edge, TOP);
        svg.textUpTo("tick", LEFT - 5, TOP + 4, tide.capHours() + "+");
        months(svg, day, bottom, width < NARROW);
        double[] xs = new double[ModelYear.WEEKS + 1];
        for (int i = 0; i <= ModelYear.WEEKS; i++) {
            xs[i] = week.of(i);
        }
        double[] worst = heights(tide.worstHours(), hours);
        String worstLine = Svg.steps(xs, worst);
        svg.path("water", Svg.closedTo(worstLine, xs[0], xs[ModelYear.WEEKS], bottom));
        for (int i = 0; i < ModelYear.WEEKS; i++) {
            if (tide.worstHours().at(i) < tide.askedHours()) {
                svg.hatched(
                        xs[i], hours.of(tide.askedHours()), xs[i + 1] - xs[i], worst[i] - hours.of(tide.askedHours()));
            }
        }
        svg.path("median", Svg.steps(xs, heights(tide.medianHours(), hours)));
        svg.path("twentieth", Svg.steps(xs, heights(tide.oneIn20Hours(), hours)));
        svg.path("worst", worstLine);
        svg.line("asked", LEFT, hours.of(tide.askedHours()), edge, hours.of(tide.askedHours()));
        labels(svg, edge, width < NARROW, bottom, hours);
        return svg.done();
    }

    /** Names of months below the axis; those asked about stand in bold over a bar. */
    private void months(Svg svg, Axis day, double bottom, boolean narrow) {
        svg.line("axis", day.at(), bottom, day.until(), bottom);
        for (int month = 0; month < 12; month++) {
            double from = day.of(ModelYear.firstDay(month));
            double to = day.of(ModelYear.firstDay(month) + ModelYear.daysIn(month));
            boolean asked = outage.months().contains(month);
            svg.line("axis", from, bottom, from, bottom + 4);
            if (asked) {
                svg.rect("askedMonth", from, bottom + 20, to - from, 3);
            }
            String name = ModelYear.monthName(month);
            svg.textAround(
                    asked ? "tick strong" : "tick",
                    (from + to) / 2,
                    bottom + 15,
                    narrow ? name.substring(0, 1).toUpperCase(Locale.ROOT) : name);
        }
        svg.line("axis", day.until(), bottom, day.until(), bottom + 4);
        svg.textAround(
                "axisName",
                (day.at() + day.until()) / 2,
                bottom + 36,
                narrow
                        ? "month of the start; bar: asked"
                        : "month in which the outage begins; bar: months asked about");
    }

    /** Names beside the ends of the lines, moved apart where the ends lie close. */
    private void labels(Svg svg, double edge, boolean narrow, double bottom, Axis hours) {
        record Label(String words, double y, String style) {}
        int last = ModelYear.WEEKS - 1;
        List<Label> labels = Stream.of(
                        new Label("median", hours.of(tide.medianHours().at(last)), "median"),
                        new Label("1 in 20", hours.of(tide.oneIn20Hours().at(last)), "twentieth"),
                        new Label("worst", hours.of(tide.worstHours().at(last)), "worst"),
                        new Label(
                                narrow ? "asked" : "asked " + tide.askedHours() + " h",
                                hours.of(tide.askedHours()),
                                "asked"))
                .sorted(Comparator.comparingDouble(Label::y))
                .toList();
        double[] places = Axis.apart(labels.stream().mapToDouble(Label::y).toArray(), LABEL_GAP, TOP, bottom - 2);
        for (int i = 0; i < places.length; i++) {
            svg.line(labels.get(i).style() + " thin", edge, labels.get(i).y(), edge + 12, places[i]);
            svg.textFrom("label", edge + 15, places[i] + 4, labels.get(i).words());
        }
    }

    private static double[] heights(Series series, Axis hours) {
        double[] heights = new double[series.length()];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = hours.of(series.at(i));
        }
        return heights;
    }

    private String caption() {
        long shortWeeks = weeksBelow(tide.worstHours());
        return "Hours carried by the week in which the outage begins, over " + Counted.of(years, "weather year")
                + " and every start hour: the worst, the one in twenty, the median. No walk goes on past "
                + tide.capHours() + " h, so the top edge means that long or longer. "
                + (shortWeeks == 0
                        ? "No week's worst outage falls short of the " + tide.askedHours() + " h asked."
                        : "Hatched: the worst outage of " + Counted.of(shortWeeks, "week") + " falls short of the "
                                + tide.askedHours() + " h asked.");
    }

    private String told() {
        return "By week of the year, the worst outage is carried from " + span(tide.worstHours())
                + ", one in twenty no longer than " + span(tide.oneIn20Hours()) + ", the median "
                + span(tide.medianHours())
                + ". Asked are " + tide.askedHours() + " h; in " + Counted.of(weeksBelow(tide.worstHours()), "week")
                + " the worst outage falls short of that.";
    }

    private long weeksBelow(Series series) {
        long weeks = 0;
        for (int i = 0; i < series.length(); i++) {
            weeks += series.at(i) < tide.askedHours() ? 1 : 0;
        }
        return weeks;
    }

    private String span(Series series) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i < series.length(); i++) {
            least = Math.min(least, series.at(i));
            most = Math.max(most, series.at(i));
        }
        return Words.hours(least, tide) + " to " + Words.hours(most, tide);
    }

    private Table table() {
        Table.Builder table = Table.titled("Tide line, hours carried")
                .words("week that begins")
                .figures("worst")
                .figures("1 in 20")
                .figures("median");
        for (int i = 0; i < ModelYear.WEEKS; i++) {
            table.row(
                    ModelYear.dayName(i * 7),
                    Words.hours(tide.worstHours().at(i), tide),
                    Words.hours(tide.oneIn20Hours().at(i), tide),
                    Words.hours(tide.medianHours().at(i), tide));
        }
        return table.done();
    }
}
