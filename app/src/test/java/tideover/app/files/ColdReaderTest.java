package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.answer.Question;
import tideover.engine.cold.AgencyHours;
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
import tideover.engine.load.Medical;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.Start;
import tideover.engine.load.Supply;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;

/** Cold boxes in a plan: the records they become, what is assumed and said so, what is refused. */
class ColdReaderTest {
    private static final Supply WALL = Supply.ac(120, 60, "NEMA 5-15");
    private static final Need FROZEN = new Need.Below(-1.7);
    private static final Need FRESH = new Need.HoursAbove(AgencyHours.LIMIT_DEG_C, 4);

    private static ColdLoad cold(String load, String... keys) {
        return (ColdLoad) Kept.only(with(load, keys));
    }

    private static String with(String load, String... keys) {
        StringBuilder all = new StringBuilder(load);
        for (String key : keys) {
            all.append("    ").append(key).append("\n");
        }
        return all.toString();
    }

    private static Contents food(double kg) {
        return Contents.of(Food.LEAN_BEEF, kg);
    }

    private static Contents water(double kg) {
        return Contents.of(Food.WATER, kg);
    }

    @Test
    void aFreezerWithAllThatCanBeSaid() {
        ColdLoad load = cold(
                Kept.FREEZER.replace("200 L", "7 ft3").replace("food: 60 kg", "food: 132.277 lb, ice: 5 kg"),
                "meter: {uses: 0.8 kWh, in a room of: 21 degC}",
                "draws: 95 W",
                "from: meter",
                "defrost: {heater: 30 W, for: 20 min, every: 10 h}",
                "set to: -20 degC",
                "opened: 1",
                "need: {below: -12 degC}",
                "duty: {hours: [10:00-14:00]}",
                "before a storm: {chilled to: -24 degC}",
                "essential: yes",
                "room: garage",
                "power factor: 0.7",
                "start: {va: 900 VA}");

        Defrost defrost = new Defrost(30, 20, 10);
        double litres = 198.217926144;
        double kg = 60;
        ColdBox box = ColdBox.ofWalls(
                        BoxKind.CHEST_FREEZER,
                        litres,
                        ColdBox.wallWPerK(0.8 * 365, 21, -20, defrost),
                        new Compressor(95, 21),
                        defrost,
                        List.of(food(kg), water(5)))
                .setTo(-20, BoxKind.CHEST_FREEZER.usualBandK())
                .withOpenings(1);
        ColdLoad expected = new ColdLoad(
                "Freezer",
                WALL,
                box,
                new Need.Below(-12),
                Duty.inHours(List.of(new DayWindow(10, 14))),
                -24,
                RoomKind.GARAGE,
                new Nature(0.7, new Start(900, 0.6, 0.5, false, ""), false, false));
        assertThat(load)
                .usingRecursiveComparison()
                .withComparatorForType((a, b) -> Math.abs(a - b) <= 1e-4 * Math.abs(b) ? 0 : 1, Double.class)
                .isEqualTo(expected);
    }

    @Test
    void aFreezerKnownByItsLabel() {
        ColdLoad load = cold(Kept.FREEZER, "label: 220 kWh", "draws: 95 W");

        ColdBox box = ColdBox.ofLabel(BoxKind.CHEST_FREEZER, 200, 220, new Compressor(95, 22), null, List.of(food(60)));
        assertThat(load)
                .isEqualTo(new ColdLoad(
                        "Freezer", WALL, box, FROZEN, Duty.AS_IT_NEEDS, Double.NaN, RoomKind.INDOORS, Nature.PLAIN));
    }

    /** By the most that the rule allows, with a usual compressor: 400 L are 24.86 adjusted ft3, 7.29 kWh each and 107.8 kWh. */
    @Test
    void aFreezerOfWhichOnlyItsSizeIsKnown() {
        ColdLoad load = cold(Kept.FREEZER.replace("200 L", "400 L"));
        double kWh =
                LabelStandard.of(BoxKind.CHEST_FREEZER, false, false, 400, 0).kWhPerYear();

        assertThat(load.box())
                .isEqualTo(ColdBox.ofLabel(BoxKind.CHEST_FREEZER, 400, kWh, null, null, List.of(food(60))));
        assertThat(Kept.read(Kept.FREEZER.replace("200 L", "400 L")).notes())
                .contains(new MarginNote(
                        "Freezer: energy of a year",
                        "289 kWh",
                        Basis.PUBLISHED,
                        "an upper bound: the most that a new box of that size may use, 10 CFR 430.32(a) class 10; check the"
                                + " edition in force; most keep somewhat better, old or worn ones worse"));
    }

    /** 219 L are below 7.75 ft3, 220 L are not. */
    @Test
    void smallBoxesAreJudgedAsCompactOnes() {
        List<String> sources = List.of("219 L", "220 L").stream()
                .map(holds -> Kept.read(Kept.FREEZER.replace("200 L", holds)).notes().stream()
                        .filter(note -> note.name().equals("Freezer: energy of a year"))
                        .findFirst()
                        .orElseThrow()
                        .source())
                .toList();

        assertThat(sources.get(0)).contains("class 18;");
        assertThat(sources.get(1)).contains("class 10;");
    }

    @Test
    void aRefrigerator() {
        ColdLoad load = cold(Kept.REFRIGERATOR, "label: 300 kWh");

        ColdBox box = ColdBox.ofLabel(BoxKind.REFRIGERATOR, 400, 300, null, null, List.of(food(80)))
                .withOpenings(6);
        assertThat(load)
                .isEqualTo(new ColdLoad(
                        "Kitchen", WALL, box, FRESH, Duty.AS_IT_NEEDS, Double.NaN, RoomKind.INDOORS, Nature.PLAIN));
        assertThat(Kept.read(Kept.REFRIGERATOR).notes())
                .contains(
                        new MarginNote(
                                "Kitchen: need",
                                "above 4.4 degC for 4 h in all at most",
                                Basis.PUBLISHED,
                                "default of the program: 40 degF and 4 h, USDA and FDA; older guidance says 2 h"),
                        new MarginNote(
                                "Kitchen: opened each day of the outage", "6 times", Basis.GUESS, PlanFile.DEFAULT));
    }

    /** What it holds is told with its freezer part; contents lie in the fresh food's part. */
    @Test
    void aRefrigeratorWithAFreezerPart() {
        ColdLoad load = cold(Kept.REFRIGERATOR, "freezer part: 100 L", "label: 420 kWh");

        assertThat(load.box())
                .isEqualTo(ColdBox.ofLabel(BoxKind.REFRIGERATOR, 300, 100, 420, null, Defrost.USUAL, List.of(food(60)))
                        .withOpenings(6));
    }

    @Test
    void theAgenciesFiguresMayBeTightened() {
        assertThat(cold(Kept.REFRIGERATOR, "need: {above: 40 degF, at most: 4 h}")
                        .need())
                .isEqualTo(FRESH);
        assertThat(cold(Kept.REFRIGERATOR, "need: {above: 4 degC, at most: 90 min}")
                        .need())
                .isEqualTo(new Need.HoursAbove(4, 1.5));
        assertThat(cold(Kept.FREEZER, "need: Frozen").need()).isEqualTo(FROZEN);
    }

    @Test
    void aMedicineFridge() {
        ColdLoad load = cold(
                Kept.MEDICINE,
                "meter: {uses: 300 Wh, in a room of: 70 degF}",
                "need: {between: 36 degF, and: 46 degF}",
                "medical: {can be without: 2 h, alarm: a bell, who acts: Ada, able: yes, second plan: ice}");

        assertThat(load.supply()).isEqualTo(Supply.dc(12, "car socket"));
        assertThat(((Need.Band) load.need()).leastDegC()).isCloseTo(20.0 / 9, offset(1e-9));
        assertThat(((Need.Band) load.need()).mostDegC()).isCloseTo(70.0 / 9, offset(1e-9));
        assertThat(load.box().bandK()).isEqualTo(BoxKind.MEDICINE_FRIDGE.usualBandK());
        assertThat(load.box().contents()).containsExactly(water(1));
        assertThat(load.box().wallWPerK()).isCloseTo(ColdBox.wallWPerK(0.3 * 365, 190.0 / 9, 5, null), offset(1e-9));
        // a meter's reading has the door in it
        assertThat(load.box().openingsPerDay()).isZero();
        assertThat(load.nature().medical()).isEqualTo(new Medical(7200, "a bell", "Ada", true, "ice"));
        assertThat(load.agencyHours()).isInfinite();
    }

    @Test
    void medicineMayLieInARefrigeratorAndThenOwesItsBand() {
        ColdLoad load = cold(Kept.REFRIGERATOR.replace("full: 40 %", "medicine: 2 kg"), "set to: 4.5 degC");

        assertThat(load.need()).isEqualTo(new Need.Band(2, 8));
        assertThat(load.box().contents()).containsExactly(water(2));
    }

    @Test
    void aCoolerHasNoPlug() {
        ColdLoad load = cold(Kept.COOLER, "walls: 0.4 W/K", "opened: 3", "room: outdoors");

        ColdBox box = ColdBox.ofWalls(BoxKind.COOLER, 50, 0.4, null, null, List.of(food(5), water(10)))
                .withOpenings(3);
        assertThat(load)
                .isEqualTo(new ColdLoad(
                        "Cooler",
                        Supply.NONE,
                        box,
                        FRESH,
                        Duty.AS_IT_NEEDS,
                        Double.NaN,
                        RoomKind.OUTDOORS,
                        Nature.PLAIN));
        assertThat(load.plugged()).isFalse();
        assertThat(Kept.read(Kept.COOLER).cautions()).isEmpty();
    }

    /** 50 L are usual with .6 W/K; eight times the litres have four times the surface. */
    @Test
    void aCoolerOfUsualWalls() {
        assertThat(cold(Kept.COOLER).box().wallWPerK()).isEqualTo(0.6);
        assertThat(cold(Kept.COOLER.replace("50 L", "400 L")).box().wallWPerK()).isCloseTo(2.4, offset(1e-12));
        assertThat(Kept.read(Kept.COOLER).notes())
                .contains(new MarginNote(
                        "Cooler: walls",
                        "0.6 W/K",
                        Basis.COMMON_PRACTICE,
                        "default of the program: usual of a cooler of that size"));
    }

    @Test
    void whoMayWaitMayWait() {
        assertThat(cold(Kept.FREEZER, "duty: while sunny").duty()).isEqualTo(Duty.WHILE_SUNNY);
        assertThat(cold(Kept.REFRIGERATOR, "duty: as it needs").duty()).isEqualTo(Duty.AS_IT_NEEDS);
        assertThat(cold(Kept.REFRIGERATOR.replace("40 %", "40 %, ice: 5 kg"), "duty: while sunny")
                        .duty())
                .isEqualTo(Duty.WHILE_SUNNY);
    }

    @Test
    void frostIsGotRidOfInManyWays() {
        assertThat(cold(Kept.FREEZER, "defrost: frost-free").box().defrost()).isEqualTo(Defrost.USUAL);
        assertThat(cold(Kept.FREEZER.replace("chest", "upright")).box().defrost())
                .isEqualTo(Defrost.USUAL);
        assertThat(cold(Kept.FREEZER.replace("chest", "upright"), "defrost: by hand")
                        .box()
                        .defrost())
                .isNull();
    }

    @Test
    void figuresMayBeRanges() {
        String load = with(
                Kept.FREEZER.replace("60 kg", "50-70 kg"),
                "label: 200 to 240 kWh",
                "draws: 90 W\u2013100 W",
                "from: label");
        ColdBox box = ((ColdLoad) Kept.only(load)).box();

        assertThat(box.food()).isEqualTo(food(60));
        assertThat(box.compressor()).isEqualTo(new Compressor(95, 22));
        double walls = ColdBox.ofLabel(BoxKind.CHEST_FREEZER, 200, 220, new Compressor(95, 22), null, List.of(food(60)))
                .wallWPerK();
        assertThat(box.wallWPerK()).isCloseTo(walls, offset(1e-12));
        List<Spread> spreads = Kept.spreads(load);
        assertThat(spreads)
                .extracting(Spread::figure)
                .containsExactly(Spread.Figure.FOOD, Spread.Figure.WALLS, Spread.Figure.DRAWS);
        assertThat(spreads)
                .extracting(Spread::known)
                .containsExactly(Spread.Known.GUESS, Spread.Known.LABEL, Spread.Known.LABEL);
        assertSpread(spreads.get(0), 5.0 / 6, 7.0 / 6);
        assertSpread(spreads.get(1), 200.0 / 220, 240.0 / 220);
        assertSpread(spreads.get(2), 90.0 / 95, 100.0 / 95);
        assertThat(Kept.read(load).notes())
                .contains(
                        new MarginNote("Freezer: food", "50-70 kg", Basis.YOURS, "plan.yaml:18"),
                        new MarginNote(
                                "Freezer: draws reckoned with",
                                "95 W",
                                Basis.GUESS,
                                "plan.yaml:20, the middle of the range"));
    }

    private static void assertSpread(Spread spread, double least, double most) {
        assertThat(spread.load()).isEqualTo("Freezer");
        assertThat(spread.leastTimes()).isCloseTo(least, offset(1e-9));
        assertThat(spread.mostTimes()).isCloseTo(most, offset(1e-9));
    }

    /** Where no range is typed it follows from how the figure is known. */
    @Test
    void everyFigureHasARange() {
        assertThat(Kept.spreads(with(Kept.FREEZER, "meter: {uses: 0.8 kWh, in a room of: 21 degC}", "draws: 95 W")))
                .containsExactly(
                        new Spread("Freezer", Spread.Figure.FOOD, 0.6, 1.5, Spread.Known.GUESS),
                        new Spread("Freezer", Spread.Figure.WALLS, 0.97, 1.03, Spread.Known.METER),
                        new Spread("Freezer", Spread.Figure.DRAWS, 0.6, 1.5, Spread.Known.GUESS));
        assertThat(Kept.spreads(with(Kept.FREEZER, "label: 220 kWh")))
                .contains(
                        new Spread("Freezer", Spread.Figure.WALLS, 0.8, 1 / 0.7, Spread.Known.LABEL),
                        new Spread("Freezer", Spread.Figure.DRAWS, 0.6, 1.5, Spread.Known.GUESS));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "200 L | 0 L | 16 loads[1].holds: found \"0 L\", expected a volume from 1 L to 2000 L.",
                "200 L | -5 ft3 | 16 loads[1].holds: found \"-5 ft3\", expected a volume from 1 L to 2000 L.",
                "200 L | 200 | 16 loads[1].holds: found \"200\", expected a volume with its unit. Write 200 L. Also possible: gal, ft3.",
                "60 kg | -60 kg | 18 loads[1].contents.food: found \"-60 kg\", expected a mass above 0 kg and at most 2000 kg.",
                "60 kg | 600 kg | 18 loads[1].contents.food: found \"600 kg\", expected no more than 200 kg in 200 L.",
                "60 kg | 50 to 210 kg | 18 loads[1].contents.food: found \"50 to 210 kg\", expected no more than 200 kg in 200 L.",
                "food: 60 kg | full: 300 % | 18 loads[1].contents.full: found \"300 %\", expected a percentage above 0 % and at most 100 %.",
                "food: 60 kg | full: 0 % | 18 loads[1].contents.full: found \"0 %\", expected a percentage above 0 % and at most 100 %.",
                "60 kg | '60 kg, ice: 0 kg' | 18 loads[1].contents.ice: found \"0 kg\", expected a mass above 0 kg and at most 500 kg.",
                "60 kg | '60 kg, full: 30 %' | 18 loads[1].contents: found food and full, expected exactly one of food, medicine, full. Weigh what lies in it, or tell how full it is.",
                "food: 60 kg | ice: 5 kg | 18 loads[1].contents: found none of them, expected exactly one of food, medicine, full. Weigh what lies in it, or tell how full it is.",
                "{food: 60 kg} | 60 kg | 18 loads[1].contents: found \"60 kg\", expected a block of keys: food, medicine, full, ice.",
                "chest freezer | chest frezer | 15 loads[1].box: found \"chest frezer\", expected what kind of box it is: chest freezer, upright freezer, refrigerator, medicine fridge, cooler. Write chest freezer.",
                "runs: cold box | runs: cold bx | 14 loads[1].runs: found \"cold bx\", expected how it runs: steady, at set hours, cold box, sump pump, heating. Write cold box.",
            })
    void nonsenseInABox(String from, String to, String told) {
        assertThat(Kept.problems(Kept.FREEZER, from, to)).containsExactly("plan.yaml:" + told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "label: 220 | label: found \"220\", expected the energy of a year with its unit. Write 220 kWh. Also possible: kWh/year.",
                "label: -220 kWh | label: found \"-220 kWh\", expected the energy of a year above 0 kWh and at most 20000 kWh.",
                "label: 0.8 kWh a day | label: found \"0.8 kWh a day\", expected the energy of a year in kWh or kWh/year.",
                "meter: 0.8 kWh | meter: found \"0.8 kWh\", expected a block of keys: uses, in a room of.",
                "'meter: {uses: 0.8 kWh, in a room of: -15 degC}' | meter.in a room of: found \"-15 degC\", expected a room at least 5 K warmer than the -18 degC inside. In a cold room the reading tells nothing of the walls.",
                "walls: 0 W/K | walls: found \"0 W/K\", expected heat for each kelvin above 0 W/K and at most 100 W/K.",
                "'defrost: {heater: 3000 W, for: 2 h, every: 4 h}' | defrost: found a defrost heater of 3000 W for 120 min every 4 h, expected more use in a year than the 17187 kWh of its defrost heater and of the heat that this leaves in the box. Is it defrosted by hand? Then write defrost: by hand.",
                "'defrost: {heater: 450 W, for: 20 min, every: 1 h}' | defrost.every: found \"1 h\", expected a time from 4 h to 96 h.",
                "defrost: often | defrost: found \"often\", expected how it is rid of frost, or {heater: 450 W, for: 20 min, every: 10 h}: by hand, frost-free.",
                "draws: -5 W | draws: found \"-5 W\", expected a power above 0 W and at most 5000 W.",
                "draws: 90-60 W | draws: found \"90-60 W\", expected the lesser end of the range first. Write 60 W to 90 W.",
                "draws: 60-60 W | draws: found \"60-60 W\", expected the lesser end of the range first. Write 60 W.",
                "draws: 60-90 | draws: found \"60-90\", expected a power with its unit, or a range of it. Write 60-90 W.",
                "draws: 60-90 kg | draws: found \"60-90 kg\", expected a power in W or kW, or a range of it.",
                "draws: 90-9000 W | draws: found \"90-9000 W\", expected a power above 0 W and at most 5000 W.",
                "from: meter | from: found where a figure is from, without the figure, expected \"draws:\" beside it.",
                "freezer part: 50 L | freezer part: found a freezer part of a chest freezer, expected none: only a refrigerator has one.",
                "set to: 5 degC | set to: found \"5 degC\", expected a setting colder than -1.7 degC, to keep what the box owes.",
                "set to: -60 degC | set to: found \"-60 degC\", expected a temperature from -40 degC to 15 degC.",
                "opened: -1 | opened: found \"-1\", expected how often its door is opened on a day of the outage, a whole number from 0 to 200.",
                "opened: 4 a day | opened: found \"4 a day\", expected how often its door is opened on a day of the outage, a whole number from 0 to 200.",
                "'need: {below: 2 degC}' | need.below: found \"2 degC\", expected at most -1.7 degC, where frozen food begins to thaw.",
                "'need: {below: 0 degC}' | need.below: found \"0 degC\", expected at most -1.7 degC, where frozen food begins to thaw.",
                "'need: {below: -20 degC}' | need: found a need that its usual setting of -18 degC does not keep, expected a setting colder than -20 degC. Mend \"need:\", or add \"set to:\".",
                "'need: {above: 4 degC, at most: 2 h}' | need: found above, expected frozen, or {below: -12 degC}. A freezer owes a warmest temperature of its frozen food.",
                "need: cold | need: found \"cold\", expected frozen, or {below: -12 degC}. A freezer owes a warmest temperature of its frozen food.",
                "duty: at night | duty: found \"at night\", expected when it may run: {hours: [10:00-14:00]}, or one of: as it needs, while sunny.",
                "'duty: {hours: [10:00-14:00, 13:00-15:00]}' | duty.hours[2]: found \"13:00-15:00\", expected stretches that do not overlap. It overlaps 10:00-14:00.",
                "'before a storm: {chilled to: -10 degC}' | before a storm.chilled to: found \"-10 degC\", expected colder than the -18 degC that it is set to.",
                "before a storm: yes | before a storm: found \"yes\", expected a block of keys: chilled to.",
                "essential: no | essential: found \"no\" for what keeps a temperature or a level, expected no such line: such a load is always essential. Leave it out; what is not needed is left unplugged.",
                "essential: maybe | essential: found \"maybe\", expected whether it is essential: yes, no.",
            })
    void nonsenseBesideABox(String key, String told) {
        assertThat(Kept.problems(with(Kept.FREEZER, key))).containsExactly("plan.yaml:19 loads[1]." + told);
    }

    @Test
    void exactlyOneWayToKnowTheWalls() {
        assertThat(Kept.problems(with(Kept.FREEZER, "label: 220 kWh", "meter: {uses: 1 kWh, in a room of: 20 degC}")))
                .containsExactly(
                        "plan.yaml:20 loads[1].meter: found label and meter, expected at most one of label, meter, walls. A"
                                + " meter's reading is the best.");
    }

    /** A frost-free box of a small label: its heater alone would use more. */
    @Test
    void aLabelBelowTheDefrostHeater() {
        assertThat(Kept.problems(with(Kept.FREEZER, "label: 100 kWh", "defrost: frost-free")))
                .containsExactly(
                        "plan.yaml:19 loads[1].label: found \"100 kWh\", expected more use in a year than the 107.4 kWh of its"
                                + " defrost heater and of the heat that this leaves in the box. Is it defrosted by hand? Then write"
                                + " defrost: by hand.");
    }

    /** The label tells 34 W on the mean in a room of 32.2 degC; read at 22 degC that is .8 % less for each kelvin. */
    @Test
    void aCompressorThatCouldNotUseWhatTheLabelSays() {
        assertThat(Kept.problems(with(Kept.FREEZER, "draws: 20 W", "label: 300 kWh")))
                .containsExactly(
                        "plan.yaml:19 loads[1].draws: found \"20 W\", expected at least the 32 W that it needs to keep its"
                                + " setting with what it is said to use. Is it the mean of a day? The watts while it runs are"
                                + " wanted.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'need: {above: 4.4 degC, at most: 5 h}' | need.at most: found \"5 h\", expected at most 4 h in all. The food-safety agencies' hours are never lengthened; older guidance says 2 h.",
                "'need: {above: 41 degF, at most: 4 h}' | need.above: found \"41 degF\", expected at most 40 degF (4.44 degC). The food-safety agencies' limit is never raised.",
                "'need: {above: 4.5 degC, at most: 4 h}' | need.above: found \"4.5 degC\", expected at most 40 degF (4.44 degC). The food-safety agencies' limit is never raised.",
                "'need: {above: 4.4 degC, at most: -1 h}' | need.at most: found \"-1 h\", expected a time from 0 h to 1440 h.",
                "need: frozen | need: found \"frozen\", expected {above: 4.4 degC, at most: 4 h}. Fresh food owes few hours above a temperature; medicine, told under contents, a band.",
                "'need: {between: 2 degC, and: 8 degC}' | need: found between, expected {above: 4.4 degC, at most: 4 h}. Fresh food owes few hours above a temperature; medicine, told under contents, a band.",
                "duty: while sunny | duty: found \"while sunny\", expected as it needs. Only a freezer, or a box whose ice is stated, may wait: fresh food and medicine need their cold whenever the thermostat asks for it.",
                "'duty: {hours: [10:00-14:00]}' | duty: found hours of its own, expected as it needs. Only a freezer, or a box whose ice is stated, may wait: fresh food and medicine need their cold whenever the thermostat asks for it.",
                "freezer part: 400 L | freezer part: found \"400 L\", expected less than the 400 L of the whole. What a refrigerator holds is told with its freezer part.",
                "set to: 6 degC | set to: found \"6 degC\", expected a setting colder than 4.444 degC, to keep what the box owes.",
                "'before a storm: {chilled to: -3 degC}' | before a storm.chilled to: found \"-3 degC\", expected no colder than 0 degC. Frost spoils fresh food and most medicine.",
            })
    void nonsenseInARefrigerator(String key, String told) {
        assertThat(Kept.problems(with(Kept.REFRIGERATOR, key))).containsExactly("plan.yaml:19 loads[1]." + told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'need: {between: 8 degC, and: 2 degC}' | .need: found a band from 8 degC to 2 degC, expected the lower temperature first, and some kelvins between. Write {between: 2 degC, and: 8 degC}.",
                "'need: {between: 6 degC, and: 8 degC}' | .need: found a need that its usual setting of 5 degC does not keep, expected a setting between 6 degC and 8 degC. Mend \"need:\", or add \"set to:\".",
                "'need: {between: 2 degC}' | .need: found no \"and:\", expected a temperature, such as -5 degC.",
                "'need: {above: 4 degC, at most: 3 h}' | .need: found above, expected {between: 2 degC, and: 8 degC}. Medicine owes a band: warmth and frost spoil it.",
                "duty: while sunny | .duty: found \"while sunny\", expected as it needs. Only a freezer, or a box whose ice is stated, may wait: fresh food and medicine need their cold whenever the thermostat asks for it.",
                "'before a storm: {chilled to: 1 degC}' | .before a storm.chilled to: found \"1 degC\", expected no colder than 2 degC. Frost spoils fresh food and most medicine.",
            })
    void nonsenseInAMedicineFridge(String key, String told) {
        assertThat(Kept.problems(with(Kept.MEDICINE, key))).containsExactly("plan.yaml:19 loads[1]" + told);
    }

    @Test
    void aCoolerHasNothingOfAPlug() {
        String what = ", expected no such line: a cooler has no plug and lives on its ice.";

        assertThat(Kept.problems(with(
                        Kept.COOLER,
                        "supply: 12 V DC, car socket",
                        "draws: 50 W",
                        "set to: 4 degC",
                        "duty: while sunny")))
                .containsExactly(
                        "plan.yaml:19 loads[1].draws: found \"draws:\" of a cooler" + what,
                        "plan.yaml:20 loads[1].set to: found \"set to:\" of a cooler" + what,
                        "plan.yaml:21 loads[1].duty: found \"duty:\" of a cooler" + what,
                        "plan.yaml:18 loads[1].supply: found \"supply:\" of a cooler" + what);
        assertThat(Kept.problems(Kept.COOLER, ", ice: 10 kg", ""))
                .containsExactly(
                        "plan.yaml:17 loads[1].contents.ice: found a cooler without ice, expected \"ice:\", such as"
                                + " 5 kg. Only its ice keeps it cold.");
    }

    @Test
    void everythingWrongInABoxIsToldAtOnce() {
        String load = Kept.FREEZER
                .replace("200 L", "0 L")
                .replace("60 kg", "-60 kg")
                .replace("120 V AC", "120 V")
                .concat("    label: -1 kWh\n    opened: often\n    duty: never\n    wave: odd\n");

        assertThat(Kept.problems(load)).hasSize(7);
    }

    @Test
    void whatIsMissingIsNamed() {
        assertThat(Kept.problems("  - {name: Freezer, runs: cold box, box: chest freezer}\n"))
                .containsExactly(
                        "plan.yaml:13 loads[1]: found no \"holds:\", expected a volume, such as 198 L.",
                        "plan.yaml:13 loads[1]: found no \"contents:\", expected a block of keys: food, medicine, full, ice.",
                        "plan.yaml:13 loads[1]: found no \"supply:\", expected volts, AC with its frequency or DC, and the plug,"
                                + " such as \"120 V AC 60 Hz, NEMA 5-15\" or \"12 V DC, car socket\".");
    }

    @Test
    void theUnlikelyIsTakenWithACaution() {
        assertThat(cautions(Kept.FREEZER, "opened: 100"))
                .containsExactly(
                        "plan.yaml:19 loads[1].opened: 100 is taken, but is unlikely in an outage: a shut door is the cheapest"
                                + " cold there is.");
        assertThat(cautions(Kept.FREEZER, "walls: 4 W/K", "draws: 60 W"))
                .containsExactly(
                        "plan.yaml:13 loads[1]: in a room of 32 degC its compressor could not keep its setting, by these"
                                + " figures.");
        assertThat(cautions(Kept.MEDICINE))
                .containsExactly(
                        "plan.yaml:13 loads[1]: it holds medicine. If somebody's health hangs on it, add \"medical:\"; what its"
                                + " maker and the pharmacist say of warmth and frost comes first.");
        assertThat(cautions(
                        Kept.MEDICINE,
                        "need: {between: -2 degC, and: 8 degC}",
                        "medical: {can be without: 1 h, alarm: a bell, who acts: Ada, able: yes, second plan: ice}"))
                .containsExactly(
                        "plan.yaml:19 loads[1].need: below 0 degC is taken, but frost spoils most medicine: ask its maker.");
    }

    /** Cold made ahead of a storm needs somebody who knows of the storm. */
    @Test
    void chilledBeforeAStormThatNobodyForecasts() {
        String load = with(Kept.FREEZER, "before a storm: {chilled to: -24 degC}");
        String known = Kept.plan(load).replace("carried: 95 %", "carried: 95 %\n  storm: {forecast: yes}");

        assertThat(cautions(load))
                .containsExactly(
                        "Freezer: it is to be chilled before a storm, but the plan knows of no forecast: add \"storm:"
                                + " {forecast: yes}\" to the outage.");
        Question question = Sample.read(known);
        assertThat(question.cautions()).isEmpty();
        assertThat(((ColdLoad) question.loads().get(0)).chilledToDegC()).isEqualTo(-24);
    }

    private static List<String> cautions(String load, String... keys) {
        return Kept.read(with(load, keys)).cautions();
    }
}
