package tideover.app.files;

/**
 * How far a figure of a load may be off what is reckoned with.
 *
 * @param load       its name
 * @param leastTimes the least it may be, as a share of what is reckoned with
 * @param mostTimes  the most, likewise
 */
record Spread(String load, Figure figure, double leastTimes, double mostTimes, Known known) {
    /** Which figure of the load. */
    enum Figure {
        /** Watts while it runs. */
        DRAWS,
        /** Kilograms of what is kept cold. */
        FOOD,
        /** Water that comes into a pit. */
        INFLOW,
        /** Heat through the walls of a cold box. */
        WALLS
    }

    /** How it was known, with the range that stands in where none is typed: common practice, no source. */
    enum Known {
        METER(0.97, 1.03),
        LABEL(0.6, 1.05),
        GUESS(0.6, 1.5);

        private final double leastTimes;
        private final double mostTimes;

        Known(double leastTimes, double mostTimes) {
            this.leastTimes = leastTimes;
            this.mostTimes = mostTimes;
        }
    }

    /** The range that was typed, or the usual one of what is so known. */
    static Spread of(String load, Figure figure, Span span, Known known) {
        return span.isRange()
                ? new Spread(load, figure, span.least() / span.middle(), span.most() / span.middle(), known)
                : new Spread(load, figure, known.leastTimes, known.mostTimes, known);
    }
}
