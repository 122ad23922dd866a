package tideover.engine.cold;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.Require;

/**
 * A box and what lies in it: air with the liner around it, contents, walls. Heat comes in through the walls,
 * {@code wallWPerK * (room - air)}, by the door and from the defrost heater; the compressor takes it from the air.
 *
 * <p>One temperature of the air, one for each lump of contents. A refrigerator with a freezer part counts as one box at the
 * fresh food's temperature: the cold in its freezer part is not counted on.
 *
 * @param wallWPerK      heat through walls and gasket, door shut
 * @param airWhPerK      heat that air, liner and shelves hold
 * @param setDegC        mean air temperature that the thermostat keeps
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
        double bandK,
        @Nullable Compressor compressor,
        @Nullable Defrost defrost,
        double openingsPerDay,
        List<Contents> contents) {
    /** Test room of the energy label, 90 degF: 10 CFR 430 subpart B. */
    public static final double LABEL_ROOM_DEG_C = 32.2;

    /** Air moves by so much between switching on and off; common practice, no source. */
    public static final double USUAL_BAND_K = 4;

    /** Medicine fridges are kept tighter; common practice, no source. */
    public static final double NARROW_BAND_K = 2;

    /** Of air, liner and shelves, Wh/K a litre: 0.08 kJ/K; common practice, no source. */
    private static final double AIR_WH_PER_K_L = 0.08 / 3.6;

    /**
     * Heat of one opening for each litre and kelvin, Wh: the air changed once, half as much again for its damp. Common
     * practice, no source.
     */
    private static final double OPENING_WH_PER_L_K = 1.5 * 1.2e-3 * 1.006 / 3.6;

    private static final double HOURS_PER_YEAR = 8760;

    public ColdBox {
        Require.within(1, 2000, "litres", litres, "L");
        Require.above(0, "wallWPerK", wallWPerK, "W/K");
        Require.above(0, "airWhPerK", airWhPerK, "Wh/K");
        Require.within(-40, 15, "setDegC", setDegC, "degC");
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
                AIR_WH_PER_K_L * litres,
                kind.usualDegC(),
                kind == BoxKind.MEDICINE_FRIDGE ? NARROW_BAND_K : USUAL_BAND_K,
                compressor,
                defrost,
                0,
                contents);
    }

    /**
     * Walls from what a box uses, door shut: all heat that its compressor moves has come through them, or from the defrost
     * heater.
     *
     * @param kWhPerYear at that room, all in; a label's figure belongs to {@link #LABEL_ROOM_DEG_C} and {@code labelDegC}
     * @param boxDegC    mean temperature inside meanwhile
     */
    public static double wallWPerK(double kWhPerYear, double roomDegC, double boxDegC, @Nullable Defrost defrost) {
        double meanW = kWhPerYear * 1000 / HOURS_PER_YEAR;
        double defrostW = defrost == null ? 0 : defrost.meanW();
        double movedW = Compressor.movedPerW(roomDegC, boxDegC) * (meanW - defrostW);
        double throughWallsW = movedW - Defrost.INTO_BOX * defrostW;
        return Require.above(0, "heat through the walls", throughWallsW, "W") / (roomDegC - boxDegC);
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

    /** From seven to eleven in the evening. */
    public static final double AWAKE_FROM_HOUR = 7;

    public static final double AWAKE_HOURS = 16;

    public double mostW() {
        double most = compressor == null ? 0 : compressor.mostW();
        return defrost == null ? most : Math.max(most, defrost.heaterW());
    }

    public ColdBox withContents(List<Contents> changed) {
        return new ColdBox(
                kind, litres, wallWPerK, airWhPerK, setDegC, bandK, compressor, defrost, openingsPerDay, changed);
    }

    /** With more or less of its first lump. */
    public ColdBox withFoodTimes(double times) {
        List<Contents> changed = new ArrayList<>(contents);
        changed.set(0, Contents.of(food().food(), food().kg() * times));
        return withContents(changed);
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
                bandK,
                compressor,
                defrost,
                openingsPerDay,
                contents);
    }

    /** With a compressor so many times as large, and no better or worse. */
    public ColdBox drawing(double times) {
        Compressor changed =
                compressor == null ? null : new Compressor(compressor.runningW() * times, compressor.atRoomDegC());
        return new ColdBox(
                kind, litres, wallWPerK, airWhPerK, setDegC, bandK, changed, defrost, openingsPerDay, contents);
    }

    public ColdBox withOpenings(double perDay) {
        return new ColdBox(kind, litres, wallWPerK, airWhPerK, setDegC, bandK, compressor, defrost, perDay, contents);
    }

    public ColdBox setTo(double degC, double band) {
        return new ColdBox(
                kind, litres, wallWPerK, airWhPerK, degC, band, compressor, defrost, openingsPerDay, contents);
    }
}
