package tideover.engine.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tideover.engine.electronics.ConductorSize;
import tideover.engine.part.BatterySwitch;
import tideover.engine.part.Breaker;
import tideover.engine.part.Cable;
import tideover.engine.part.Fuse;
import tideover.engine.part.FuseHolder;
import tideover.engine.part.Lug;
import tideover.engine.part.SmallPart;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * Chooses cable and protection for a run that begins at a battery: of all pairs in which no rule of wiring is broken the one
 * that costs least by its share of what is bought, then the thinner cable, then the smaller rating.
 */
final class Picker {
    /** Cut for bends and second tries. Common practice, no source. */
    static final double SLACK = 1.1;

    /** Ends at the battery: plus into the fuse, out of the fuse, and minus. */
    private static final int BATTERY_LUGS = 4;

    private static final int SWITCH_LUGS = 2;

    private static final String AMPACITY = "wire-ampacity";

    private static final double[] NOTHING = {0, 0};

    /** NFPA 70 310.10(G), from memory: conductors side by side for one pole from 1/0 AWG on, which is 53.5 mm2. */
    private static final double LEAST_DOUBLED_MM2 = 53;

    private final Laying laying;
    private final List<Laid> laid = new ArrayList<>();
    private final List<Fuse> fuses;
    private final List<Breaker> breakers;
    private final List<FuseHolder> holders;
    private final List<BatterySwitch> switches;
    /** Cheapest first. */
    private final Map<ConductorSize, List<Lug>> lugs = new HashMap<>();

    private final Map<Laid, double[]> allowedA = new HashMap<>();

    Picker(Stock stock, Laying laying) {
        this.laying = laying;
        List<Cable> cables = stock.of(Cable.class);
        fuses = stock.of(Fuse.class);
        breakers = stock.of(Breaker.class);
        holders = stock.of(FuseHolder.class);
        switches = stock.of(BatterySwitch.class);
        for (Lug lug : stock.of(Lug.class)) {
            lugs.computeIfAbsent(lug.size(), size -> new ArrayList<>()).add(lug);
        }
        lugs.values().forEach(alike -> alike.sort(Comparator.comparingDouble(Picker::unitCents)));
        for (Cable cable : cables) {
            laid.add(new Laid(cable, 1));
            if (cable.size().areaMm2() >= LEAST_DOUBLED_MM2) {
                laid.add(new Laid(cable, 2));
            }
        }
        for (Laid one : laid) {
            allowedA.put(one, new double[] {allowedA(one, 60), allowedA(one, 75)});
        }
    }

    /** A cable for each pole, or two side by side for each. */
    private record Laid(Cable cable, int parallel) {}

    private double allowedA(Laid one, int terminalColumnDegC) {
        Cable cable = one.cable();
        int together = Math.max(laying.sideBySide(), 2 * one.parallel());
        return one.parallel()
                * Ampacity.allowedA(
                        cable.size(), cable.insulationDegC(), laying.hottestDegC(), together, terminalColumnDegC);
    }

    /** Cents for a piece, or a metre. */
    static double unitCents(SmallPart part) {
        return part.listing().priceCents() / part.perPrice();
    }

    /** What came of a choice: a wired run, or what is missing. */
    record Pick(@Nullable WiredRun wired, @Nullable Finding missing) {}

    /**
     * What protects a run, with what it costs for all alike runs together.
     *
     * @param protection null where something else protects it
     * @param ratedA     of what protects it
     */
    private record Option(
            @Nullable Protection protection,
            double ratedA,
            @Nullable BatterySwitch parting,
            double cents) {}

    /**
     * A run with its own protection.
     *
     * @param row  the cables within a row of batteries where the same protects them; else null
     * @param gone what has been used up elsewhere
     */
    Pick pick(Run run, @Nullable Run row, Set<SmallPart> gone) {
        Map<String, Integer> refused = new TreeMap<>();
        List<Option> options = options(run, gone, refused);
        if (options.isEmpty()) {
            return new Pick(null, missing("no-protection", run, "no fuse or breaker suits", refused));
        }
        if (row != null) {
            options = withRow(options, row, gone);
        }
        options.sort(Comparator.comparingDouble(Option::cents).thenComparingDouble(Option::ratedA));
        return cheapest(run, options, gone);
    }

    /** Batteries in a row: one cable from each to the next, as strong as whatever protects the row, {@code protectedA}. */
    Pick pickSeries(Run run, double protectedA, Set<SmallPart> gone) {
        return cheapest(run, List.of(new Option(null, protectedA, null, 0)), gone);
    }

    /**
     * The cables within a row are as strong as what protects it, so their cents belong to that choice. What no cable bears is
     * left out, unless there is nothing else: then the row's own finding tells.
     */
    private List<Option> withRow(List<Option> options, Run row, Set<SmallPart> gone) {
        Map<Double, Double> rowCents = new HashMap<>();
        List<Option> borne = new ArrayList<>();
        for (Option option : options) {
            double behindA = Math.max(row.amps().design(), option.ratedA());
            double more = rowCents.computeIfAbsent(behindA, amps -> {
                WiredRun cables = pickSeries(row, amps, gone).wired();
                return cables == null ? Double.POSITIVE_INFINITY : cents(cables);
            });
            if (Double.isFinite(more)) {
                borne.add(new Option(option.protection(), option.ratedA(), option.parting(), option.cents() + more));
            }
        }
        return borne.isEmpty() ? options : borne;
    }

    private static double cents(WiredRun wired) {
        return wired.needs().keySet().stream()
                .mapToDouble(part -> cents(wired, part))
                .sum();
    }

    /** @param options cheapest first */
    private Pick cheapest(Run run, List<Option> options, Set<SmallPart> gone) {
        int column = Ampacity.terminalColumn(run.amps().design()) == 60 ? 0 : 1;
        Map<String, Integer> refused = new TreeMap<>();
        WiredRun best = null;
        double bestCents = Double.POSITIVE_INFINITY;
        for (Laid one : laid) {
            Cable cable = one.cable();
            List<Lug> alike = lugs.getOrDefault(cable.size(), List.of());
            Lug lug = alike.stream()
                    .filter(able -> !gone.contains(able))
                    .findFirst()
                    .orElse(null);
            if (lug == null || gone.contains(cable)) {
                refused.merge(alike.isEmpty() ? "no lug of its size" : "used up", 1, Integer::sum);
                continue;
            }
            double mayA = allowedA.getOrDefault(one, NOTHING)[column];
            String why = "";
            double enoughCents = Double.POSITIVE_INFINITY;
            for (Option option : options) {
                if (option.cents() >= enoughCents) {
                    break;
                }
                // Told apart before anything is built: most pairs end here.
                if (option.ratedA() > mayA) {
                    why = why.isEmpty() && Double.isInfinite(enoughCents) ? AMPACITY : why;
                    continue;
                }
                WiredRun wired = wired(run, one, lug, mayA, option);
                Finding broken = firstBroken(wired.findings());
                if (broken != null) {
                    why = Double.isInfinite(enoughCents) ? broken.rule() : why;
                    continue;
                }
                double cents = option.cents() + cents(wired, cable) + cents(wired, lug);
                if (best == null || cents < bestCents || (cents == bestCents && simpler(wired, best))) {
                    best = wired;
                    bestCents = cents;
                }
                why = "";
                if (option.parting() == null) {
                    break;
                }
                // One that costs more may still be the cheaper: it saves the lugs of a switch.
                enoughCents = Math.min(
                        enoughCents, option.cents() + SWITCH_LUGS * run.count() * one.parallel() * unitCents(lug));
            }
            if (!why.isEmpty()) {
                refused.merge(why, 1, Integer::sum);
            }
        }
        return best == null
                ? new Pick(null, missing("no-cable", run, "no cable suits", refused))
                : new Pick(best, null);
    }

    private static boolean simpler(WiredRun one, WiredRun other) {
        int bySize = one.size().compareTo(other.size());
        return bySize < 0 || (bySize == 0 && ratedA(one) < ratedA(other));
    }

    private static double ratedA(WiredRun wired) {
        Protection protection = wired.protection();
        return protection == null ? 0 : protection.ratedA();
    }

    private static double cents(WiredRun wired, SmallPart part) {
        return wired.needs().getOrDefault(part, 0.0) * unitCents(part);
    }

    static @Nullable Finding firstBroken(List<Finding> findings) {
        for (Finding finding : findings) {
            if (finding.verdict() == Verdict.FAIL) {
                return finding;
            }
        }
        return null;
    }

    private List<Option> options(Run run, Set<SmallPart> gone, Map<String, Integer> refused) {
        List<Option> options = new ArrayList<>();
        BatterySwitch hand = run.kind() == Run.Kind.INVERTER ? parting(run, gone) : null;
        double handCents = hand == null ? 0 : unitCents(hand);
        for (Fuse fuse : fuses) {
            FuseHolder holder = holder(fuse, gone);
            if (holder == null || gone.contains(fuse)) {
                refused.merge(holder == null ? "no holder" : "used up", 1, Integer::sum);
                continue;
            }
            Protection protection = new Protection(fuse, holder);
            if (passes(run, protection, refused)) {
                double cents = run.count() * (unitCents(fuse) + unitCents(holder)) + handCents;
                options.add(new Option(protection, fuse.ratedA(), hand, cents));
            }
        }
        for (Breaker breaker : breakers) {
            Protection protection = new Protection(breaker, null);
            if (!gone.contains(breaker) && passes(run, protection, refused)) {
                options.add(new Option(protection, breaker.ratedA(), null, run.count() * unitCents(breaker)));
            }
        }
        return options;
    }

    private static boolean passes(Run run, Protection protection, Map<String, Integer> refused) {
        Finding broken = firstBroken(WireRules.of(run, protection));
        if (broken != null) {
            refused.merge(broken.rule(), 1, Integer::sum);
        }
        return broken == null;
    }

    private @Nullable FuseHolder holder(Fuse fuse, Set<SmallPart> gone) {
        return holders.stream()
                .filter(holder -> WireRules.holds(holder, fuse) && !gone.contains(holder))
                .min(Comparator.comparingDouble(Picker::unitCents))
                .orElse(null);
    }

    private @Nullable BatterySwitch parting(Run run, Set<SmallPart> gone) {
        return switches.stream()
                .filter(one -> WireRules.parts(one, run) && !gone.contains(one))
                .min(Comparator.comparingDouble(Picker::unitCents))
                .orElse(null);
    }

    private static WiredRun wired(Run run, Laid laid, Lug lug, double mayA, Option option) {
        Cable cable = laid.cable();
        Protection protection = option.protection();
        Map<SmallPart, Double> needs = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        needs.put(cable, run.count() * laid.parallel() * 2 * run.oneWayM() * SLACK);
        int ends = 2;
        double ohm = Resistance.ofPair(cable.size(), run.oneWayM()) / laid.parallel();
        double dropV = run.amps().lasting() * ohm;
        if (protection != null) {
            ends = BATTERY_LUGS + run.kind().deviceLugs();
            ohm += Resistance.of(protection);
            needs.put(protection.device(), (double) run.count());
            if (protection.holder() != null) {
                needs.put(protection.holder(), (double) run.count());
            }
            findings.addAll(WireRules.of(run, protection));
            if (run.kind() == Run.Kind.INVERTER) {
                findings.add(WireRules.parting(run, protection, option.parting()));
            }
        }
        if (option.parting() != null) {
            needs.put(option.parting(), 1.0);
            ends += SWITCH_LUGS;
        }
        needs.put(lug, (double) run.count() * laid.parallel() * ends);
        ohm += ends * Resistance.JOINT_OHM;
        double sagV = run.amps().moment() * ohm;
        findings.add(WireRules.metal(run, cable));
        findings.add(WireRules.ampacity(run, cable.listing().name(), option.ratedA(), mayA));
        findings.add(WireRules.drop(run, dropV));
        if (run.amps().moment() > 0) {
            findings.add(WireRules.sag(run, sagV));
        }
        return new WiredRun(
                run,
                cable,
                cable.size(),
                laid.parallel(),
                mayA,
                protection,
                option.parting(),
                dropV,
                sagV,
                ohm,
                needs,
                findings);
    }

    static Finding missing(String rule, Run run, String what, Map<String, Integer> refused) {
        List<String> why = new ArrayList<>();
        refused.forEach((reason, count) -> why.add(count + " by " + reason));
        return Finding.inWords(
                rule,
                Verdict.FAIL,
                Basis.YOURS,
                "small parts of the plan",
                "%s: %s%s (%.1f A lasting, %.0f A if shorted, %.1f m one way).",
                run.words(),
                what,
                why.isEmpty() ? "" : "; refused: " + String.join(", ", why),
                run.amps().lasting(),
                run.amps().fault(),
                run.oneWayM());
    }
}
