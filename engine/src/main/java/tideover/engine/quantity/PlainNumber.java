package tideover.engine.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** A figure as people write it: at most four digits that count, no zeros that say nothing, no exponent. */
public final class PlainNumber {
    private static final MathContext DIGITS = new MathContext(4);

    private PlainNumber() {}

    public static String of(double value) {
        if (value == 0) {
            return "0";
        }
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return Double.toString(value);
        }
        BigDecimal whole = new BigDecimal(value);
        BigDecimal shown = Math.abs(value) >= 1000 ? whole.setScale(0, RoundingMode.HALF_EVEN) : whole.round(DIGITS);
        return shown.stripTrailingZeros().toPlainString();
    }
}
