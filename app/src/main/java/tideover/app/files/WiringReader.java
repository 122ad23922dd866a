package tideover.app.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Quantities.Measure;
import tideover.engine.why.Basis;
import tideover.engine.wiring.Laying;

/** Reads how far apart things stand; what the plan leaves out is assumed, and told so. */
final class WiringReader {
    private static final Range LENGTH = Range.from(0, Laying.LONGEST_M);
    /** Between panels and controller, or from an engine. */
    private static final Range FAR = LENGTH.likely(0.5, 60);
    /** About the battery, where amps are many. */
    private static final Range NEAR = LENGTH.likely(0.1, 10);

    private static final String LINKS_EXPECTED =
            "one length, or two, the shortest and the longest, such as [30 cm, 45 cm]";

    private final Reading reading;
    private final Field block;

    WiringReader(Reading reading, Field block) {
        this.reading = reading;
        this.block = block;
    }

    /**
     * The lengths, or null where anything is wrong.
     *
     * @param loadNames names of the plan's loads, in its order
     */
    @Nullable
    Laying read(Collection<String> loadNames) {
        int before = reading.flaws();
        if (block.isPresent()) {
            block.keys(
                    "panels",
                    "charge controller",
                    "inverter",
                    "sockets",
                    "charger",
                    "engine",
                    "links",
                    "hottest",
                    "side by side",
                    "leads on a roof",
                    "cords");
        }
        Laying usual = Laying.ASSUMED;
        double panelsM = length("panels", "Cable from panels to charge controller", FAR, usual.panelsM());
        double controllerM =
                length("charge controller", "Cable from charge controller to battery", NEAR, usual.controllerM());
        double inverterM = length("inverter", "Cable from battery to inverter", NEAR, usual.inverterM());
        double socketsM = length("sockets", "Cable from battery to DC sockets", NEAR, usual.socketsM());
        double chargerM = length("charger", "Cable from charger to battery", NEAR, usual.chargerM());
        double engineM = length("engine", "Cord from engine to charger", FAR, usual.engineM());
        tellTooNear(engineM);
        double[] links = links(usual);
        double hottestDegC = hottestDegC(usual);
        int sideBySide = sideBySide(usual);
        boolean leadsOnRoof = leadsOnRoof();
        Map<String, Double> cordM = cords(loadNames);
        return reading.flaws() > before
                ? null
                : new Laying(
                        panelsM,
                        controllerM,
                        inverterM,
                        socketsM,
                        chargerM,
                        engineM,
                        links[0],
                        links[1],
                        hottestDegC,
                        sideBySide,
                        leadsOnRoof,
                        cordM);
    }

    private double length(String key, String name, Range range, double assumedM) {
        Field field = block.child(key);
        if (!field.isPresent()) {
            assume(name, Range.shown(assumedM, "m"));
            return assumedM;
        }
        field.note(name, Basis.YOURS);
        return field.quantity(Measure.LENGTH, range);
    }

    private void assume(String name, String shown) {
        reading.note(name, shown, Basis.GUESS, PlanFile.DEFAULT);
    }

    private void tellTooNear(double engineM) {
        if (engineM < Laying.LEAST_ENGINE_M) {
            Field field = block.child("engine");
            field.problem(
                    Reading.quoted(field.shown()),
                    "at least 6.1 m (20 ft), for an engine runs outdoors so far from doors, windows and vents, exhaust away"
                            + " (US Consumer Product Safety Commission)",
                    "");
        }
    }

    /** The shortest and the longest. */
    private double[] links(Laying usual) {
        String name = "Cable between two batteries";
        Field field = block.child("links");
        if (!field.isPresent()) {
            assume(name, Range.shown(usual.linkM(), "m"));
            return new double[] {usual.linkM(), usual.linkOtherM()};
        }
        reading.note(name, field.listShown(), Basis.YOURS, field.source());
        List<Double> metres = new ArrayList<>();
        for (Field item : field.items(LINKS_EXPECTED)) {
            metres.add(item.quantity(Measure.LENGTH, NEAR));
        }
        if (metres.isEmpty()) {
            return new double[2]; // told
        }
        double shortest = metres.get(0);
        double longest = metres.get(metres.size() - 1);
        if (metres.size() > 2 || longest < shortest) {
            field.problem(Reading.quoted(field.listShown()), LINKS_EXPECTED, "");
        }
        return new double[] {shortest, longest};
    }

    private double hottestDegC(Laying usual) {
        String name = "Hottest air about the cables";
        Field field = block.child("hottest");
        if (!field.isPresent()) {
            assume(name, Range.shown(usual.hottestDegC(), "degC"));
            return usual.hottestDegC();
        }
        field.note(name, Basis.YOURS);
        return field.quantity(
                Measure.TEMPERATURE,
                Range.from(Laying.LEAST_DEG_C, Laying.MOST_DEG_C).likely(20, 60));
    }

    private int sideBySide(Laying usual) {
        String name = "Wires with current that lie together";
        Field field = block.child("side by side");
        if (!field.isPresent()) {
            assume(name, String.valueOf(usual.sideBySide()));
            return usual.sideBySide();
        }
        field.note(name, Basis.YOURS);
        return field.count(
                "wires with current in them that lie together", Laying.FEWEST_SIDE_BY_SIDE, Laying.MOST_SIDE_BY_SIDE);
    }

    private boolean leadsOnRoof() {
        String name = "Panel leads close above a sunlit roof";
        Field field = block.child("leads on a roof");
        if (!field.isPresent()) {
            assume(name, "no");
            return false;
        }
        field.note(name, Basis.YOURS);
        return field.yesOrNo("whether panel leads lie closer than a finger's breadth above a sunlit roof");
    }

    private Map<String, Double> cords(Collection<String> loadNames) {
        Map<String, Double> cordM = new LinkedHashMap<>();
        Field cords = block.child("cords");
        if (!cords.isPresent() || loadNames.isEmpty()) {
            return cordM; // a plan without loads is told as such
        }
        cords.keys(loadNames.toArray(String[]::new));
        for (String load : loadNames) {
            Field field = cords.child(load);
            if (field.isPresent()) {
                cordM.put(load, field.quantity(Measure.LENGTH, FAR));
                field.note(load + ": cord from the outlet", Basis.YOURS);
            }
        }
        return cordM;
    }
}
