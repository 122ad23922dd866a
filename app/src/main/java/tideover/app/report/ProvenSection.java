package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import tideover.engine.answer.Answer;
import tideover.engine.answer.ProvenRig;
import tideover.engine.outage.Outage;
import tideover.engine.part.Listing;
import tideover.engine.part.RatedStore;
import tideover.engine.proof.CarriedShare;
import tideover.engine.proof.Lift;
import tideover.engine.proof.Proof;
import tideover.engine.proof.StormProof;
import tideover.engine.proof.Trace;
import tideover.engine.rig.Chosen;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/** The page's part about one proven rig. */
final class ProvenSection {
    /** Gains below this many hundredths of a share, or of an hour, are shown as none. */
    private static final double LEAST_SHOWN_HOURS = 0.05;

    private final Answer answer;
    private final ProvenRig rig;
    private final Proof proof;
    private final Outage outage;
    private final String currency;

    private ProvenSection(Answer answer, ProvenRig rig) {
        this.answer = answer;
        this.rig = rig;
        this.proof = rig.proof();
        this.outage = answer.question().asked();
        this.currency = answer.question().currency();
    }

    static Page.Proven of(Answer answer, ProvenRig rig) {
        ProvenSection section = new ProvenSection(answer, rig);
        Proof proof = rig.proof();
        return new Page.Proven(
                section.shares(),
                section.interval(),
                section.facts(),
                TideLineFigure.of(proof.tideLine(), section.outage, proof.years()),
                section.outages(),
                EnergyTable.of(proof.energy(), proof.share().outages()),
                EnergyTable.wanting(proof.energy(), proof.share().outages()),
                section.without(),
                StartsTable.brief(proof.starts(), section.outage),
                StartsTable.full(proof.starts()),
                KeptWords.needs(KeptWords.needs(answer, rig)),
                proof.habits().isEmpty() ? null : KeptWords.habits(proof.habits()),
                DoubtWords.moving(rig.doubts()).isEmpty() ? null : DoubtWords.table(rig.doubts(), !answer.medical()),
                DoubtWords.still(rig.doubts()),
                Words.binds(section.proof),
                section.lifts(),
                section.rigWords(),
                section.parts(),
                PriceWords.split(rig, section.currency),
                WiredSection.of(rig, answer.question().loads(), section.currency),
                section.rules());
    }

    /** Two stand side by side: the median and the worst, then what they keep, then the worst of storms. */
    private List<Figure> outages() {
        List<Figure> outages = new ArrayList<>(List.of(
                outage("median", "Median outage", proof.median()), outage("worst", "Worst outage", proof.worst())));
        boolean keeps = !proof.worst().kept().isEmpty();
        if (keeps) {
            outages.add(KeptFigure.of("median-kept", "Median outage", proof.median()));
            outages.add(KeptFigure.of("worst-kept", "Worst outage", proof.worst()));
        }
        StormProof storm = proof.storm();
        if (storm != null) {
            outages.add(outage("storm", "Worst storm start", storm.worst()));
            if (keeps) {
                outages.add(KeptFigure.of("storm-kept", "Worst storm start", storm.worst()));
            }
        }
        return outages;
    }

    private Figure outage(String id, String name, Trace trace) {
        return OutageFigure.of(id, name, trace, outage, rig.rig().store());
    }

    private Table shares() {
        List<CarriedShare> all = new ArrayList<>(List.of(proof.share(), proof.darkest(), proof.coldest()));
        CarriedShare confirmed = rig.confirmed();
        if (confirmed != null) {
            all.add(confirmed);
        }
        ShareStrip strip = new ShareStrip(all, outage.targetShare());
        Table.Builder table = Table.titled(
                        answer.cheaperWithoutRig() == null
                                ? "Outages carried"
                                : "Outages carried by the cheapest rig, not by the way named first")
                .words("outages that begin")
                .figures("carried, of\u00a0100")
                .figures("90\u00a0% interval")
                .figures("walked")
                .drawing(strip.scale());
        share(table, strip, "at every hour of " + Words.months(outage.months()), proof.share());
        share(table, strip, "on the darkest twentieth of those days", proof.darkest());
        share(table, strip, "on the coldest twentieth", proof.coldest());
        if (proof.storm() != null) {
            share(
                    table,
                    strip,
                    "on either, with all that storms do",
                    proof.storm().share());
        }
        if (confirmed != null) {
            share(
                    table,
                    strip,
                    "at every hour, on " + Counted.of(answer.options().confirmYears(), "other year"),
                    confirmed);
        }
        return table.done();
    }

    private static void share(Table.Builder table, ShareStrip strip, String name, CarriedShare share) {
        table.row(
                name,
                share.carried() == share.outages() ? "all walked" : Words.percent(share.share()),
                Words.percent(share.low()) + " to " + Words.percentUp(share.high()),
                String.format(Locale.ROOT, "%,d", share.outages()),
                strip.of(share));
    }

    private String interval() {
        String confirming = rig.confirmed() == null
                ? " This weather cannot be drawn again, so nothing confirms the share on other years."
                : "";
        return "Interval of the first row: " + proof.share().interval().words() + "." + confirming;
    }

    private List<Page.Fact> facts() {
        List<Page.Fact> facts = new ArrayList<>(KeptWords.top(answer, rig));
        if (proof.storm() != null) {
            facts.add(new Page.Fact("In a storm", KeptWords.storm(answer, proof)));
        }
        facts.add(new Page.Fact("Hours carried", Words.hoursCarried(proof), Reasons.hoursCarried(answer, proof)));
        facts.add(new Page.Fact("With no sun at all", Words.noSun(proof), Reasons.noSun(answer, proof)));
        if (!proof.endings().isEmpty()) {
            facts.add(new Page.Fact("Why some failed", Words.endings(proof)));
        }
        facts.add(new Page.Fact("What binds", Words.binds(proof), Reasons.binds(answer, proof)));
        rig.hardestStart()
                .ifPresent(start -> facts.add(new Page.Fact(
                        "Hardest start", StartWords.of(start, rig.rig().store()))));
        if (rig.rig().store() instanceof RatedStore store) {
            facts.add(new Page.Fact("Battery", BatteryWords.what(store) + "; " + BatteryWords.warmth(store, proof)));
        }
        String engine = EngineWords.of(rig, currency);
        if (engine != null) {
            facts.add(new Page.Fact("Engine", engine));
        }
        if (rig.cost() != null) {
            facts.add(new Page.Fact("Batteries cost", BatteryWords.cost(rig.cost(), currency)));
        }
        return facts;
    }

    private String without() {
        return "Without a failure: " + Words.monthsWithoutFailure(proof) + ". That is none in "
                + Counted.of(proof.years(), "simulated year") + ", which is not never.";
    }

    private Table lifts() {
        Table.Builder table = Table.titled("Each limit lifted in turn")
                .words("limit")
                .words("what if")
                .figures("more carried, of\u00a0100")
                .figures("more hours on average");
        for (Lift lift : proof.lifts()) {
            table.row(
                    lift.limit(),
                    lift.words(),
                    String.format(Locale.ROOT, "%+.1f", 100 * lift.shareGain()).replace("+0.0", "0"),
                    String.format(Locale.ROOT, "%+.1f h", lift.meanHoursGain()).replace("+0.0 h", "0 h"));
        }
        return table.done();
    }

    private String rigWords() {
        return String.format(
                Locale.ROOT,
                "Way of building: %s. Usable store %,.0f Wh, panels rated %,.0f W, %.1f kg in all, heaviest single"
                        + " piece %.1f kg.",
                rig.rig().route().words(),
                proof.figures().capacityWh(),
                proof.figures().arrayRatedW(),
                rig.rig().massKg(),
                rig.rig().heaviestKg());
    }

    private Table parts() {
        Table.Builder table = Table.titled("Parts and prices")
                .figures("count")
                .words("part")
                .figures("price")
                .shortWords("price of")
                .figures("mass");
        for (Chosen chosen : rig.rig().chosen()) {
            Listing listing = chosen.part().listing();
            table.row(
                    String.valueOf(chosen.count()),
                    listing.name() + " (" + listing.id() + ", "
                            + listing.condition().name().toLowerCase(Locale.ROOT) + ")"
                            + PriceWords.boughtMore(chosen),
                    Words.money(listing.goodsCents(chosen.count()), currency),
                    listing.pricedOn().toString(),
                    String.format(Locale.ROOT, "%.1f kg", chosen.count() * listing.massKg()));
        }
        for (PriceWords.Line line : PriceWords.besideMainParts(rig)) {
            table.row("", line.what() + ": " + line.from(), Words.money(line.cents(), currency), "", "");
        }
        table.styled(
                "total",
                "",
                "in all",
                Words.money(rig.price().totalCents(), currency),
                "",
                String.format(Locale.ROOT, "%.1f kg", rig.rig().massKg()));
        return table.done();
    }

    private Table rules() {
        Table.Builder table = Table.titled("What the rules say of it")
                .words("verdict")
                .words("finding")
                .figures("margin")
                .words("known from");
        for (Finding finding : rig.findings()) {
            table.styled(
                    finding.verdict() == Verdict.FAIL ? "total" : "",
                    Objects.requireNonNull(finding.verdict()).name().toLowerCase(Locale.ROOT),
                    finding.sentence(),
                    Double.isNaN(finding.margin())
                            ? ""
                            : String.format(Locale.ROOT, "%,.1f", finding.margin())
                                            .replace(".0", "") + " " + finding.unit(),
                    finding.basis().words() + ": " + finding.source());
        }
        return table.done();
    }
}
