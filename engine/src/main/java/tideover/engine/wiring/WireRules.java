package tideover.engine.wiring;

import static tideover.engine.why.Finding.atLeast;
import static tideover.engine.why.Finding.atMost;
import static tideover.engine.why.Finding.inWords;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.BatterySwitch;
import tideover.engine.part.Breaker;
import tideover.engine.part.Cable;
import tideover.engine.part.Cord;
import tideover.engine.part.Fuse;
import tideover.engine.part.FuseHolder;
import tideover.engine.part.PanelLead;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/**
 * What is asked of each piece of a circuit. Whatever is chosen has passed these, and what fails one of them is never chosen;
 * what a maker does not state and could start a fire counts as the bad case.
 */
final class WireRules {
    /** Boat practice for what should not flicker or be charged wrongly; see {@link VoltageDrop}. */
    static final double MOST_DROP_SHARE = VoltageDrop.CRITICAL_SHARE;

    /** Of the volts, at the hardest start. Common practice, no source. */
    static final double MOST_SAG_SHARE = VoltageDrop.OTHER_SHARE;

    /** A fuse carries about twice its rating for the seconds of a motor's start. Common practice, no source. */
    static final double MOMENT_TIMES = 2;

    private static final String EDITION = "; check the edition in force";

    private static final String MATED = "mated-connectors";

    private WireRules() {}

    static Finding metal(Run run, Cable cable) {
        boolean copper = cable.metal() == Cable.Metal.COPPER;
        return inWords(
                "wire-metal",
                copper ? Verdict.PASS : Verdict.FAIL,
                Basis.COMMON_PRACTICE,
                "the ampacities used are of copper; clad aluminium has about 1.6 times its ohms and loosens under screws",
                "%s: %s is of %s%s.",
                run.words(),
                cable.listing().name(),
                cable.metal() == Cable.Metal.UNKNOWN
                        ? "a metal that nobody states"
                        : cable.metal().words(),
                copper ? "" : "; only copper counts");
    }

    /**
     * A conductor is never protected above what it may carry; the next standard rating up, which the code may allow, is not used.
     *
     * @param ratedA   of what protects it, or the design current where its source limits itself
     * @param allowedA by insulation, ambient, bundle, terminals and the cap on small wires
     */
    static Finding ampacity(Run run, String conductor, double ratedA, double allowedA) {
        return atMost(
                "wire-ampacity",
                Verdict.FAIL,
                ratedA,
                allowedA,
                "A",
                Basis.PUBLISHED,
                "NFPA 70 240.4, table 310.16 with 310.15(B), 310.15(C)(1), 110.14(C), 240.4(D)" + EDITION,
                "%s: %s may carry %.1f A as it lies; what protects or feeds it lets %.1f A pass.",
                run.words(),
                conductor,
                allowedA,
                ratedA);
    }

    /**
     * What the panels lose is no danger and is counted in the proof; up to a tenth it is a caution.
     */
    static Finding drop(Run run, double dropV) {
        boolean bearable = run.kind() == Run.Kind.PANELS && dropV <= VoltageDrop.OTHER_SHARE * run.systemV();
        return atMost(
                "wire-drop",
                bearable ? Verdict.CAUTION : Verdict.FAIL,
                100 * dropV / run.systemV(),
                100 * MOST_DROP_SHARE,
                "%",
                Basis.FROM_MEMORY,
                "3 % of boat practice, ABYC E-11 and ISO 13297" + EDITION,
                "%s: %.2f V of %.1f V are lost at %.1f A%s.",
                run.words(),
                dropV,
                run.systemV(),
                run.amps().lasting(),
                bearable ? "; the proof counts that loss" : "");
    }

    static Finding sag(Run run, double sagV) {
        return atMost(
                "wire-sag",
                Verdict.FAIL,
                100 * sagV / run.systemV(),
                100 * MOST_SAG_SHARE,
                "%",
                Basis.COMMON_PRACTICE,
                "a tenth of the volts in a cable at a motor's start",
                "%s: %.2f V of %.1f V are lost while the hardest start takes %.0f A.",
                run.words(),
                sagV,
                run.systemV(),
                run.amps().moment());
    }

    /** What a fuse or breaker must be rated at least, A. */
    static double leastRatingA(Run run) {
        return Math.max(run.amps().design(), run.amps().moment() / MOMENT_TIMES);
    }

    static Finding rating(Run run, Protection protection) {
        return atLeast(
                "protection-rating",
                Verdict.FAIL,
                protection.ratedA(),
                leastRatingA(run),
                "A",
                Basis.PUBLISHED,
                "NFPA 70 210.20(A), 690.9(B), 1.25 times the lasting current" + EDITION
                        + "; half of a start's current, common practice",
                "%s: %s for %.1f A lasting (%.1f A with the code's quarter) and %.0f A at the hardest start.",
                run.words(),
                protection.words(),
                run.amps().lasting(),
                run.amps().design(),
                run.amps().moment());
    }

    /** An arc of direct current does not go out by itself: what is made for alternating current alone may burn on. */
    static Finding directVolts(Run run, Protection protection) {
        boolean told = !Double.isNaN(protection.mostDcV());
        String rule = protection.isBreaker() ? "breaker-dc" : "fuse-volts";
        if (!told) {
            return inWords(
                    rule,
                    Verdict.FAIL,
                    Basis.MAKER,
                    "dc_v in the parts file",
                    "%s: %s states no direct volts; one made for alternating current may not part them.",
                    run.words(),
                    protection.words());
        }
        return atMost(
                rule,
                Verdict.FAIL,
                run.mostV(),
                protection.mostDcV(),
                "V",
                Basis.MAKER,
                "dc_v in the parts file",
                "%s: %s parts %.0f V of direct current; the volts there reach %.1f V.",
                run.words(),
                protection.words(),
                protection.mostDcV(),
                run.mostV());
    }

    static Finding interrupting(Run run, Protection protection) {
        if (Double.isNaN(protection.interruptingA())) {
            return inWords(
                    "interrupting",
                    Verdict.FAIL,
                    Basis.MAKER,
                    "interrupting_a in the parts file",
                    "%s: %s states no fault current that it can part.",
                    run.words(),
                    protection.words());
        }
        return atMost(
                "interrupting",
                Verdict.FAIL,
                run.amps().fault(),
                protection.interruptingA(),
                "A",
                Basis.PUBLISHED,
                "NFPA 70 110.9" + EDITION + "; the rating by the parts file",
                "%s: shorted, the battery gives about %.0f A; %s parts %.0f A.",
                run.words(),
                run.amps().fault(),
                protection.words(),
                protection.interruptingA());
    }

    /** One that is polarised does not part what comes from its other side. Unknown counts as polarised. */
    static Finding polarity(Run run, Breaker breaker) {
        boolean eitherWay = breaker.polarised() == Stated.NO;
        Verdict verdict = eitherWay ? Verdict.PASS : run.kind().bothWays() ? Verdict.FAIL : Verdict.CAUTION;
        return inWords(
                "breaker-polarity",
                verdict,
                Basis.COMMON_PRACTICE,
                "a polarised breaker parts current of one direction only",
                "%s: the breaker %s%s.",
                run.words(),
                eitherWay
                        ? "parts current of either direction"
                        : breaker.polarised() == Stated.YES ? "is polarised" : "does not tell whether it is polarised",
                verdict == Verdict.CAUTION
                        ? "; its marked side belongs to the battery's plus"
                        : verdict == Verdict.FAIL ? ", and here a fault may come from either end" : "");
    }

    static boolean holds(FuseHolder holder, Fuse fuse) {
        return holder.format().equalsIgnoreCase(fuse.format()) && holder.mostA() >= fuse.ratedA();
    }

    /** Nobody should have to pull a fuse, or unbolt a live cable, to still an inverter. A breaker parts by hand as well. */
    static Finding parting(Run run, Protection protection, @Nullable BatterySwitch hand) {
        boolean parted = hand != null || protection.isBreaker();
        return inWords(
                "battery-switch",
                parted ? Verdict.PASS : Verdict.CAUTION,
                Basis.COMMON_PRACTICE,
                "a switch or breaker in the inverter's cable",
                "%s: %s.",
                run.words(),
                hand != null
                        ? hand.listing().name() + " parts it by hand"
                        : parted
                                ? "its breaker parts it by hand"
                                : "no switch parts it by hand; the fuse must be pulled, with all loads off");
    }

    static boolean parts(BatterySwitch hand, Run run) {
        return hand.ratedA() >= run.amps().design() && hand.mostDcV() >= run.mostV();
    }

    /**
     * Without fuses of their own, all other strings feed into one that has failed. Two may do without: what one gives is what
     * the other bears anyway.
     *
     * @param strings side by side
     * @param mostFuseA that the panel's sheet allows; NaN where not told
     * @param shortA   of one string
     */
    static boolean needsStringFuses(int strings, double mostFuseA, double shortA) {
        if (strings <= 1) {
            return false;
        }
        double fedBackA = (strings - 1) * Runs.BRIGHT_TIMES * shortA;
        return Double.isNaN(mostFuseA) ? strings > 2 : fedBackA > mostFuseA;
    }

    static Finding stringFuse(Run run, int strings, double mostFuseA, double shortA, @Nullable Fuse fuse) {
        boolean needed = needsStringFuses(strings, mostFuseA, shortA);
        boolean kept = !needed || fuse != null;
        return inWords(
                "string-fuse",
                kept ? Verdict.PASS : Verdict.FAIL,
                Basis.PUBLISHED,
                "NFPA 70 690.9(A)" + EDITION,
                "%s: %d side by side; %.1f A of the others flow into one that fails%s.",
                run.words(),
                strings,
                Math.max(0, strings - 1) * Runs.BRIGHT_TIMES * shortA,
                needed ? fuse == null ? ", and no fuse stands between" : "; each has its fuse" : ", which it bears");
    }

    /** Plugs of panels look alike and are not: mated across makes they corrode, heat and arc. */
    static Finding connectors(Run run, String panelMake, String inputMake, PanelLead lead) {
        boolean panelKnown = !panelMake.isEmpty();
        boolean inputKnown = !inputMake.isEmpty();
        boolean anyMake = lead.connector().equals(PanelLead.ANY_MAKE);
        boolean atPanel = anyMake || !panelKnown || lead.connector().equalsIgnoreCase(panelMake);
        boolean atInput = anyMake || !inputKnown || lead.farEnd().equalsIgnoreCase(inputMake);
        boolean told = panelKnown && inputKnown && !anyMake;
        Verdict verdict = !atPanel || !atInput ? Verdict.FAIL : told ? Verdict.PASS : Verdict.CAUTION;
        String source = "NFPA 70 690.33: connectors that mate are listed for each other" + EDITION;
        return anyMake
                ? inWords(
                        MATED,
                        verdict,
                        Basis.PUBLISHED,
                        source,
                        "%s: take leads whose plugs are of the panel's own make at its end and of the input's at the other; plugs"
                                + " of different makes must not be mated, even where they fit.",
                        run.words())
                : inWords(
                        MATED,
                        verdict,
                        Basis.PUBLISHED,
                        source,
                        "%s: the panel ends in %s, the input takes %s; the lead has %s and %s. Plugs of different makes must not"
                                + " be mated, even where they fit.",
                        run.words(),
                        panelKnown ? panelMake : "plugs whose make is not told",
                        inputKnown ? inputMake : "what is not told",
                        lead.connector(),
                        lead.farEnd());
    }

    /** Both the plugs and the cable of a lead have the maker's rating. */
    static Finding plugAmps(Run run, PanelLead lead) {
        return atMost(
                "plug-amps",
                Verdict.FAIL,
                Runs.LASTING_TIMES * run.amps().lasting(),
                lead.ratedA(),
                "A",
                Basis.MAKER,
                "rated_a in the parts file, against 1.25 times the short-circuit current",
                "%s: the panels give up to %.1f A in bright light; the plugs carry %.0f A.",
                run.words(),
                Runs.LASTING_TIMES * run.amps().lasting(),
                lead.ratedA());
    }

    /** Plugs pulled under sun draw an arc. */
    static Finding panelSwitch(Run run, @Nullable BatterySwitch hand) {
        return inWords(
                "panel-switch",
                hand == null ? Verdict.CAUTION : Verdict.PASS,
                Basis.FROM_MEMORY,
                "NFPA 70 690.13, 690.33" + EDITION,
                "%s: %.0f V open when cold; %s. Never pull panel plugs in the sun: cover the panels first.",
                run.words(),
                run.mostV(),
                hand == null
                        ? "no switch of the parts file parts that"
                        : hand.listing().name() + " parts that");
    }

    static Finding cordAmps(Run run, Cord cord) {
        return atMost(
                "cord-amps",
                Verdict.FAIL,
                run.amps().lasting(),
                cord.ratedA(),
                "A",
                Basis.MAKER,
                "rated_a in the parts file",
                "%s: the load takes %.1f A, the cord carries %.0f A.",
                run.words(),
                run.amps().lasting(),
                cord.ratedA());
    }

    /** Links of unlike length share a current unlike: the nearest battery is drawn hardest and dies first. */
    static Finding links(Laying laying) {
        return inWords(
                "links-alike",
                laying.linkOtherM() == laying.linkM() ? Verdict.PASS : Verdict.FAIL,
                Basis.COMMON_PRACTICE,
                "batteries side by side share the current by the resistance of their cables",
                "Links between the batteries are %.2f m and %.2f m long%s.",
                laying.linkM(),
                laying.linkOtherM(),
                laying.linkOtherM() == laying.linkM() ? "" : "; cut all to the same length");
    }

    static List<Finding> of(Run run, Protection protection) {
        return protection.device() instanceof Breaker breaker
                ? List.of(
                        rating(run, protection),
                        directVolts(run, protection),
                        interrupting(run, protection),
                        polarity(run, breaker))
                : List.of(rating(run, protection), directVolts(run, protection), interrupting(run, protection));
    }
}
