package tideover.engine.cold;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.Require;
import tideover.engine.quantity.Units;

/**
 * A box and what lies in it: air with the liner around it, contents, walls. Heat comes in through the walls,
 * {@code wallWPerK * (room - air)}, by the door and from the defrost heater; the compressor takes it from the air.
 *
 * <p>One temperature of the air, one for each lump of contents. A refrigerator with a freezer part counts as one box at the
 * fresh food's temperature, cooled by a compressor that works at the freezer part's: the cold in that part is not counted on.
 *
 * @param wallWPerK      heat through walls and gasket, door shut
 * @param airWhPerK      heat that air, liner and shelves hold
 * @param setDegC        mean air temperature that the thermostat keeps
 * @param workDegC       at which its compressor works: what its coldest part is set to
 * @param bandK          from its switching off to its switching on
 * @param compressor     null for a cooler
 * @param defrost        null where it is defrosted by hand
 * @param openingsPerDay how often the door is opened while somebody is up
 * @param contents       food first, then ice where there is some
 */
public record ColdBox(
        BoxKind kind,
        double litres,
        double wallWPerK,
        double airWhPerK,
        double setDegC,
        double workDegC,
        double bandK,
        @Nullable Compressor compressor,
        @Nullable Defrost defrost,
        double openingsPerDay,
        List<Contents> contents) {
    /** Test room of the energy label, 90 degF: 10 CFR 430 subpart B. */
    public static final double LABEL_ROOM_DEG_C = 32.2;

    /** The freezer part of a refrigerator, in the label's test as at home: 0 degF (from memory). */
    public static final double FREEZER_PART_DEG_C = Units.degC(0);

    /** Of air and liner, Wh/K a litre: 0.02 kJ/K; common practice, no source. */
    private static final double BARE_WH_PER_K_L = 0.02 / 3.6;

    /** The same with shelves and bins, 0.12 kJ/K; common practice, no source. */
    private static final double SHELVES_WH_PER_K_L = 0.12 / 3.6;

    /**
     * Heat of one opening for each litre and kelvin, Wh: the air changed once, half as much again for its damp. Common
     * practice, no source.
     */
    private static final double OPENING_WH_PER_L_K = 1.5 * 1.2e-3 * 1.006 / 3.6;

    private static final double HOURS_PER_YEAR = 8760;

    private static final double DAYS_PER_YEAR = 365;

    /** A compressor of which nothing is told runs no more than this share of the time in the label's test; common practice, no source. */
    private static final double MOST_USUAL_DUTY = 0.6;

    public ColdBox {
        Require.within(1, 2000, "litres", litres, "L");
        Require.above(0, "wallWPerK", wallWPerK, "W/K");
        Require.above(0, "airWhPerK", airWhPerK, "Wh/K");
        Require.within(-40, 15, "setDegC", setDegC, "degC");
        Require.within(-40, setDegC, "workDegC", workDegC, "degC");
        Require.within(0.2, 10, "bandK", bandK, "K");
        Require.within(0, 1000, "openingsPerDay", openingsPerDay, "");
        contents = List.copyOf(contents);
        Require.within(1, 2, "contents", contents.size());
    }

    /** One known by what its walls let through, at the usual setting. */
    public static ColdBox ofWalls(
            BoxKind kind,
            double litres,
            double wallWPerK,
            @Nullable Compressor compressor,
            @Nullable Defrost defrost,
            List<Contents> contents) {
        return new ColdBox(
                kind,
                litres,
                wallWPerK,
                airWhPerKL(kind) * litres,
                kind.usualDegC(),
                kind.usualDegC(),
                kind.usualBandK(),
                compressor,
                defrost,
                0,
                contents);
    }

    private static double airWhPerKL(BoxKind kind) {
        return switch (kind) {
            case CHEST_FREEZER, UPRIGHT_FREEZER, COOLER -> BARE_WH_PER_K_L;
            case REFRIGERATOR, MEDICINE_FRIDGE -> SHELVES_WH_PER_K_L;
        };
    }

    /** One without a freezer part, known by its energy label. */
    public static ColdBox ofLabel(
            BoxKind kind,
            double litres,
            double kWhPerYear,
            @Nullable Compressor compressor,
            @Nullable Defrost defrost,
            List<Contents> contents) {
        return ofLabel(kind, litres, 0, kWhPerYear, compressor, defrost, contents);
    }

    /**
     * One known by its energy label, at the usual setting: it uses what the label tells in the label's room, door shut.
     *
     * <p>A refrigerator with a freezer part is one box at its fresh food's temperature: <b>all the heat that the label lets
     * one infer counts as coming to the fresh food</b>, moved by a compressor that works at the freezer part's cold. The
     * label's use is met in the label's room; the fresh food warms faster than it really does (the safe side); in cooler
     * rooms the use falls somewhat faster than that of a box whose freezer part stays colder.
     *
     * <p>Where only kind and size are known, {@link LabelStandard#of(BoxKind, boolean, boolean, double, double)} gives the most
     * that the rule allows: most boxes keep somewhat better, old or worn ones worse.
     *
     * @param litres       all of a freezer; of a refrigerator the fresh food's part
     * @param freezerPartL of a refrigerator, 0 where it has none
     * @param kWhPerYear   as told on the label
     * @param compressor   null where nothing is told of what it draws: then a usual one, see {@link Compressor#usual}
     * @param defrost      null where no heater does it: by hand, or in the pauses, as usual without a freezer part
     */
    public static ColdBox ofLabel(
            BoxKind kind,
            double litres,
            double freezerPartL,
            double kWhPerYear,
            @Nullable Compressor compressor,
            @Nullable Defrost defrost,
            List<Contents> contents) {
        double insideDegC = LabelStandard.insideDegC(kind);
        double walls = wallWPerK(kWhPerYear, LABEL_ROOM_DEG_C, insideDegC, workDegC(insideDegC, freezerPartL), defrost);
        return driven(kind, litres, freezerPartL, walls, compressor, defrost, contents);
    }

    private static double workDegC(double boxDegC, double freezerPartL) {
        return freezerPartL > 0 ? Math.min(boxDegC, FREEZER_PART_DEG_C) : boxDegC;
    }

    /** One without a freezer part, known by a meter at its plug. */
    public static ColdBox ofMeter(
            BoxKind kind,
            double litres,
            double kWhPerDay,
            double roomDegC,
            @Nullable Compressor compressor,
            @Nullable Defrost defrost,
            List<Contents> contents) {
        return ofMeter(kind, litres, 0, kWhPerDay, roomDegC, compressor, defrost, contents);
    }

    /**
     * One known by a meter at its plug over some days, kept at the usual setting. What came in by the door in those days counts
     * as coming through the walls, day and night: the safe side; openings told besides would count twice.
     *
     * @param litres       as in {@link #ofLabel}
     * @param freezerPartL likewise
     * @param roomDegC     mean of those days, at least some kelvin warmer than the box
     */
    public static ColdBox ofMeter(
            BoxKind kind,
            double litres,
            double freezerPartL,
            double kWhPerDay,
            double roomDegC,
            @Nullable Compressor compressor,
            @Nullable Defrost defrost,
            List<Contents> contents) {
        Require.above(kind.usualDegC(), "roomDegC", roomDegC, "degC");
        double work = workDegC(kind.usualDegC(), freezerPartL);
        double walls = wallWPerK(kWhPerDay * DAYS_PER_YEAR, roomDegC, kind.usualDegC(), work, defrost);
        return driven(kind, litres, freezerPartL, walls, compressor, defrost, contents);
    }

    private static ColdBox driven(
            BoxKind kind,
            double litres,
            double freezerPartL,
            double wallWPerK,
            @Nullable Compressor compressor,
            @Nullable Defrost defrost,
            List<Contents> contents) {
        Compressor told = compressor == null ? Compressor.usual(kind, litres) : compressor;
        ColdBox box = ofWalls(kind, litres, wallWPerK, told, defrost, contents);
        box = freezerPartL > 0 ? box.withFreezerPart() : box;
        return compressor == null ? box.strongEnough() : box;
    }

    /** With its compressor as much larger as its walls need it in the label's room. */
    public ColdBox strongEnough() {
        return drawing(Math.max(1, dutyAt(LABEL_ROOM_DEG_C) / MOST_USUAL_DUTY));
    }

    /** Whether its owner may hold it back: a freezer, or a box with ice of a stated mass. */
    public boolean mayWait() {
        return kind.freezes() || contents.size() > 1;
    }

    /** Of a box whose compressor works at its one temperature. */
    public static double wallWPerK(double kWhPerYear, double roomDegC, double boxDegC, @Nullable Defrost defrost) {
        return wallWPerK(kWhPerYear, roomDegC, boxDegC, boxDegC, defrost);
    }

    /**
     * Walls from what a box uses, door shut: all heat that its compressor moves has come through them, or from the defrost
     * heater.
     *
     * @param kWhPerYear at that room, all in; a label's figure belongs to {@link #LABEL_ROOM_DEG_C} and
     *                   {@link LabelStandard#insideDegC}
     * @param boxDegC    mean temperature inside meanwhile
     * @param workDegC   at which its compressor works: the box's own, or {@link #FREEZER_PART_DEG_C}
     */
    public static double wallWPerK(
            double kWhPerYear, double roomDegC, double boxDegC, double workDegC, @Nullable Defrost defrost) {
        double meanW = kWhPerYear * 1000 / HOURS_PER_YEAR;
        double defrostW = defrost == null ? 0 : defrost.meanW();
        double movedW = Compressor.movedPerW(roomDegC, workDegC) * (meanW - defrostW);
        double throughWallsW = movedW - Defrost.INTO_BOX * defrostW;
        return Require.above(0, "heat through the walls", throughWallsW, "W") / (roomDegC - boxDegC);
    }

    /** Heat that its compressor moves for each watt. */
    public double movedPerW(double roomDegC) {
        return Compressor.movedPerW(roomDegC, workDegC);
    }

    public Contents food() {
        return contents.get(0);
    }

    /** How full it is by weight, 1 where full. */
    public double fill() {
        double kg = 0;
        for (Contents one : contents) {
            kg += one.kg();
        }
        return kg / (Contents.FULL_KG_PER_L * litres);
    }

    /** Heat that the door lets in on the mean of the hours in which somebody is up, W. */
    public double doorW(double roomDegC) {
        return openingsPerDay / AWAKE_HOURS * OPENING_WH_PER_L_K * litres * Math.max(0, roomDegC - setDegC);
    }

    /**
     * Share of the time left to it by the defrost heater that the compressor must run, door shut; above 1 it cannot keep the
     * set temperature in that room. Infinite without a compressor.
     */
    public double dutyAt(double roomDegC) {
        if (compressor == null) {
            return Double.POSITIVE_INFINITY;
        }
        double heatW = wallWPerK * Math.max(0, roomDegC - setDegC);
        double free = 1;
        if (defrost != null) {
            heatW += Defrost.INTO_BOX * defrost.meanW();
            free -= defrost.minutes() / 60 / defrost.everyHours();
        }
        return heatW / (compressor.watts(roomDegC) * movedPerW(roomDegC)) / free;
    }

    /** From seven to eleven in the evening. */
    public static final double AWAKE_FROM_HOUR = 7;

    public static final double AWAKE_HOURS = 16;

    public double mostW() {
        double most = compressor == null ? 0 : compressor.mostW();
        return defrost == null ? most : Math.max(most, defrost.heaterW());
    }

    public ColdBox withContents(List<Contents> changed) {
        return new ColdBox(
                kind,
                litres,
                wallWPerK,
                airWhPerK,
                setDegC,
                workDegC,
                bandK,
                compressor,
                defrost,
                openingsPerDay,
                changed);
    }

    /** With more or less of its first lump. */
    public ColdBox withFoodTimes(double times) {
        List<Contents> changed = new ArrayList<>(contents);
        changed.set(0, food().times(times));
        return withContents(changed);
    }

    /** Frozen jugs come out of a freezer so cold; common practice, no source. */
    public static final double JUGS_DEG_C = -18;

    /** Whether its ice is put in as the outage begins: no box above freezing keeps ice. */
    public boolean takesIceIn() {
        return contents.size() > 1 && setDegC > Food.WATER.freezingDegC();
    }

    /** How warm its ice is as an outage begins; as warm as the box where that keeps it. */
    public double iceStartsDegC() {
        return takesIceIn() ? JUGS_DEG_C : setDegC;
    }

    /** With ice beside its contents. */
    public ColdBox withIce(double kg) {
        return withContents(List.of(food(), Contents.of(Food.WATER, kg)));
    }

    public ColdBox withWallsTimes(double times) {
        return new ColdBox(
                kind,
                litres,
                wallWPerK * times,
                airWhPerK,
                setDegC,
                workDegC,
                bandK,
                compressor,
                defrost,
                openingsPerDay,
                contents);
    }

    /** With a compressor so many times as large, and no better or worse. */
    public ColdBox drawing(double times) {
        return new ColdBox(
                kind,
                litres,
                wallWPerK,
                airWhPerK,
                setDegC,
                workDegC,
                bandK,
                compressor == null ? null : compressor.times(times),
                defrost,
                openingsPerDay,
                contents);
    }

    public ColdBox withOpenings(double perDay) {
        return new ColdBox(
                kind, litres, wallWPerK, airWhPerK, setDegC, workDegC, bandK, compressor, defrost, perDay, contents);
    }

    /** With a freezer part beside the fresh food, at whose cold the compressor works. */
    public ColdBox withFreezerPart() {
        return working(setDegC, Math.min(setDegC, FREEZER_PART_DEG_C), bandK);
    }

    /** Set otherwise; a freezer part stays as cold as it was. */
    public ColdBox setTo(double degC, double band) {
        return working(degC, workDegC < setDegC ? Math.min(degC, workDegC) : degC, band);
    }

    private ColdBox working(double degC, double coldest, double band) {
        return new ColdBox(
                kind, litres, wallWPerK, airWhPerK, degC, coldest, band, compressor, defrost, openingsPerDay, contents);
    }
}
