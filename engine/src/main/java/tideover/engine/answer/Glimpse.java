package tideover.engine.answer;

import java.util.List;
import tideover.engine.rig.Rig;

/**
 * What can be told of one rig at once, before anything is walked or searched.
 *
 * @param cents  whole price
 * @param broken what rules it breaks, one sentence each; empty where it keeps them all
 * @param atMost share of outages that it carries at most, 0..1
 * @param exact  whether it is the share itself: a plain store under nothing but the sun, loads that follow the clock
 */
public record Glimpse(Rig rig, long cents, List<String> broken, double atMost, boolean exact) {
    public Glimpse {
        broken = List.copyOf(broken);
    }
}
