package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Answer;
import tideover.engine.answer.MedicalNote;
import tideover.engine.answer.ProvenRig;
import tideover.engine.answer.Question;
import tideover.engine.part.Condition;
import tideover.engine.part.Listing;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Store;
import tideover.engine.proof.Ledger;
import tideover.engine.proof.Lift;
import tideover.engine.proof.Proof;
import tideover.engine.proof.Trace;
import tideover.engine.rig.Chosen;
import tideover.engine.search.Rated;
import tideover.engine.search.Shortlist;
import tideover.engine.why.MarginNote;

/** An answer as plain text for a terminal. */
public final class TextAnswer {
    static final int WIDTH = 96;
    private static final int MOST_ROWS = 8;

    private final StringBuilder out = new StringBuilder();
    private final Answer answer;

    private TextAnswer(Answer answer) {
        this.answer = answer;
    }

    public static String of(Answer answer, String version) {
        TextAnswer text = new TextAnswer(answer);
        text.write(version);
        return text.out.toString();
    }

    private void write(String version) {
        Question question = answer.question();
        line(question.title() + ", " + question.place().name());
        if (!question.about().isEmpty()) {
            wrapped("", question.about());
        }
        line("");
        wrapped("", Words.sentence(answer));
        ProvenRig rig = answer.rig();
        if (answer.medical()) {
            medical();
        }
        if (rig != null) {
            if (answer.cheaperWithoutRig() != null) {
                heading("The cheapest rig, not the way named first");
            }
            proof(rig);
        }
        beside();
        if (rig != null) {
            kept(rig);
            parts(rig);
            wired(WiredSection.of(rig, question.loads(), question.currency()));
            energy(rig.proof());
        }
        if (answer.shortlist() != null) {
            shortlist(answer.shortlist());
        }
        replaced();
        heading("Weather");
        wrapped("  ", answer.weather());
        heading("Mind");
        answer.cautions().forEach(caution -> wrapped("  - ", caution));
        line("");
        line(String.format(
                Locale.ROOT,
                "seed %d, %s, step %.0f min, Tideover %s",
                answer.options().seed(),
                Counted.of(answer.years(), "weather year"),
                60.0 / answer.options().stepsPerHour(),
                version));
    }

    /** Which rows of an earlier parts file a later one stands for: a row mistyped twice must not pass unseen. */
    private void replaced() {
        List<MarginNote> replaced = answer.notes().stream()
                .filter(note -> note.name().equals(MarginNote.REPLACED_PARTS))
                .toList();
        if (!replaced.isEmpty()) {
            heading(MarginNote.REPLACED_PARTS);
            replaced.forEach(note -> wrapped("  - ", note.value()));
        }
    }

    private void medical() {
        List<String> failings = MedicalWords.failings(answer);
        if (!failings.isEmpty()) {
            heading("Why not");
            failings.forEach(failing -> wrapped("  - ", failing));
        }
        for (Page.Health block : MedicalWords.blocks(answer)) {
            heading(block.heading());
            block.facts().forEach(fact -> row(fact.name(), fact.words()));
        }
        line("");
        wrapped("  ", MedicalNote.MIND);
    }

    private void proof(ProvenRig rig) {
        Proof proof = rig.proof();
        line("");
        KeptWords.top(answer, rig).forEach(fact -> row(fact.name(), fact.words()));
        // Where somebody's health hangs on it the counts stand above, and no share.
        if (!answer.medical()) {
            row("Storm starts", "darkest twentieth of days " + Words.share(proof.darkest(), proof.years()));
            row("", "coldest twentieth of days " + Words.share(proof.coldest(), proof.years()));
        }
        if (proof.storm() != null) {
            row("In a storm", KeptWords.storm(answer, proof));
        }
        row("Hours carried", Words.hoursCarried(proof));
        row("No sun at all", Words.noSun(proof));
        row(
                "Without a failure",
                Words.monthsWithoutFailure(proof) + " (none in " + proof.years()
                        + (proof.years() == 1 ? " year)" : " years)"));
        if (!proof.endings().isEmpty()) {
            row("Why some failed", Words.endings(proof));
        }
        row("What binds", Words.binds(proof));
        rig.hardestStart()
                .ifPresent(start ->
                        row("Hardest start", StartWords.of(start, rig.rig().store())));
        row("Worst outage", outage(proof.worst(), rig.rig().store()));
        row("Median outage", outage(proof.median(), rig.rig().store()));
        if (proof.storm() != null) {
            row("Worst storm start", outage(proof.storm().worst(), rig.rig().store()));
        }
    }

    private void beside() {
        List<Page.Fact> facts = BesideWords.facts(answer);
        if (!facts.isEmpty()) {
            heading(answer.rig() == null ? "Beside it" : "Beside this rig");
            facts.forEach(fact -> row(fact.name(), fact.words()));
        }
    }

    /** What is kept and how it fared, what costs nothing, what to measure first. */
    private void kept(ProvenRig rig) {
        List<KeptWords.Fared> needs = KeptWords.needs(answer, rig);
        if (!needs.isEmpty()) {
            heading("What must be kept");
            needs.forEach(this::fared);
        }
        if (!rig.proof().habits().isEmpty()) {
            heading("What you could do for nothing, each by itself");
            for (Lift habit : rig.proof().habits()) {
                wrapped("  - ", KeptWords.habit(habit) + ": " + KeptWords.gain(habit) + ".");
            }
        }
        List<String> measure = DoubtWords.rows(rig.doubts(), !answer.medical());
        String rest = DoubtWords.rest(rig.doubts());
        if (!measure.isEmpty() || !rest.isEmpty()) {
            heading("Measure this first: how much the share hangs on what is not known");
            measure.forEach(row -> wrapped("  - ", row));
            if (!rest.isEmpty()) {
                wrapped("  ", rest);
            }
        }
    }

    private void fared(KeptWords.Fared one) {
        wrapped("  - ", one.name() + ": " + one.owed() + ".");
        wrapped("    Worst outage: ", one.worst() + ".");
        if (!one.inStorm().isEmpty()) {
            wrapped("    Worst storm start: ", one.inStorm() + ".");
        }
        if (!one.guessed().isEmpty()) {
            wrapped("    Guessed or usual figures: ", one.guessed() + ".");
        }
    }

    private static String outage(Trace trace, Store store) {
        double lowest = trace.ledger().startWh();
        for (var step : trace.steps()) {
            lowest = Math.min(lowest, step.storedWh());
        }
        boolean toTheEnd = trace.hoursCarried() >= trace.steps().size() * trace.stepHours();
        return String.format(
                Locale.ROOT,
                "began %s; %s, store down to %.0f %%%s",
                Words.moment(trace.startHour()),
                toTheEnd
                        ? "carried to the end"
                        : String.format(
                                Locale.ROOT,
                                "short from %.1f h on%s",
                                Math.floor(trace.hoursCarried() * 10) / 10,
                                Words.because(trace)),
                100 * Math.max(0, lowest) / trace.capacityWh(),
                store instanceof RatedStore ? " of full" : "");
    }

    private void parts(ProvenRig rig) {
        Question question = answer.question();
        heading("The rig (" + rig.rig().route().words() + ", "
                + String.format(
                        Locale.ROOT,
                        "%.1f kg; usable store %,.0f Wh, panels rated %,.0f W)",
                        rig.rig().massKg(),
                        rig.proof().figures().capacityWh(),
                        rig.proof().figures().arrayRatedW()));
        Table.Builder table = Table.titled("").figures("").words("").figures("").words("");
        for (Chosen chosen : rig.rig().chosen()) {
            Listing listing = chosen.part().listing();
            String condition = listing.condition() == Condition.NEW
                    ? ""
                    : ", " + listing.condition().name().toLowerCase(Locale.ROOT);
            table.row(
                    String.valueOf(chosen.count()),
                    listing.name() + PriceWords.boughtMore(chosen),
                    Words.money(listing.goodsCents(chosen.count()), question.currency()),
                    listing.id() + ", price of " + PriceWords.readWhen(listing) + condition);
        }
        for (PriceWords.Line sum : PriceWords.besideMainParts(rig)) {
            table.row("", sum.what(), Words.money(sum.cents(), question.currency()), sum.from());
        }
        TextTable.bare(table.done(), WIDTH - 4).forEach(row -> line("    " + row));
        wrapped("  ", PriceWords.split(rig, question.currency()));
        if (rig.rig().store() instanceof RatedStore store) {
            wrapped("  Battery: ", BatteryWords.what(store) + "; " + BatteryWords.warmth(store, rig.proof()) + ".");
        }
        String engine = EngineWords.of(rig, question.currency());
        if (engine != null) {
            wrapped("  Engine: ", engine);
        }
        if (rig.cost() != null) {
            wrapped("  Its cost: ", BatteryWords.cost(rig.cost(), question.currency()) + ".");
        }
    }

    private void wired(Page.Wired wired) {
        heading("How it is wired");
        said(wired.inside());
        table(wired.wires());
        said(wired.wiresNote());
        table(wired.protections());
        said(wired.protectionsNote());
        line("");
        line("  One line");
        wired.oneLine().forEach(branch -> branch(branch, "    "));
        if (!wired.mind().isEmpty()) {
            line("");
        }
        wired.mind().forEach(caution -> wrapped("  - ", caution));
        if (wired.smallParts() != null || !wired.smallPartsNote().isEmpty()) {
            heading("Small parts and tools");
            table(wired.smallParts());
            said(wired.smallPartsNote());
        }
    }

    private void said(String words) {
        if (!words.isEmpty()) {
            wrapped("  ", words);
        }
    }

    private void table(@Nullable Table table) {
        if (table != null) {
            line("");
            line("  " + table.caption());
            rows(table);
        }
    }

    private void rows(Table table) {
        TextTable.of(table, WIDTH - 2).forEach(row -> line("  " + row));
    }

    private void branch(Page.Branch branch, String indent) {
        String by = branch.by().isEmpty() ? "" : " (" + branch.by() + ")";
        List<String> lines = wrap(branch.words() + by, WIDTH - indent.length() - 2);
        for (int i = 0; i < lines.size(); i++) {
            line(indent + (i == 0 ? "" : "  ") + lines.get(i));
        }
        branch.branches().forEach(one -> branch(one, indent + "    "));
    }

    private void energy(Proof proof) {
        Ledger sum = proof.energy();
        double count = proof.share().outages();
        heading("Energy of the mean outage, Wh");
        amount("the panels could give", sum.inWh() / count);
        amountIfAny("from engine, returned grid or battery brought", sum.helpInWh() / count);
        amount("served, essential", sum.servedEssentialWh() / count);
        amount(
                "served, nice to have (of " + whole(sum.wantedNiceWh() / count) + " wanted)",
                sum.servedNiceWh() / count);
        amount("lost in panel leads and charge controller", sum.controllerLossWh() / count);
        amount("cut off by the controller's current", sum.controllerLimitWh() / count);
        amount("cut off by the store's charging current", sum.chargeLimitWh() / count);
        amount("no room in the store", sum.noRoomWh() / count);
        amountIfAny("drawn by the battery's heater", sum.heaterWh() / count);
        amountIfAny("lost in the battery with time", sum.selfDischargeWh() / count);
        amount("lost charging", sum.chargeLossWh() / count);
        amount("lost discharging", sum.dischargeLossWh() / count);
        amount("lost in the inverter", sum.inverterLossWh() / count);
        amount("inverter's standing draw", sum.standingWh() / count);
        amount("lost in outlet converters", sum.outletLossWh() / count);
        amount("taken from the store, start less end", (sum.startWh() - sum.endWh()) / count);
        amountIfAny("beside all this, essential loads fed by the grid", sum.gridServedWh() / count);
    }

    private void shortlist(Shortlist list) {
        if (!list.byRoute().isEmpty()) {
            Table ways = RouteTable.of(answer.question(), list.byRoute());
            heading(ways.caption());
            rows(ways);
        }
        if (!answer.ways().isEmpty()) {
            Table figures = WaysTable.figures(answer.question(), answer.ways());
            heading(figures.caption());
            rows(figures);
            table(WaysTable.words(answer.ways()));
        }
        if (!list.nearTies().isEmpty()) {
            heading("Others within a tenth of that price (on the first weather years; prove confirms)");
            rated(list.nearTies());
        }
        if (!list.front().isEmpty()) {
            heading("Price against share: nothing cheaper carries more");
            rated(aroundTarget(list.front()));
        }
        List<Rated> massFront = answer.beside().massFront();
        if (massFront != null) {
            heading(BesideWords.MASS_FRONT);
            rated(aroundTarget(massFront));
        }
        if (!list.unconfirmed().isEmpty()) {
            heading("Cheaper, met the target, and missed it " + KeptWords.tried(answer.question()));
            rated(list.unconfirmed());
        }
        if (!list.misses().isEmpty()) {
            heading(Words.misses(list));
            rated(list.misses());
        }
        heading("Why not the others (one rig may fall to several rules)");
        line(String.format(
                Locale.ROOT,
                "  %,9d rigs can be put together from these parts",
                list.counts().looked()));
        for (Map.Entry<String, Long> rule : list.counts().rejected().entrySet()) {
            wrapped(
                    String.format(Locale.ROOT, "  %,9d fell to ", rule.getValue()),
                    rule.getKey() + ": " + Words.rule(rule.getKey()));
        }
        if (list.counts().overBudget() > 0) {
            line(String.format(
                    Locale.ROOT,
                    "  %,9d cost more than the budget",
                    list.counts().overBudget()));
        }
        for (String sentence : Words.searched(list.counts())) {
            wrapped("  ", sentence);
        }
        if (list.counts().priced() > 0) {
            line("  Any rig in full: tideover prove PLAN --rig NUMBER, or its parts as listed");
        }
    }

    /** The part of the front that a reader weighs: a few steps below the target and a few above. */
    private List<Rated> aroundTarget(List<Rated> front) {
        int first = 0;
        while (first < front.size()
                && front.get(first).share() < answer.question().asked().targetShare()) {
            first++;
        }
        return front.subList(Math.max(0, first - MOST_ROWS / 2), Math.min(front.size(), first + MOST_ROWS / 2));
    }

    private void rated(List<Rated> rows) {
        for (Rated one : rows.subList(0, Math.min(rows.size(), MOST_ROWS))) {
            String lead = String.format(
                    Locale.ROOT,
                    "  %9s %12s  %5s of 100 %6.1f kg  ",
                    "#" + one.number(),
                    Words.money(one.price().totalCents(), answer.question().currency()),
                    Words.percent(one.share()),
                    one.rig().massKg());
            line(lead + one.rig().id());
        }
        if (rows.size() > MOST_ROWS) {
            line("          and " + (rows.size() - MOST_ROWS) + " more");
        }
    }

    private void amountIfAny(String name, double wh) {
        if (wh > 0) {
            amount(name, wh);
        }
    }

    private void amount(String name, double wh) {
        line(String.format(Locale.ROOT, "  %-48s %8s", name, whole(wh)));
    }

    /** What is there but less than half of one is not called nothing. */
    private static String whole(double wh) {
        return wh > 0 && wh < 0.5 ? "<1" : String.format(Locale.ROOT, "%,.0f", wh == 0 ? 0.0 : wh);
    }

    private void row(String name, String value) {
        List<String> lines = wrap(value, WIDTH - 21);
        for (int i = 0; i < lines.size(); i++) {
            line(String.format(Locale.ROOT, "  %-18s %s", i == 0 ? name : "", lines.get(i)));
        }
    }

    private void heading(String text) {
        line("");
        line(text);
    }

    private void wrapped(String lead, String text) {
        List<String> lines = wrap(text, WIDTH - lead.length());
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? lead : " ".repeat(lead.length())) + lines.get(i));
        }
    }

    private void line(@Nullable String text) {
        out.append(text).append('\n');
    }

    static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
