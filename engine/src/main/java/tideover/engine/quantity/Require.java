package tideover.engine.quantity;

/**
 * Checks on arguments. A refusal here is a programmer's broken promise and throws {@link IllegalArgumentException};
 * what a person typed is checked before, where the file and line are known. Every test is written so that NaN fails it.
 */
public final class Require {
    private Require() {}

    /** Refuses a value that is not a finite number strictly above {@code floor}. */
    public static double above(double floor, String name, double value, String unit) {
        if (!(value > floor) || Double.isInfinite(value)) {
            throw refusal(name, value, unit, "above " + floor);
        }
        return value;
    }

    /** Refuses a value outside the closed range. */
    public static double within(double least, double most, String name, double value, String unit) {
        if (!(value >= least && value <= most)) {
            throw refusal(name, value, unit, "from " + least + " to " + most);
        }
        return value;
    }

    /** Refuses a value that is not a finite number of at least {@code least}. */
    public static double atLeast(double least, String name, double value, String unit) {
        if (!(value >= least) || Double.isInfinite(value)) {
            throw refusal(name, value, unit, "at least " + least);
        }
        return value;
    }

    public static int within(int least, int most, String name, int value) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(name + " is " + value + ", expected from " + least + " to " + most);
        }
        return value;
    }

    public static String text(String name, String value) {
        if (value.isBlank()) {
            throw new IllegalArgumentException(name + " is blank");
        }
        return value;
    }

    private static IllegalArgumentException refusal(String name, double value, String unit, String expected) {
        return new IllegalArgumentException(name + " is " + value + " " + unit + ", expected " + expected + " " + unit);
    }
}
