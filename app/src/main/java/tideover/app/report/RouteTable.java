package tideover.app.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import tideover.engine.answer.Question;
import tideover.engine.rig.Route;
import tideover.engine.search.OfRoute;
import tideover.engine.search.Rated;

/** The cheapest rig of each way of building, side by side. */
final class RouteTable {
    private RouteTable() {}

    /** @param byRoute at most one of each way of building; one that misses the target says so */
    static Table of(Question question, List<OfRoute> byRoute) {
        boolean counted = !question.smallParts().isEmpty();
        boolean joined = byRoute.stream().anyMatch(one -> one.rated().price().hardWiredCents() > 0);
        Table.Builder table = Table.titled(
                        "By the way of building, the cheapest of each that meets the target, prices in "
                                + question.currency())
                .words("way of building")
                .figures("no.")
                .figures("main parts");
        if (counted) {
            table.figures("small parts").figures("tools");
        } else {
            table.figures("small parts, allowed");
        }
        if (joined) {
            table.figures("joining, allowed");
        }
        boolean beyond = byRoute.stream().anyMatch(RouteTable::hasBeyond);
        if (beyond) {
            table.figures("tax, shipping");
        }
        table.sums("in all", question.currency()).figures("of\u00a0100").words("rig");
        for (Route route : Route.values()) {
            OfRoute way = byRoute.stream()
                    .filter(one -> one.rated().rig().route() == route)
                    .min(Comparator.comparing((OfRoute one) -> !one.meets())
                            .thenComparing(one -> one.meets() ? 0 : -one.rated().share())
                            .thenComparingLong(one -> one.rated().price().totalCents()))
                    .orElse(null);
            if (way == null) {
                List<String> none = new ArrayList<>(List.of(route.words(), ""));
                for (int i = 0; i < (counted ? 3 : 2) + (joined ? 1 : 0) + (beyond ? 1 : 0); i++) {
                    none.add("");
                }
                none.addAll(List.of("", "", "none was found that keeps the rules and the budget and meets the target"));
                table.row(none.toArray(new String[0]));
                continue;
            }
            List<String> cells = cells(way.rated(), counted, joined, beyond);
            cells.add(way.rated().rig().words() + (way.meets() ? "" : "; nearest found, misses the target"));
            table.row(cells.toArray(new String[0]));
        }
        return table.done();
    }

    private static boolean hasBeyond(OfRoute way) {
        return way.rated().price().taxCents() + way.rated().price().shippingCents() > 0;
    }

    private static List<String> cells(Rated one, boolean counted, boolean joined, boolean beyond) {
        List<String> cells = new ArrayList<>(List.of(
                one.rig().route().words(),
                String.valueOf(one.number()),
                PriceWords.bare(one.price().partsCents()),
                PriceWords.bare(one.price().smallPartsCents())));
        if (counted) {
            cells.add(PriceWords.bare(one.price().toolsCents()));
        }
        if (joined) {
            cells.add(PriceWords.bare(one.price().hardWiredCents()));
        }
        if (beyond) {
            cells.add(PriceWords.bare(one.price().taxCents() + one.price().shippingCents()));
        }
        cells.add(PriceWords.bare(one.price().totalCents()));
        cells.add(Words.percent(one.share()));
        return cells;
    }
}
