package tideover.engine.search;

import tideover.engine.rig.Rig;
import tideover.engine.wiring.Price;

/**
 * A rig with its price and the carried share that the screening found.
 *
 * @param number its place, from 1, in the list of all rigs that keep the rules and the budget, cheapest first
 * @param share  0..1
 */
public record Rated(int number, Rig rig, Price price, double share) {}
