package tideover.engine.rig;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.cold.BoxKind;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Contents;
import tideover.engine.cold.Food;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.part.Aid;
import tideover.engine.part.Cooler;
import tideover.engine.part.Jug;
import tideover.engine.part.Part;
import tideover.engine.part.StandIn;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/**
 * What helps without power: jugs of ice, coolers, and things that stand in for loads. They change the loads, not the rig: a rig is
 * asked to serve what they leave to it.
 */
public final class Aids {
    /** More stand-ins are not tried together. */
    public static final int MOST_STAND_INS = 4;

    /** So many sets of aids are looked at, that of none among them. */
    public static final int MOST_SETS = 32;

    /** So that filling up to the brim is not refused for a rounding error. */
    private static final double ROUNDING = 1e-9;

    private Aids() {}

    /** Those among some parts. */
    public static List<Chosen> in(List<Chosen> chosen) {
        return chosen.stream().filter(one -> one.part() instanceof Aid).toList();
    }

    /**
     * Loads as they are with the aids among some parts: each jug and cooler acts on the first load that it suits and has room for,
     * each stand-in takes its load away. Loads that have these aids already stay as they are.
     */
    public static List<Load> served(List<Chosen> chosen, List<Load> loads) {
        List<Load> served = loads;
        for (Chosen one : chosen) {
            if (one.part() instanceof Aid aid) {
                served = served(aid, one.count(), served);
            }
        }
        return served;
    }

    private static List<Load> served(Aid aid, int count, List<Load> loads) {
        int place = place(aid, count, loads);
        if (place < 0 || isAided(aid, loads)) {
            return loads;
        }
        List<Load> changed = new ArrayList<>(loads);
        if (aid instanceof StandIn) {
            changed.remove(place);
        } else if (loads.get(place) instanceof ColdLoad cold) {
            changed.set(place, aid instanceof Cooler cooler ? moved(cold, cooler) : iced(cold, (Jug) aid, count));
        }
        return List.copyOf(changed);
    }

    private static boolean isAided(Aid aid, List<Load> loads) {
        return loads.stream()
                .anyMatch(load -> load instanceof ColdLoad cold
                        && cold.aids().contains(aid.listing().id()));
    }

    /** The load that so many of an aid act on; -1 where there is none, or no room. */
    private static int place(Aid aid, int count, List<Load> loads) {
        for (int place = 0; place < loads.size(); place++) {
            if (aid.suits(loads.get(place)) && fits(aid, count, loads.get(place))) {
                return place;
            }
        }
        return -1;
    }

    private static boolean fits(Aid aid, int count, Load load) {
        if (aid instanceof StandIn || !(load instanceof ColdLoad cold)) {
            return true;
        }
        return aid instanceof Cooler cooler
                ? count == 1 && cooler(cold, cooler).fill() <= 1 + ROUNDING
                : iced(cold.box(), count * ((Jug) aid).iceKg()).fill() <= 1 + ROUNDING;
    }

    private static ColdLoad iced(ColdLoad load, Jug jug, int count) {
        return load.aided(jug.listing().id(), iced(load.box(), count * jug.iceKg()));
    }

    /** With so much more ice. */
    private static ColdBox iced(ColdBox box, double kg) {
        double before = box.contents().size() > 1 ? box.contents().get(1).kg() : 0;
        return box.withIce(before + kg);
    }

    private static ColdLoad moved(ColdLoad load, Cooler cooler) {
        return load.movedInto(cooler.listing().id(), cooler(load, cooler));
    }

    private static ColdBox cooler(ColdLoad load, Cooler cooler) {
        return ColdBox.ofWalls(
                        BoxKind.COOLER,
                        cooler.litres(),
                        cooler.wallWPerK(),
                        null,
                        null,
                        List.of(load.box().food(), Contents.of(Food.WATER, cooler.iceKg())))
                .withOpenings(load.box().openingsPerDay());
    }

    /** How long into an outage all that stands in goes on standing in, h; infinite without any. */
    public static double lastHours(List<Chosen> chosen) {
        double hours = Double.POSITIVE_INFINITY;
        for (Chosen one : chosen) {
            if (one.part() instanceof StandIn standIn) {
                hours = Math.min(hours, one.count() * standIn.lastsHours());
            }
        }
        return hours;
    }

    /**
     * Every set that may stand beside a rig or alone: no jugs or some of one kind, a cooler or none, and stand-ins, as many of each
     * as last through the outage. The first is the empty one. Of more than {@link #MOST_SETS} the first are given.
     *
     * @param mostJugs   of one kind
     * @param outageHours that stand-ins must last
     */
    public static List<List<Chosen>> sets(
            List<? extends Part> parts, List<Load> loads, int mostJugs, double outageHours) {
        List<List<Chosen>> all = allSets(parts, loads, mostJugs, outageHours);
        return all.size() <= MOST_SETS ? all : List.copyOf(all.subList(0, MOST_SETS));
    }

    /** How many sets there would be. */
    public static int countSets(List<? extends Part> parts, List<Load> loads, int mostJugs, double outageHours) {
        return allSets(parts, loads, mostJugs, outageHours).size();
    }

    private static List<List<Chosen>> allSets(
            List<? extends Part> parts, List<Load> loads, int mostJugs, double outageHours) {
        List<List<Chosen>> cold = new ArrayList<>();
        cold.add(List.of());
        for (Part part : parts) {
            if (part instanceof Jug jug) {
                int most = Math.min(mostJugs, jug.listing().atHand());
                for (int count = 1; count <= most && place(jug, count, loads) >= 0; count++) {
                    cold.add(List.of(new Chosen(jug, count)));
                }
            }
        }
        List<List<Chosen>> cooled = new ArrayList<>(cold);
        for (Part part : parts) {
            if (part instanceof Cooler cooler) {
                for (List<Chosen> set : cold) {
                    if (place(cooler, 1, served(set, loads)) >= 0) {
                        cooled.add(with(set, new Chosen(cooler, 1)));
                    }
                }
            }
        }
        return withStandIns(parts, loads, outageHours, cooled);
    }

    private static List<List<Chosen>> withStandIns(
            List<? extends Part> parts, List<Load> loads, double outageHours, List<List<Chosen>> before) {
        List<List<Chosen>> all = new ArrayList<>(before);
        int taken = 0;
        for (Part part : parts) {
            if (!(part instanceof StandIn standIn) || place(standIn, 1, loads) < 0 || taken == MOST_STAND_INS) {
                continue;
            }
            double wanted = Math.ceil(outageHours / standIn.lastsHours() - ROUNDING);
            if (wanted > standIn.listing().atHand()) {
                continue;
            }
            taken++;
            for (List<Chosen> set : List.copyOf(all)) {
                if (place(standIn, 1, served(set, loads)) >= 0) {
                    all.add(with(set, new Chosen(standIn, (int) Math.max(1, wanted))));
                }
            }
        }
        return all;
    }

    private static List<Chosen> with(List<Chosen> set, Chosen more) {
        List<Chosen> all = new ArrayList<>(set);
        all.add(more);
        return List.copyOf(all);
    }

    /**
     * Whether each of them does anything, and long enough.
     *
     * @param loads as they are every day
     */
    public static List<Finding> findings(List<Chosen> chosen, List<Load> loads, double outageHours) {
        List<Finding> found = new ArrayList<>();
        List<Load> served = loads;
        for (Chosen one : in(chosen)) {
            Aid aid = (Aid) one.part();
            if (place(aid, one.count(), served) < 0) {
                found.add(Finding.inWords(
                        "aid-place",
                        Verdict.FAIL,
                        Basis.YOURS,
                        "the plan, parts file",
                        "%s finds nothing to do: no load of the plan is what it is for (%s), or there is no room for it.",
                        one.words(),
                        aid.forLoad()));
            }
            if (aid instanceof StandIn standIn) {
                found.add(Finding.atLeast(
                        "stand-in-hours",
                        Verdict.FAIL,
                        one.count() * standIn.lastsHours(),
                        outageHours,
                        "h",
                        Basis.YOURS,
                        "parts file",
                        "%s stands in for %s through %.0f h of the outage's %.0f h.",
                        one.words(),
                        standIn.forLoad(),
                        one.count() * standIn.lastsHours(),
                        outageHours));
            }
            served = served(aid, one.count(), served);
        }
        return found;
    }
}
