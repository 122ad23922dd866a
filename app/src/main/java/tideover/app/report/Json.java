package tideover.app.report;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** Figures as JSON shows them: ten digits, and null for what is not a finite number. */
final class Json {
    private static final MathContext DIGITS = new MathContext(10);

    private Json() {}

    static void number(ObjectNode node, String name, double value) {
        BigDecimal cut = cut(value);
        if (cut == null) {
            node.putNull(name);
        } else {
            node.put(name, cut);
        }
    }

    static @Nullable BigDecimal cut(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return null;
        }
        BigDecimal cut = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return cut.scale() < 0 ? cut.setScale(0) : cut;
    }
}
