package tideover.engine.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.part.Battery;
import tideover.engine.part.Cooler;
import tideover.engine.part.Engine;
import tideover.engine.part.InverterRating;
import tideover.engine.part.StandIn;
import tideover.engine.proof.RigFigures;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.FuelUse;
import tideover.engine.rig.Gap;
import tideover.engine.rig.Manner;
import tideover.engine.rig.Rig;
import tideover.engine.search.OfRoute;
import tideover.engine.why.Stated;

/** All ways side by side: of each kind the cheapest that meets the target, else the nearest to it. */
final class Ways {
    private Ways() {}

    /** One of each kind at most, in the order of the kinds; what costs more than the budget does not meet. */
    static List<Way> best(List<Way> ways, OptionalLong budgetCents) {
        Map<Way.Kind, Way> best = new EnumMap<>(Way.Kind.class);
        for (Way any : ways) {
            boolean tooDear = any.price().totalCents() > budgetCents.orElse(Long.MAX_VALUE);
            Way way = tooDear && any.meets() ? any.missed() : any;
            best.merge(way.kind(), way, (one, other) -> BETTER.compare(other, one) < 0 ? other : one);
        }
        return new ArrayList<>(best.values());
    }

    private static final Comparator<Way> BETTER = Comparator.comparing((Way way) -> !way.meets())
            .thenComparingDouble(way -> way.meets() ? 0 : -way.share())
            .thenComparingLong(way -> way.price().totalCents());

    /** The cheapest that meets the target; of two at one price that without power, which asks less of everybody. */
    static @Nullable Way least(List<Way> ways) {
        return ways.stream()
                .filter(Way::meets)
                .min(Comparator.comparingLong((Way way) -> way.price().totalCents())
                        .thenComparing(way -> !way.withoutPower())
                        .thenComparing(Way::kind))
                .orElse(null);
    }

    /** @param meanDegC of the store's room */
    static Way ofRig(OfRoute one, Question question, double meanDegC) {
        Rig rig = one.rated().rig();
        return new Way(
                kind(rig),
                rig.chosen(),
                one.rated().price(),
                one.rated().share(),
                one.meets(),
                figures(rig, one.rated().price().totalCents(), question, meanDegC));
    }

    static Way.Kind kind(Rig rig) {
        return switch (Manner.of(rig)) {
            case READY_BOX -> Way.Kind.READY_BOX;
            case ENCLOSURE -> Way.Kind.ENCLOSURE;
            case SEPARATE_PARTS -> Way.Kind.SEPARATE_PARTS;
            case DIRECT_CURRENT_ONLY -> Way.Kind.DIRECT_CURRENT_ONLY;
            case ENGINE_AND_BATTERY -> Way.Kind.ENGINE_AND_BATTERY;
        };
    }

    private static Way.Figures figures(Rig rig, long totalCents, Question question, double meanDegC) {
        StandbyCost cost = StandbyCost.of(rig, meanDegC);
        double standbyCents = cost != null ? cost.centsPerStandbyYear() : ownsItsBattery(rig) ? 0 : Double.NaN;
        Engine engine = rig.engine();
        FuelUse fuel = FuelUse.of(rig, question.outage());
        double litres = fuel == null ? 0 : fuel.litres();
        return new Way.Figures(
                1000 * totalCents / RigFigures.of(rig).capacityWh(),
                engine == null ? standbyCents : standbyCents + EngineStandby.centsPerYear(engine, litres),
                rig.massKg(),
                litres,
                engine == null ? 0 : engine.habits().noiseDbA(),
                engine != null,
                gapSeconds(rig, question.loads()),
                acts(rig, question.loads(), fuel));
    }

    /** What cost nothing is not bought again in this reckoning. */
    private static boolean ownsItsBattery(Rig rig) {
        List<Chosen> batteries = rig.chosen().stream()
                .filter(one -> one.part() instanceof Battery)
                .toList();
        return !batteries.isEmpty()
                && batteries.stream().allMatch(one -> one.part().listing().priceCents() == 0);
    }

    /** The longest of its essential loads: by its maker's word where it takes over by itself, else by hand. */
    private static double gapSeconds(Rig rig, List<Load> loads) {
        double seconds = 0;
        for (Load load : rig.served(loads)) {
            if (load.essential() && load.plugged()) {
                seconds = Math.max(seconds, takesOver(rig, load) ? transferSeconds(rig) : Gap.BY_HAND_SECONDS);
            }
        }
        return seconds;
    }

    private static boolean takesOver(Rig rig, Load load) {
        return load.supply().isAc() && !load.nature().hardWired() && !Double.isNaN(transferSeconds(rig));
    }

    private static double transferSeconds(Rig rig) {
        InverterRating inverter = rig.inverter();
        return inverter == null ? Double.NaN : inverter.habits().transferSeconds();
    }

    private static List<Way.Act> acts(Rig rig, List<Load> everyDay, @Nullable FuelUse fuel) {
        List<Load> loads = rig.served(everyDay);
        List<Way.Act> acts = new ArrayList<>();
        if (loads.stream().anyMatch(load -> load.essential() && load.plugged() && !takesOver(rig, load))) {
            acts.add(Way.Act.PLUG_OVER);
        }
        if (rig.panel() != null) {
            acts.add(Way.Act.PUT_PANELS_OUT);
        }
        if (rig.engine() != null && rig.engine().habits().startsItself() != Stated.YES) {
            acts.add(Way.Act.START_ENGINE);
        }
        if (fuel != null && fuel.refills() > 0) {
            acts.add(Way.Act.REFUEL);
        }
        if (rig.chosen().stream().anyMatch(one -> one.part() instanceof Cooler)) {
            acts.add(Way.Act.MOVE_FOOD);
        }
        if (loads.stream()
                .anyMatch(load -> load instanceof ColdLoad cold
                        && !cold.aids().isEmpty()
                        && cold.box().takesIceIn())) {
            acts.add(Way.Act.PUT_ICE_IN);
        }
        if (rig.chosen().stream().anyMatch(one -> one.part() instanceof StandIn)) {
            acts.add(Way.Act.TAKE_STAND_IN);
        }
        return acts;
    }
}
