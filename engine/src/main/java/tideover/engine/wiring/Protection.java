package tideover.engine.wiring;

import org.jspecify.annotations.Nullable;
import tideover.engine.part.Breaker;
import tideover.engine.part.Fuse;
import tideover.engine.part.FuseHolder;
import tideover.engine.part.SmallPart;

/**
 * A fuse in its holder, or a breaker.
 *
 * @param holder null of a breaker
 */
public record Protection(SmallPart device, @Nullable FuseHolder holder) {
    public double ratedA() {
        return device instanceof Fuse fuse ? fuse.ratedA() : ((Breaker) device).ratedA();
    }

    /** Direct volts that it can part; NaN where none are told. */
    public double mostDcV() {
        return device instanceof Fuse fuse ? fuse.mostDcV() : ((Breaker) device).mostDcV();
    }

    /** Fault current that it can part; NaN where none is told. */
    public double interruptingA() {
        return device instanceof Fuse fuse ? fuse.interruptingA() : ((Breaker) device).interruptingA();
    }

    public boolean isBreaker() {
        return device instanceof Breaker;
    }

    /** Such as "60 A fuse, class T". */
    public String words() {
        String amps = tideover.engine.quantity.PlainNumber.of(ratedA()) + " A ";
        return amps + (device instanceof Fuse fuse ? "fuse, " + fuse.format() : "breaker");
    }
}
