package tideover.engine.proof;

import java.util.List;
import java.util.function.UnaryOperator;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Load;
import tideover.engine.load.PitLoad;
import tideover.engine.quantity.Require;

/**
 * A figure that is not known, and how far it may be off.
 *
 * @param what       the figure in words
 * @param kind       what it stands for
 * @param load       the load's name; empty where it is the rig's or the sky's
 * @param leastTimes the figure taken times so much is the least that it may be, at most 1
 * @param mostTimes  and the most, at least 1
 * @param measure    how to find out
 */
public record Doubt(String what, Kind kind, String load, double leastTimes, double mostTimes, String measure) {
    /** What a doubt is about. */
    public enum Kind {
        /** Watts of a load while it runs. */
        DRAWS,
        /** Mass of food in a cold box. */
        FOOD,
        /** How well the walls of a cold box, or of a home, hold. */
        WALLS,
        /** Water into a pit. */
        INFLOW,
        /** What the store holds. */
        CAPACITY,
        /** What the panels give: the generated weather, or dirt. */
        SUN,
        /** The inverter's own draw. */
        STANDING
    }

    public Doubt {
        Require.within(0.01, 1, "leastTimes", leastTimes, "");
        Require.within(1, 100, "mostTimes", mostTimes, "");
    }

    /** One of a load's figures. */
    public static Doubt of(Kind kind, Load load, double leastTimes, double mostTimes) {
        return switch (kind) {
            case FOOD ->
                new Doubt(
                        load.name() + ": mass of what lies in it",
                        kind,
                        load.name(),
                        leastTimes,
                        mostTimes,
                        "weigh it, or count packages");
            case WALLS ->
                new Doubt(
                        load.name() + ": how well its walls hold",
                        kind,
                        load.name(),
                        leastTimes,
                        mostTimes,
                        load instanceof HeatLoad
                                ? "switch the heat off on a cold night and note the temperature each hour"
                                : "a plug meter over two days, and a thermometer in the room");
            case INFLOW ->
                new Doubt(
                        load.name() + ": water that comes in",
                        kind,
                        load.name(),
                        leastTimes,
                        mostTimes,
                        "time the pit's rise between two marks in wet weather");
            default ->
                new Doubt(
                        load.name() + ": what it draws",
                        kind,
                        load.name(),
                        leastTimes,
                        mostTimes,
                        "a meter at its plug");
        };
    }

    /** The loads with this figure so many times as large. */
    List<Load> onLoads(List<Load> loads, double times) {
        UnaryOperator<Load> change = change(times);
        return loads.stream()
                .map(one -> one.name().equals(load) ? change.apply(one) : one)
                .toList();
    }

    private UnaryOperator<Load> change(double times) {
        return switch (kind) {
            case DRAWS -> one -> one.drawing(times);
            case FOOD ->
                one -> one instanceof ColdLoad cold ? cold.with(cold.box().withFoodTimes(times)) : one;
            case WALLS ->
                one -> one instanceof ColdLoad cold
                        ? cold.with(cold.box().withWallsTimes(times))
                        : one instanceof HeatLoad heat ? heat.with(heat.home().leakier(times)) : one;
            case INFLOW ->
                one -> one instanceof PitLoad pit ? pit.with(pit.inflow().times(times)) : one;
            default -> one -> one;
        };
    }
}
