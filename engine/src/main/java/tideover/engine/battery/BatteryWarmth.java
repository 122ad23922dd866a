package tideover.engine.battery;

import tideover.engine.quantity.Require;
import tideover.engine.quantity.Series;

/**
 * A battery's own temperature, from that of the room: one first-order lag, {@code m cp dT/dt = UA (room - T) + heater}, solved
 * exactly for a room steady within the hour. A heater, where there is one, holds a temperature as far as its watts reach,
 * switching as finely as one likes.
 *
 * <p>m kg; cp J/(kg K) by {@link #specificHeat}; U {@link #FILM} W/(m2 K) of still air and radiation; A m2, five sides and a
 * bit of a block of the battery's volume, the sixth stands on the floor. All common practice, no source: a lag of some 2 to
 * 4 h for 10 to 30 kg. A box around it makes it slower and the heater stronger, neither is counted on.
 *
 * <p>Neglected: the battery's own heat. At a tenth of its capacity per hour, 100 Ah at 12 V warms by .2 K (lead, 30 kg, 5
 * milliohm) to .8 K (iron phosphate, 11 kg, 15 milliohm), at half its capacity per hour toward 25 times that, which in
 * the cold helps it and in the heat ages it. Also that the core lags behind the case.
 *
 * @param degC    at the end of each hour
 * @param heaterW mean watts that the heater drew in each hour
 */
public record BatteryWarmth(Series degC, Series heaterW) {
    /** Heat passed by each square metre, W/(m2 K): 5 to 10 is usual. Common practice, no source. */
    static final double FILM = 7;

    /** Open surface over volume to the power 2/3: a cube's five sides are 5, a battery's longer block has more. */
    private static final double BLOCK = 5.5;

    private static final double HOUR_S = 3600;

    /** As rooms: run in over so many time constants of the last hours, since the first year follows the last. */
    private static final double RUN_IN = 8;

    /**
     * Through the hours of a room.
     *
     * @param roomDegC  hourly, steady within the hour, round and round
     * @param heaterW   most that its heater draws; 0 without one
     * @param holdsDegC the temperature that the heater keeps; of no effect without one
     */
    public static BatteryWarmth of(
            Series roomDegC, double massKg, Chemistry chemistry, double heaterW, double holdsDegC) {
        Require.atLeast(0, "heaterW", heaterW, "W");
        double lagH = lagH(massKg, chemistry);
        double lossWPerK = lossWPerK(massKg, chemistry);
        boolean heated = heaterW > 0;
        double kept = StrictMath.exp(-1 / lagH);
        int hours = roomDegC.length();
        double[] degC = new double[hours];
        double[] watts = new double[hours];
        int runIn = (int) Math.ceil(RUN_IN * lagH);
        double now = roomDegC.at(Math.floorMod(-runIn - 1, hours));
        for (int hour = -runIn; hour < hours; hour++) {
            double room = roomDegC.at(Math.floorMod(hour, hours));
            double free = room + (now - room) * kept;
            double meanW = 0;
            if (heated && (free < holdsDegC || now < holdsDegC)) {
                // Part of the hour without heat, until it has fallen to what is held; part at full heat, until it has
                // risen to it; what is left of the hour at what holding takes, or at full heat where that is too
                // little.
                double fullHeat = room + heaterW / lossWPerK;
                double holdW = Math.max(0, lossWPerK * (holdsDegC - room));
                double left = 1;
                if (now > holdsDegC) {
                    left -= lagH * StrictMath.log((now - room) / (holdsDegC - room));
                    now = holdsDegC;
                } else if (now < holdsDegC) {
                    double riseH = fullHeat > holdsDegC
                            ? Math.min(1, lagH * StrictMath.log((fullHeat - now) / (fullHeat - holdsDegC)))
                            : 1;
                    meanW += heaterW * riseH;
                    now = riseH < 1 ? holdsDegC : fullHeat + (now - fullHeat) * kept;
                    left -= riseH;
                }
                if (left > 0) {
                    meanW += Math.min(heaterW, holdW) * left;
                    double toward = holdW > heaterW ? fullHeat : Math.max(room, holdsDegC);
                    now = toward + (now - toward) * StrictMath.exp(-left / lagH);
                }
            } else {
                now = free;
            }
            if (hour >= 0) {
                degC[hour] = now;
                watts[hour] = meanW;
            }
        }
        return new BatteryWarmth(Series.owning(degC), Series.owning(watts));
    }

    /** Time constant, h. */
    public static double lagH(double massKg, Chemistry chemistry) {
        return massKg * specificHeat(chemistry) / lossWPerK(massKg, chemistry) / HOUR_S;
    }

    /** Heat lost to the room per kelvin, W/K. */
    public static double lossWPerK(double massKg, Chemistry chemistry) {
        Require.above(0, "massKg", massKg, "kg");
        return FILM * BLOCK * StrictMath.pow(massKg / density(chemistry), 2.0 / 3);
    }

    /** J/(kg K). Common practice, no source: lead, acid and plastic together; lithium cells. */
    static double specificHeat(Chemistry chemistry) {
        return chemistry.isLead() ? 950 : 1000;
    }

    /** Whole battery with its case, kg/m3: 30 kg and 11 kg in the same 12 litres. Common practice, no source. */
    static double density(Chemistry chemistry) {
        return switch (chemistry) {
            case FLOODED_LEAD, GEL_LEAD, AGM_LEAD -> 2400;
            case IRON_PHOSPHATE -> 1000;
            case OTHER_LITHIUM -> 1500;
        };
    }
}
