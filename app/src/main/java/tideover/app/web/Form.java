package tideover.app.web;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.app.files.PlanText;
import tideover.engine.why.MarginNote;
import tideover.engine.why.Problem;

/** The plan's text laid out as lines to type in, each with what is wrong with it and where its figure comes from. */
public final class Form {
    private static final List<String> BASES = List.of("meter", "label", "guess");
    private static final List<String> ROOMS = List.of("indoors", "garage", "shed", "outdoors");
    private static final List<String> YES_OR_NO = List.of("yes", "no");

    /** Letters of a need that are seen in one row. */
    private static final int ONE_ROW = 20;

    private static final Key NAME = new Key("name", "what you call it");
    private static final Key DRAWS = new Key("draws", "7 W or 30-60 W");
    private static final Key NEED = new Key("need", "always on");
    private static final Key HOURS = new Key("hours", "18:00-23:00");
    private static final Key FROM = new Key("from", "", BASES);
    private static final Key SUPPLY = new Key("supply", "120 V AC 60 Hz, NEMA 5-15");
    private static final Key ESSENTIAL = new Key("essential", "", YES_OR_NO);
    private static final Key RUNS =
            new Key("runs", "", List.of("steady", "at set hours", "cold box", "sump pump", "heating"));

    /** Keys that a load may have beside, each with an example. */
    private static final List<Key> OF_SOME_LOADS = List.of(
            new Key("room", "", ROOMS),
            new Key("like", "a usual load's word"),
            new Key("power factor", "0.7"),
            new Key("start", "{horsepower: 1/3, code: K}"),
            new Key("wave", "", List.of("sine", "any")),
            new Key("attended", "", YES_OR_NO),
            new Key("hard-wired", "", YES_OR_NO),
            new Key("senses flame", "", YES_OR_NO),
            new Key(
                    "medical",
                    "{can be without: 30 min, alarm: its own, who acts: a neighbour, able: yes, second plan: …}"),
            new Key(
                    "box",
                    "",
                    List.of("chest freezer", "upright freezer", "refrigerator", "medicine fridge", "cooler")),
            new Key("holds", "200 L"),
            new Key("freezer part", "60 L"),
            new Key("label", "300 kWh"),
            new Key("meter", "{uses: 0.8 kWh, in a room of: 21 degC}"),
            new Key("walls", "1.2 W/K"),
            new Key("defrost", "frost-free"),
            new Key("contents", "{full: 60 %}"),
            new Key("set to", "-18 degC"),
            new Key("opened", "2"),
            new Key("worth", "180 USD"),
            new Key("duty", "as it needs"),
            new Key("before a storm", "{chilled to: -24 degC}"),
            new Key("pumps", "6000 L/h"),
            new Key("pit", "{across: 45 cm, runs at: 20 cm, brim: 55 cm}"),
            new Key("inflow", "{usual: 20-40 L/h, storm peak: 900 L/h, peak after: 8 h, ebbs within: 30 h}"),
            new Key("standby", "4 W"),
            new Key("home", "{set to: 19 degC, just holds at: -26 degC, cools with: 40 h}"));

    private static final List<Key> PLACE = List.of(
            new Key("station", "begin to type a town or an airport"),
            new Key("name", "what to call the place"),
            new Key("coldest on record", "6 degF"));

    private static final List<Key> PLACE_OTHERWISE = List.of(
            new Key("near", "{latitude: 46.2 deg N, longitude: 123.8 deg W}"),
            new Key("hourly file", "weather.csv"),
            new Key("latitude", "46.2 deg"),
            new Key("longitude", "-123.8 deg"),
            new Key("height", "40 ft"),
            new Key("zone", "-8 h"));

    private static final List<Key> FIGURES = List.of(
            new Key("latitude", "57.6 deg N"),
            new Key("longitude", "7.3 deg W"),
            new Key("height", "12 m"),
            new Key("zone", "0 h"),
            new Key("peak sun hours", "twelve figures, January first: 0.4, 1.1, …"),
            new Key("mean temperature", "twelve, a unit after the last: 5, 5, 6, … 6 degC"),
            new Key("source", "where they are from"));

    private static final List<Key> OUTAGE = List.of(
            new Key("months", "nov, dec, jan"),
            new Key("lasts", "72 h"),
            new Key("carried", "95 %"),
            new Key("charge at start", "85 %"),
            new Key("keep back", "100 %"));

    private static final List<Key> OUTAGE_OTHERWISE = List.of(
            new Key("storm", "{panels stowed until: 12 h, snow cleared after: 24 h, forecast: yes}"),
            new Key("rolling", "{off: 4 h, on: 2 h}"));

    private static final List<Key> PANELS = List.of(
            new Key("tilt", "60 deg"),
            new Key("facing", "180 deg"),
            new Key("out after", "3 h"),
            new Key("dirt", "4 %"),
            new Key("ground reflectance", "20 %"),
            new Key("snow", "", List.of("auto", "lies", "swept")));

    private static final List<Key> STORE =
            List.of(new Key("store room", "", ROOMS), new Key("someone sleeps there", "", YES_OR_NO));

    private static final List<Key> MONEY = List.of(new Key("at most", "900 USD"), new Key("tax", "8.5 %"));

    private static final List<Key> MONEY_OTHERWISE = List.of(
            new Key("hard-wired loads", "350 USD"),
            new Key("small parts", "{ready box: 0 USD, enclosure: 35 USD, separate parts: 90 USD}"));

    private static final List<Key> LOOK_AT = List.of(
            new Key("most panels", "4"),
            new Key("most batteries", "4"),
            new Key("most jugs", "4"),
            new Key("engine hours", "06:30-08:30, 19:00-22:00"),
            new Key("fuel stored", "20 L"));

    private static final List<Key> WIRING = List.of(
            new Key("panels", "12 m"),
            new Key("charge controller", "40 cm"),
            new Key("inverter", "50 cm"),
            new Key("sockets", "50 cm"),
            new Key("charger", "1 m"),
            new Key("engine", "20 ft"),
            new Key("links", "30 cm"),
            new Key("hottest", "40 degC"),
            new Key("side by side", "2"),
            new Key("leads on a roof", "", YES_OR_NO));

    private static final Pattern LINE_OF_PLAN = Pattern.compile("^plan\\.yaml:(\\d+)(?: (.*))?$");

    private final PlanText text;
    private final List<Problem> problems;
    private final List<MarginNote> notes;
    private final Set<Problem> shown = new LinkedHashSet<>();

    Form(PlanText text, List<Problem> problems, List<MarginNote> notes) {
        this.text = text;
        this.problems = problems;
        this.notes = notes;
    }

    /** A key of the plan, what may be typed by example, and the words it may hold. */
    private record Key(String words, String hint, List<String> choices) {
        Key(String words, String hint) {
            this(words, hint, List.of());
        }
    }

    /**
     * The whole sheet's lines.
     *
     * @param elsewhere what is wrong and belongs to no line: parts, weather files, keys that nobody knows
     */
    public record Lines(
            Line title,
            Line about,
            List<LoadLines> loads,
            Block place,
            Block outage,
            Block panels,
            Block money,
            Block wiring,
            List<String> elsewhere) {}

    /** Every line of a sheet. */
    static List<Line> all(Lines lines) {
        List<Line> all = new ArrayList<>(List.of(lines.title(), lines.about()));
        for (LoadLines load : lines.loads()) {
            all.addAll(load.first());
            all.addAll(load.rest());
        }
        for (Block block : List.of(lines.place(), lines.outage(), lines.panels(), lines.money(), lines.wiring())) {
            all.addAll(block.lines());
        }
        return all;
    }

    /** Tells one set of lines from another: where it is the same, a page can be brought up to date line by line. */
    static String shape(Lines lines) {
        List<String> ids = all(lines).stream().map(Line::id).toList();
        return Integer.toHexString(ids.hashCode());
    }

    /** What a line holds when it is added: the example, to be typed over. */
    static String example(String key) {
        for (List<Key> keys : List.of(OF_SOME_LOADS, PLACE_OTHERWISE, OUTAGE_OTHERWISE, MONEY_OTHERWISE)) {
            for (Key one : keys) {
                if (one.words().equals(key)) {
                    return one.hint().isEmpty() ? one.choices().get(0) : one.hint();
                }
            }
        }
        throw new IllegalArgumentException("no such line: " + key);
    }

    /** Lines that are always there, and those that may be added. */
    public record Block(String path, List<Line> lines, List<String> more) {
        public boolean isWrong() {
            return lines.stream().anyMatch(Line::isWrong);
        }
    }

    /**
     * One load.
     *
     * @param number from 1
     * @param first  its first lines
     * @param rest   the others that are there
     * @param more   keys that may be added
     */
    public record LoadLines(
            int number, String path, String name, List<Line> first, List<Line> rest, List<String> more) {
        /** Whether something is wrong among the lines that are folded away. */
        public boolean isWrongBeside() {
            return rest.stream().anyMatch(Line::isWrong);
        }
    }

    Lines lines() {
        Line title = line("", new Key("plan", "what to call it"));
        Line about = line("", new Key("about", "a remark of your own"), 3);
        List<LoadLines> loads = new ArrayList<>();
        for (int number = 1; number <= text.count("loads"); number++) {
            loads.add(load(number));
        }
        boolean figures = text.get("place.figures").isPresent();
        Block place = figures
                ? joined(block("place", PLACE, List.of()), block("place.figures", FIGURES, List.of()))
                : block("place", PLACE, PLACE_OTHERWISE);
        Block outage = block("outage", OUTAGE, OUTAGE_OTHERWISE);
        Block panels = joined(block("", STORE, List.of()), block("panels", PANELS, List.of()));
        Block money = joined(block("money", MONEY, MONEY_OTHERWISE), block("look at", LOOK_AT, List.of()));
        Block wiring = block("wiring", WIRING, List.of());
        List<String> elsewhere = problems.stream()
                .filter(problem -> !shown.contains(problem))
                .map(Problem::sentence)
                .toList();
        return new Lines(title, about, loads, place, outage, panels, money, wiring, elsewhere);
    }

    private static Block joined(Block first, Block second) {
        List<Line> lines = new ArrayList<>(first.lines());
        lines.addAll(second.lines());
        return new Block(first.path(), lines, first.more());
    }

    private Block block(String path, List<Key> always, List<Key> sometimes) {
        List<Line> lines = new ArrayList<>();
        List<String> more = new ArrayList<>();
        always.forEach(key -> lines.add(line(path, key)));
        for (Key key : sometimes) {
            if (text.get(joined(path, key.words())).isPresent()) {
                lines.add(line(path, key));
            } else {
                more.add(key.words());
            }
        }
        return new Block(path, lines, more);
    }

    private LoadLines load(int number) {
        String path = "loads[" + number + "]";
        String runs = text.get(path + ".runs").orElse("");
        Key owes = runs.equals("at set hours") ? HOURS : NEED;
        List<Line> first = new ArrayList<>();
        // A usual load brings its own watts where none are typed.
        Key draws = text.get(path + ".like").isPresent() ? new Key(DRAWS.words(), "usual") : DRAWS;
        for (Key key : List.of(NAME, draws, owes, FROM, SUPPLY)) {
            boolean wraps =
                    key == owes && text.get(path + "." + key.words()).orElse("").length() > ONE_ROW;
            first.add(line(path, key, wraps ? 2 : 1));
        }
        List<Line> rest = new ArrayList<>(List.of(line(path, RUNS), line(path, ESSENTIAL)));
        List<String> more = new ArrayList<>();
        Key other = owes == NEED ? HOURS : NEED;
        if (text.get(path + "." + other.words()).isPresent()) {
            rest.add(line(path, other));
        }
        for (Key key : OF_SOME_LOADS) {
            if (text.get(path + "." + key.words()).isPresent()) {
                rest.add(line(path, key, key.words().equals("medical") ? 2 : 1));
            } else {
                more.add(key.words());
            }
        }
        String name = text.get(path + ".name").orElse("");
        return new LoadLines(number, path, name.isEmpty() ? "load " + number : name, first, rest, more);
    }

    private Line line(String parent, Key key) {
        return line(parent, key, 1);
    }

    private Line line(String parent, Key key, int rows) {
        String path = joined(parent, key.words());
        String value = text.get(path).orElse("");
        int from = text.line(path);
        return new Line(
                path,
                Line.idOf(path),
                key.words(),
                value,
                key.hint(),
                key.choices(),
                rows,
                troubles(path),
                from > 0 ? note(from) : null);
    }

    private static String joined(String parent, String key) {
        return parent.isEmpty() ? key : parent + "." + key;
    }

    /** What is wrong at a place or below it. */
    private List<String> troubles(String path) {
        List<String> found = new ArrayList<>();
        for (Problem problem : problems) {
            Matcher where = LINE_OF_PLAN.matcher(problem.where());
            if (where.matches() && where.group(2) != null && isAtOrBelow(where.group(2), path)) {
                shown.add(problem);
                found.add(inWords(problem));
            }
        }
        return found;
    }

    private static boolean isAtOrBelow(String place, String path) {
        return place.equals(path) || place.startsWith(path + ".") || place.startsWith(path + "[");
    }

    private static String inWords(Problem problem) {
        String tail = problem.suggestion().isEmpty() ? "" : " " + problem.suggestion();
        return "Found " + problem.found() + "; expected " + problem.expected() + "." + tail;
    }

    private @Nullable MarginNote note(int line) {
        String source = PlanReader.PLAN_FILE + ":" + line;
        return notes.stream()
                .filter(note -> note.source().equals(source) || note.source().startsWith(source + " "))
                .findFirst()
                .orElse(null);
    }
}
