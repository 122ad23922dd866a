package tideover.engine.part;

import tideover.engine.quantity.Require;

/**
 * What is not part of the circuit but belongs to it.
 *
 * @param pieces that its price buys
 */
public record Fitting(Listing listing, Use use, int pieces) implements SmallPart {
    /** What it is for. */
    public enum Use {
        HEAT_SHRINK("heat shrink"),
        TERMINAL_COVER("terminal cover"),
        STRAP("strap"),
        LABEL("label"),
        BOARD("board"),
        HAND_TRUCK("hand truck"),
        BATTERY_METER("battery meter"),
        THERMOMETER("thermometer"),
        CARBON_MONOXIDE_ALARM("carbon monoxide alarm");

        private final String words;

        Use(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Fitting {
        Require.within(1, 1000, "pieces", pieces);
    }

    @Override
    public String kind() {
        return "fitting";
    }

    @Override
    public double perPrice() {
        return pieces;
    }
}
