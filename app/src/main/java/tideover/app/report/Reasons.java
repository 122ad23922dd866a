package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.answer.Answer;
import tideover.engine.answer.ProvenRig;
import tideover.engine.proof.CarriedShare;
import tideover.engine.wiring.Price;

/** Why the numbers of an answer's sentence are what they are: each with its formula, the figures in it, and what it rests on. */
public final class Reasons {
    private Reasons() {}

    /**
     * The reason of one number.
     *
     * @param name    what it is
     * @param value   as the sentence says it
     * @param formula in words and figures
     * @param rests   what it rests on, and where that is told
     */
    public record Reason(String name, String value, String formula, String rests) {}

    /** In the order of the sentence; empty where no rig is named. Of what somebody's health hangs on no share is a claim. */
    public static List<Reason> of(Answer answer) {
        List<Reason> reasons = new ArrayList<>();
        ProvenRig rig = answer.rig();
        if (rig == null) {
            return reasons;
        }
        String currency = answer.question().currency();
        reasons.add(new Reason(
                "Price",
                Words.money(rig.price().totalCents(), currency),
                price(rig.price(), currency),
                "Prices of the parts files, in whole cents; every line stands under question 2."));
        CarriedShare share = rig.proof().share();
        reasons.add(new Reason(
                "Carried share",
                Words.of100(share.share()),
                String.format(
                        Locale.ROOT,
                        "%,d outages walked, one from every hour of the asked months in %s; %,d of them kept every essential need: %,d / %,d.",
                        share.outages(),
                        Counted.of(answer.years(), "weather year"),
                        share.carried(),
                        share.carried(),
                        share.outages()),
                "Seed " + answer.options().seed() + ". " + answer.weather()));
        reasons.add(new Reason(
                "90 % interval",
                Words.percent(share.low()) + " to " + Words.percentUp(share.high()),
                "Luck of the weather alone: " + share.interval().words() + ".",
                "What else is not known is told under question 4."));
        CarriedShare confirmed = rig.confirmed();
        if (confirmed != null) {
            reasons.add(new Reason(
                    "Other years",
                    Words.of100(confirmed.share()),
                    String.format(
                            Locale.ROOT,
                            "The same walk on %s of seed %d: %,d of %,d.",
                            Counted.of(answer.options().confirmYears(), "other weather year"),
                            answer.options().confirmSeed(),
                            confirmed.carried(),
                            confirmed.outages()),
                    "A rig that meets the target on the first years is shown only if it does so on these."));
        }
        return reasons;
    }

    private static String price(Price price, String currency) {
        List<String> sum = new ArrayList<>();
        add(sum, price.partsCents(), "main parts", currency);
        add(sum, price.smallPartsCents(), "small parts", currency);
        add(sum, price.toolsCents(), "tools", currency);
        add(sum, price.hardWiredCents(), "joining hard-wired loads", currency);
        add(sum, price.taxCents(), "tax", currency);
        add(sum, price.shippingCents(), "shipping", currency);
        return String.join(" + ", sum) + ".";
    }

    private static void add(List<String> sum, long cents, String what, String currency) {
        if (cents > 0) {
            sum.add(Words.money(cents, currency) + " " + what);
        }
    }
}
