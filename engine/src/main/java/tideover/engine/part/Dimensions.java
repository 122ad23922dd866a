package tideover.engine.part;

import tideover.engine.quantity.PlainNumber;
import tideover.engine.quantity.Require;

/** Of something with corners, or of the room inside it, mm. Length and width may change places, height stays up. */
public record Dimensions(double lengthMm, double widthMm, double heightMm) {
    public Dimensions {
        Require.above(0, "lengthMm", lengthMm, "mm");
        Require.above(0, "widthMm", widthMm, "mm");
        Require.above(0, "heightMm", heightMm, "mm");
    }

    /**
     * What is left on the tightest side of this room once so many alike stand in it, in the best of four ways: all in one row,
     * along the length or along the width, each turned the same way. Negative where none of them fits. A bank in two rows, or
     * one of unlike turns, might fit where this says no: the maker's drawing then goes first. No gap is left between them.
     */
    public double spareMm(Dimensions one, int count) {
        double spareMm = Double.NEGATIVE_INFINITY;
        for (int way = 0; way < 4; way++) {
            boolean turned = way % 2 == 1;
            double alongLengthMm = turned ? one.widthMm : one.lengthMm;
            double alongWidthMm = turned ? one.lengthMm : one.widthMm;
            boolean rowAlongLength = way < 2;
            double leftMm = Math.min(
                    lengthMm - (rowAlongLength ? count : 1) * alongLengthMm,
                    widthMm - (rowAlongLength ? 1 : count) * alongWidthMm);
            spareMm = Math.max(spareMm, leftMm);
        }
        return Math.min(spareMm, heightMm - one.heightMm);
    }

    /** Such as "330 x 172 x 215 mm". */
    public String words() {
        return PlainNumber.of(lengthMm) + " x " + PlainNumber.of(widthMm) + " x " + PlainNumber.of(heightMm) + " mm";
    }
}
