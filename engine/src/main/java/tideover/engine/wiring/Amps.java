package tideover.engine.wiring;

import tideover.engine.quantity.Require;

/**
 * What a run of cable has to bear, A.
 *
 * @param lasting for hours at the most
 * @param design  what conductor and protection are chosen by: the lasting current with the code's allowance on top
 * @param moment  while the hardest start lasts; 0 where nothing starts
 * @param fault   that flows at the protection where the two poles touch behind it; 0 where the source limits itself
 */
public record Amps(double lasting, double design, double moment, double fault) {
    public Amps {
        Require.atLeast(0, "lasting", lasting, "A");
        Require.atLeast(lasting, "design", design, "A");
        Require.atLeast(0, "moment", moment, "A");
        Require.atLeast(0, "fault", fault, "A");
    }
}
