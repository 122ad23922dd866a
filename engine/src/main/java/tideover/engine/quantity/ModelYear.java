package tideover.engine.quantity;

import java.util.List;

/**
 * The year that all weather is cut to: 365 days of 24 hours of local standard time, no 29 February, no summer time.
 * Days count from 0 (1 January), months from 0, hours from 0 (00:00 to 01:00 on 1 January).
 */
public final class ModelYear {
    public static final int DAYS = 365;
    public static final int HOURS = DAYS * 24;
    public static final int WEEKS = 52;

    /** Counted from 0. */
    public static final List<Integer> ALL_MONTHS = List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11);

    private static final List<Integer> MONTH_LENGTH = List.of(31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31);
    private static final List<String> MONTH_NAME =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    private ModelYear() {}

    public static int daysIn(int month) {
        return MONTH_LENGTH.get(month);
    }

    /** First day of the month, counted from 0. */
    public static int firstDay(int month) {
        int day = 0;
        for (int m = 0; m < month; m++) {
            day += MONTH_LENGTH.get(m);
        }
        return day;
    }

    public static int monthOfDay(int day) {
        int month = 0;
        int left = day;
        while (left >= MONTH_LENGTH.get(month)) {
            left -= MONTH_LENGTH.get(month);
            month++;
        }
        return month;
    }

    /** Week of the year from 0; the last week takes the year's one or two days over. */
    public static int weekOfDay(int day) {
        return Math.min(WEEKS - 1, day / 7);
    }

    /** Three-letter name in lower case, as plan files write it. */
    public static String monthName(int month) {
        return MONTH_NAME.get(month);
    }

    public static List<String> monthNames() {
        return MONTH_NAME;
    }

    /** Such as "14 dec" for a day counted from 0. */
    public static String dayName(int day) {
        int month = monthOfDay(day);
        return (day - firstDay(month) + 1) + " " + monthName(month);
    }
}
