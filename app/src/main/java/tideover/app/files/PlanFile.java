package tideover.app.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Quantities.Measure;
import tideover.engine.answer.Places;
import tideover.engine.answer.Question;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Tending;
import tideover.engine.part.Aid;
import tideover.engine.part.Jug;
import tideover.engine.part.Part;
import tideover.engine.part.SmallPart;
import tideover.engine.quantity.Series;
import tideover.engine.rig.Aids;
import tideover.engine.search.Grammar;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Stations;
import tideover.engine.sun.PanelMount;
import tideover.engine.why.Basis;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;

/**
 * A household's plan: one YAML file in plain words, every figure with its unit, and the parts and weather files it
 * names. {@code docs/plan-file.md} tells every key. Either the whole question comes out, or {@code InputProblems} with
 * everything that is wrong in any of the files.
 */
public final class PlanFile {
    static final int LONGEST_NAME = 80;
    static final String DEFAULT = "default of the program";

    private static final int LONGEST_ABOUT = 4000;
    private static final String MOST_JUGS = "most jugs";
    private static final int MOST_FILES = 20;

    /** A steeper panel gives more of the low winter sun and sheds more snow. Common practice, no source. */
    private static final double STEEPER_THAN_LATITUDE_DEG = 15;

    private static final double SMALLEST_TILT_DEG = 10;

    /** Typical-year files do not hold the cold that a panel's voltage must survive. This project's own allowance. */
    static final double COLDER_THAN_TYPICAL_K = Places.COLDER_K;

    private final Reading reading;
    private final Beside beside;
    private final Stations stations;

    private PlanFile(Reading reading, Beside beside, Stations stations) {
        this.reading = reading;
        this.beside = beside;
        this.stations = stations;
    }

    /**
     * A plan with what was typed of its parts.
     *
     * @param typedById of each part, by its id: the filled cells by their column
     */
    public record Plan(Question question, Map<String, Map<String, String>> typedById) {}

    /** Reads a plan from disk; the files it names are looked for from its own folder on. */
    public static Question read(Path plan, Stations stations) {
        return open(plan, stations).question();
    }

    /** The same, with what was typed of the parts. */
    public static Plan open(Path plan, Stations stations) {
        Reading reading = new Reading();
        String name = PartsFile.fileName(plan);
        Beside beside = Beside.folder(PartsFile.folderOf(plan));
        String text = FileText.read(reading, Beside.alone(plan), name, plan.toString(), "a plan");
        reading.throwIfWrong();
        Question question = read(reading, name, String.valueOf(text), beside, stations);
        return new Plan(question, reading.typedById());
    }

    /**
     * Reads a plan from text.
     *
     * @param name   what to call it in problems and notes
     * @param beside where the files it names are found
     */
    public static Question read(String name, String text, Beside beside, Stations stations) {
        Reading reading = new Reading();
        String sound = FileText.decode(reading, text.getBytes(StandardCharsets.UTF_8), name, "a plan");
        reading.throwIfWrong();
        return read(reading, name, String.valueOf(sound), beside, stations);
    }

    /** The same, with what was typed of the parts. */
    public static Plan open(String name, String text, Beside beside, Stations stations) {
        Reading reading = new Reading();
        String sound = FileText.decode(reading, text.getBytes(StandardCharsets.UTF_8), name, "a plan");
        reading.throwIfWrong();
        Question question = read(reading, name, String.valueOf(sound), beside, stations);
        return new Plan(question, reading.typedById());
    }

    /** The same, with what the reading gathers beside the question. */
    static Question read(Reading reading, String name, String text, Beside beside, Stations stations) {
        Field root = YamlFile.root(reading, name, text);
        Question question = root == null ? null : new PlanFile(reading, beside, stations).question(root);
        reading.throwIfWrong();
        if (question == null) {
            throw new IllegalStateException("a plan without problems gave no question");
        }
        return question;
    }

    private @Nullable Question question(Field root) {
        root.keys(
                "plan",
                "about",
                "place",
                "outage",
                "help",
                "panels",
                "store room",
                "someone sleeps there",
                "loads",
                "money",
                "look at",
                "parts",
                "small parts",
                "wiring");
        String title = root.child("plan").text("the plan's title", 200);
        Field aboutField = root.child("about");
        String about = aboutField.isPresent() ? aboutField.paragraphs("a few words about the plan", LONGEST_ABOUT) : "";

        PlaceReader.Spot spot = new PlaceReader(reading, beside, stations).read(root.child("place"));
        double lowestDegC = spot == null ? Double.NaN : lowestDegC(spot);
        Field panels = root.child("panels");
        panels = panels.isPresent()
                ? panels.keys("tilt", "facing", "out after", "dirt", "ground reflectance", "snow", "shade")
                : panels;
        Outage outage =
                new OutageReader(reading).read(root.child("outage"), panels.child("out after"), root.child("help"));
        PanelMount mount = mount(panels, spot);
        boolean snow = snow(panels.child("snow"), spot);

        Field room = root.child("store room");
        RoomKind batteryRoom = room.choice("where the battery stands", List.of(RoomKind.values()), RoomKind::words);
        room.note("Where the store stands", Basis.YOURS);
        boolean sleptIn = sleptIn(root.child("someone sleeps there"), batteryRoom);

        Map<String, Field> nameFields = new LinkedHashMap<>();
        List<Load> loads = loads(root.child("loads"), nameFields);
        Field smallFile = root.child("small parts");
        MoneyReader money = new MoneyReader(
                reading,
                root.child("money"),
                smallFile,
                loads.stream().anyMatch(load -> load.nature().hardWired()));
        Grammar grammar = grammar(root.child("look at"));
        Map<String, String> sourceById = new HashMap<>();
        List<Part> parts = listed(
                root.child("parts"),
                "the name of the parts file, such as parts.csv",
                "Parts file",
                PartsFile.TABLE,
                money.currency(),
                sourceById);
        Tending tending = new TendingReader(reading).read(root.child("look at"), parts);
        String currency = currency(money, parts);
        List<SmallPart> smallParts = smallParts(smallFile, currency, sourceById);
        money.terms().checkSellers(parts, smallParts);
        Laying laying = new WiringReader(reading, root.child("wiring")).read(nameFields.keySet());
        LoadReader.checkPlugs(reading, loads, parts);
        LoadReader.checkStorms(reading, loads, outage);
        reading.worths().forEach(worth -> worth.check(currency));
        if (outage != null && reading.flaws() == 0) {
            checkAids(root.child("look at"), grammar, parts, loads, outage);
        }

        if (reading.flaws() > 0
                || spot == null
                || outage == null
                || mount == null
                || money.allowances() == null
                || laying == null
                || currency == null) {
            return null;
        }
        return new Question(
                title,
                about,
                spot.place(),
                spot.weather(),
                lowestDegC,
                mount,
                snow,
                batteryRoom,
                sleptIn,
                loads,
                outage.with(tending),
                money.budgetCents(),
                currency,
                money.allowances(),
                money.terms().terms(),
                grammar,
                parts,
                smallParts,
                laying,
                reading.spreads().stream().map(spread -> spread.doubt(loads)).toList(),
                reading.notes(),
                reading.cautions());
    }

    private boolean sleptIn(Field field, RoomKind batteryRoom) {
        String name = "Somebody sleeps where the store stands";
        if (!field.isPresent()) {
            boolean indoors = batteryRoom == RoomKind.INDOORS;
            reading.note(
                    name,
                    indoors ? "yes" : "no",
                    Basis.GUESS,
                    DEFAULT + (indoors ? ": yes for what stands indoors" : ": no for what does not stand indoors"));
            return indoors;
        }
        field.note(name, Basis.YOURS);
        boolean slept = field.yesOrNo("whether somebody sleeps where the store stands");
        if (slept && batteryRoom == RoomKind.OUTDOORS) {
            field.caution("yes is taken, but is unlikely outdoors.");
        }
        return slept;
    }

    private @Nullable PanelMount mount(Field panels, PlaceReader.@Nullable Spot spot) {
        int before = reading.flaws();
        double latDeg = spot == null ? 0 : spot.place().latDeg();
        Field tilt = panels.child("tilt");
        double tiltDeg =
                Math.min(90, Math.max(SMALLEST_TILT_DEG, Math.rint(Math.abs(latDeg) + STEEPER_THAN_LATITUDE_DEG)));
        if (tilt.isPresent()) {
            tiltDeg = tilt.quantity(Measure.ANGLE, Range.from(0, 90));
            tilt.note("Tilt of the panels from flat", Basis.YOURS);
        } else {
            reading.note(
                    "Tilt of the panels from flat",
                    Range.shown(tiltDeg, "deg"),
                    Basis.COMMON_PRACTICE,
                    DEFAULT + ": latitude and " + Range.shown(STEEPER_THAN_LATITUDE_DEG, "deg") + " more, for winter");
        }
        Field facing = panels.child("facing");
        double facingDeg = latDeg >= 0 ? 180 : 0;
        if (facing.isPresent()) {
            facingDeg = facing.quantity(Measure.ANGLE, Range.from(0, 360));
            facing.note("Way the panels face, from north through east", Basis.YOURS);
            boolean away =
                    latDeg >= 25 ? facingDeg < 45 || facingDeg > 315 : latDeg <= -25 && Math.abs(facingDeg - 180) < 45;
            if (away && tiltDeg > 20) {
                facing.caution(
                        "panels that face away from the equator see little sun; 180 deg is south, 0 deg is north.");
            }
        } else {
            reading.note(
                    "Way the panels face, from north through east",
                    Range.shown(facingDeg, "deg"),
                    Basis.COMMON_PRACTICE,
                    DEFAULT + ": towards the equator");
        }
        double dirt = shareOr(
                reading,
                panels.child("dirt"),
                "Light lost to dirt",
                Range.from(0, 90).likely(0, 20),
                4,
                Basis.GUESS);
        double ground = shareOr(
                reading,
                panels.child("ground reflectance"),
                "Light thrown back by the ground",
                Range.from(0, 100).likely(5, 80),
                20,
                Basis.COMMON_PRACTICE);
        Series shade = ShadeReader.read(reading, panels.child("shade"));
        return reading.flaws() > before ? null : new PanelMount(tiltDeg, facingDeg, dirt, ground, shade);
    }

    private boolean snow(Field field, PlaceReader.@Nullable Spot spot) {
        String choice = "auto";
        if (field.isPresent()) {
            choice = field.choice("snow on the panels", List.of("auto", "lies", "swept"), word -> word);
        }
        if (!choice.equals("auto")) {
            field.note(Question.SNOW, Basis.YOURS);
            return choice.equals("lies");
        }
        boolean lies = spot != null && spot.mayFreeze();
        reading.note(
                Question.SNOW,
                lies ? "lies" : "none",
                Basis.GUESS,
                DEFAULT + (lies ? ": the coldest month is cold enough for it" : ": no month is cold enough for it"));
        return lies;
    }

    private double lowestDegC(PlaceReader.Spot spot) {
        String name = "Coldest the panels meet";
        Field coldest = spot.coldestOnRecord();
        if (coldest.isPresent()) {
            coldest.note(name, Basis.YOURS);
            return spot.typedColdestDegC();
        }
        if (Double.isNaN(spot.lowestInDataDegC())) {
            reading.note(name, "unknown", Basis.GUESS, DEFAULT);
            coldest.caution("nothing tells how cold it gets; the rules take a bad case. Add \"coldest on record:\".");
            return Double.NaN;
        }
        double lowest = spot.lowestInDataDegC() - COLDER_THAN_TYPICAL_K;
        String shown = String.format(Locale.ROOT, "%.1f degC", lowest);
        String how = String.format(
                Locale.ROOT,
                "the coldest hour of the weather data, %.1f degC, less %.0f K",
                spot.lowestInDataDegC(),
                COLDER_THAN_TYPICAL_K);
        reading.note(name, shown, Basis.GUESS, how);
        coldest.caution(
                "coldest taken as " + shown + ": " + how
                        + ", because such data are typical and not extreme. A figure of your own (\"coldest on record:\") is better.");
        return lowest;
    }

    /** @param byName takes up where each name stands, also of a load in which something is wrong */
    private List<Load> loads(Field list, Map<String, Field> byName) {
        List<Load> loads = new ArrayList<>();
        List<Field> items = list.items("a list of loads, each with name, runs, draws, supply, essential");
        if (items.size() > LoadReader.MOST_LOADS) {
            list.problem(items.size() + " loads", "at most " + LoadReader.MOST_LOADS, "");
            return loads;
        }
        for (Field item : items) {
            Load load = new LoadReader(reading, item).read(byName);
            if (load != null) {
                loads.add(load);
            }
        }
        if (!loads.isEmpty() && loads.size() == items.size() && loads.stream().noneMatch(Load::essential)) {
            list.problem("no essential load", "at least one load with \"essential: yes\"", "");
        }
        return loads;
    }

    private Grammar grammar(Field block) {
        if (block.isPresent()) {
            block.keys("most panels", "most batteries", TendingReader.HOURS, TendingReader.STORED, MOST_JUGS);
        }
        Grammar grammar = new Grammar(
                countOr(block, "most panels", "Most panels looked at", 0),
                countOr(block, "most batteries", "Most batteries looked at", 1));
        return block.child(MOST_JUGS).isPresent()
                ? grammar.withMostJugs(countOr(block, MOST_JUGS, "Most frozen jugs looked at", 0))
                : grammar;
    }

    private static boolean isForMedical(Aid aid, Load load) {
        return load.nature().medical() != null && aid.forLoad().equalsIgnoreCase(load.name());
    }

    /** Told only of plans whose parts hold some of them: no other is changed by it. */
    private void checkAids(Field block, Grammar grammar, List<Part> parts, List<Load> loads, Outage outage) {
        List<Aid> aids = parts.stream()
                .filter(Aid.class::isInstance)
                .map(Aid.class::cast)
                .toList();
        if (aids.stream().anyMatch(Jug.class::isInstance)
                && !block.child(MOST_JUGS).isPresent()) {
            reading.note("Most frozen jugs looked at", String.valueOf(grammar.mostJugs()), Basis.GUESS, DEFAULT);
        }
        for (Aid aid : aids) {
            if (loads.stream().noneMatch(aid::suits)) {
                reading.caution(aid.listing().name() + " (" + aid.listing().source()
                        + ") is not looked at: "
                        + (loads.stream().anyMatch(load -> isForMedical(aid, load))
                                ? "it is no second plan for a load on which somebody's health hangs (" + aid.forLoad()
                                        + ")."
                                : "no load of this plan is what it is for (" + aid.forLoad() + ")."));
            }
        }
        int sets = Aids.countSets(parts, loads, grammar.mostJugs(), outage.hours());
        if (sets > Aids.MOST_SETS) {
            block.child(MOST_JUGS)
                    .problem(
                            sets + " ways to combine jugs, coolers and stand-ins",
                            "at most " + Aids.MOST_SETS,
                            "Look at fewer jugs (\"most jugs:\" under \"look at:\"), or strike out what you would not take.");
        }
    }

    private int countOr(Field block, String key, String name, int least) {
        Field field = block.child(key);
        if (!field.isPresent()) {
            reading.note(name, "4", Basis.GUESS, DEFAULT);
            return 4;
        }
        field.note(name, Basis.YOURS);
        return field.count(name.toLowerCase(Locale.ROOT), least, 20);
    }

    private List<SmallPart> smallParts(Field field, @Nullable String currency, Map<String, String> sourceById) {
        if (!field.isPresent()) {
            return List.of();
        }
        List<SmallPart> parts = listed(
                field,
                "the name of the file of small parts, such as small-parts.csv",
                "File of small parts",
                SmallPartsFile.TABLE,
                currency,
                sourceById);
        SmallPartsFile.tellFusesWithoutHolder(reading, parts);
        return parts;
    }

    private <P> List<P> listed(
            Field field,
            String expected,
            String noteName,
            PartsTable<P> table,
            @Nullable String currency,
            Map<String, String> sourceById) {
        List<Field> files = field.items(expected);
        if (files.size() > MOST_FILES) {
            field.problem(files.size() + " files", "at most " + MOST_FILES, "");
            return List.of();
        }
        List<P> parts = table.read(reading, beside, files, currency, sourceById);
        files.forEach(file -> file.note(noteName, Basis.YOURS));
        return parts;
    }

    /** The plan's, or where it names no money at all that of its parts. */
    private static @Nullable String currency(MoneyReader money, List<Part> parts) {
        return money.currency() != null || parts.isEmpty()
                ? money.currency()
                : parts.get(0).listing().currency();
    }

    static double shareOr(
            Reading reading, Field field, String name, Range percent, double fallbackPercent, Basis basis) {
        if (!field.isPresent()) {
            reading.note(name, Range.shown(fallbackPercent, "%"), basis, DEFAULT);
            return fallbackPercent / 100;
        }
        field.note(name, Basis.YOURS);
        return field.share(percent);
    }

    /** What the plan says of money. */
    private static final class MoneyReader {
        private final Reading reading;
        private @Nullable String currency;
        private OptionalLong budgetCents = OptionalLong.empty();
        private final @Nullable Allowances allowances;
        private final TermsReader terms;

        /**
         * @param smallFile the file of small parts; where it is there no allowance stands for them, and money need not be spoken of
         * @param hardWired whether a load hangs on the wires of the house, so that its joining has a price
         */
        MoneyReader(Reading reading, Field block, Field smallFile, boolean hardWired) {
            this.reading = reading;
            boolean priced = smallFile.isPresent();
            if (block.isPresent() || !priced || hardWired) {
                block.keys("at most", "small parts", "hard-wired loads", "tax", "shipping");
            }
            Field atMost = block.child("at most");
            if (atMost.isPresent()) {
                Money budget = read(atMost, "the most it may cost", "Budget");
                budgetCents = budget == null ? OptionalLong.empty() : OptionalLong.of(budget.cents());
            } else {
                reading.note("Budget", "none", Basis.GUESS, DEFAULT);
            }
            Field small = block.child("small parts");
            Allowances beside = priced ? noneBeside(small, smallFile) : allowances(small);
            long joiningCents = 0;
            Field joiningField = block.child("hard-wired loads");
            if (hardWired || joiningField.isPresent()) {
                Money joining = read(
                        joiningField,
                        "what joining each hard-wired load costs, listed inlet or transfer device and electrician",
                        "Joining each hard-wired load");
                joiningCents = joining == null ? 0 : joining.cents();
            }
            allowances = beside == null ? null : beside.withHardWired(joiningCents);
            terms = new TermsReader(reading, this::read);
            terms.read(block.child("tax"), block.child("shipping"));
        }

        private static @Nullable Allowances noneBeside(Field small, Field smallFile) {
            if (small.isPresent()) {
                small.problem(
                        "an allowance beside the file of small parts in line " + smallFile.line(),
                        "one or the other",
                        "Strike out the allowance: the file prices every small part.");
                return null;
            }
            return new Allowances(0, 0, 0);
        }

        private @Nullable Allowances allowances(Field small) {
            small.keys("ready box", "enclosure", "separate parts");
            Money box = read(
                    small.child("ready box"), "small parts with a ready-made box", "Small parts with a ready-made box");
            Money enclosure =
                    read(small.child("enclosure"), "small parts with an enclosure", "Small parts with an enclosure");
            Money separate = read(
                    small.child("separate parts"),
                    "small parts with separate parts",
                    "Small parts with separate parts");
            return box == null || enclosure == null || separate == null
                    ? null
                    : new Allowances(box.cents(), enclosure.cents(), separate.cents());
        }

        private @Nullable Money read(Field field, String what, String name) {
            Money money = field.money(what);
            if (money == null) {
                return null;
            }
            if (currency == null) {
                currency = money.currency();
            } else if (!currency.equals(money.currency())) {
                field.problem(
                        Reading.quoted(field.shown()),
                        "one currency in the whole plan",
                        "The first price is in " + currency + ".");
                return null;
            }
            reading.note(name, money.words(), Basis.YOURS, field.source());
            return money;
        }

        @Nullable
        String currency() {
            return currency;
        }

        OptionalLong budgetCents() {
            return budgetCents;
        }

        TermsReader terms() {
            return terms;
        }

        @Nullable
        Allowances allowances() {
            return allowances;
        }
    }
}
