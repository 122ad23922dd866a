package tideover.app.files;

import java.util.List;
import tideover.engine.load.Load;
import tideover.engine.proof.Doubt;

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
        /** Heat through the walls of a cold box or of a home. */
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

    /** A range that begins at nothing, such as of water that may not come at all, is taken to begin at so little. */
    private static final double LEAST_TIMES = 0.01;

    private static final double ROUNDING = 1e-9;

    /** The range that was typed, or the usual one of what is so known. */
    static Spread of(String load, Figure figure, Span span, Known known) {
        return span.isRange()
                ? new Spread(
                        load,
                        figure,
                        Math.max(LEAST_TIMES, span.least() / span.middle()),
                        span.most() / span.middle(),
                        known)
                : new Spread(load, figure, known.leastTimes, known.mostTimes, known);
    }

    /** No further than this, by a hair, and with what is reckoned with inside. */
    Spread within(double least, double most) {
        double from = Math.min(1, Math.max(least * (1 + ROUNDING), leastTimes));
        double to = Math.max(1, Math.min(most * (1 - ROUNDING), mostTimes));
        return new Spread(load, figure, from, to, known);
    }

    /** The same as the proof takes it. */
    Doubt doubt(List<Load> loads) {
        Load named = loads.stream()
                .filter(one -> one.name().equals(load))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("a spread of no load: " + load));
        Doubt.Kind kind = switch (figure) {
            case DRAWS -> Doubt.Kind.DRAWS;
            case FOOD -> Doubt.Kind.FOOD;
            case INFLOW -> Doubt.Kind.INFLOW;
            case WALLS -> Doubt.Kind.WALLS;
        };
        return Doubt.of(kind, named, Math.min(1, leastTimes), Math.max(1, mostTimes));
    }
}
