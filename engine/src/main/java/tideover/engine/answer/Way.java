package tideover.engine.answer;

import java.util.List;
import java.util.stream.Collectors;
import tideover.engine.quantity.Require;
import tideover.engine.rig.Chosen;
import tideover.engine.wiring.Price;

/**
 * One way to get through: a rig, an engine by itself, cold that needs no power, or nothing at all. All are judged on the same
 * outages and stand in one table.
 *
 * @param chosen what is bought or taken from the shelf, in the order it was chosen; empty for nothing
 * @param share  of outages in which every essential need is kept, 0..1
 * @param meets  whether it meets the target and was confirmed
 * @param expectedLossCents what spoils in the mean outage, by what the plan says that the contents of cold boxes are worth; NaN where
 *                          the plan tells no worth, or the way is not asked
 */
public record Way(
        Kind kind,
        List<Chosen> chosen,
        Price price,
        double share,
        boolean meets,
        Figures figures,
        double expectedLossCents) {
    public Way(Kind kind, List<Chosen> chosen, Price price, double share, boolean meets, Figures figures) {
        this(kind, chosen, price, share, meets, figures, Double.NaN);
    }

    /** What kind of way it is; the table keeps this order. */
    public enum Kind {
        READY_BOX("ready-made box"),
        ENCLOSURE("enclosure with a battery dropped in"),
        SEPARATE_PARTS("separate parts"),
        DIRECT_CURRENT_ONLY("direct current only, no inverter"),
        ENGINE_AND_BATTERY("engine a few hours a day, and a battery"),
        ENGINE_ALONE("engine alone"),
        VEHICLE("vehicle, outdoors"),
        COLD_ALONE("no battery: jugs, coolers and stand-ins"),
        NOTHING("nothing");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** What somebody must do as the outage begins or goes on; a way without any works by itself. */
    public enum Act {
        PLUG_OVER("plug over"),
        SWITCH_ON("switch on"),
        PUT_PANELS_OUT("put panels out"),
        START_ENGINE("start the engine"),
        REFUEL("refuel"),
        MOVE_FOOD("move food to the cooler"),
        PUT_ICE_IN("put ice in"),
        TAKE_STAND_IN("use what stands in"),
        READ_THERMOMETER("read the thermometer"),
        THROW_OUT("throw out what spoiled");

        private final String words;

        Act(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * What else is asked of it.
     *
     * @param centsPerUsableKWh    price now over what it gives from full down to its depth; NaN where it holds no electricity
     * @param standbyCentsPerYear  what it costs a year to have it ready and hardly use it: ageing of battery and fuel; NaN where that
     *                             cannot be told
     * @param fuelL                burnt in one outage at most; 0 for none
     * @param noiseDbA             as its maker tells; 0 where nothing sounds, NaN where it is not told
     * @param fumes                whether something burns, so that it stands outdoors
     * @param gapSeconds           without power as the outage begins; 0 where nothing waits for power, NaN where nobody tells
     */
    public record Figures(
            double centsPerUsableKWh,
            double standbyCentsPerYear,
            double massKg,
            double fuelL,
            double noiseDbA,
            boolean fumes,
            double gapSeconds,
            List<Act> acts) {
        public Figures {
            Require.atLeast(0, "massKg", massKg, "kg");
            Require.atLeast(0, "fuelL", fuelL, "L");
            acts = List.copyOf(acts);
        }
    }

    public Way {
        Require.within(0, 1, "share", share, "");
        chosen = List.copyOf(chosen);
    }

    /** The same where it does not meet what is asked after all. */
    Way missed() {
        return new Way(kind, chosen, price, share, false, figures, expectedLossCents);
    }

    /** Whether it is a rig, with a battery; else an engine, a vehicle, or nothing to plug into. */
    public boolean hasRig() {
        return kind.compareTo(Kind.ENGINE_AND_BATTERY) <= 0;
    }

    /** Whether it has no rig and no engine: nothing to plug into. */
    public boolean withoutPower() {
        return kind == Kind.COLD_ALONE || kind == Kind.NOTHING;
    }

    /** What is bought or taken, by name. */
    public String words() {
        return chosen.isEmpty()
                ? "nothing to plug into"
                : chosen.stream().map(Chosen::words).collect(Collectors.joining(", "));
    }
}
