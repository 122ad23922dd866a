package tideover.engine.load;

import java.util.Locale;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.quantity.Require;

/** What a load owes its people. Kept or not kept is judged from this, never from watts. */
public sealed interface Need
        permits Need.AlwaysOn, Need.HoursInWindow, Need.Below, Need.Band, Need.HoursAbove, Need.Above, Need.NoFlood {
    String words();

    /** Whenever the load wants power it gets it, without a gap. */
    record AlwaysOn() implements Need {
        @Override
        public String words() {
            return "always on";
        }
    }

    /**
     * At least so many hours of running inside each day's window, judged at the window's end. The hours taken are those
     * nearest to noon: with the panels out, when they give most; without, no worse than others. Before the outage began
     * the load kept the same hours, so that of a window cut by its beginning only what was still to come is owed.
     */
    record HoursInWindow(double hours, DayWindow window) implements Need {
        public HoursInWindow {
            Require.above(0, "hours", hours, "h");
            Require.within(0, window.lengthHours(), "hours", hours, "h");
        }

        /** The hours of the window nearest to noon, in one piece. */
        DayWindow nearest(double noonHour) {
            double length = window.lengthHours();
            if (hours == length) {
                return window;
            }
            double noonInWindow =
                    Math.floorMod((long) Math.round((noonHour - window.fromHour()) * 3600), 86400L) / 3600.0;
            double begin;
            if (noonInWindow <= length) {
                begin = Math.min(Math.max(0, noonInWindow - hours / 2), length - hours);
            } else {
                // Noon lies outside: the window's end if noon comes sooner after it than it lies before the beginning.
                begin = noonInWindow - length < 24 - noonInWindow ? length - hours : 0;
            }
            double from = (window.fromHour() + begin) % 24;
            double to = (from + hours) % 24;
            return new DayWindow(from, to == 0 ? 24 : to);
        }

        @Override
        public String words() {
            return PlainNumber.of(hours) + " h between " + clock(window.fromHour()) + " and " + clock(window.toHour());
        }
    }

    /**
     * The warmest mean temperature that frozen food may reach. At its freezing point it has begun to thaw, and whatever thawed and
     * froze again does not count as kept.
     */
    record Below(double limitDegC) implements Need {
        public Below {
            Require.within(-30, 20, "limitDegC", limitDegC, "degC");
        }

        @Override
        public String words() {
            return "never above " + PlainNumber.of(limitDegC) + " degC";
        }
    }

    /** Contents between two temperatures, both spoiling: medicine that neither warmth nor frost may touch. */
    record Band(double leastDegC, double mostDegC) implements Need {
        public Band {
            Require.within(-40, 40, "leastDegC", leastDegC, "degC");
            Require.above(leastDegC, "mostDegC", mostDegC, "degC");
        }

        @Override
        public String words() {
            return "between " + PlainNumber.of(leastDegC) + " and " + PlainNumber.of(mostDegC) + " degC";
        }
    }

    /** Hours that food is above a temperature, summed over the outage and never counted anew. */
    record HoursAbove(double limitDegC, double hours) implements Need {
        public HoursAbove {
            Require.within(-30, 30, "limitDegC", limitDegC, "degC");
            Require.atLeast(0, "hours", hours, "h");
        }

        @Override
        public String words() {
            return "above " + String.format(Locale.ROOT, "%.1f", limitDegC) + " degC for " + PlainNumber.of(hours)
                    + " h in all at most";
        }
    }

    /** A room that is not to fall below a temperature. */
    record Above(double limitDegC) implements Need {
        public Above {
            Require.within(-20, 30, "limitDegC", limitDegC, "degC");
        }

        @Override
        public String words() {
            return "never below " + PlainNumber.of(limitDegC) + " degC";
        }
    }

    /** A pit that is not to run over. */
    record NoFlood() implements Need {
        @Override
        public String words() {
            return "the pit never runs over";
        }
    }

    /** Such as "08:30". */
    static String clock(double hour) {
        int minutes = (int) Math.round(hour * 60);
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
    }
}
