package tideover.engine.load;

/**
 * A load that switches itself on and off by what it keeps, a temperature or a level, and is judged by that. The clock tells
 * when it may run, not when it does.
 */
public sealed interface KeepingLoad extends Load permits ColdLoad, PitLoad, HeatLoad {
    /** Always: what is not needed is left unplugged. */
    @Override
    default boolean essential() {
        return true;
    }

    @Override
    default boolean keeps() {
        return true;
    }
}
