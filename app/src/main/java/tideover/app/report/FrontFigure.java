package tideover.app.report;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Answer;
import tideover.engine.answer.ProvenRig;
import tideover.engine.search.Rated;
import tideover.engine.search.Shortlist;

/** Price against share: each step is a rig than which nothing cheaper carries more. */
final class FrontFigure {
    private static final double LEFT = 34;
    private static final double RIGHT = 14;
    private static final double TOP = 26;
    private static final double LABEL_HALF_WIDTH = 28;

    private final List<Rated> front;
    private final double target;
    private final String currency;
    private final @Nullable ProvenRig winner;
    private final Table data;
    private final String pick;

    private FrontFigure(Answer answer, List<Rated> front, Table data, String pick) {
        this.front = front;
        this.target = answer.question().asked().targetShare();
        this.currency = answer.question().currency();
        this.winner = answer.rig();
        this.data = data;
        this.pick = pick;
    }

    /** @param pick what a rig's id is put behind to make its address; empty where steps are not links */
    static Figure of(Answer answer, Shortlist list, Table data, String pick) {
        FrontFigure figure = new FrontFigure(answer, list.front(), data, pick);
        return new Figure(
                figure.drawn("front-wide", 660, 230, 8),
                figure.drawn("front-narrow", 350, 220, 4),
                "Each step is a rig than which nothing cheaper carries more. Shares here are those over "
                        + Counted.of(answer.years(), "year") + ", not yet confirmed on others.",
                data);
    }

    private String drawn(String id, double width, double height, int mostTicks) {
        double bottom = height - 36;
        Axis share = new Axis(0, 100, bottom, TOP);
        Axis price = prices(width, mostTicks);
        Svg svg = pick.isEmpty()
                ? Svg.told(id, width, height, "Price against share", told())
                : Svg.toldWithLinks(id, width, height, "Price against share", told());
        svg.textFrom("axisName", 0, 11, "carried, of 100");
        for (double tick : share.ticks(5)) {
            svg.line(tick == 0 ? "axis" : "grid", LEFT, share.of(tick), width - RIGHT, share.of(tick));
            svg.textUpTo("tick", LEFT - 5, share.of(tick) + 4, String.format(Locale.ROOT, "%.0f", tick));
        }
        for (double tick : price.ticks(mostTicks)) {
            svg.line("axis", price.of(tick), bottom, price.of(tick), bottom + 4);
            svg.textAround("tick", price.of(tick), bottom + 16, String.format(Locale.ROOT, "%,.0f", tick));
        }
        svg.textAround("axisName", (LEFT + width - RIGHT) / 2, bottom + 32, "price in all, " + currency);
        svg.line("asked", LEFT, share.of(100 * target), width - RIGHT, share.of(100 * target));
        svg.textFrom("label", LEFT + 4, share.of(100 * target) + 14, "asked " + Words.percent(target));
        double[] xs = new double[front.size() + 1];
        double[] ys = new double[front.size()];
        for (int i = 0; i < front.size(); i++) {
            xs[i] = price.of(units(front.get(i)));
            ys[i] = share.of(100 * front.get(i).share());
        }
        xs[front.size()] = width - RIGHT;
        svg.path("front", Svg.steps(xs, ys));
        for (int i = 0; i < front.size(); i++) {
            Rated one = front.get(i);
            if (!pick.isEmpty()) {
                svg.linkFrom("pick", pick + Svg.inAddress(one.rig().id()), words(one));
                svg.dot("hit", xs[i], ys[i], 12);
            }
            svg.dot(isWinner(one) ? "mark" : "step", xs[i], ys[i], isWinner(one) ? 5 : pick.isEmpty() ? 2.6 : 3.6);
            if (!pick.isEmpty()) {
                svg.linkTo();
            }
            if (isWinner(front.get(i))) {
                label(svg, xs, ys, i, width, bottom);
            }
        }
        return svg.done();
    }

    private String words(Rated one) {
        return Words.money(one.price().totalCents(), currency) + ", carries " + Words.of100(one.share()) + ": "
                + one.rig().words();
    }

    /** Under the steps, where the drawing is empty, with a line up to the dot. */
    private static void label(Svg svg, double[] xs, double[] ys, int at, double width, double bottom) {
        double middle = Math.min(xs[at] + 20, width - RIGHT - LABEL_HALF_WIDTH);
        double lowest = ys[at];
        for (int i = at; i >= 0 && xs[i + 1] > middle - LABEL_HALF_WIDTH; i--) {
            lowest = Math.max(lowest, ys[i]);
        }
        double y = Math.min(bottom - 6, lowest + 30);
        svg.line("axis", xs[at], ys[at] + 6, middle, y - 12);
        svg.textAround("label strong", middle, y, "this rig");
    }

    private Axis prices(double width, int mostTicks) {
        double least = units(front.get(0));
        double most = Math.max(least + 1, units(front.get(front.size() - 1)));
        double step = Axis.roundStep(most - least, mostTicks);
        double from = Math.floor(least / step) * step;
        return new Axis(from, Math.max(from + step, Math.ceil(most / step) * step), LEFT + 4, width - RIGHT);
    }

    private boolean isWinner(Rated rated) {
        return winner != null && rated.rig().id().equals(winner.rig().id());
    }

    private static double units(Rated rated) {
        return rated.price().totalCents() / 100.0;
    }

    private String told() {
        Rated cheapest = front.get(0);
        Rated best = front.get(front.size() - 1);
        return "From " + Words.of100(cheapest.share()) + " for "
                + Words.money(cheapest.price().totalCents(), currency) + " to " + Words.of100(best.share()) + " for "
                + Words.money(best.price().totalCents(), currency) + ", in " + Counted.of(front.size(), "step")
                + "; asked are " + Words.of100(target) + ".";
    }
}
