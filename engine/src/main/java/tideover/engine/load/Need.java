package tideover.engine.load;

import java.util.Locale;
import tideover.engine.quantity.Require;

/** What a load owes its people. Kept or not kept is judged from this, never from watts. */
public sealed interface Need permits Need.AlwaysOn, Need.HoursInWindow {
    String words();

    /** Whenever the load wants power it gets it, without a gap. */
    record AlwaysOn() implements Need {
        @Override
        public String words() {
            return "always on";
        }
    }

    /** At least so many hours of running inside each day's window, judged at the window's end. */
    record HoursInWindow(double hours, DayWindow window) implements Need {
        public HoursInWindow {
            Require.above(0, "hours", hours, "h");
            Require.within(0, window.lengthHours(), "hours", hours, "h");
        }

        @Override
        public String words() {
            return String.format(
                    Locale.ROOT, "%.4g h between %s and %s", hours, clock(window.fromHour()), clock(window.toHour()));
        }
    }

    /** Such as "08:30". */
    static String clock(double hour) {
        int minutes = (int) Math.round(hour * 60);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }
}
