package tideover.engine.wiring;

import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;

/**
 * What a rig costs, in whole cents.
 *
 * @param partsCents      the main parts at their listed prices
 * @param smallPartsCents the household's allowance for wire, fuses and the like on this way of building
 */
public record Price(long partsCents, long smallPartsCents) {
    public static Price of(Rig rig, Allowances allowances) {
        long parts = 0;
        for (Chosen chosen : rig.chosen()) {
            parts += chosen.count() * chosen.part().listing().priceCents();
        }
        long small = switch (rig.route()) {
            case READY_BOX -> allowances.readyBoxCents();
            case ENCLOSURE -> allowances.enclosureCents();
            case SEPARATE_PARTS -> allowances.separatePartsCents();
        };
        return new Price(parts, small);
    }

    public long totalCents() {
        return partsCents + smallPartsCents;
    }
}
