package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.PitLoad;
import tideover.engine.proof.Trace;
import tideover.engine.proof.TraceStep;
import tideover.engine.quantity.PlainNumber;

/**
 * What is kept in one walked outage: a panel for each load that keeps a temperature or a level, on one time axis. Its limits are
 * straight lines, hours without power are shaded.
 */
final class KeptFigure {
    private static final double WIDTH = 330;
    private static final double LEFT = 34;
    private static final double RIGHT = 8;

    /** Of the first panel: below the figure's name and the word on shading. */
    private static final double FIRST_TOP = 38;

    /** From a panel's name to its plot, and the plot's height. */
    private static final double HEAD = 36;

    private static final double PLOT = 84;
    private static final double PANEL = HEAD + PLOT + 14;
    private static final double BELOW = 42;

    private static final int MOST_POINTS = 400;
    private static final int MOST_TICKS = 4;

    /** So many letters of a name fit on a panel's head beside the word on its end. */
    private static final int NAME_LETTERS = 28;

    private static final double INSTANT_H = 1e-6;

    private final String id;
    private final String name;
    private final Trace trace;
    private final List<KeptFate> fates;
    private final double lengthHours;
    private final Axis time;
    private final double bottom;

    private KeptFigure(String id, String name, Trace trace) {
        this.id = id;
        this.name = name;
        this.trace = trace;
        this.fates = KeptFate.of(trace);
        this.lengthHours = trace.steps().size() * trace.stepHours();
        this.time = new Axis(0, lengthHours, LEFT, WIDTH - RIGHT);
        this.bottom = FIRST_TOP + fates.size() * PANEL - 14;
    }

    /** Only of a trace in which something is kept. */
    static Figure of(String id, String name, Trace trace) {
        KeptFigure figure = new KeptFigure(id, name + ": what is kept", trace);
        String drawn = figure.drawn();
        return new Figure(drawn, drawn, figure.caption(), figure.table());
    }

    private String drawn() {
        Svg svg = Svg.told(id, WIDTH, bottom + BELOW, name, told());
        svg.textFrom("label strong", 0, 11, name);
        svg.rect("dark", 0, 19, 14, 9);
        svg.textFrom(
                "axisName",
                19,
                27,
                fates.stream().anyMatch(fate -> fate.load().heldBack())
                        ? "without power, or held back by its owner"
                        : "without power");
        for (int number = 0; number < fates.size(); number++) {
            panel(svg, number, FIRST_TOP + number * PANEL);
        }
        hours(svg);
        return svg.done();
    }

    private void panel(Svg svg, int number, double headTop) {
        KeptFate fate = fates.get(number);
        Load load = fate.load();
        double top = headTop + HEAD;
        double floor = top + PLOT;
        svg.textFrom("label", 0, headTop + 12, brief(load.name()));
        svg.textUpTo(
                fate.isKept() ? "tick" : "label strong",
                WIDTH - RIGHT,
                headTop + 12,
                fate.isKept() ? "kept to the end" : "not kept from " + KeptFate.cut(fate.keptH()) + " h");
        legend(svg, load, headTop + 27);
        int stride = Math.max(1, (trace.steps().size() + MOST_POINTS - 1) / MOST_POINTS);
        double[] kept = ends(number, stride, TraceStep.KeptStep::kept);
        double[] air = load instanceof ColdLoad ? ends(number, stride, TraceStep.KeptStep::airDegC) : new double[0];
        Axis axis = axis(load, kept, air, floor, top);
        shade(svg, number, top);
        for (double tick : axis.ticks(MOST_TICKS)) {
            svg.line(tick == axis.from() ? "axis" : "grid", LEFT, axis.of(tick), WIDTH - RIGHT, axis.of(tick));
            svg.textUpTo("tick", LEFT - 5, axis.of(tick) + 4, PlainNumber.of(tick == 0 ? 0 : tick));
        }
        midnights(svg, top, floor);
        for (double limit : limits(load)) {
            svg.line("limit", LEFT, axis.of(limit), WIDTH - RIGHT, axis.of(limit));
        }
        double[] xs = new double[kept.length];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = time.of(Math.min(lengthHours, (i + 1) * stride * trace.stepHours()));
        }
        if (air.length > 0) {
            svg.path("warmth", Svg.points(xs, heights(air, axis)));
        }
        svg.path("charge", Svg.points(xs, heights(kept, axis)));
        if (!fate.isKept()) {
            svg.line("fell", time.of(fate.keptH()), top, time.of(fate.keptH()), floor);
        }
    }

    /** Names of the lines beside a piece of each. */
    private static void legend(Svg svg, Load load, double y) {
        String kept =
                load instanceof PitLoad ? "water, L" : load instanceof ColdLoad ? "contents, \u00b0C" : "home, \u00b0C";
        svg.line("charge", 0, y - 4, 14, y - 4).textFrom("axisName", 19, y, kept);
        if (load instanceof ColdLoad) {
            svg.line("warmth", 100, y - 4, 114, y - 4).textFrom("axisName", 119, y, "air inside, \u00b0C");
        }
        svg.line("limit", 216, y - 4, 230, y - 4).textFrom("axisName", 235, y, limitWords(load));
    }

    private static String limitWords(Load load) {
        if (load instanceof PitLoad pit) {
            return String.format(
                    Locale.ROOT, "brim, %.0f L", Math.floor(pit.pit().brimL()));
        }
        if (load.need() instanceof Need.Band band) {
            return PlainNumber.of(band.leastDegC()) + " to " + PlainNumber.of(band.mostDegC()) + " \u00b0C";
        }
        return "limit, " + KeptFate.tenths(limits(load).get(0)) + " \u00b0C";
    }

    private static List<Double> limits(Load load) {
        Need need = load.need();
        if (load instanceof PitLoad pit) {
            return List.of(pit.pit().brimL());
        }
        if (need instanceof Need.Band band) {
            return List.of(band.leastDegC(), band.mostDegC());
        }
        if (need instanceof Need.Below below) {
            return List.of(below.limitDegC());
        }
        if (need instanceof Need.HoursAbove above) {
            return List.of(above.limitDegC());
        }
        return need instanceof Need.Above above ? List.of(above.limitDegC()) : List.of();
    }

    /** A round scale around all that is drawn. */
    private static Axis axis(Load load, double[] kept, double[] air, double floor, double top) {
        double least = load instanceof PitLoad ? 0 : Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        List<Double> all = new ArrayList<>(limits(load));
        for (double value : kept) {
            all.add(value);
        }
        for (double value : air) {
            all.add(value);
        }
        for (double value : all) {
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        double step = Axis.roundStep(Math.max(most - least, 1), MOST_TICKS - 1);
        double from = step * Math.floor(least / step + 1e-9);
        return new Axis(from, Math.max(step * Math.ceil(most / step - 1e-9), from + step), floor, top);
    }

    private void shade(Svg svg, int number, double top) {
        double from = Double.NaN;
        for (TraceStep step : trace.steps()) {
            // A step half without power and more counts: less is not seen at the drawing's size.
            boolean dark = step.kept().get(number).darkH() >= trace.stepHours() / 2 - INSTANT_H;
            if (dark && Double.isNaN(from)) {
                from = step.hour();
            } else if (!dark && !Double.isNaN(from)) {
                svg.rect("dark", time.of(from), top, time.of(step.hour()) - time.of(from), PLOT);
                from = Double.NaN;
            }
        }
        if (!Double.isNaN(from)) {
            svg.rect("dark", time.of(from), top, time.of(lengthHours) - time.of(from), PLOT);
        }
    }

    private void midnights(Svg svg, double top, double floor) {
        double first = 24.0 - trace.startHour() % 24;
        for (double at = first; at < lengthHours && lengthHours <= 10 * 24; at += 24) {
            svg.line("midnight", time.of(at), top, time.of(at), floor);
        }
    }

    private void hours(Svg svg) {
        for (double tick : time.hourTicks(6)) {
            svg.line("axis", time.of(tick), bottom, time.of(tick), bottom + 4);
            svg.textAround("tick", time.of(tick), bottom + 16, String.format(Locale.ROOT, "%.0f", tick));
        }
        svg.textAround(
                "axisName",
                (time.at() + time.until()) / 2,
                bottom + 32,
                String.format(Locale.ROOT, "hours since the start at %02d:00", trace.startHour() % 24));
    }

    /** At the end of each group of steps. */
    private double[] ends(int number, int stride, ToDoubleFunction<TraceStep.KeptStep> figure) {
        List<TraceStep> steps = trace.steps();
        double[] ends = new double[(steps.size() + stride - 1) / stride];
        for (int i = 0; i < ends.length; i++) {
            TraceStep step = steps.get(Math.min(steps.size(), (i + 1) * stride) - 1);
            ends[i] = figure.applyAsDouble(step.kept().get(number));
        }
        return ends;
    }

    private static double[] heights(double[] values, Axis axis) {
        double[] heights = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            heights[i] = axis.of(values[i]);
        }
        return heights;
    }

    private static String brief(String name) {
        return name.codePointCount(0, name.length()) <= NAME_LETTERS
                ? name
                : name.substring(0, name.offsetByCodePoints(0, NAME_LETTERS - 1)) + "\u2026";
    }

    private String caption() {
        return name + ", in the outage that began " + Words.moment(trace.startHour()) + ". " + each();
    }

    private String told() {
        return "Began " + Words.moment(trace.startHour()) + ". " + each();
    }

    private String each() {
        StringBuilder words = new StringBuilder();
        for (KeptFate fate : fates) {
            words.append(words.isEmpty() ? "" : " ")
                    .append(fate.load().name())
                    .append(": ")
                    .append(fate.words())
                    .append('.');
        }
        return words.toString();
    }

    /** One row an hour: what is kept at the hour's end, time without power in it. */
    private Table table() {
        Table.Builder table =
                Table.titled(name + ", at each hour's end").figures("hour").words("clock");
        for (KeptFate fate : fates) {
            String load = fate.load().name();
            table.figures(load + (fate.load() instanceof PitLoad ? ", L" : ", \u00b0C"));
            if (fate.load() instanceof ColdLoad) {
                table.figures("air in it, \u00b0C");
            }
            table.figures("without power, min");
        }
        int stride = Math.max(1, (int) Math.round(1 / trace.stepHours()));
        List<TraceStep> steps = trace.steps();
        for (int from = 0; from < steps.size(); from += stride) {
            int end = Math.min(steps.size(), from + stride);
            TraceStep last = steps.get(end - 1);
            List<String> cells = new ArrayList<>(List.of(
                    String.format(Locale.ROOT, "%.0f", from * trace.stepHours()),
                    String.format(Locale.ROOT, "%02d:00", steps.get(from).weatherHour() % 24)));
            for (int number = 0; number < fates.size(); number++) {
                TraceStep.KeptStep now = last.kept().get(number);
                cells.add(KeptFate.tenths(now.kept()));
                if (fates.get(number).load() instanceof ColdLoad) {
                    cells.add(KeptFate.tenths(now.airDegC()));
                }
                double darkH = 0;
                for (TraceStep step : steps.subList(from, end)) {
                    darkH += step.kept().get(number).darkH();
                }
                cells.add(String.format(Locale.ROOT, "%.0f", 60 * darkH));
            }
            table.row(cells.toArray(new String[0]));
        }
        return table.done();
    }
}
