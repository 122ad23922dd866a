package tideover.app.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Answer;
import tideover.engine.answer.ProvenRig;
import tideover.engine.search.Rated;
import tideover.engine.search.Shortlist;

/** The page's part about the other rigs: near ties, price against share, and why the rest failed. */
final class SearchedSection {
    private static final int MOST_ROWS = 8;

    private final Answer answer;
    private final Shortlist list;

    private SearchedSection(Answer answer, Shortlist list) {
        this.answer = answer;
        this.list = list;
    }

    static Page.Searched of(Answer answer, Shortlist list, String pick) {
        SearchedSection section = new SearchedSection(answer, list);
        List<Rated> front = list.front();
        return new Page.Searched(
                list.byRoute().isEmpty() ? null : RouteTable.of(answer.question(), list.byRoute()),
                answer.ways().isEmpty() ? null : WaysTable.figures(answer.question(), answer.ways()),
                answer.ways().isEmpty() ? null : WaysTable.words(answer.ways()),
                section.rated("Others within a tenth of that price", list.nearTies(), MOST_ROWS),
                section.littleMore(),
                front.isEmpty()
                        ? null
                        : FrontFigure.of(answer, list, section.rows("Price against share", front, front.size()), pick),
                section.massFront(answer.beside().massFront()),
                section.rated(
                        "Met the target, and missed it " + KeptWords.tried(answer.question()),
                        list.unconfirmed(),
                        MOST_ROWS),
                section.rated(Words.misses(list), list.misses(), MOST_ROWS),
                section.looked(),
                section.rejected());
    }

    private @Nullable Table massFront(@Nullable List<Rated> front) {
        return front == null ? null : rows(BesideWords.MASS_FRONT, front, front.size());
    }

    private @Nullable Table rated(String caption, List<Rated> rows, int most) {
        return rows.isEmpty() ? null : rows(caption, rows, most);
    }

    private Table rows(String caption, List<Rated> rows, int most) {
        String more = rows.size() > most ? String.format(Locale.ROOT, ", the first %d of %,d", most, rows.size()) : "";
        Table.Builder table = Table.titled(caption + more)
                .figures("no.")
                .words("rig")
                .figures("price")
                .figures("of\u00a0100")
                .figures("mass");
        for (Rated one : rows.subList(0, Math.min(rows.size(), most))) {
            table.row(
                    String.valueOf(one.number()),
                    one.rig().words(),
                    Words.money(one.price().totalCents(), answer.question().currency()),
                    Words.percent(one.share()),
                    String.format(Locale.ROOT, "%.1f kg", one.rig().massKg()));
        }
        return table.done();
    }

    /** The best near tie where it carries more than the winner: what a little more money would buy. */
    private String littleMore() {
        ProvenRig winner = answer.rig();
        Rated best = list.nearTies().stream()
                .max(Comparator.comparingDouble(Rated::share)
                        .thenComparing(Comparator.comparingLong(
                                        (Rated one) -> one.price().totalCents())
                                .reversed()))
                .orElse(null);
        if (winner == null
                || best == null
                || best.share() <= winner.proof().share().share()) {
            return "";
        }
        long moreCents = best.price().totalCents() - winner.price().totalCents();
        return "No. " + best.number() + " carries " + Words.of100(best.share()) + " for "
                + (moreCents == 0
                        ? "the same price"
                        : Words.money(moreCents, answer.question().currency()) + " more")
                + ", on the first weather years.";
    }

    private String looked() {
        Shortlist.Counts counts = list.counts();
        String over = counts.overBudget() > 0
                ? String.format(Locale.ROOT, " %,d cost more than the budget.", counts.overBudget())
                : "";
        return String.format(Locale.ROOT, "%,d rigs can be put together from these parts.", counts.looked())
                + over
                + " "
                + String.join(" ", Words.searched(counts));
    }

    private @Nullable Table rejected() {
        if (list.counts().rejected().isEmpty()) {
            return null;
        }
        Table.Builder table = Table.titled("Rigs that fell to a rule; one may fall to several")
                .words("rule")
                .figures("rigs");
        for (Map.Entry<String, Long> rule : list.counts().rejected().entrySet()) {
            table.row(
                    rule.getKey().replace('-', ' ') + ": " + Words.rule(rule.getKey()),
                    String.format(Locale.ROOT, "%,d", rule.getValue()));
        }
        return table.done();
    }
}
