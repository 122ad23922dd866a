package tideover.app.files;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Supply;

/** What feeds a load, and what an outlet gives: {@code 120 V AC 60 Hz, NEMA 5-15} and {@code 5 V DC, USB-A}. */
final class SupplyText {
    static final String EXPECTED = "volts, AC with its frequency or DC, and the plug, such as"
            + " \"120 V AC 60 Hz, NEMA 5-15\" or \"12 V DC, car socket\"";
    private static final String NUMBER = "([0-9]{1,4}(?:\\.[0-9]{1,3})?)";
    private static final Pattern SUPPLY =
            Pattern.compile(NUMBER + "\\s*V\\s*(AC|DC|ac|dc)(?:[\\s,]+" + NUMBER + "\\s*Hz)?(?:\\s*,\\s*|\\s+)(\\S.*)");
    private static final int LONGEST_PLUG = 40;

    private SupplyText() {}

    /** The supply, or null where the text is none; {@link #suggestion} may know why. */
    static @Nullable Supply read(String typed) {
        Matcher match = SUPPLY.matcher(Quantities.tidy(typed));
        if (!match.matches()) {
            return null;
        }
        double volts = Double.parseDouble(match.group(1));
        boolean ac = match.group(2).equalsIgnoreCase("AC");
        String hertzText = match.group(3);
        double hertz = hertzText == null ? Double.NaN : Double.parseDouble(hertzText);
        String plug = match.group(4).strip().replaceAll("\\s+", " ");
        boolean sound = volts > 0
                && volts <= 1000
                && plug.length() <= LONGEST_PLUG
                && !plug.contains(",")
                && plug.codePoints().noneMatch(Character::isISOControl);
        if (!sound || ac != (hertzText != null) || (ac && !(hertz >= 16 && hertz <= 400))) {
            return null;
        }
        return ac ? Supply.ac(volts, hertz, plug) : Supply.dc(volts, plug);
    }

    /** What is missing from a text that is no supply, or empty. */
    static String suggestion(String typed) {
        String text = Quantities.tidy(typed);
        Matcher match = SUPPLY.matcher(text);
        if (!match.matches()) {
            boolean noPlug = SUPPLY.matcher(text + ", plug").matches();
            boolean noCurrent = text.matches(NUMBER + "\\s*V\\b.*") && !text.matches("(?i).*\\b[AD]C\\b.*");
            return noPlug ? "Name the plug after a comma." : noCurrent ? "Say AC or DC after the volts." : "";
        }
        boolean ac = match.group(2).equalsIgnoreCase("AC");
        if (ac && match.group(3) == null) {
            return "Write the frequency after AC, such as 60 Hz.";
        }
        if (!ac && match.group(3) != null) {
            return "Direct current has no frequency.";
        }
        return "";
    }
}
