package tideover.app.files;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.DayWindow;

/** Clock times and stretches of the day, {@code 08:30} and {@code 18:00-23:00}, local standard time. */
final class ClockText {
    static final String TIME_EXPECTED = "a time of day, such as 08:30";
    static final String STRETCH_EXPECTED = "a stretch of the day, such as 18:00-23:00";
    private static final Pattern TIME = Pattern.compile("([0-9]{1,2}):([0-9]{2})");
    private static final Pattern STRETCH =
            Pattern.compile("([0-9]{1,2}:[0-9]{2})\\s*(?:-|\u2013|\u2014|to|until)\\s*([0-9]{1,2}:[0-9]{2})");
    private static final Pattern HALF_DAY_CLOCK =
            Pattern.compile("([0-9]{1,2})(?::([0-9]{2}))?\\s*([aApP])\\.?[mM]\\.?");
    private static final Pattern BARE_HOUR = Pattern.compile("([0-9]{1,2})(?:[.h]([0-9]{2}))?h?");

    private ClockText() {}

    /** Hours since midnight, 0 to 24; NaN where the text is no time of day. */
    static double hour(String typed) {
        Matcher match = TIME.matcher(typed.strip());
        if (!match.matches()) {
            return Double.NaN;
        }
        int hours = Integer.parseInt(match.group(1));
        int minutes = Integer.parseInt(match.group(2));
        boolean inDay = (hours < 24 && minutes < 60) || (hours == 24 && minutes == 0);
        return inDay ? hours + minutes / 60.0 : Double.NaN;
    }

    /** What to write for a time put another way, or empty. */
    static String suggestion(String typed) {
        Matcher halfDay = HALF_DAY_CLOCK.matcher(typed.strip());
        if (halfDay.matches()) {
            int hour = Integer.parseInt(halfDay.group(1));
            if (hour >= 1 && hour <= 12) {
                boolean afternoon = halfDay.group(3).equalsIgnoreCase("p");
                String minutes = halfDay.group(2) == null ? "00" : halfDay.group(2);
                return "Write " + two(hour % 12 + (afternoon ? 12 : 0)) + ":" + minutes + ".";
            }
        }
        Matcher bare = BARE_HOUR.matcher(typed.strip());
        if (bare.matches() && Integer.parseInt(bare.group(1)) <= 24) {
            String minutes = bare.group(2) == null ? "00" : bare.group(2);
            return "Write " + two(Integer.parseInt(bare.group(1))) + ":" + minutes + ".";
        }
        return "";
    }

    /** The stretch; null where the text is none or has no length. Midnight as an end is 24:00. */
    static @Nullable DayWindow stretch(String typed) {
        Matcher match = STRETCH.matcher(typed.strip());
        return match.matches() ? stretch(hour(match.group(1)), hour(match.group(2))) : null;
    }

    static @Nullable DayWindow stretch(double fromHour, double toHour) {
        double end = toHour == 0 ? 24 : toHour;
        if (Double.isNaN(fromHour) || Double.isNaN(toHour) || fromHour >= 24 || fromHour == end) {
            return null;
        }
        return new DayWindow(fromHour, end);
    }

    private static String two(int number) {
        return (number < 10 ? "0" : "") + number;
    }
}
