package tideover.app.files;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Quantities.Measure;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.load.TimedLoad;
import tideover.engine.outage.Outage;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Engine;
import tideover.engine.part.Inverter;
import tideover.engine.part.Outlet;
import tideover.engine.part.Part;
import tideover.engine.part.ReadyBox;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Basis;

/** Reads one entry of a plan's loads: what is common to all kinds, and what runs by the clock; other kinds have their own readers. */
final class LoadReader {
    static final int MOST_LOADS = 200;
    private static final String STEADY = "steady";
    private static final String AT_SET_HOURS = "at set hours";
    private static final String COLD_BOX = "cold box";
    private static final String SUMP_PUMP = "sump pump";
    private static final String HEATING = "heating";
    private static final List<String> KINDS = List.of(STEADY, AT_SET_HOURS, COLD_BOX, SUMP_PUMP, HEATING);
    private static final List<String> PLAIN_KEYS = List.of(
            "name",
            "runs",
            "like",
            "draws",
            "supply",
            "essential",
            "room",
            "need",
            "hours",
            "from",
            "power factor",
            "start",
            "wave",
            "attended",
            LikeReader.HARD_WIRED,
            LikeReader.SENSES_FLAME,
            "medical");
    private static final String ALWAYS_ON = "always on";
    private static final String NEED_EXPECTED =
            "\"always on\", or hours in a stretch of the day, such as" + " {hours: 3 h, between: 08:00, and: 20:00}";
    /** Above this one load is unlikely to be meant for a small store; most household plugs end near 1.8 kW. */
    private static final Range DRAW_W = Range.above(0, 100_000).likely(0.1, 3000);

    private final Reading reading;
    private final Field block;
    private final int begun;
    private @Nullable LikeReader like;

    LoadReader(Reading reading, Field block) {
        this.reading = reading;
        this.block = block;
        this.begun = reading.flaws();
    }

    /** Anything in the entry was wrong so far: then no record can be made of it. */
    boolean isFlawed() {
        return reading.flaws() > begun;
    }

    /** The load, or null where anything in it is wrong. */
    @Nullable
    Load read(Map<String, Field> byName) {
        String runs = block.glimpse("runs");
        String kind = KINDS.stream().filter(runs::equalsIgnoreCase).findFirst().orElse("");
        block.keys(keys(kind));
        String name = name(byName);
        like = new LikeReader(reading, block, name);
        block.child("runs").choice("how it runs", KINDS, word -> word);
        Load load = switch (kind) {
            case STEADY, AT_SET_HOURS -> plain(name, kind.equals(AT_SET_HOURS));
            case COLD_BOX -> new ColdReader(reading, block, this, name).read();
            case SUMP_PUMP -> new PitReader(reading, block, this, name).read();
            case HEATING -> new HeatReader(reading, block, this, name).read();
            default -> null;
        };
        if (kind.isEmpty()) {
            whateverItIs(name);
        }
        if (load == null && !isFlawed()) {
            throw new IllegalStateException("a load without problems gave no load");
        }
        return isFlawed() ? null : load;
    }

    /** Keys of a kind; of every kind where it is none. */
    private static String[] keys(String kind) {
        List<List<String>> lists = switch (kind) {
            case STEADY, AT_SET_HOURS -> List.of(PLAIN_KEYS);
            case COLD_BOX -> List.of(ColdReader.KEYS);
            case SUMP_PUMP -> List.of(PitReader.KEYS);
            case HEATING -> List.of(HeatReader.KEYS);
            default -> List.of(PLAIN_KEYS, ColdReader.KEYS, PitReader.KEYS, HeatReader.KEYS);
        };
        return lists.stream().flatMap(List::stream).distinct().toArray(String[]::new);
    }

    /** Looks through what means the same in every kind. */
    private void whateverItIs(String name) {
        if (block.child("draws").isPresent()) {
            draws(name, DRAW_W);
        }
        if (block.child("supply").isPresent()) {
            supply(name);
        }
        room(name);
    }

    /** What runs by the clock, or always. */
    private @Nullable Load plain(String name, boolean atSetHours) {
        double runningW = draws(name, DRAW_W);
        Supply supply = supply(name);
        boolean essential = block.child("essential").yesOrNo("whether it is essential");
        RoomKind room = room(name);
        Nature nature = nature(name, supply, runningW);
        if (nature != null && nature.medical() != null && !essential) {
            block.child("essential")
                    .problem("\"no\" for what somebody's health hangs on", "essential: yes", "Or remove \"medical:\".");
        }
        Field need = block.child("need");
        Field hours = block.child("hours");

        if (atSetHours) {
            if (need.isPresent() && !need.shown().equals(ALWAYS_ON)) {
                need.problem(
                        need.isText() ? Reading.quoted(need.shown()) : "a need of its own",
                        "no need: what runs at set hours needs its power all through them",
                        "Remove it, or write \"runs: steady\" for something used some hours of a stretch.");
            }
            List<DayWindow> windows = windows(hours);
            if (isFlawed() || supply == null || nature == null || windows.isEmpty()) {
                return null;
            }
            reading.note(name + ": hours", words(windows), Basis.YOURS, hours.source());
            return new TimedLoad(name, supply, runningW, essential, windows, room, nature);
        }
        if (hours.isPresent()) {
            hours.problem(
                    "hours for a load that runs steadily",
                    "no hours, or \"runs: at set hours\"",
                    "For some hours within a stretch write need: {hours: 3 h, between: 08:00, and: 20:00}.");
        }
        Need owed = need(need);
        if (isFlawed() || supply == null || nature == null || owed == null) {
            return null;
        }
        reading.note(name + ": need", words(owed), Basis.YOURS, need.source());
        return new SteadyLoad(name, supply, runningW, essential, owed, room, nature);
    }

    /** Watts while it runs, the middle of a range; NaN where wrong. */
    double draws(String name, Range range) {
        Field draws = block.child("draws");
        Span span = like().draws(draws, range);
        if (draws.isPresent() || !like().isPresent()) {
            Basis basis = basis(block.child("from"));
            draws.note(name + ": draws", basis);
            spread(name, "draws", Spread.Figure.DRAWS, span, known(basis), Measure.POWER, draws);
        }
        return span.middle();
    }

    private LikeReader like() {
        return like == null ? like = new LikeReader(reading, block, "") : like;
    }

    /** Keeps how far a figure may be off, and tells what a range is reckoned as. */
    void spread(
            String name,
            String what,
            Spread.Figure figure,
            Span span,
            Spread.Known known,
            Measure measure,
            Field field) {
        if (Double.isNaN(span.middle())) {
            return;
        }
        reading.spread(Spread.of(name, figure, span, known));
        middle(name, what, span, measure, field);
    }

    /** Tells what a range is reckoned as. */
    void middle(String name, String what, Span span, Measure measure, Field field) {
        if (span.isRange()) {
            reading.note(
                    name + ": " + what + " reckoned with",
                    PlainNumber.of(span.middle()) + " " + measure.unit(),
                    Basis.GUESS,
                    field.source() + ", the middle of the range");
        }
    }

    static Spread.Known known(Basis basis) {
        return switch (basis) {
            case MEASURED -> Spread.Known.METER;
            case MAKER -> Spread.Known.LABEL;
            default -> Spread.Known.GUESS;
        };
    }

    /** How it behaves beside its watts; null where anything in it is wrong. */
    @Nullable
    Nature nature(String name, @Nullable Supply supply, double runningW) {
        Nature nature = new NatureReader(reading, block, name, supply, runningW, like()).read();
        Medical medical = medical(name);
        return nature == null ? null : nature.with(medical);
    }

    /** Null where nobody's health hangs on it. */
    @Nullable
    Medical medical(String name) {
        Field medical = block.child("medical");
        return medical.isPresent() ? new MedicalReader(reading, medical, name).read() : null;
    }

    /** What keeps a temperature or a level is kept: it cannot be nice to have. */
    void alwaysEssential() {
        Field essential = block.child("essential");
        if (essential.isPresent() && !essential.yesOrNo("whether it is essential")) {
            if (essential.shown().equalsIgnoreCase("no")) {
                essential.problem(
                        "\"no\" for what keeps a temperature or a level",
                        "no such line: such a load is always essential",
                        "Leave it out; what is not needed is left unplugged.");
            }
        }
    }

    private String name(Map<String, Field> byName) {
        Field field = block.child("name");
        String name = field.text("what it is called", PlanFile.LONGEST_NAME).replace('\n', ' ');
        Field earlier = name.isEmpty() ? null : byName.putIfAbsent(name, field);
        if (earlier != null) {
            field.problem(
                    Reading.quoted(name) + " a second time",
                    "a name of its own for each load",
                    "The first stands in line " + earlier.line() + ".");
        }
        return name;
    }

    private Basis basis(Field from) {
        if (!from.isPresent()) {
            return Basis.YOURS;
        }
        return switch (from.choice("where the figure is from", List.of("guess", "label", "meter"), word -> word)) {
            case "label" -> Basis.MAKER;
            case "meter" -> Basis.MEASURED;
            default -> Basis.GUESS;
        };
    }

    /** Null where wrong. */
    @Nullable
    Supply supply(String name) {
        Field field = block.child("supply");
        Supply supply = supply(field);
        field.note(name + ": supply", Basis.YOURS);
        return supply;
    }

    private static @Nullable Supply supply(Field field) {
        String typed = field.raw(SupplyText.EXPECTED);
        Supply supply = SupplyText.read(typed);
        if (supply == null && !typed.isEmpty()) {
            field.problem(Reading.quoted(typed), SupplyText.EXPECTED, SupplyText.suggestion(typed));
        }
        return supply;
    }

    RoomKind room(String name) {
        Field field = block.child("room");
        if (!field.isPresent()) {
            reading.note(name + ": room", RoomKind.INDOORS.words(), Basis.GUESS, PlanFile.DEFAULT);
            return RoomKind.INDOORS;
        }
        return field.choice("where it stands", List.of(RoomKind.values()), RoomKind::words);
    }

    private static @Nullable Need need(Field field) {
        if (!field.isPresent() || !field.isBlock()) {
            String typed = field.raw(NEED_EXPECTED);
            if (typed.equalsIgnoreCase(ALWAYS_ON)) {
                return new Need.AlwaysOn();
            }
            if (!typed.isEmpty()) {
                field.problem(
                        Reading.quoted(typed),
                        NEED_EXPECTED,
                        Nearest.to(typed, List.of(ALWAYS_ON))
                                .map(near -> "Write " + near + ".")
                                .orElse(""));
            }
            return null;
        }
        field.keys("hours", "between", "and");
        double hours = field.child("hours").quantity(Measure.TIME, Range.above(0, 24));
        double fromHour = field.child("between").clock();
        double toHour = field.child("and").clock();
        if (Double.isNaN(hours) || Double.isNaN(fromHour) || Double.isNaN(toHour)) {
            return null;
        }
        DayWindow window = ClockText.stretch(fromHour, toHour);
        if (window == null) {
            field.problem("a stretch without length", "two different times of day", "The whole day is 00:00 to 24:00.");
            return null;
        }
        if (hours > window.lengthHours() + TimedLoad.TOUCHING_H) {
            field.child("hours")
                    .problem(
                            Reading.quoted(field.child("hours").shown()),
                            "at most the " + Range.shown(window.lengthHours(), "h") + " of the stretch",
                            "");
            return null;
        }
        return new Need.HoursInWindow(Math.min(hours, window.lengthHours()), window);
    }

    static List<DayWindow> windows(Field field) {
        List<DayWindow> windows = new ArrayList<>();
        List<Field> items = field.items("stretches of the day, such as [06:30-08:00, 17:00-23:00]");
        if (items.size() > 24) {
            field.problem(items.size() + " stretches", "at most 24", "");
            return windows;
        }
        for (Field item : items) {
            DayWindow window = window(item);
            if (window == null) {
                continue;
            }
            for (DayWindow other : windows) {
                if (window.overlapHours(other.fromHour(), other.lengthHours()) > TimedLoad.TOUCHING_H) {
                    item.problem(
                            Reading.quoted(item.shown()),
                            "stretches that do not overlap",
                            "It overlaps " + words(List.of(other)) + ".");
                }
            }
            windows.add(window);
        }
        return windows;
    }

    /** One stretch of the day; null where wrong. */
    static @Nullable DayWindow window(Field field) {
        String typed = field.raw(ClockText.STRETCH_EXPECTED);
        DayWindow window = ClockText.stretch(typed);
        if (window == null && !typed.isEmpty()) {
            field.problem(Reading.quoted(typed), ClockText.STRETCH_EXPECTED, "The whole day is 00:00-24:00.");
        }
        return window;
    }

    private static String words(Need need) {
        return need instanceof Need.HoursInWindow some
                ? Range.shown(some.hours(), "h") + " within " + words(List.of(some.window()))
                : need.words();
    }

    static String words(List<DayWindow> windows) {
        return String.join(
                ", ",
                windows.stream()
                        .map(window -> Need.clock(window.fromHour()) + "-" + Need.clock(window.toHour()))
                        .toList());
    }

    /** Cautions where no part has an outlet that a load's plug goes into: then no rig can serve it. */
    static void checkPlugs(Reading reading, List<Load> loads, List<Part> parts) {
        Set<String> plugs = new LinkedHashSet<>();
        for (Part part : parts) {
            for (Outlet outlet : outlets(part)) {
                plugs.add(outlet.supply().plug());
            }
        }
        for (Load load : loads) {
            String plug = load.supply().plug();
            if (load.plugged() && !parts.isEmpty() && plugs.stream().noneMatch(plug::equalsIgnoreCase)) {
                String near = Nearest.to(plug, plugs)
                        .map(word -> " Was \"" + word + "\" meant?")
                        .orElse("");
                reading.caution(load.name() + ": no part has an outlet for its plug, \"" + plug + "\"." + near);
            }
        }
    }

    /** Cautions where a box is to be chilled before storms that nobody forecasts. */
    static void checkStorms(Reading reading, List<Load> loads, @Nullable Outage outage) {
        if (outage == null || (outage.storm() != null && outage.storm().forecast())) {
            return;
        }
        for (Load load : loads) {
            if (load instanceof ColdLoad cold && !Double.isNaN(cold.chilledToDegC())) {
                reading.caution(
                        load.name() + ": it is to be chilled before a storm, but the plan knows of no forecast: add"
                                + " \"storm: {forecast: yes}\" to the outage.");
            }
        }
    }

    private static List<Outlet> outlets(Part part) {
        if (part instanceof ReadyBox box) {
            return box.outlets();
        }
        if (part instanceof Enclosure enclosure) {
            return enclosure.outlets();
        }
        if (part instanceof ChargeController controller) {
            return controller.outlets();
        }
        if (part instanceof Engine engine) {
            return engine.outlets();
        }
        return part instanceof Inverter inverter ? inverter.outlets() : List.of();
    }
}
