package tideover.app.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Quantities.Measure;
import tideover.engine.cold.BoxKind;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Compressor;
import tideover.engine.cold.Contents;
import tideover.engine.cold.Defrost;
import tideover.engine.cold.Food;
import tideover.engine.cold.LabelStandard;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Duty;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.Supply;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Basis;

/** Reads a cold box: what it is, how its walls are known, what lies in it, and when it may run. */
final class ColdReader {
    static final List<String> KEYS = List.of(
            "name",
            "runs",
            "box",
            "holds",
            "freezer part",
            "label",
            "meter",
            "walls",
            "draws",
            "from",
            "defrost",
            "contents",
            "set to",
            "opened",
            "need",
            "worth",
            "duty",
            "before a storm",
            "supply",
            "essential",
            "room",
            "power factor",
            "start",
            "wave",
            "attended",
            "medical");

    /** What a cooler, which has no plug, cannot have. */
    private static final List<String> PLUG_KEYS = List.of(
            "label",
            "meter",
            "draws",
            "from",
            "defrost",
            "set to",
            "duty",
            "before a storm",
            "supply",
            "power factor",
            "start",
            "wave",
            "attended");

    private static final Range LITRES = Range.from(1, 2000).likely(15, 900);
    private static final Range DRAW_W = Range.above(0, 5000).likely(30, 500);
    private static final Range LABEL_KWH = Range.above(0, 20_000).likely(100, 1500);
    private static final Range METER_KWH = Range.above(0, 100).likely(0.1, 6);
    private static final Range WALLS_W_PER_K = Range.above(0, 100).likely(0.2, 6);
    private static final Range KG = Range.above(0, 2000).likely(0.2, 400);

    /** Below this the litres would be heavier than water. */
    private static final double MOST_KG_PER_L = 1;

    /** A box of at most so many litres in all is a compact one: 7.75 ft3, 10 CFR 430.2 (from memory). */
    private static final double COMPACT_BELOW_L = 7.75 * 28.316846592;

    /** In which what a compressor draws is taken to have been read; common practice, no source. */
    private static final double READ_ROOM_DEG_C = 22;

    /** A meter reading in a room hardly warmer than the box tells nothing of its walls. */
    private static final double LEAST_WARMER_K = 5;

    /** Of a cooler of {@link #USUAL_COOLER_L}, growing as its surface does; common practice, no source. */
    private static final double USUAL_COOLER_W_PER_K = 0.6;

    private static final double USUAL_COOLER_L = 50;
    /** The walls of a box known by its label may hold a little better; common practice, no source. */
    private static final double LABEL_WALLS_LEAST = 0.8;

    private static final double HOT_ROOM_DEG_C = 32;
    private static final int MOST_OPENED = 200;
    private static final double DAYS_PER_YEAR = 365;

    private final Reading reading;
    private final Field block;
    private final LoadReader common;
    private final String name;

    /** Whether its compressor works at a freezer part's cold. */
    private boolean freezerPart;

    ColdReader(Reading reading, Field block, LoadReader common, String name) {
        this.reading = reading;
        this.block = block;
        this.common = common;
        this.name = name;
    }

    /** Null where anything in it is wrong. */
    @Nullable
    Load read() {
        int before = reading.flaws();
        Field boxField = block.child("box");
        BoxKind kind = boxField.choice("what kind of box it is", List.of(BoxKind.values()), BoxKind::words);
        boxField.note(name + ": box", Basis.YOURS);
        boolean kindKnown = reading.flaws() == before;
        Field holds = block.child("holds");
        double litres = holds.quantity(Measure.VOLUME, LITRES);
        holds.note(name + ": holds", Basis.YOURS);
        common.alwaysEssential();
        RoomKind room = common.room(name);
        if (!kindKnown) {
            return null;
        }
        double freezerPartL = freezerPartL(kind, litres);
        freezerPart = freezerPartL > 0;
        double freshL = litres - freezerPartL;
        List<Contents> contents = contents(kind, freshL);
        boolean medicine = kind == BoxKind.MEDICINE_FRIDGE
                || block.child("contents").child("medicine").isPresent();
        long worthCents = worthCents();
        ColdLoad load = kind == BoxKind.COOLER
                ? cooler(litres, contents, medicine, room)
                : plugged(kind, freshL, freezerPartL, contents, medicine, room);
        return load == null ? null : load.worth(worthCents);
    }

    /** What would be lost with its contents; 0 where nothing is told. */
    private long worthCents() {
        Field field = block.child("worth");
        Money money = field.isPresent() ? field.money("what its contents are worth") : null;
        if (money == null) {
            return 0;
        }
        field.note(name + ": worth of its contents", Basis.YOURS);
        reading.worth(field, money.currency());
        return money.cents();
    }

    private @Nullable ColdLoad cooler(double litres, List<Contents> contents, boolean medicine, RoomKind room) {
        for (String key : PLUG_KEYS) {
            Field field = block.child(key);
            if (field.isPresent()) {
                field.problem(
                        "\"" + key + ":\" of a cooler", "no such line: a cooler has no plug and lives on its ice", "");
            }
        }
        Field walls = block.child("walls");
        double wallWPerK = USUAL_COOLER_W_PER_K * StrictMath.pow(litres / USUAL_COOLER_L, 2.0 / 3);
        Span span = Span.of(wallWPerK);
        if (walls.isPresent()) {
            span = walls.span(Measure.HEAT_FLOW, WALLS_W_PER_K);
            walls.note(name + ": walls", Basis.YOURS);
        } else {
            reading.note(
                    name + ": walls",
                    PlainNumber.of(wallWPerK) + " W/K",
                    Basis.COMMON_PRACTICE,
                    PlanFile.DEFAULT + ": usual of a cooler of that size");
        }
        wallSpread(span, Spread.Known.GUESS, true, walls);
        double opened = opened(BoxKind.COOLER, false);
        Need need = new ColdNeedReader(reading, block.child("need"), name)
                .read(BoxKind.COOLER, medicine, block.child("set to"), BoxKind.COOLER.usualDegC());
        Nature nature = Nature.PLAIN.with(common.medical(name));
        if (common.isFlawed() || need == null || contents.isEmpty()) {
            return null;
        }
        ColdBox box = ColdBox.ofWalls(BoxKind.COOLER, litres, span.middle(), null, null, contents)
                .withOpenings(opened);
        cautionMedicine(medicine, nature);
        return new ColdLoad(name, Supply.NONE, box, need, Duty.AS_IT_NEEDS, Double.NaN, room, nature);
    }

    private @Nullable ColdLoad plugged(
            BoxKind kind,
            double freshL,
            double freezerPartL,
            List<Contents> contents,
            boolean medicine,
            RoomKind room) {
        double setDegC = setDegC(kind);
        Defrosting defrosting = defrosting(kind, freezerPartL > 0);
        Walls walls = walls(kind, freshL, freezerPartL, setDegC, defrosting);
        Span draws = Span.of(Double.NaN);
        Field drawsField = block.child("draws");
        if (drawsField.isPresent()) {
            draws = Span.of(common.draws(name, DRAW_W));
        } else if (block.child("from").isPresent()) {
            block.child("from").problem("where a figure is from, without the figure", "\"draws:\" beside it", "");
        }
        double opened = opened(kind, block.child("meter").isPresent());
        Need need = new ColdNeedReader(reading, block.child("need"), name)
                .read(kind, medicine, block.child("set to"), setDegC);
        Duty duty = duty(kind, contents);
        double chilledDegC = chilledToDegC(kind, setDegC, need);
        Supply supply = common.supply(name);
        if (common.isFlawed() || walls == null || contents.isEmpty()) {
            // what its motor takes can still be looked through
            common.nature(name, supply, draws.middle());
            return null;
        }
        Compressor told = drawsField.isPresent()
                ? new Compressor(draws.middle(), walls.readDegC())
                : Compressor.usual(kind, freshL);
        ColdBox box = box(kind, freshL, walls, told, defrosting, contents, setDegC);
        Compressor compressor = drawsField.isPresent() ? told : strong(box);
        box = box(kind, freshL, walls, compressor, defrosting, contents, setDegC)
                .withOpenings(opened);
        checkStrength(box, walls, drawsField);
        Nature nature = common.nature(name, supply, compressor.runningW());
        if (common.isFlawed() || need == null || duty == null || supply == null || nature == null) {
            return null;
        }
        cautionMedicine(medicine, nature);
        return new ColdLoad(name, supply, box, need, duty, chilledDegC, room, nature);
    }

    private double freezerPartL(BoxKind kind, double litres) {
        Field field = block.child("freezer part");
        if (!field.isPresent()) {
            return 0;
        }
        if (kind != BoxKind.REFRIGERATOR) {
            field.problem("a freezer part of a " + kind.words(), "none: only a refrigerator has one", "");
            return 0;
        }
        double part = field.quantity(Measure.VOLUME, Range.above(0, 1000).likely(5, 300));
        field.note(name + ": freezer part", Basis.YOURS);
        if (litres - part < LITRES.least()) {
            field.problem(
                    Reading.quoted(field.shown()),
                    "less than the " + block.child("holds").shown() + " of the whole",
                    "What a refrigerator holds is told with its freezer part.");
            return 0;
        }
        return part;
    }

    /** Food or medicine, then ice where there is some; empty where wrong. */
    private List<Contents> contents(BoxKind kind, double litres) {
        int before = reading.flaws();
        Field field = block.child("contents").keys("food", "medicine", "full", "ice");
        List<String> ways = List.of("food", "medicine", "full");
        List<String> given =
                ways.stream().filter(key -> field.child(key).isPresent()).toList();
        Field iceField = field.child("ice");
        double iceKg = 0;
        if (iceField.isPresent()) {
            iceKg = iceField.quantity(Measure.MASS, Range.above(0, 500).likely(0.5, 100));
            iceField.note(name + ": ice", Basis.YOURS);
        } else if (kind == BoxKind.COOLER && field.isBlock()) {
            iceField.problem("a cooler without ice", "\"ice:\", such as 5 kg", "Only its ice keeps it cold.");
        }
        if (given.size() != 1) {
            if (field.isBlock() && (!given.isEmpty() || reading.flaws() == before)) {
                field.problem(
                        given.isEmpty() ? "none of them" : String.join(" and ", given),
                        "exactly one of food, medicine, full",
                        "Weigh what lies in it, or tell how full it is.");
            }
            return List.of();
        }
        Field figure = field.child(given.get(0));
        boolean share = given.get(0).equals("full");
        Span kg = share
                ? figure.span(Measure.PERCENT, Range.above(0, 100).likely(10, 100))
                        .times(Contents.FULL_KG_PER_L * litres / 100)
                : figure.span(Measure.MASS, KG);
        figure.note(name + ": " + given.get(0), Basis.YOURS);
        if (reading.flaws() > before || Double.isNaN(litres)) {
            return List.of();
        }
        if (kg.most() + iceKg > MOST_KG_PER_L * litres) {
            figure.problem(
                    Reading.quoted(figure.shown()) + (iceKg > 0 ? " with " + iceField.shown() + " of ice" : ""),
                    "no more than " + PlainNumber.of(MOST_KG_PER_L * litres) + " kg in " + PlainNumber.of(litres)
                            + " L",
                    "");
            return List.of();
        }
        boolean medicine = kind == BoxKind.MEDICINE_FRIDGE || given.get(0).equals("medicine");
        Food food = medicine ? Food.WATER : Food.LEAN_BEEF;
        if (share || kg.isRange()) {
            reading.note(
                    name + ": contents reckoned with",
                    PlainNumber.of(kg.middle()) + " kg",
                    Basis.COMMON_PRACTICE,
                    share
                            ? "a full box holds " + PlainNumber.of(Contents.FULL_KG_PER_L) + " kg in a litre"
                            : "the middle");
        }
        reading.note(
                name + ": contents warm as",
                food.name(),
                Basis.COMMON_PRACTICE,
                PlanFile.DEFAULT + ": stands for what is kept; heats of ASHRAE Handbook Refrigeration");
        reading.spread(Spread.of(name, Spread.Figure.FOOD, kg, Spread.Known.GUESS));
        List<Contents> contents = new ArrayList<>(List.of(Contents.of(food, kg.middle())));
        if (iceKg > 0) {
            contents.add(Contents.of(Food.WATER, iceKg));
        }
        return contents;
    }

    private double setDegC(BoxKind kind) {
        Field field = block.child("set to");
        if (!field.isPresent()) {
            reading.note(
                    name + ": set to",
                    Range.shown(kind.usualDegC(), "degC"),
                    Basis.COMMON_PRACTICE,
                    PlanFile.DEFAULT + ": usual of a " + kind.words());
            return kind.usualDegC();
        }
        Range range = Range.from(-40, 15);
        double degC = field.quantity(Measure.TEMPERATURE, kind.freezes() ? range.likely(-30, -10) : range.likely(1, 6));
        field.note(name + ": set to", Basis.YOURS);
        return degC;
    }

    /**
     * How frost is got rid of.
     *
     * @param heater null where none does it
     * @param itself whether nobody has to
     */
    private record Defrosting(@Nullable Defrost heater, boolean itself) {}

    private Defrosting defrosting(BoxKind kind, boolean withFreezerPart) {
        Field field = block.child("defrost");
        boolean heated = kind == BoxKind.UPRIGHT_FREEZER || withFreezerPart;
        boolean inPauses = kind == BoxKind.REFRIGERATOR || kind == BoxKind.MEDICINE_FRIDGE;
        if (!field.isPresent()) {
            String words = heated
                    ? "frost-free, " + words(Defrost.USUAL)
                    : inPauses ? "in the compressor's pauses, without a heater" : "by hand";
            reading.note(name + ": defrost", words, Basis.GUESS, PlanFile.DEFAULT + ": usual of such a box");
            return new Defrosting(heated ? Defrost.USUAL : null, heated || inPauses);
        }
        if (!field.isBlock()) {
            boolean byHand = field.choice(
                            "how it is rid of frost, or {heater: 450 W, for: 20 min, every: 10 h}",
                            List.of("by hand", "frost-free"),
                            word -> word)
                    .equals("by hand");
            field.note(name + ": defrost", Basis.YOURS);
            if (!byHand) {
                reading.note(name + ": defrost heater", words(Defrost.USUAL), Basis.COMMON_PRACTICE, PlanFile.DEFAULT);
            }
            return new Defrosting(byHand ? null : Defrost.USUAL, !byHand);
        }
        int before = reading.flaws();
        field.keys("heater", "for", "every");
        double watts = field.child("heater")
                .quantity(Measure.POWER, Range.above(0, 3000).likely(100, 800));
        double seconds =
                field.child("for").quantity(Measure.BRIDGE, Range.from(60, 7200).likely(300, 3600));
        double everyHours =
                field.child("every").quantity(Measure.TIME, Range.from(4, 96).likely(6, 48));
        if (reading.flaws() > before) {
            return new Defrosting(null, true);
        }
        Defrost heater = new Defrost(watts, seconds / 60, everyHours);
        reading.note(name + ": defrost", words(heater), Basis.YOURS, field.source());
        return new Defrosting(heater, true);
    }

    private static String words(Defrost heater) {
        return PlainNumber.of(heater.heaterW()) + " W for " + PlainNumber.of(heater.minutes()) + " min every "
                + PlainNumber.of(heater.everyHours()) + " h";
    }

    /**
     * What the walls let through.
     *
     * @param testDegC room in which what they were known from was found; NaN where they were told
     * @param readDegC room in which what the compressor draws was read
     */
    private record Walls(Span wPerK, double testDegC, double readDegC) {}

    private @Nullable Walls walls(
            BoxKind kind, double freshL, double freezerPartL, double setDegC, Defrosting defrosting) {
        int before = reading.flaws();
        List<String> given = List.of("label", "meter", "walls").stream()
                .filter(key -> block.child(key).isPresent())
                .toList();
        if (given.size() > 1) {
            block.child(given.get(1))
                    .problem(
                            String.join(" and ", given),
                            "at most one of label, meter, walls",
                            "A meter's reading is the best.");
            return null;
        }
        return switch (given.isEmpty() ? "" : given.get(0)) {
            case "label" -> byLabel(kind, defrosting, before);
            case "meter" -> byMeter(setDegC, defrosting, before);
            case "walls" -> {
                Field field = block.child("walls");
                Span span = field.span(Measure.HEAT_FLOW, WALLS_W_PER_K);
                field.note(name + ": walls", Basis.YOURS);
                wallSpread(span, Spread.Known.GUESS, true, field);
                yield reading.flaws() > before ? null : new Walls(span, Double.NaN, READ_ROOM_DEG_C);
            }
            default -> byStandard(kind, freshL, freezerPartL, defrosting);
        };
    }

    private @Nullable Walls byLabel(BoxKind kind, Defrosting defrosting, int before) {
        Field field = block.child("label");
        Span kWh = field.span(Measure.ENERGY_OF_A_YEAR, LABEL_KWH);
        field.note(name + ": energy of a year by its label", Basis.MAKER);
        if (reading.flaws() > before) {
            return null;
        }
        Span walls = ofUse(kWh, ColdBox.LABEL_ROOM_DEG_C, LabelStandard.insideDegC(kind), defrosting, field);
        if (walls == null) {
            return null;
        }
        labelSpread(kind, walls, field);
        return new Walls(walls, ColdBox.LABEL_ROOM_DEG_C, READ_ROOM_DEG_C);
    }

    private @Nullable Walls byMeter(double setDegC, Defrosting defrosting, int before) {
        Field field = block.child("meter").keys("uses", "in a room of");
        Field uses = field.child("uses");
        Span kWh = uses.span(Measure.ENERGY_OF_A_DAY, METER_KWH);
        uses.note(name + ": energy of a day by a meter", Basis.MEASURED);
        Field roomField = field.child("in a room of");
        double roomDegC =
                roomField.quantity(Measure.TEMPERATURE, Range.from(-20, 50).likely(10, 35));
        roomField.note(name + ": room of that day", Basis.MEASURED);
        if (reading.flaws() > before) {
            return null;
        }
        if (roomDegC < setDegC + LEAST_WARMER_K) {
            roomField.problem(
                    Reading.quoted(roomField.shown()),
                    "a room at least " + Range.shown(LEAST_WARMER_K, "K") + " warmer than the " + degC(setDegC)
                            + " inside",
                    "In a cold room the reading tells nothing of the walls.");
            return null;
        }
        Span walls = ofUse(kWh.times(DAYS_PER_YEAR), roomDegC, setDegC, defrosting, uses);
        if (walls == null) {
            return null;
        }
        wallSpread(walls, Spread.Known.METER, false, uses);
        return new Walls(walls, roomDegC, roomDegC);
    }

    private @Nullable Walls byStandard(BoxKind kind, double freshL, double freezerPartL, Defrosting defrosting) {
        if (!(freshL >= LITRES.least())) {
            return null;
        }
        boolean compact = freshL + freezerPartL < COMPACT_BELOW_L;
        LabelStandard.Limit limit = LabelStandard.of(kind, defrosting.itself(), compact, freshL, freezerPartL);
        reading.note(
                name + ": energy of a year",
                PlainNumber.of(limit.kWhPerYear()) + " kWh",
                Basis.PUBLISHED,
                "an upper bound: the most that a new box of that size may use, 10 CFR 430.32(a) class "
                        + limit.productClass().number()
                        + "; check the edition in force; most keep somewhat better, old or worn ones worse");
        Span walls = ofUse(
                Span.of(limit.kWhPerYear()),
                ColdBox.LABEL_ROOM_DEG_C,
                LabelStandard.insideDegC(kind),
                defrosting,
                block.child("defrost"));
        if (walls == null) {
            return null;
        }
        wallSpread(walls, Spread.Known.GUESS, false, block);
        return new Walls(walls, ColdBox.LABEL_ROOM_DEG_C, READ_ROOM_DEG_C);
    }

    /** From what it uses; null, and told, where its defrost heater alone would use that. */
    private @Nullable Span ofUse(
            Span kWhPerYear, double roomDegC, double insideDegC, Defrosting defrosting, Field field) {
        Defrost heater = defrosting.heater();
        double workDegC = freezerPart ? Math.min(insideDegC, ColdBox.FREEZER_PART_DEG_C) : insideDegC;
        if (heater != null) {
            double leastW = heater.meanW() * (1 + Defrost.INTO_BOX / Compressor.movedPerW(roomDegC, workDegC));
            double leastKwh = leastW * DAYS_PER_YEAR * 24 / 1000;
            if (!(kWhPerYear.least() > leastKwh)) {
                field.problem(
                        field.isText() ? Reading.quoted(field.shown()) : "a defrost heater of " + words(heater),
                        "more use in a year than the " + PlainNumber.of(leastKwh)
                                + " kWh of its defrost heater and of the heat that this leaves in the box",
                        "Is it defrosted by hand? Then write defrost: by hand.");
                return null;
            }
        }
        return new Span(
                ColdBox.wallWPerK(kWhPerYear.least(), roomDegC, insideDegC, workDegC, heater),
                ColdBox.wallWPerK(kWhPerYear.most(), roomDegC, insideDegC, workDegC, heater));
    }

    /** A label may tell of a gentler use than that of its test room, and an old box uses more than its label. */
    private void labelSpread(BoxKind kind, Span walls, Field field) {
        if (walls.isRange()) {
            wallSpread(walls, Spread.Known.LABEL, false, field);
            return;
        }
        reading.spread(new Spread(
                name, Spread.Figure.WALLS, LABEL_WALLS_LEAST, LabelStandard.wallsMostTimes(kind), Spread.Known.LABEL));
        noteWalls(walls, Basis.COMMON_PRACTICE);
    }

    private void noteWalls(Span walls, Basis basis) {
        reading.note(
                name + ": walls",
                PlainNumber.of(walls.middle()) + " W/K",
                basis,
                "from what it uses, and how much heat a compressor moves");
    }

    private void wallSpread(Span span, Spread.Known known, boolean told, Field field) {
        if (Double.isNaN(span.middle())) {
            return;
        }
        reading.spread(Spread.of(name, Spread.Figure.WALLS, span, known));
        if (!told) {
            noteWalls(span, known == Spread.Known.METER ? Basis.MEASURED : Basis.COMMON_PRACTICE);
        } else {
            common.middle(name, "walls", span, Measure.HEAT_FLOW, field);
        }
    }

    private ColdBox box(
            BoxKind kind,
            double litres,
            Walls walls,
            Compressor compressor,
            Defrosting defrosting,
            List<Contents> contents,
            double setDegC) {
        ColdBox box = ColdBox.ofWalls(kind, litres, walls.wPerK().middle(), compressor, defrosting.heater(), contents);
        return (freezerPart ? box.withFreezerPart() : box).setTo(setDegC, box.bandK());
    }

    /** A usual compressor, as strong as the walls of its box need it. */
    private Compressor strong(ColdBox box) {
        Compressor strong = Objects.requireNonNull(box.strongEnough().compressor());
        reading.note(
                name + ": draws",
                PlainNumber.of(strong.runningW()) + " W while it runs",
                Basis.COMMON_PRACTICE,
                PlanFile.DEFAULT + ": usual of that kind and size; a reading at the plug is far better");
        reading.spread(Spread.of(name, Spread.Figure.DRAWS, Span.of(strong.runningW()), Spread.Known.GUESS));
        return strong;
    }

    /** What was told of its use and of its compressor must fit; in a hot room it may be too weak. */
    private void checkStrength(ColdBox box, Walls walls, Field draws) {
        boolean told = draws.isPresent() && !Double.isNaN(walls.testDegC());
        double duty = told ? box.dutyAt(walls.testDegC()) : 0;
        if (duty > 1) {
            Compressor compressor = box.compressor();
            double leastW = compressor == null ? 0 : compressor.runningW() * duty;
            draws.problem(
                    Reading.quoted(draws.shown()),
                    "at least the " + PlainNumber.of(Math.ceil(leastW))
                            + " W that it needs to keep its setting with what it is said to use",
                    "Is it the mean of a day? The watts while it runs are wanted.");
        } else if (box.dutyAt(HOT_ROOM_DEG_C) > 1) {
            block.caution("in a room of " + degC(HOT_ROOM_DEG_C)
                    + " its compressor could not keep its setting, by these figures.");
        }
    }

    private void cautionMedicine(boolean medicine, Nature nature) {
        if (medicine && nature.medical() == null) {
            block.caution(
                    "it holds medicine. If somebody's health hangs on it, add \"medical:\"; what its maker and the"
                            + " pharmacist say of warmth and frost comes first.");
        }
    }

    private @Nullable Duty duty(BoxKind kind, List<Contents> contents) {
        Field field = block.child("duty");
        if (!field.isPresent()) {
            reading.note(name + ": runs in an outage", Duty.AS_IT_NEEDS.words(), Basis.GUESS, PlanFile.DEFAULT);
            return Duty.AS_IT_NEEDS;
        }
        int before = reading.flaws();
        Duty duty;
        if (field.isBlock()) {
            field.keys("hours");
            List<DayWindow> windows = LoadReader.windows(field.child("hours"));
            duty = windows.isEmpty() ? Duty.AS_IT_NEEDS : Duty.inHours(windows);
        } else {
            boolean sunny = field.choice(
                            "when it may run: {hours: [10:00-14:00]}, or one of",
                            List.of("as it needs", "while sunny"),
                            word -> word)
                    .equals("while sunny");
            duty = sunny ? Duty.WHILE_SUNNY : Duty.AS_IT_NEEDS;
        }
        if (reading.flaws() > before) {
            return null;
        }
        boolean mayWait = kind.freezes() || contents.size() > 1;
        if (!mayWait && duty.kind() != Duty.Kind.AS_IT_NEEDS) {
            field.problem(
                    field.isText() ? Reading.quoted(field.shown()) : "hours of its own",
                    "as it needs",
                    "Only a freezer, or a box whose ice is stated, may wait: fresh food and medicine need their cold whenever"
                            + " the thermostat asks for it.");
            return null;
        }
        reading.note(name + ": runs in an outage", duty.words(), Basis.YOURS, field.source());
        return duty;
    }

    /** NaN where nobody does that. */
    private double chilledToDegC(BoxKind kind, double setDegC, @Nullable Need need) {
        Field field = block.child("before a storm");
        if (!field.isPresent()) {
            return Double.NaN;
        }
        Field to = field.keys("chilled to").child("chilled to");
        Range range = Range.from(-40, 15);
        double degC = to.quantity(Measure.TEMPERATURE, kind.freezes() ? range.likely(-30, -15) : range);
        to.note(name + ": chilled before a storm to", Basis.YOURS);
        if (Double.isNaN(degC) || Double.isNaN(setDegC)) {
            return Double.NaN;
        }
        double least = need instanceof Need.Band band ? band.leastDegC() : kind.freezes() ? -40 : 0;
        if (degC < least) {
            to.problem(
                    Reading.quoted(to.shown()),
                    "no colder than " + degC(least),
                    "Frost spoils fresh food and most medicine.");
        } else if (!(degC < setDegC)) {
            to.problem(Reading.quoted(to.shown()), "colder than the " + degC(setDegC) + " that it is set to", "");
        }
        return degC;
    }

    private static String degC(double value) {
        return PlainNumber.of(value) + " degC";
    }

    private double opened(BoxKind kind, boolean metered) {
        Field field = block.child("opened");
        if (!field.isPresent()) {
            int usual = kind.freezes() || metered ? 0 : kind == BoxKind.REFRIGERATOR ? 6 : 2;
            reading.note(
                    name + ": opened each day of the outage",
                    usual + " times",
                    Basis.GUESS,
                    PlanFile.DEFAULT
                            + (metered && !kind.freezes()
                                    ? ": the meter's reading has the openings of usual days in it"
                                    : ""));
            return usual;
        }
        field.note(name + ": opened each day of the outage", Basis.YOURS);
        int times = field.count("how often its door is opened on a day of the outage", 0, MOST_OPENED);
        if (times > 40) {
            field.caution(
                    times + " is taken, but is unlikely in an outage: a shut door is the cheapest cold there is.");
        }
        return times;
    }
}
