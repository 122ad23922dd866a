package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import tideover.engine.answer.Question;
import tideover.engine.answer.Way;
import tideover.engine.part.Condition;
import tideover.engine.quantity.PlainTime;
import tideover.engine.rig.Chosen;

/** Every kind of way side by side: what it costs and asks, then what it is and what somebody must do. */
final class WaysTable {
    private static final String UNKNOWN = "?";
    private static final String NONE = "-";

    private WaysTable() {}

    static Table figures(Question question, List<Way> ways) {
        boolean burns = ways.stream().anyMatch(way -> way.figures().fumes());
        boolean unknown = ways.stream()
                .map(Way::figures)
                .anyMatch(figures -> Double.isNaN(figures.standbyCentsPerYear()) || Double.isNaN(figures.noiseDbA()));
        boolean spoils = ways.stream().anyMatch(way -> !Double.isNaN(way.expectedLossCents()));
        Table.Builder table = Table.titled(
                        "Every way side by side, the cheapest of each that meets the target, prices in "
                                + question.currency()
                                + (unknown ? "; " + UNKNOWN + " is not known" : ""))
                .words("way")
                .sums("price now", question.currency())
                .figures("of\u00a0100")
                .sums("per usable kWh", question.currency())
                .sums("a year, ready", question.currency())
                .figures("mass, kg");
        if (burns) {
            table.figures("fuel, L").figures("noise, dBA").figures("fumes");
        }
        table.figures("without power at first");
        if (spoils) {
            table.sums("spoils, mean outage", question.currency());
        }
        for (Way way : ways) {
            Way.Figures figures = way.figures();
            List<String> cells = new ArrayList<>(List.of(
                    way.kind().words() + (way.meets() ? "" : " (misses the target)"),
                    PriceWords.bare(way.price().totalCents()),
                    Words.percent(way.share()),
                    money(figures.centsPerUsableKWh(), NONE),
                    money(figures.standbyCentsPerYear(), UNKNOWN),
                    String.format(Locale.ROOT, "%.1f", figures.massKg())));
            if (burns) {
                cells.add(figures.fuelL() == 0 ? NONE : String.format(Locale.ROOT, "%.1f", figures.fuelL()));
                cells.add(
                        Double.isNaN(figures.noiseDbA())
                                ? UNKNOWN
                                : figures.noiseDbA() == 0
                                        ? NONE
                                        : String.format(Locale.ROOT, "%.0f", figures.noiseDbA()));
                cells.add(figures.fumes() ? "yes" : "no");
            }
            cells.add(gap(figures.gapSeconds()));
            if (spoils) {
                cells.add(money(way.expectedLossCents(), ""));
            }
            table.row(cells.toArray(new String[0]));
        }
        return table.done();
    }

    static Table words(List<Way> ways) {
        Table.Builder table = Table.titled("What each is, and what somebody must do")
                .words("way")
                .words("what it takes")
                .words("who must act");
        for (Way way : ways) {
            table.row(way.kind().words(), parts(way), acts(way));
        }
        return table.done();
    }

    /** Parts by name; what is used or owned says so. */
    static String parts(Way way) {
        return way.chosen().isEmpty()
                ? way.words()
                : way.chosen().stream().map(WaysTable::part).collect(Collectors.joining(", "));
    }

    private static String part(Chosen chosen) {
        Condition condition = chosen.part().listing().condition();
        return chosen.words()
                + (condition == Condition.NEW ? "" : " (" + condition.name().toLowerCase(Locale.ROOT) + ")");
    }

    private static String acts(Way way) {
        List<Way.Act> acts = way.figures().acts();
        return acts.isEmpty()
                ? "nobody"
                : "somebody: " + acts.stream().map(Way.Act::words).collect(Collectors.joining(", "));
    }

    private static String gap(double seconds) {
        return Double.isNaN(seconds)
                ? "all along"
                : Double.isInfinite(seconds) ? "nobody there" : seconds == 0 ? NONE : PlainTime.words(seconds);
    }

    private static String money(double cents, String otherwise) {
        return Double.isNaN(cents) ? otherwise : PriceWords.bare(Math.round(cents));
    }
}
