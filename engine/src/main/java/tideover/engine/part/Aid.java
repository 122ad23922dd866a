package tideover.engine.part;

import tideover.engine.load.Load;

/**
 * Something that keeps a load's need, or helps to, without power: water frozen in jugs, a cooler with ice, a thing that stands in for
 * the load. None acts on a load that somebody's health hangs on.
 */
public sealed interface Aid extends Part permits Jug, Cooler, StandIn {
    /** Name of the load that it is for, in the plan; of a jug and a cooler also a kind of cold box. */
    String forLoad();

    /** Whether it can act on a load at all; whether there is room for it is another question. */
    boolean suits(Load load);

    /** Whether a load is called so, and nobody's health hangs on it. */
    default boolean isNamed(Load load) {
        return load.nature().medical() == null && forLoad().equalsIgnoreCase(load.name());
    }
}
