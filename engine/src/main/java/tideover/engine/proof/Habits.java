package tideover.engine.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import tideover.engine.cold.ColdBox;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Duty;
import tideover.engine.load.Load;
import tideover.engine.quantity.PlainNumber;

/**
 * What the owner of a cold box could do otherwise, each walked in full: run it by the sun or the clock, fill its room with frozen
 * jugs, cool it down before a storm, leave its door shut. None of it has to be bought.
 */
final class Habits {
    /** So much of a box's free room may be filled with jugs. */
    private static final double JUGS_SHARE_OF_ROOM = 0.8;

    /** Colder than its setting by so much before a forecast storm; common practice, no source. */
    private static final double CHILLED_BY_K = 6;

    private static final double LEAST_JUGS_KG = 1;

    private final Prover prover;
    private final List<Load> loads;
    private final Function<List<Load>, Setup> setups;
    private final int capHours;
    private final double[] before;
    private final double[] beforeInStorm;
    private final List<Lift> habits = new ArrayList<>();

    private Habits(Prover prover, List<Load> loads, Function<List<Load>, Setup> setups, int capHours) {
        this.prover = prover;
        this.loads = loads;
        this.setups = setups;
        this.capHours = capHours;
        Setup base = setups.apply(loads);
        this.before = prover.score(base, capHours);
        this.beforeInStorm = prover.stormScore(base.inStorm(true));
    }

    /**
     * Greatest gain first. What is done ahead of a storm is counted on storm starts alone, everything else on all.
     *
     * @param setups walks the same rig with other loads
     */
    static List<Lift> of(Prover prover, List<Load> loads, Function<List<Load>, Setup> setups, int capHours) {
        if (loads.stream().noneMatch(ColdLoad.class::isInstance)) {
            return List.of();
        }
        Habits habits = new Habits(prover, loads, setups, capHours);
        for (Load load : loads) {
            if (load instanceof ColdLoad cold) {
                habits.of(cold);
            }
        }
        habits.habits.sort(Comparator.comparingDouble(Lift::shareGain)
                .thenComparingDouble(Lift::meanHoursGain)
                .reversed());
        return habits.habits;
    }

    private void of(ColdLoad load) {
        ColdBox box = load.box();
        if (box.compressor() != null && box.mayWait()) {
            duty(load, Duty.AS_IT_NEEDS, "let it run whenever it needs to");
            duty(load, Duty.WHILE_SUNNY, "run it only while the panels give half of what it draws");
            duty(load, Duty.inHours(List.of(new DayWindow(10, 14))), "run it only from 10:00 to 14:00");
        }
        double roomKg = box.litres() * (1 - box.fill()) * JUGS_SHARE_OF_ROOM;
        double kg = Math.floor(roomKg);
        if (box.kind().freezes() && box.contents().size() == 1 && kg >= LEAST_JUGS_KG) {
            add(
                    load.name() + ": frozen jugs",
                    String.format(Locale.ROOT, "%s kg of water frozen in jugs in its empty room", PlainNumber.of(kg)),
                    load.with(box.withIce(kg)));
        }
        if (box.compressor() != null && box.kind().freezes() && Double.isNaN(load.chilledToDegC())) {
            double chilledDegC = box.setDegC() - CHILLED_BY_K;
            addInStorm(
                    load.name() + ": cooled before a storm",
                    String.format(
                            Locale.ROOT, "cooled down to %s degC before a forecast storm", PlainNumber.of(chilledDegC)),
                    load.chilledTo(chilledDegC));
        }
        if (box.openingsPerDay() > 0) {
            add(load.name() + ": door shut", "its door never opened", load.with(box.withOpenings(0)));
        }
    }

    private void duty(ColdLoad load, Duty duty, String words) {
        if (!load.duty().equals(duty)) {
            add(load.name() + ": hours", words, load.with(duty));
        }
    }

    private void add(String limit, String words, ColdLoad changed) {
        double[] after = prover.score(setups.apply(with(changed)), capHours);
        habits.add(new Lift(limit, words, after[0] - before[0], after[1] - before[1]));
    }

    private void addInStorm(String limit, String words, ColdLoad changed) {
        double[] after = prover.stormScore(setups.apply(with(changed)).inStorm(true));
        habits.add(
                new Lift(limit, words + " (storm starts)", after[0] - beforeInStorm[0], after[1] - beforeInStorm[1]));
    }

    private List<Load> with(ColdLoad changed) {
        return loads.stream()
                .map(load -> load.name().equals(changed.name()) ? changed : load)
                .toList();
    }
}
