package tideover.app.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.site.Place;
import tideover.engine.site.Weather;
import tideover.engine.sun.DiffuseFraction;
import tideover.engine.sun.SunYear;

/**
 * Hours of weather put in their places, year by year, until the file ends; then the holes are looked at, short ones
 * filled, and the whole turned into {@link Weather}.
 */
final class HourlyGrid {
    /** Longest gap that a straight line may bridge. This project's own choice. */
    static final int LONGEST_FILLED_H = 3;

    private static final int MOST_YEARS = 100;

    /** Sun that stands this far off the clock is said; typical-year files are known to be off by up to 1.9 h. */
    private static final double ODD_SUN_H = 0.75;

    /** Further off, the hours are not local standard time. */
    private static final double WRONG_SUN_H = 2.5;

    private final TreeMap<Integer, Year> years = new TreeMap<>();
    private int leapHours;
    private int belowZero;
    private int diffuseOverWhole;
    private double lowestDegC = Double.POSITIVE_INFINITY;
    private long lastKey = Long.MIN_VALUE;

    /** One calendar year, 29 February left out. */
    private static final class Year {
        final double[] ghi = unknown();
        final double[] air = unknown();
        final double[] dhi = unknown();
        final long[] line = new long[ModelYear.HOURS];
        int rows;

        private static double[] unknown() {
            double[] values = new double[ModelYear.HOURS];
            Arrays.fill(values, Double.NaN);
            return values;
        }
    }

    /**
     * Takes one hour; NaN for a reading that is missing. Returns what is wrong with its time, or null.
     *
     * @param year 0 in a file of one typical year
     */
    @Nullable
    String put(int year, int month, int day, int hour, long line, double ghi, double air, double dhi) {
        boolean leapDay = month == 2 && day == 29;
        if (month < 1 || month > 12 || day < 1 || day > ModelYear.daysIn(month - 1) + (month == 2 ? 1 : 0)) {
            return "day " + day + " of month " + month;
        }
        if (leapDay) {
            leapHours++;
            return null;
        }
        Year into = years.get(year);
        if (into == null) {
            if (years.size() == MOST_YEARS) {
                return "more than " + MOST_YEARS + " years";
            }
            into = new Year();
            years.put(year, into);
        }
        int at = (ModelYear.firstDay(month - 1) + day - 1) * 24 + hour;
        if (into.line[at] != 0) {
            return name(year, at) + " a second time, first in line " + into.line[at];
        }
        long key = (long) year * ModelYear.HOURS + at;
        if (key < lastKey) {
            return name(year, at) + ", earlier than the row before";
        }
        lastKey = key;
        into.line[at] = line;
        into.rows++;
        into.ghi[at] = ghi;
        into.air[at] = air;
        into.dhi[at] = dhi;
        return null;
    }

    /** Lowest hour of temperature, after {@link #weather}. */
    double lowestDegC() {
        return lowestDegC;
    }

    /** The weather, or null with the problems told. */
    @Nullable
    Weather weather(Reading reading, String file, Place place, String form) {
        int before = reading.flaws();
        if (years.isEmpty()) {
            reading.problem(file, "no hour of weather", "at least one whole year", "");
            return null;
        }
        checkWholeYears(reading, file);
        if (reading.flaws() > before) {
            return null;
        }
        double[] ghi = joined(year -> year.ghi);
        double[] air = joined(year -> year.air);
        double[] dhi = joined(year -> year.dhi);
        fill(reading, file, "sun", ghi);
        fill(reading, file, "temperature", air);
        if (reading.flaws() > before) {
            return null;
        }
        SunYear sun = SunYear.at(place.latDeg(), place.lonDeg(), place.zoneH());
        boolean split = splitSun(sun, ghi, dhi);
        checkSunClock(reading, file, sun, ghi);
        if (reading.flaws() > before) {
            return null;
        }
        for (double degC : air) {
            lowestDegC = Math.min(lowestDegC, degC);
        }
        tellRepairs(reading, file);
        String origin = "read from " + file + " (" + form + ", " + place.name()
                + (split ? ", diffuse part worked out by Erbs, Klein & Duffie 1982" : "") + ")";
        return new Weather(years.size(), Series.owning(ghi), Series.owning(dhi), Series.owning(air), origin);
    }

    private void checkWholeYears(Reading reading, String file) {
        years.forEach((number, year) -> {
            int first = 0;
            while (year.line[first] == 0) {
                first++;
            }
            int last = ModelYear.HOURS - 1;
            while (year.line[last] == 0) {
                last--;
            }
            if (first > LONGEST_FILLED_H || last < ModelYear.HOURS - 1 - LONGEST_FILLED_H) {
                reading.problem(
                        file,
                        String.format(
                                Locale.ROOT,
                                "%s of %d hours, from %s to %s",
                                number == 0 ? "a year" : "year " + number,
                                year.rows,
                                name(number, first),
                                name(number, last)),
                        "whole calendar years of " + ModelYear.HOURS + " hours",
                        years.size() > 1 ? "Leave part years out of the file." : "The file may be cut short.");
            }
        });
    }

    private double[] joined(Function<Year, double[]> part) {
        double[] all = new double[years.size() * ModelYear.HOURS];
        int at = 0;
        for (Year year : years.values()) {
            System.arraycopy(part.apply(year), 0, all, at, ModelYear.HOURS);
            at += ModelYear.HOURS;
        }
        return all;
    }

    /** Bridges short gaps by a straight line; the hour after the last is the first again. Longer ones are told. */
    private void fill(Reading reading, String file, String what, double[] values) {
        int known = 0;
        while (known < values.length && Double.isNaN(values[known])) {
            known++;
        }
        if (known == values.length) {
            reading.problem(file, "no reading of " + what + " at all", "a reading for each hour", "");
            return;
        }
        int filled = 0;
        int gaps = 0;
        int longest = 0;
        String firstGap = "";
        for (int i = 0; i < values.length; ) {
            int at = (known + i) % values.length;
            if (!Double.isNaN(values[at])) {
                i++;
                continue;
            }
            int length = 1;
            while (Double.isNaN(values[(at + length) % values.length])) {
                length++;
            }
            i += length;
            if (length > LONGEST_FILLED_H) {
                reading.problem(
                        file,
                        length + " hours without " + what + ", from " + name(at) + " to "
                                + name((at + length - 1) % values.length),
                        "gaps of at most " + LONGEST_FILLED_H + " hours",
                        "Fill it from another source, or leave the year out.");
                continue;
            }
            double from = values[(at + values.length - 1) % values.length];
            double to = values[(at + length) % values.length];
            for (int k = 0; k < length; k++) {
                values[(at + k) % values.length] = from + (to - from) * (k + 1) / (length + 1);
            }
            firstGap = gaps == 0 ? name(at) : firstGap;
            filled += length;
            gaps++;
            longest = Math.max(longest, length);
        }
        if (gaps > 0) {
            reading.caution(String.format(
                    Locale.ROOT,
                    "%s: %d h of %s were missing in %d gaps (longest %d h, first at %s) and are filled by straight lines.",
                    file,
                    filled,
                    what,
                    gaps,
                    longest,
                    firstGap));
        }
    }

    /** Brings the sun into order and gives each hour its diffuse part; true where any had to be worked out. */
    private boolean splitSun(SunYear sun, double[] ghi, double[] dhi) {
        boolean worked = false;
        for (int h = 0; h < ghi.length; h++) {
            if (ghi[h] < 0) {
                ghi[h] = 0;
                belowZero++;
            }
            if (Double.isNaN(dhi[h])) {
                double outside = sun.horizontalWm2(h % ModelYear.HOURS);
                double fraction = outside > 0 ? DiffuseFraction.hourly(ghi[h] / outside) : 1;
                dhi[h] = ghi[h] * fraction;
                worked |= ghi[h] > 0;
            }
            if (dhi[h] > ghi[h]) {
                diffuseOverWhole++;
            }
            dhi[h] = Math.max(0, Math.min(ghi[h], dhi[h]));
        }
        return worked;
    }

    /** The sun of the file against the sun of the sky: half a day's light must lie about solar noon. */
    private void checkSunClock(Reading reading, String file, SunYear sun, double[] ghi) {
        double light = 0;
        double moment = 0;
        for (int h = 0; h < ghi.length; h++) {
            int day = h % ModelYear.HOURS / 24;
            double afterNoon = h % 24 + 0.5 - sun.solarNoonHour(day);
            light += ghi[h];
            moment += ghi[h] * (afterNoon > 12 ? afterNoon - 24 : afterNoon < -12 ? afterNoon + 24 : afterNoon);
        }
        if (!(light > 0)) {
            reading.problem(file, "no sun in any hour", "irradiance in W/m2", "");
            return;
        }
        double lateH = moment / light;
        String found = String.format(
                Locale.ROOT,
                "sun that stands %.1f h %s than at this place",
                Math.abs(lateH),
                lateH > 0 ? "later" : "earlier");
        if (Math.abs(lateH) > WRONG_SUN_H) {
            reading.problem(
                    file,
                    found,
                    "local standard time of the place",
                    "Check longitude, zone and the clock of the file.");
        } else if (Math.abs(lateH) > ODD_SUN_H) {
            reading.caution(file + ": it has " + found + "; panels that face east or west are misjudged.");
        }
    }

    private void tellRepairs(Reading reading, String file) {
        if (leapHours > 0) {
            reading.caution(
                    file + ": " + leapHours + " h of 29 February are left out; every year is taken as 365 days.");
        }
        if (belowZero > 0) {
            reading.caution(file + ": " + belowZero + " h of sun slightly below zero are taken as 0.");
        }
        if (diffuseOverWhole > 0) {
            reading.caution(file + ": " + diffuseOverWhole
                    + " h have more diffuse than global sun; the diffuse part is cut to the whole.");
        }
    }

    private String name(int joinedHour) {
        List<Integer> numbers = new ArrayList<>(years.keySet());
        return name(numbers.get(joinedHour / ModelYear.HOURS), joinedHour % ModelYear.HOURS);
    }

    /** Such as "4 mar 2019 05:00"; the hour's start. */
    private static String name(int year, int hourOfYear) {
        String day = ModelYear.dayName(hourOfYear / 24);
        return String.format(Locale.ROOT, "%s%s %02d:00", day, year == 0 ? "" : " " + year, hourOfYear % 24);
    }
}
