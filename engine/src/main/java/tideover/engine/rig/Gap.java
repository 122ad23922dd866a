package tideover.engine.rig;

import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.why.Basis;

/**
 * How long a load that somebody's health hangs on is without power each time the grid fails.
 *
 * @param seconds until the rig feeds it; infinite where nobody brings that about
 */
public record Gap(double seconds, Way way) {
    /**
     * From the moment the power goes until somebody has noticed, walked there and moved the plug, with the rig ready and
     * switched on, s. Common practice, no source; a trial with a clock is better.
     */
    public static final double BY_HAND_SECONDS = 300;

    /** How it gets its power back. */
    public enum Way {
        BY_ITSELF("the rig takes over by itself", Basis.MAKER, "transfer time in the parts file"),
        BY_HAND(
                "somebody plugs it over",
                Basis.COMMON_PRACTICE,
                "time to notice, go there and plug over; try it with a clock"),
        NOBODY("nobody is there to plug it over", Basis.YOURS, "the plan"),
        UNPLUGGED("it takes no power", Basis.YOURS, "the plan");

        private final String words;
        private final Basis basis;
        private final String source;

        Way(String words, Basis basis, String source) {
            this.words = words;
            this.basis = basis;
            this.source = source;
        }

        public String words() {
            return words;
        }

        public Basis basis() {
            return basis;
        }

        public String source() {
            return source;
        }
    }

    /**
     * Of one load on one rig. Direct current counts as plugged over by hand: that the outlet is on, and the load in it, while
     * the grid is still there is nowhere told.
     */
    public static Gap of(Rig rig, Load load, Medical medical) {
        if (!load.plugged()) {
            return new Gap(0, Way.UNPLUGGED);
        }
        if (load.supply().isAc() && rig.inverter() != null) {
            double seconds = rig.inverter().habits().transferSeconds();
            if (!Double.isNaN(seconds)) {
                return new Gap(seconds, Way.BY_ITSELF);
            }
        }
        return medical.someoneAble()
                ? new Gap(BY_HAND_SECONDS, Way.BY_HAND)
                : new Gap(Double.POSITIVE_INFINITY, Way.NOBODY);
    }
}
