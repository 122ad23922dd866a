package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.part.Cable;
import tideover.engine.part.Cord;
import tideover.engine.part.Fuse;
import tideover.engine.part.PanelLead;
import tideover.engine.part.SmallPart;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.wiring.Build;
import tideover.engine.wiring.PartsList;

/** Everything beside the main parts, to the last lug. */
final class SmallPartsTable {
    private static final String YOURS = "yours";

    private SmallPartsTable() {}

    /** Small parts, then tools, each with what it comes to. */
    static Table priced(PartsList list, String currency) {
        Table.Builder table = Table.titled("Small parts and tools, prices in " + currency)
                .figures("needed")
                .figures("bought")
                .words("what")
                .figures("price each")
                .sums("price", currency);
        part(table, list, false);
        table.styled("total", "", "", "small parts", "", PriceWords.bare(list.smallPartsCents()));
        part(table, list, true);
        table.styled("total", "", "", "tools", "", PriceWords.bare(list.toolsCents()));
        return table.done();
    }

    private static void part(Table.Builder table, PartsList list, boolean tools) {
        for (PartsList.Line line : list.lines()) {
            if (line.isTool() == tools) {
                table.row(
                        needed(line),
                        line.owned() ? YOURS : bought(line),
                        line.part().listing().name() + " ("
                                + line.part().listing().id() + ")",
                        line.owned()
                                ? ""
                                : PriceWords.bare(line.part().listing().eachCents(line.bought())),
                        line.owned() ? YOURS : PriceWords.bare(line.cents()));
            }
        }
    }

    /** Standard sizes, which have no price. */
    static Table sizes(PartsList list) {
        Table.Builder table =
                Table.titled("Small parts by standard sizes").figures("needed").words("what");
        for (PartsList.Line line : list.lines()) {
            table.row(needed(line), standardName(line));
        }
        return table.done();
    }

    /** Of what has no maker and no price. */
    static String standardName(PartsList.Line line) {
        return line.part().listing().name() + size(line.part());
    }

    /** Of a fuse without a maker's name the amps tell which. */
    private static String size(SmallPart part) {
        return part instanceof Fuse fuse
                ? " of " + PlainNumber.of(fuse.ratedA()) + " A, " + fuse.format()
                : part instanceof PanelLead lead
                        ? ", " + PlainNumber.of(lead.lengthM()) + " m"
                        : part instanceof Cord cord ? ", " + PlainNumber.of(cord.lengthM()) + " m" : "";
    }

    /** Cable by the metre, taken up to the next tenth; all else by the piece. */
    static String needed(PartsList.Line line) {
        return line.part() instanceof Cable
                ? PlainNumber.of(Math.ceil(10 * line.needed() - 1e-6) / 10) + " m"
                : PlainNumber.of(Math.ceil(line.needed() - 1e-6));
    }

    /** Such as "4 m", "2 x 5 m", "3" or "2 x 10". */
    private static String bought(PartsList.Line line) {
        boolean metres = line.part() instanceof Cable;
        double per = line.part().perPrice();
        String unit = metres ? " m" : "";
        return per == 1 ? line.bought() + unit : line.bought() + " x " + PlainNumber.of(per) + unit;
    }

    /** What is needed and has no line; empty where all has one. */
    static String missing(Build build) {
        List<String> words = new ArrayList<>();
        build.partsList().missing().forEach((what, count) -> words.add(count + " x " + what));
        if (words.isEmpty()) {
            return "";
        }
        return (build.counted()
                        ? "Needed too, not in the list of small parts and so not in the price: "
                        : "Needed too: ")
                + String.join(", ", words) + ".";
    }
}
