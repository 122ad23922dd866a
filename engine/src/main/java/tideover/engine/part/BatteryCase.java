package tideover.engine.part;

import org.jspecify.annotations.Nullable;

/**
 * A battery as a thing to be put somewhere.
 *
 * @param size      outside, terminals included; null where not told
 * @param terminals in words, such as "M8 stud", compared by them; empty where not told
 */
public record BatteryCase(@Nullable Dimensions size, String terminals) {
    public static final BatteryCase UNKNOWN = new BatteryCase(null, "");
}
