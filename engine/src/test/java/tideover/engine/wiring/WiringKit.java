package tideover.engine.wiring;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import tideover.engine.Invented;
import tideover.engine.battery.Chemistry;
import tideover.engine.electronics.ConductorSize;
import tideover.engine.electronics.InverterLoss;
import tideover.engine.electronics.Tracking;
import tideover.engine.electronics.Wave;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.Start;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.part.Battery;
import tideover.engine.part.BatterySwitch;
import tideover.engine.part.Breaker;
import tideover.engine.part.Busbar;
import tideover.engine.part.Cable;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Condition;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.ControllerRating.PanelInput;
import tideover.engine.part.Cord;
import tideover.engine.part.Fitting;
import tideover.engine.part.Fuse;
import tideover.engine.part.FuseHolder;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Listing;
import tideover.engine.part.Lug;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
import tideover.engine.part.PanelBranch;
import tideover.engine.part.PanelLead;
import tideover.engine.part.Part;
import tideover.engine.part.RatedStore;
import tideover.engine.part.SmallPart;
import tideover.engine.part.Surge;
import tideover.engine.part.Tool;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.site.RoomKind;
import tideover.engine.sun.PanelSheet;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/** Invented small parts in every gauge and kind, and a rig to wire with them, so that a test spoils the one thing it is about. */
public final class WiringKit {
    static final String STRIP = "strip";
    static final String CLASS_T = "class T";
    static final String CYLINDER = "cylinder 10x38";
    static final String INLINE = SunPicker.PANEL_INLINE;
    static final String MAKE = "make one";
    static final String OTHER_MAKE = "make two";
    static final String PLUG = "NEMA 5-15";
    static final double COLD_DEG_C = -10;
    static final int PLENTY = 1000;

    /** Half a metre everywhere at the battery, 8 m to the panels, 40 degC. */
    static final Laying LAYING = Laying.ASSUMED;

    private WiringKit() {}

    // Small parts.

    static Listing listing(String id, long cents) {
        return listing(id, cents, Condition.NEW, PLENTY);
    }

    static Listing listing(String id, long cents, Condition condition, int atHand) {
        return new Listing(
                id, "invented " + id, cents, "USD", LocalDate.of(2026, 1, 1), condition, atHand, 0.1, "test");
    }

    static ConductorSize size(String words) {
        return ConductorSize.named(words).orElseThrow();
    }

    static Cable cable(String id, String gauge, Cable.Metal metal, long centsPerM) {
        return new Cable(listing(id, centsPerM), size(gauge), metal, 90, 1);
    }

    static Fuse fuse(String id, String format, double ratedA, double mostDcV, double interruptingA, long cents) {
        return new Fuse(listing(id, cents), format, ratedA, mostDcV, interruptingA, 1);
    }

    static Breaker breaker(String id, double ratedA, double mostDcV, Stated polarised, long cents) {
        return new Breaker(listing(id, cents), ratedA, mostDcV, 10_000, polarised);
    }

    static PanelLead lead(String id, String connector, String farEnd, String gauge, double lengthM, long cents) {
        return new PanelLead(listing(id, cents), connector, farEnd, size(gauge), 90, lengthM, 30);
    }

    static Cord cord(String id, String gauge, double lengthM, double ratedA, long cents) {
        return new Cord(listing(id, cents), size(gauge), lengthM, ratedA, 120, PLUG);
    }

    static BatterySwitch hand(String id, double ratedA, double mostDcV, long cents) {
        return new BatterySwitch(listing(id, cents), ratedA, mostDcV);
    }

    /**
     * Cable and lugs from 14 AWG to 4/0; fuses of each format with holders; breakers for direct current either way; leads,
     * forks and cords; a switch, bars, fittings and tools. Each thicker or stronger one costs more, and nothing comes in packs.
     */
    public static List<SmallPart> full() {
        List<SmallPart> all = new ArrayList<>();
        for (ConductorSize size : ConductorSize.gauges()) {
            if (size.areaMm2() < 2) {
                continue;
            }
            String gauge = size.words();
            long thick = Math.round(10 * size.areaMm2());
            all.add(cable("cable " + gauge, gauge, Cable.Metal.COPPER, 40 + 2 * thick));
            all.add(new Lug(listing("lug " + gauge, 20 + thick / 2), size, 1));
        }
        for (int amps : new int[] {30, 40, 60, 80, 100, 125, 150, 200, 250, 300}) {
            all.add(fuse("strip " + amps, STRIP, amps, 58, 2_000, 300 + amps));
        }
        for (int amps : new int[] {50, 60, 80, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400}) {
            all.add(fuse("T " + amps, CLASS_T, amps, 125, 20_000, 1500 + 2 * amps));
        }
        for (int amps : new int[] {10, 15, 20, 25, 30}) {
            all.add(fuse("cylinder " + amps, CYLINDER, amps, 600, 30_000, 350 + amps));
            all.add(fuse("inline " + amps, INLINE, amps, 1_000, 30_000, 400 + amps));
        }
        all.add(new FuseHolder(listing("strip holder", 900), STRIP, 300, 1));
        all.add(new FuseHolder(listing("T holder", 2500), CLASS_T, 400, 1));
        all.add(new FuseHolder(listing("cylinder holder", 700), CYLINDER, 30, 1));
        all.add(new FuseHolder(listing("inline holder", 800), INLINE, 30, 1));
        for (int amps : new int[] {40, 63, 100, 150, 200}) {
            all.add(breaker("breaker " + amps, amps, 60, Stated.NO, 9000 + 10L * amps));
        }
        for (String make : List.of(MAKE, OTHER_MAKE)) {
            for (double lengthM : new double[] {3, 6, 10, 15, 30}) {
                for (String gauge : List.of("12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG")) {
                    long cents =
                            Math.round(400 + lengthM * (60 + 30 * size(gauge).areaMm2()));
                    String id = "lead " + make + " " + gauge + " " + Math.round(lengthM) + " m";
                    all.add(lead(id, make, PanelInput.BARE_ENDS, gauge, lengthM, cents));
                }
            }
            all.add(new PanelBranch(listing("fork " + make, 900), make, 50));
        }
        for (double lengthM : new double[] {3, 5, 10, 15, 30}) {
            for (String gauge : List.of("16 AWG", "14 AWG", "12 AWG", "10 AWG")) {
                double ratedA = gauge.equals("16 AWG") ? 13 : 15;
                long cents = Math.round(300 + lengthM * (30 + 25 * size(gauge).areaMm2()));
                all.add(cord("cord " + gauge + " " + Math.round(lengthM) + " m", gauge, lengthM, ratedA, cents));
            }
        }
        all.add(hand("switch", 300, 60, 2500));
        all.add(hand("panel switch", 40, 600, 2000));
        all.add(new Busbar(listing("bar", 1800), 600));
        for (Fitting.Use use : Fitting.Use.values()) {
            all.add(new Fitting(listing("fitting " + use.words(), 100 + 10L * use.ordinal()), use, 1));
        }
        for (Tool.Job job : Tool.Job.values()) {
            all.add(new Tool(listing("tool " + job.words(), 1000 + 100L * job.ordinal()), job));
        }
        return all;
    }

    static List<SmallPart> without(List<SmallPart> stock, Predicate<SmallPart> gone) {
        return stock.stream().filter(gone.negate()).toList();
    }

    static List<SmallPart> with(List<SmallPart> stock, SmallPart... more) {
        List<SmallPart> all = new ArrayList<>(stock);
        all.addAll(Arrays.asList(more));
        return all;
    }

    // A rig: an iron phosphate battery of 100 Ah, an inverter of 1000 W, a controller of 20 A, two panels side by side.

    static Battery battery() {
        return new Battery(Invented.listing("B", 300_00, 12), store(Double.NaN), 4, 4);
    }

    /** 12.8 V, 100 Ah. */
    static RatedStore store(double innerOhm) {
        return new RatedStore(
                Chemistry.IRON_PHOSPHATE,
                RatedStore.Capacity.of(100, 20),
                12.8,
                innerOhm,
                50,
                150,
                RatedStore.Guard.UNKNOWN,
                RatedStore.Heater.NONE,
                0.8,
                RatedStore.Worth.measured(1),
                12);
    }

    /** Nine tenths, 6 W standing, off at 10.5 V for 12 V. */
    static Inverter inverter(double ratedW, double inputV) {
        return new Inverter(
                Invented.listing("I", 90_00, 2),
                new InverterRating(
                        ratedW,
                        InverterLoss.constant(0.9, 6),
                        inputV,
                        new Surge(2 * ratedW, 10),
                        new InverterRating.Window(inputV * 0.875, Double.NaN, Double.NaN),
                        Wave.SINE,
                        InverterRating.Habits.UNKNOWN),
                List.of(new Outlet(Invented.MAINS, 2, ratedW, 1)));
    }

    static ChargeController controller(double maxA, double outletW) {
        return new ChargeController(
                Invented.listing("C", 40_00, 1),
                new ControllerRating(
                        maxA,
                        100,
                        12,
                        48,
                        0.95,
                        Tracking.BEST_POINT,
                        new PanelInput(4, 60, Stated.YES, PanelInput.BARE_ENDS),
                        Set.of()),
                List.of(new Outlet(Invented.SOCKET, 2, outletW, 1)));
    }

    /** 100 W: 22 V open, 6 A shorted, 18 V at its best. */
    static Panel panel(String make, double mostFuseA) {
        return new Panel(
                Invented.listing("P " + make + " " + mostFuseA, 80_00, 7),
                PanelSheet.of(100, 22, 6, 18, 36, 0.0005, -0.003, -0.004),
                45,
                new Panel.Tail(make, mostFuseA));
    }

    static Rig rig(Chosen... chosen) {
        return Objects.requireNonNull(Assembly.of(List.of(chosen)).rig());
    }

    static Chosen one(Part part) {
        return new Chosen(part, 1);
    }

    public static Rig rig(int batteries, int panels) {
        List<Chosen> chosen = new ArrayList<>(
                List.of(new Chosen(battery(), batteries), one(inverter(1000, 12)), one(controller(20, 120))));
        if (panels > 0) {
            chosen.add(new Chosen(panel(MAKE, 15), panels));
        }
        return rig(chosen.toArray(Chosen[]::new));
    }

    // Loads.

    public static Load lamp(String name, double watts) {
        return new SteadyLoad(name, Invented.MAINS, watts, true, new Need.AlwaysOn(), RoomKind.INDOORS);
    }

    /** Power factor of .8 running and .6 for the half second of its start. */
    static Load motor(String name, Supply supply, double watts, double startVa) {
        return new SteadyLoad(
                name,
                supply,
                watts,
                true,
                new Need.AlwaysOn(),
                RoomKind.INDOORS,
                new Nature(supply.isAc() ? 0.8 : 1, new Start(startVa, 0.6, 0.5, false, ""), false, false));
    }

    // Lengths.

    static Laying inverterAt(double metres) {
        return new Laying(8, .5, metres, .5, 1, 8, .3, .3, 40, 2, Map.of());
    }

    static Laying controllerAt(double metres) {
        return new Laying(8, metres, .5, .5, 1, 8, .3, .3, 40, 2, Map.of());
    }

    static Laying panelsAt(double metres) {
        return new Laying(metres, .5, .5, .5, 1, 8, .3, .3, 40, 2, Map.of());
    }

    static Laying links(double linkM, double otherM) {
        return new Laying(8, .5, .5, .5, 1, 8, linkM, otherM, 40, 2, Map.of());
    }

    static Laying hot(double degC) {
        return new Laying(8, .5, .5, .5, 1, 8, .3, .3, degC, 2, Map.of());
    }

    public static Laying corded(String load, double metres) {
        return new Laying(8, .5, .5, .5, 1, 8, .3, .3, 40, 2, Map.of(load, metres));
    }

    // Wiring.

    static Build wire(List<SmallPart> stock, Laying laying, Rig rig, Load... loads) {
        Build build = new Bench(new Stock(stock, true), laying, List.of(loads), List.of(), COLD_DEG_C).wire(rig);
        // Every sentence must render.
        build.findings().forEach(Finding::sentence);
        return build;
    }

    static List<String> failing(Build build) {
        return build.findings().stream()
                .filter(finding -> finding.verdict() == Verdict.FAIL)
                .map(Finding::rule)
                .toList();
    }
}
