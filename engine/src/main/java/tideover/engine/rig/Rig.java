package tideover.engine.rig;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.Battery;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Engine;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
import tideover.engine.part.PlainStore;
import tideover.engine.part.Store;
import tideover.engine.quantity.Require;

/**
 * One complete answer: parts wired as a system. Made by {@link Assembly}, which sees to it that the parts make sense
 * together; whether they suit each other's limits is for {@link RuleBook}.
 *
 * @param chosen     what is bought or taken from the shelf, in the order it was chosen
 * @param store          the whole bank at its terminals
 * @param storesInSeries how many of its batteries stand in a row; 1 for a box
 * @param panel          the kind of panel, or null where there is none
 * @param panelCount     how many, on one controller input
 * @param panelsInSeries how many of them make a string
 * @param controller     null where the sun cannot be used
 * @param inverter       null where there is direct current only
 * @param mainsCharge    null where nothing charges the store from the mains or an engine
 * @param engine         its own, outdoors, started in the hours of the plan to feed {@code mainsCharge}; null where it has none
 * @param leads          what its cables do; a guess by the way of building until the rig has been wired
 */
public record Rig(
        Route route,
        List<Chosen> chosen,
        Store store,
        int storesInSeries,
        @Nullable Panel panel,
        int panelCount,
        int panelsInSeries,
        @Nullable ControllerRating controller,
        @Nullable InverterRating inverter,
        @Nullable MainsCharge mainsCharge,
        @Nullable Engine engine,
        List<Outlet> outlets,
        Leads leads) {
    /** Inverters let go at about so much of their nominal volts, 10.5 V for 12 V. Common practice, no source. */
    public static final double USUAL_OFF_SHARE = 0.875;

    /**
     * What a charger puts into the store.
     *
     * @param watts      at the store's nominal volts
     * @param efficiency out per in
     * @param fromMains  whether the mains feed it; else only a socket of direct current does
     * @param engineW    what the rig's own engine gives it at most, W; 0 without one
     */
    public record MainsCharge(double watts, double efficiency, boolean fromMains, double engineW) {
        public MainsCharge(double watts, double efficiency) {
            this(watts, efficiency, true, 0);
        }

        /** Taken from what feeds it, at full current, W. */
        public double drawnW() {
            return watts / efficiency;
        }
    }

    /**
     * Cables, as the proof knows them.
     *
     * @param ohm        between the store and what hangs on it, both ways with fuse and joints
     * @param sunLoss    share of what the panels give that is lost on the way to their controller, 0..1, as it is in full sun;
     *                   in weak light less is lost
     */
    public record Leads(double ohm, double sunLoss) {
        public Leads {
            Require.atLeast(0, "ohm", ohm, "ohm");
            Require.within(0, 0.5, "sunLoss", sunLoss, "");
        }
    }

    public Rig {
        chosen = List.copyOf(chosen);
        outlets = List.copyOf(outlets);
    }

    /**
     * No rig: nothing to plug into, but for some aids. To ask what keeps by itself; nothing that follows the clock may be essential
     * then, for only what keeps a temperature or a level can be kept without power.
     */
    public static Rig nothing(List<Chosen> aids) {
        return new Rig(
                Route.SEPARATE_PARTS,
                aids,
                new PlainStore(1, 1, 1, 12, 1, 1),
                1,
                null,
                0,
                1,
                null,
                null,
                null,
                null,
                List.of(),
                new Leads(0, 0));
    }

    /** With another store in the same place. */
    public Rig with(Store changed) {
        return new Rig(
                route,
                chosen,
                changed,
                storesInSeries,
                panel,
                panelCount,
                panelsInSeries,
                controller,
                inverter,
                mainsCharge,
                engine,
                outlets,
                leads);
    }

    public Rig with(InverterRating changed) {
        return new Rig(
                route,
                chosen,
                store,
                storesInSeries,
                panel,
                panelCount,
                panelsInSeries,
                controller,
                changed,
                mainsCharge,
                engine,
                outlets,
                leads);
    }

    /** With what its cables turned out to do. */
    public Rig wired(Leads leads) {
        return new Rig(
                route,
                chosen,
                store,
                storesInSeries,
                panel,
                panelCount,
                panelsInSeries,
                controller,
                inverter,
                mainsCharge,
                engine,
                outlets,
                leads);
    }

    /** Loads as they are with the aids among its parts: what is left to it. Asked again of these it gives the same. */
    public List<Load> served(List<Load> loads) {
        return Aids.served(chosen, loads);
    }

    public double busV() {
        return store.nominalV();
    }

    /** Strings side by side; 0 without panels. */
    public int panelStrings() {
        return panelCount / panelsInSeries;
    }

    /**
     * Volts at its terminals below which the inverter switches off; a usual share of its nominal ones where the maker does
     * not tell, 0 without an inverter.
     */
    public double inverterOffV() {
        if (inverter == null) {
            return 0;
        }
        double toldV = inverter.window().cutOffV();
        return Double.isNaN(toldV) ? USUAL_OFF_SHARE * inverter.inputV() : toldV;
    }

    /** Ohm of the cables between the store and what hangs on it. */
    public double leadOhm() {
        return leads.ohm();
    }

    /** Controller output per watt that the panels give, what is lost on their leads included; 1 without a controller. */
    public double sunEfficiency() {
        return controller == null ? 1 : controller.efficiency() * (1 - leads.sunLoss());
    }

    /** Rows of batteries side by side; 1 for a box. */
    public int storeRows() {
        return Assembly.batteriesIn(this) / storesInSeries;
    }

    public double arrayRatedW() {
        return panel == null ? 0 : panel.ratedW() * panelCount;
    }

    /** Whether anything but the sun feeds it in such an outage. */
    public boolean isHelped(Outage outage) {
        return outage.isHelped() || engine != null;
    }

    /** What an engine charges it through in such an outage, its own or a borrowed one; null where there is none of either. */
    public @Nullable MainsCharge engineCharge(Outage outage) {
        return engine == null && outage.help().isEmpty() ? null : mainsCharge;
    }

    /** Such as "2xP100+BX500": the same parts always make the same id. */
    public String id() {
        return chosen.stream()
                .map(c -> (c.count() == 1 ? "" : c.count() + "x")
                        + c.part().listing().id())
                .collect(Collectors.joining("+"));
    }

    /** Its parts by name, such as "Foo box, 2 x Bar panel". */
    public String words() {
        return chosen.stream().map(Chosen::words).collect(Collectors.joining(", "));
    }

    public double massKg() {
        double kg = 0;
        for (Chosen c : chosen) {
            kg += c.count() * c.part().listing().massKg();
        }
        return kg;
    }

    /** The heaviest single thing that somebody must lift, kg. */
    public double heaviestKg() {
        double kg = 0;
        for (Chosen c : chosen) {
            kg = Math.max(kg, c.part().listing().massKg());
        }
        return kg;
    }

    /** The enclosure with the batteries that stand in it, kg; 0 where there is none. */
    double movedWholeKg() {
        double kg = 0;
        for (Chosen c : chosen) {
            kg += c.part() instanceof Enclosure || c.part() instanceof Battery
                    ? c.count() * c.part().listing().massKg()
                    : 0;
        }
        return route == Route.ENCLOSURE ? kg : 0;
    }

    /** The heaviest thing that somebody must move, once it is put together, kg. */
    public double heaviestMovedKg() {
        return Math.max(heaviestKg(), movedWholeKg());
    }
}
