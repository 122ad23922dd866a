package tideover.engine.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.load.PitLoad;
import tideover.engine.outage.Outage;
import tideover.engine.outage.StormDays;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.site.Room;
import tideover.engine.site.Weather;

/** Walks a rig through every outage of all weather years. Same inputs and seed: same result, whatever the threads. */
public final class Prover {
    /** Hours are followed to this many times the asked length, so that the tide line shows what is to spare. */
    private static final int CAP_TIMES = 2;

    private static final int NO_SUN_CAP_HOURS = 60 * 24;
    private static final int WEEKS_A_ROUND = 16;
    private static final int CELL_STRIDE = 3;

    /** Doubts are followed through so many of the weather years, at every so many-th start hour. */
    private static final int DOUBT_YEARS = 10;

    private static final int DOUBT_STRIDE = 7;
    private static final List<Integer> WHOLE_YEAR =
            IntStream.range(0, 12).boxed().toList();

    private final Weather weather;
    private final PlaneWeather plane;
    private final Series roomDegC;
    private final YearsShelf shelf;

    /** How many outages of a week failed with the rig that was asked about last and walked through it. */
    private final Map<Stretch, Integer> failedBefore = new HashMap<>();

    private final double noonHour;
    private final int stepsPerHour;
    private final long seed;
    private final Workers workers;

    /**
     * @param plane    what the same weather puts on the panels
     * @param roomDegC temperature of the room that the store stands in, hour by hour
     * @param noonHour clock hour of solar noon at the place
     * @param seed     for drawing years again
     */
    public Prover(
            Weather weather,
            PlaneWeather plane,
            Series roomDegC,
            double noonHour,
            int stepsPerHour,
            long seed,
            Workers workers) {
        this.weather = weather;
        this.plane = plane;
        this.roomDegC = roomDegC;
        this.shelf = new YearsShelf(weather, plane, roomDegC);
        this.noonHour = noonHour;
        this.stepsPerHour = stepsPerHour;
        this.seed = seed;
        this.workers = workers;
    }

    /** The carried share alone, over the asked months. */
    public CarriedShare share(Rig rig, List<Load> loads, Outage outage) {
        Setup setup = setup(rig, loads, outage);
        if (Fates.of(setup) == null || setup.standInHours() < outage.hours()) {
            return shareWhere(walkAll(setup, outage.months(), outage.hours()), outage, day -> true);
        }
        List<Stretch> weeks = weeks(outage);
        int[] walked = new int[weather.years()];
        int[] carried = new int[weather.years()];
        int[] failed = new int[weeks.size()];
        Supplier<Walk> walks = setup.walks(outage.hours());
        workers.forEach(weeks.size(), number -> {
            Stretch week = weeks.get(number);
            failed[number] = failures(walks, week, Fates.in(setup, week), outage.hours());
        });
        for (int number = 0; number < failed.length; number++) {
            Stretch week = weeks.get(number);
            int year = week.firstStartHour() / ModelYear.HOURS;
            walked[year] += week.starts();
            carried[year] += week.starts() - failed[number];
        }
        return CarriedShare.of(walked, carried, seed);
    }

    /** The asked starts in runs of a week at most, in their order. */
    private List<Stretch> weeks(Outage outage) {
        List<Stretch> weeks = new ArrayList<>();
        Stretch.of(outage.months(), weather.years(), outage.hours()).forEach(all -> weeks.addAll(all.pieces(7)));
        return weeks;
    }

    /**
     * The carried share where it reaches a threshold; empty where it does not. What bounds leave open is walked, the worst weeks
     * first: those in which most outages are lost for certain, then those in which the rig before failed most, then dull and hot
     * ones. In rounds of fixed size; a rig is given up as soon as too many outages have failed, so a poor one costs little. In
     * which order weeks are walked changes nothing but the time it takes.
     */
    public OptionalDouble shareFrom(double threshold, Rig rig, List<Load> loads, Outage outage) {
        Setup setup = setup(rig, loads, outage);
        if (setup.standInHours() < outage.hours()) {
            return threshold > 0 ? OptionalDouble.empty() : OptionalDouble.of(0);
        }
        List<Stretch> weeks = weeks(outage);
        int[][] fates = new int[weeks.size()][];
        workers.forEach(fates.length, number -> fates[number] = Fates.in(setup, weeks.get(number)));
        int walked = weeks.stream().mapToInt(Stretch::starts).sum();
        int[] lost = new int[weeks.size()];
        int failed = 0;
        for (int number = 0; number < lost.length; number++) {
            lost[number] =
                    (int) Arrays.stream(fates[number]).filter(fate -> fate > 0).count();
            failed += lost[number];
        }
        if ((double) (walked - failed) / walked < threshold) {
            return OptionalDouble.empty();
        }
        Series keptNeedW = keptBound(loads, outage).needW();
        List<Integer> order = IntStream.range(0, weeks.size())
                .boxed()
                .filter(number -> Arrays.stream(fates[number]).anyMatch(fate -> fate == 0))
                .sorted(Comparator.comparingInt((Integer number) -> -lost[number])
                        .thenComparingInt(number -> -failedBefore.getOrDefault(weeks.get(number), 0))
                        .thenComparingDouble(number -> weeks.get(number).spareW(plane, keptNeedW, rig.arrayRatedW()))
                        .thenComparingInt(number -> weeks.get(number).firstStartHour()))
                .toList();
        Supplier<Walk> walks = setup.walks(outage.hours());
        for (int from = 0; from < order.size(); from += WEEKS_A_ROUND) {
            List<Integer> round = order.subList(from, Math.min(order.size(), from + WEEKS_A_ROUND));
            int[] failures = new int[round.size()];
            workers.forEach(
                    round.size(),
                    number -> failures[number] =
                            failures(walks, weeks.get(round.get(number)), fates[round.get(number)], outage.hours()));
            for (int number = 0; number < failures.length; number++) {
                failed += failures[number] - lost[round.get(number)];
                failedBefore.put(weeks.get(round.get(number)), failures[number]);
            }
            if ((double) (walked - failed) / walked < threshold) {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of((double) (walked - failed) / walked);
    }

    /** How many outages of a week fail; only those whose fate is open are walked. */
    private static int failures(Supplier<Walk> walks, Stretch stretch, int[] fates, int hours) {
        int failures = 0;
        Walk walk = null;
        double[] lowest = {0};
        for (int start = stretch.starts() - 1; start >= 0; start--) {
            if (fates[start] != 0) {
                failures += fates[start] > 0 ? 1 : 0;
                continue;
            }
            if (walk == null) {
                walk = walks.get();
                walk.onto(stretch);
            }
            failures += walk.hoursCarried(start, hours, hours, lowest) < hours ? 1 : 0;
        }
        return failures;
    }

    /** The same with so many times the sun, and the store so many times as large. */
    public CarriedShare share(Rig rig, List<Load> loads, Outage outage, double sunTimes, double storeTimes) {
        Rig sized = rig.with(Doubts.sized(rig.store(), storeTimes));
        Setup setup = setup(sized, loads, outage).withSun(sunTimes);
        return shareWhere(walkAll(setup, outage.months(), outage.hours()), outage, day -> true);
    }

    /** Everything about one rig. */
    public Proof prove(Rig rig, List<Load> loads, Outage outage) {
        Setup setup = setup(rig, loads, outage);
        int capHours = CAP_TIMES * outage.hours();
        Starts starts = walkAll(setup, WHOLE_YEAR, capHours);
        StormDays storms = StormDays.of(weather, outage.months());
        int[] ranked = ranked(starts, outage, day -> true);
        CarriedShare all = shareWhere(starts, outage, day -> true);
        boolean stormy = isStormy(loads, outage);
        Setup inStorm = setup.inStorm();
        Starts stormStarts = stormy ? walkAll(inStorm, outage.months(), outage.hours(), 1, storms::isEither) : starts;
        StormProof storm = null;
        if (stormy) {
            int[] stormsRanked = ranked(stormStarts, outage, storms::isEither);
            storm = new StormProof(shareWhere(stormStarts, outage, storms::isEither), trace(inStorm, stormsRanked[0]));
        }
        int habitHours = all.share() < 1 ? outage.hours() : capHours;
        return new Proof(
                setup.figures(),
                weather.years(),
                all,
                shareWhere(stormStarts, outage, storms::isDarkest),
                shareWhere(stormStarts, outage, storms::isColdest),
                storm,
                sortedHours(starts, outage),
                tideLine(starts, outage.hours(), capHours),
                table(starts, outage.hours()),
                noSunHours(setup),
                trace(setup, ranked[0]),
                trace(setup, ranked[(ranked.length - 1) / 2]),
                energy(setup),
                Lifts.of(this, rig, loads, setup, noonHour, stepsPerHour, habitHours),
                endings(starts, outage),
                temperatures(setup),
                Habits.of(this, rig.served(loads), changed -> setup(rig, changed, outage), habitHours),
                bareShare(setup, loads));
    }

    /** The carried share of the storm starts alone, with all that storms do. */
    public CarriedShare stormShare(Rig rig, List<Load> loads, Outage outage) {
        StormDays storms = StormDays.of(weather, outage.months());
        Starts starts =
                walkAll(setup(rig, loads, outage).inStorm(), outage.months(), outage.hours(), 1, storms::isEither);
        return shareWhere(starts, outage, storms::isEither);
    }

    /** What loads that switch themselves need at least, in these weather years. */
    public KeptBound keptBound(List<Load> loads, Outage outage) {
        return shelf.keptBound(loads, outage);
    }

    /** Whether storms do anything to this rig beside taking the grid. */
    public static boolean isStormy(List<Load> loads, Outage outage) {
        return outage.storm() != null
                || loads.stream()
                        .anyMatch(load ->
                                load instanceof PitLoad pit && pit.inflow().swells());
    }

    /** The share of outages in which everything is kept without any power; NaN where some need follows the clock. */
    private double bareShare(Setup setup, List<Load> loads) {
        if (!loads.stream().allMatch(load -> load.keeps() || !load.essential())) {
            return Double.NaN;
        }
        Setup bare = setup.with(Kept.without(loads, shelf, stepsPerHour));
        Outage outage = setup.outage();
        return shareWhere(walkAll(bare, outage.months(), outage.hours()), outage, day -> true)
                .share();
    }

    /** A rig with its loads, in a sky of so many times the sun. */
    record Case(Rig rig, List<Load> loads, Outage outage, double sunTimes) {}

    /** What the unknown does to a share found by {@link #prove}. */
    public Doubts doubts(Rig rig, List<Load> loads, Outage outage, CarriedShare proven, List<Doubt> doubts) {
        Weather some = weather.firstYears(DOUBT_YEARS);
        Prover prover = new Prover(
                some, plane.first(some.hours()), roomDegC.first(some.hours()), noonHour, stepsPerHour, seed, workers);
        // Onto its shelf first, so that what all cases share, lives on the grid above all, is worked out once.
        prover.setup(rig, loads, outage);
        int capHours = proven.share() < 1 ? outage.hours() : CAP_TIMES * outage.hours();
        return Doubts.of(prover, rig, new Case(rig, loads, outage, 1), proven, doubts, seed, capHours);
    }

    /** As the other, for a case among many alike. */
    double[] score(Case one, int capHours) {
        Setup setup = Setup.of(one.rig(), one.loads(), shelf.passing(), noonHour, stepsPerHour, one.outage());
        return score(
                walkAll(setup.withSun(one.sunTimes()), one.outage().months(), capHours, DOUBT_STRIDE), one.outage());
    }

    /** One outage, step by step, from any hour of the weather years. */
    public Trace trace(Rig rig, List<Load> loads, Outage outage, int startHour) {
        return trace(setup(rig, loads, outage), startHour);
    }

    /** Hours carried and lowest store for every start, NaN where none was walked; index is the hour of the years. */
    private record Starts(
            double[] hours, double[] lowestWh, @Nullable Ending[] endings) {}

    private Setup setup(Rig rig, List<Load> loads, Outage outage) {
        return Setup.of(rig, loads, shelf, noonHour, stepsPerHour, outage);
    }

    private Starts walkAll(Setup setup, List<Integer> months, int capHours) {
        return walkAll(setup, months, capHours, 1);
    }

    private Starts walkAll(Setup setup, List<Integer> months, int capHours, int stride) {
        return walkAll(setup, months, capHours, stride, day -> true);
    }

    private Starts walkAll(Setup setup, List<Integer> months, int capHours, int stride, IntPredicate onDay) {
        double[] hours = new double[weather.hours()];
        double[] lowestWh = new double[weather.hours()];
        Ending[] endings = new Ending[weather.hours()];
        Arrays.fill(hours, Double.NaN);
        List<Stretch> stretches = Stretch.of(months, weather.years(), capHours);
        Supplier<Walk> walks = setup.walks(capHours);
        workers.forEach(stretches.size(), number -> {
            Stretch stretch = stretches.get(number);
            Walk walk = walks.get();
            walk.onto(stretch);
            double[] lowest = {0};
            // From the last to the first: a walk knows again what it has come to before.
            for (int start = (stretch.starts() - 1) / stride * stride; start >= 0; start -= stride) {
                int hour = stretch.firstStartHour() + start;
                if (!onDay.test(hour / 24)) {
                    continue;
                }
                hours[hour] = Math.min(
                        setup.standInHours(),
                        walk.hoursCarried(start, capHours, setup.outage().hours(), lowest));
                lowestWh[hour] = lowest[0];
                endings[hour] = walk.ending();
            }
        });
        return new Starts(hours, lowestWh, endings);
    }

    private static boolean asked(Outage outage, int hour) {
        return outage.months().contains(ModelYear.monthOfDay(hour / 24 % ModelYear.DAYS));
    }

    private CarriedShare shareWhere(Starts starts, Outage outage, IntPredicate onDay) {
        int[] walked = new int[weather.years()];
        int[] carried = new int[weather.years()];
        for (int day = 0; day < weather.days(); day++) {
            if (!asked(outage, day * 24) || !onDay.test(day)) {
                continue;
            }
            for (int hour = day * 24; hour < day * 24 + 24; hour++) {
                walked[day / ModelYear.DAYS]++;
                carried[day / ModelYear.DAYS] += starts.hours()[hour] >= outage.hours() ? 1 : 0;
            }
        }
        return CarriedShare.of(walked, carried, seed);
    }

    /** Start hours of the asked months, the outage carried shortest first, then the one with the emptiest store. */
    private int[] ranked(Starts starts, Outage outage, IntPredicate onDay) {
        return IntStream.range(0, starts.hours().length)
                .filter(hour -> asked(outage, hour) && onDay.test(hour / 24))
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(hour -> Math.min(outage.hours(), starts.hours()[hour]))
                        .thenComparingDouble(hour -> starts.lowestWh()[hour])
                        .thenComparingInt(hour -> hour))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static Series sortedHours(Starts starts, Outage outage) {
        double[] hours = IntStream.range(0, starts.hours().length)
                .filter(hour -> asked(outage, hour))
                .mapToDouble(hour -> starts.hours()[hour])
                .toArray();
        Arrays.sort(hours);
        return Series.owning(hours);
    }

    private TideLine tideLine(Starts starts, int askedHours, int capHours) {
        double[] worst = new double[ModelYear.WEEKS];
        double[] oneIn20 = new double[ModelYear.WEEKS];
        double[] median = new double[ModelYear.WEEKS];
        double[][] byWeek = byWeek(starts.hours());
        for (int w = 0; w < ModelYear.WEEKS; w++) {
            double[] hours = byWeek[w];
            Arrays.sort(hours);
            worst[w] = hours[0];
            oneIn20[w] = Quantile.of(hours, 0.05);
            median[w] = Quantile.of(hours, 0.5);
        }
        return new TideLine(askedHours, capHours, Series.owning(worst), Series.owning(oneIn20), Series.owning(median));
    }

    /** The hours of all starts of each week of the year, in one pass. */
    private double[][] byWeek(double[] hours) {
        int[] filled = new int[ModelYear.WEEKS];
        double[][] byWeek = new double[ModelYear.WEEKS][];
        for (int week = 0; week < ModelYear.WEEKS; week++) {
            int days = week + 1 < ModelYear.WEEKS ? 7 : ModelYear.DAYS - 7 * week;
            byWeek[week] = new double[days * 24 * weather.years()];
        }
        for (int hour = 0; hour < hours.length; hour++) {
            int week = ModelYear.weekOfDay(hour / 24 % ModelYear.DAYS);
            byWeek[week][filled[week]++] = hours[hour];
        }
        return byWeek;
    }

    private static StartTable table(Starts starts, int askedHours) {
        StartTable table = new StartTable();
        for (int hour = 0; hour < starts.hours().length; hour++) {
            table.count(
                    ModelYear.monthOfDay(hour / 24 % ModelYear.DAYS), hour % 24, starts.hours()[hour] >= askedHours);
        }
        return table;
    }

    /** The fewest, by the hour. The battery, if cold matters to it, as cold as it is on the average of the asked months. */
    private Series noSunHours(Setup setup) {
        Setup dark = setup.with(setup.figures().withArrayRatedW(0));
        Setup.Cells cells = dark.cells();
        if (cells != null) {
            dark = dark.with(cells.with((HeldArray) null)
                    .at(meanDegC(cells, setup.outage().months())));
        }
        Walk walk = dark.walks(NO_SUN_CAP_HOURS).get();
        double[] lowest = {0};
        double[] hours = new double[24];
        Arrays.fill(hours, Math.min(NO_SUN_CAP_HOURS, setup.standInHours()));
        for (int day : noSunDays(setup)) {
            walk.onto(new Stretch(24 * day, 24, NO_SUN_CAP_HOURS));
            for (int hour = 0; hour < 24; hour++) {
                hours[hour] =
                        Math.min(hours[hour], walk.hoursCarried(hour, NO_SUN_CAP_HOURS, NO_SUN_CAP_HOURS, lowest));
            }
        }
        return Series.owning(hours);
    }

    /** Any day will do where only the clock counts; where rooms do, the middle of each asked month of each year, and the worst. */
    private List<Integer> noSunDays(Setup setup) {
        List<Integer> months = setup.outage().months();
        if (setup.kept().isEmpty()) {
            return List.of(ModelYear.firstDay(months.get(0)));
        }
        return IntStream.range(0, weather.years())
                .boxed()
                .flatMap(year -> months.stream()
                        .map(month -> year * ModelYear.DAYS + ModelYear.firstDay(month) + ModelYear.daysIn(month) / 2))
                .toList();
    }

    private static double meanDegC(Setup.Cells cells, List<Integer> months) {
        Series degC = cells.warmth().degC();
        double sum = 0;
        int hours = 0;
        for (int hour = 0; hour < degC.length(); hour++) {
            if (months.contains(ModelYear.monthOfDay(hour / 24 % ModelYear.DAYS))) {
                sum += degC.at(hour);
                hours++;
            }
        }
        return sum / hours;
    }

    private static Map<Ending, Integer> endings(Starts starts, Outage outage) {
        Map<Ending, Integer> counts = new EnumMap<>(Ending.class);
        for (int hour = 0; hour < starts.hours().length; hour++) {
            Ending ending = starts.endings()[hour];
            if (ending != null && asked(outage, hour) && starts.hours()[hour] < outage.hours()) {
                counts.merge(ending, 1, Integer::sum);
            }
        }
        return counts;
    }

    /** What the battery's temperature does in the asked months. */
    private static Room.Extremes temperatures(Setup setup) {
        Setup.Cells cells = setup.cells();
        return Room.extremes(
                cells == null ? setup.roomDegC() : cells.warmth().degC(),
                setup.outage().months());
    }

    private Trace trace(Setup setup, int startHour) {
        int hours = setup.outage().hours();
        int midnight = startHour - startHour % 24;
        Walk walk = setup.walks(hours, true).get();
        walk.onto(new Stretch(midnight, 24, hours));
        Setup.Cells cells = setup.cells();
        Series batteryDegC = cells == null ? setup.roomDegC() : cells.warmth().degC();
        Recorder recorder = new Recorder(walk, stepsPerHour, startHour, weather, batteryDegC);
        Ledger ledger = new Ledger();
        double carried = walk.account(startHour - midnight, hours, ledger, recorder);
        return new Trace(
                startHour,
                1.0 / stepsPerHour,
                cells == null ? setup.figures().capacityWh() : cells.bank().fullWh(),
                carried,
                walk.ending(),
                ledger,
                setup.kept().all().stream().map(Kept.One::load).toList(),
                recorder.steps());
    }

    private Ledger energy(Setup setup) {
        Outage outage = setup.outage();
        List<Stretch> stretches = Stretch.of(outage.months(), weather.years(), outage.hours());
        Ledger[] sums = new Ledger[stretches.size()];
        Supplier<Walk> walks = setup.walks(outage.hours());
        workers.forEach(stretches.size(), number -> {
            Walk walk = walks.get();
            walk.onto(stretches.get(number));
            sums[number] = new Ledger();
            for (int start = 0; start < stretches.get(number).starts(); start++) {
                Ledger one = new Ledger();
                walk.account(start, outage.hours(), one, null);
                sums[number].add(one);
            }
        });
        Ledger all = new Ledger();
        for (Ledger sum : sums) {
            all.add(sum);
        }
        return all;
    }

    /** The same on the storm starts, followed to the asked length. */
    double[] stormScore(Setup inStorm) {
        Outage outage = inStorm.outage();
        StormDays storms = StormDays.of(weather, outage.months());
        return score(walkAll(inStorm, outage.months(), outage.hours(), CELL_STRIDE, storms::isEither), outage);
    }

    /**
     * Carried share and mean hours carried over the asked months. A battery by its data sheet, slower to walk, is asked at
     * every third start hour: that is enough to compare by.
     */
    double[] score(Setup setup, int capHours) {
        Outage outage = setup.outage();
        int stride = setup.cells() == null && setup.kept().isEmpty() ? 1 : CELL_STRIDE;
        return score(walkAll(setup, outage.months(), capHours, stride), outage);
    }

    private static double[] score(Starts starts, Outage outage) {
        double hours = 0;
        int carried = 0;
        int walked = 0;
        for (double one : starts.hours()) {
            if (!Double.isNaN(one)) {
                hours += one;
                carried += one >= outage.hours() ? 1 : 0;
                walked++;
            }
        }
        return new double[] {(double) carried / walked, hours / walked};
    }
}
