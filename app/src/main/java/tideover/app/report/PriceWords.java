package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.answer.ProvenRig;
import tideover.engine.wiring.Price;

/** What a rig's price is made of beside its main parts. */
final class PriceWords {
    private PriceWords() {}

    /**
     * A sum beside the main parts.
     *
     * @param from where it is from
     */
    record Line(String what, long cents, String from) {}

    /** An engine's fuel; small parts and tools, or the allowance that stands for both; hard-wired loads where there are any. */
    static List<Line> besideMainParts(ProvenRig rig) {
        Price price = rig.price();
        List<Line> lines = new ArrayList<>();
        if (rig.build().fuel() != null) {
            lines.add(new Line("fuel of one outage", rig.build().fuelCents(), "burnt at most"));
        }
        if (rig.build().counted()) {
            lines.add(new Line("small parts", price.smallPartsCents(), "each is listed below"));
            lines.add(new Line("tools", price.toolsCents(), "each is listed below"));
        } else {
            lines.add(new Line("small parts", price.smallPartsCents(), "allowance of the plan"));
        }
        if (price.hardWiredCents() > 0) {
            lines.add(new Line(
                    "hard-wired loads: listed inlet, electrician", price.hardWiredCents(), "allowance of the plan"));
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
        return price.hardWiredCents() > 0
                ? words + ", " + bare(price.hardWiredCents()) + " allowed for joining hard-wired loads."
                : words + ".";
    }

    /** Whole cents as "412.00", where the currency is told beside it. */
    static String bare(long cents) {
        return String.format(Locale.ROOT, "%,d.%02d", cents / 100, cents % 100);
    }
}
