package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.answer.ProvenRig;
import tideover.engine.part.Listing;
import tideover.engine.rig.Chosen;
import tideover.engine.wiring.Price;

/** What a rig's price is made of beside its main parts. */
final class PriceWords {
    private static final String LISTED = "each is listed below";

    private PriceWords() {}

    /**
     * A sum beside the main parts.
     *
     * @param from where it is from
     */
    record Line(String what, long cents, String from) {
        /** Whether what it sums up is listed piece by piece. */
        boolean isOfList() {
            return from.equals(LISTED);
        }
    }

    /** An engine's fuel; small parts and tools, or the allowance that stands for both; hard-wired loads where there are any. */
    static List<Line> besideMainParts(ProvenRig rig) {
        Price price = rig.price();
        List<Line> lines = new ArrayList<>();
        if (rig.build().fuel() != null) {
            lines.add(new Line("fuel of one outage", rig.build().fuelCents(), "burnt at most"));
        }
        if (rig.build().counted()) {
            lines.add(new Line("small parts", price.smallPartsCents(), LISTED));
            lines.add(new Line("tools", price.toolsCents(), LISTED));
        } else {
            lines.add(new Line("small parts", price.smallPartsCents(), "allowance of the plan"));
        }
        if (price.hardWiredCents() > 0) {
            lines.add(new Line(
                    "hard-wired loads: listed inlet, electrician", price.hardWiredCents(), "allowance of the plan"));
        }
        if (price.taxCents() > 0) {
            lines.add(new Line("sales tax", price.taxCents(), "on prices, not on shipping or allowances"));
        }
        if (price.shippingCents() > 0) {
            lines.add(new Line("shipping", price.shippingCents(), "by the piece and by the order"));
        }
        return lines;
    }

    /** Such as "428.40 USD in all: 329.00 USD main parts, 61.40 small parts, 38.00 tools." */
    static String split(ProvenRig rig, String currency) {
        Price price = rig.price();
        String words =
                Words.money(price.totalCents(), currency) + " in all: " + Words.money(price.partsCents(), currency)
                        + (rig.build().fuel() == null ? " main parts, " : " main parts and fuel, ");
        words += rig.build().counted()
                ? bare(price.smallPartsCents()) + " small parts, " + bare(price.toolsCents()) + " tools"
                : bare(price.smallPartsCents()) + " allowed for small parts and tools";
        if (price.hardWiredCents() > 0) {
            words += ", " + bare(price.hardWiredCents()) + " allowed for joining hard-wired loads";
        }
        if (price.taxCents() > 0) {
            words += ", " + bare(price.taxCents()) + " sales tax";
        }
        if (price.shippingCents() > 0) {
            words += ", " + bare(price.shippingCents()) + " shipping";
        }
        return words + ".";
    }

    /** Such as " (9 needed, 10 bought)"; empty where as many are bought as needed. */
    static String boughtMore(Chosen chosen) {
        int bought = chosen.part().listing().boughtFor(chosen.count());
        return bought == chosen.count() ? "" : " (" + chosen.count() + " needed, " + bought + " bought)";
    }

    /** Such as "2026-02-03, invented price list". */
    static String readWhen(Listing listing) {
        String where = listing.selling().readAt();
        return listing.pricedOn() + (where.isEmpty() ? "" : ", " + where);
    }

    /** Whole cents as "412.00", where the currency is told beside it. */
    static String bare(long cents) {
        return String.format(Locale.ROOT, "%,d.%02d", cents / 100, cents % 100);
    }
}
