package tideover.app.files;

/**
 * A figure of which two ends are known, or one alone; then both are the same. Its middle is reckoned with.
 *
 * @param least in the engine's unit
 * @param most  likewise
 */
record Span(double least, double most) {
    static Span of(double value) {
        return new Span(value, value);
    }

    double middle() {
        return isRange() ? least + (most - least) / 2 : least;
    }

    boolean isRange() {
        return least < most;
    }

    /** The same in another unit. */
    Span times(double factor) {
        return new Span(least * factor, most * factor);
    }
}
