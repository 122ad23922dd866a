package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Beside;
import tideover.engine.answer.ProvenRig;
import tideover.engine.outage.Outage;
import tideover.engine.proof.CarriedShare;
import tideover.engine.proof.Proof;
import tideover.engine.quantity.PlainNumber;
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
     * @param inputs  what went into it and is told elsewhere
     * @param rests   what it rests on, and where that is told
     */
    public record Reason(String name, String value, String formula, List<Input> inputs, String rests) {
        public Reason {
            inputs = List.copyOf(inputs);
        }
    }

    /**
     * Something that went into a number.
     *
     * @param words what it is, with its value where that is one
     * @param place in the plan, such as "outage.lasts"; or, behind a #, of a table: {@link #PARTS}, {@link #SMALL_PARTS}, {@link
     *     #LOADS}
     */
    public record Input(String words, String place) {
        public boolean isTable() {
            return place.startsWith("#");
        }
    }

    public static final String PARTS = "#parts-and-prices";
    public static final String SMALL_PARTS = "#small-parts";
    public static final String LOADS = "#loads-head";

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
                List.of(new Input("parts and prices", PARTS), new Input("small parts and tools", SMALL_PARTS)),
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
                walked(answer),
                "Seed " + answer.options().seed() + ". " + answer.weather()));
        reasons.add(new Reason(
                "90 % interval",
                Words.percent(share.low()) + " to " + Words.percentUp(share.high()),
                "Luck of the weather alone: " + share.interval().words() + ".",
                List.of(new Input("the place", "place.station")),
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
                    walked(answer),
                    "A rig that meets the target on the first years is shown only if it does so on these."));
        }
        return reasons;
    }

    static Reason hoursCarried(Answer answer, Proof proof) {
        return new Reason(
                "Hours carried",
                Words.hoursCarried(proof),
                String.format(
                        Locale.ROOT,
                        "Each of the %,d outages is walked on until an essential need falls short, at most to %d h. Put in order: the"
                                + " first, the one a twentieth of the way up, the middle one.",
                        proof.share().outages(),
                        proof.tideLine().capHours()),
                walked(answer),
                "The walk step by step, of any outage, is a file: tideover prove PLAN --trace FILE.");
    }

    static Reason noSun(Answer answer, Proof proof) {
        return new Reason(
                "With no sun at all",
                Words.noSun(proof),
                "The same walk with the panels giving nothing, begun at each hour of the day; the least and the most of the 24.",
                walked(answer),
                "What the rig does in any weather, whoever doubts the weather figures.");
    }

    static Reason binds(Answer answer, Proof proof) {
        return new Reason(
                "What binds",
                Words.binds(proof),
                "Each limit is lifted alone and every outage is walked again; what gains most is what binds. All of them stand under"
                        + " question 2.",
                walked(answer),
                "Where two limits hold together, lifting one alone gains nothing.");
    }

    /** With less sun and less store. */
    static Reason lean(Answer answer, CarriedShare lean) {
        return new Reason(
                "A fifth less",
                Words.of100(lean.share()),
                String.format(
                        Locale.ROOT,
                        "%,d outages walked with %.0f %% of the sun and as much of the store: %,d of them kept every essential need.",
                        lean.outages(),
                        100 * Beside.LEAN_TIMES,
                        lean.carried()),
                walked(answer),
                "A margin for what no data sheet tells, not a forecast.");
    }

    private static List<Input> walked(Answer answer) {
        Outage outage = answer.question().outage();
        return List.of(
                new Input(outage.hours() + " h", "outage.lasts"),
                new Input("the months", "outage.months"),
                new Input(
                        "charge at the start, " + PlainNumber.of(100 * outage.chargeAtStart()) + " %",
                        "outage.charge at start"),
                new Input(Counted.of(answer.question().loads().size(), "load"), LOADS),
                new Input("the place", "place.station"),
                new Input("the rig", PARTS));
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
