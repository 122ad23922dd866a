package tideover.engine.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.outage.StormDays;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.rig.Sockets;
import tideover.engine.site.Weather;

/** Walks a rig through every outage of all weather years. Same inputs and seed: same result, whatever the threads. */
public final class Prover {
    /** Hours are followed to this many times the asked length, so that the tide line shows what is to spare. */
    private static final int CAP_TIMES = 2;

    /** A figure a quarter larger: enough to see a gain, small enough to be bought. */
    private static final double QUARTER_MORE = 1.25;

    private static final int NO_SUN_CAP_HOURS = 60 * 24;
    private static final List<Integer> WHOLE_YEAR =
            IntStream.range(0, 12).boxed().toList();

    private final Weather weather;
    private final PlaneWeather plane;
    private final double noonHour;
    private final int stepsPerHour;
    private final long seed;
    private final Workers workers;

    /**
     * @param plane    what the same weather puts on the panels
     * @param noonHour clock hour of solar noon at the place
     * @param seed     for drawing years again
     */
    public Prover(Weather weather, PlaneWeather plane, double noonHour, int stepsPerHour, long seed, Workers workers) {
        this.weather = weather;
        this.plane = plane;
        this.noonHour = noonHour;
        this.stepsPerHour = stepsPerHour;
        this.seed = seed;
        this.workers = workers;
    }

    /** The carried share alone, over the asked months. */
    public CarriedShare share(Rig rig, List<Load> loads, Outage outage) {
        Setting setting = new Setting(RigFigures.of(rig), demandOf(rig, loads), sunOf(rig), outage);
        return shareWhere(walkAll(setting, outage.months(), outage.hours()), outage, day -> true);
    }

    /** Everything about one rig. */
    public Proof prove(Rig rig, List<Load> loads, Outage outage) {
        Setting setting = new Setting(RigFigures.of(rig), demandOf(rig, loads), sunOf(rig), outage);
        int capHours = CAP_TIMES * outage.hours();
        Starts starts = walkAll(setting, WHOLE_YEAR, capHours);
        StormDays storms = StormDays.of(weather, outage.months());
        int[] ranked = ranked(starts, outage);
        CarriedShare all = shareWhere(starts, outage, day -> true);
        return new Proof(
                setting.rig(),
                weather.years(),
                all,
                shareWhere(starts, outage, storms::isDarkest),
                shareWhere(starts, outage, storms::isColdest),
                sortedHours(starts, outage),
                tideLine(starts, outage.hours(), capHours),
                table(starts, outage.hours()),
                noSunHours(setting),
                trace(setting, ranked[0]),
                trace(setting, ranked[(ranked.length - 1) / 2]),
                energy(setting),
                lifts(rig, loads, setting, all.share() < 1 ? outage.hours() : capHours));
    }

    /** One outage, step by step, from any hour of the weather years. */
    public Trace trace(Rig rig, List<Load> loads, Outage outage, int startHour) {
        return trace(new Setting(RigFigures.of(rig), demandOf(rig, loads), sunOf(rig), outage), startHour);
    }

    /** What a walk needs. */
    private record Setting(RigFigures rig, BusDemand demand, Series sunPerRatedW, Outage outage) {
        Walk walk(StretchFlows flows) {
            return new Walk(flows, rig, outage.keepBack(), outage.panelsOutAfterHours(), outage.chargeAtStart());
        }

        /** Whether nice-to-have loads can draw on the store, so that only the accounting walk tells the truth. */
        boolean niceTouchesStore() {
            return outage.keepBack() < 1 && demand.hasNice();
        }

        Setting with(RigFigures changed) {
            return new Setting(changed, demand, sunPerRatedW, outage);
        }

        Setting with(Outage changed) {
            return new Setting(rig, demand, sunPerRatedW, changed);
        }
    }

    /** Hours carried and lowest store for every start, NaN where none was walked; index is the hour of the years. */
    private record Starts(double[] hours, double[] lowestWh) {}

    private BusDemand demandOf(Rig rig, List<Load> loads) {
        return BusDemand.of(rig, loads, noonHour, stepsPerHour);
    }

    private Series sunOf(Rig rig) {
        return rig.panel() == null
                ? Series.owning(new double[weather.hours()])
                : plane.wattsPerRatedWatt(rig.panel().noctDegC(), rig.panel().powerPerK());
    }

    private Starts walkAll(Setting setting, List<Integer> months, int capHours) {
        double[] hours = new double[weather.hours()];
        double[] lowestWh = new double[weather.hours()];
        Arrays.fill(hours, Double.NaN);
        boolean accounting = setting.niceTouchesStore();
        List<Stretch> stretches = Stretch.of(months, weather.years(), capHours);
        workers.forEach(stretches.size(), number -> {
            Stretch stretch = stretches.get(number);
            StretchFlows flows = new StretchFlows(setting.rig(), setting.demand());
            flows.fill(stretch, setting.sunPerRatedW());
            Walk walk = setting.walk(flows);
            double[] lowest = {0};
            for (int start = 0; start < stretch.starts(); start++) {
                int hour = stretch.firstStartHour() + start;
                hours[hour] = accounting
                        ? walk.accountedHours(start, capHours, setting.outage().hours(), lowest)
                        : walk.essentialHours(start, capHours, setting.outage().hours(), lowest);
                lowestWh[hour] = lowest[0];
            }
        });
        return new Starts(hours, lowestWh);
    }

    private static boolean asked(Outage outage, int hour) {
        return outage.months().contains(ModelYear.monthOfDay(hour / 24 % ModelYear.DAYS));
    }

    private CarriedShare shareWhere(Starts starts, Outage outage, Predicate<Integer> onDay) {
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
    private int[] ranked(Starts starts, Outage outage) {
        return IntStream.range(0, starts.hours().length)
                .filter(hour -> asked(outage, hour))
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

    private Series noSunHours(Setting setting) {
        Stretch oneDay = new Stretch(0, 24, NO_SUN_CAP_HOURS);
        Setting dark = setting.with(setting.rig().withArrayRatedW(0));
        StretchFlows flows = new StretchFlows(dark.rig(), dark.demand());
        flows.fill(oneDay, dark.sunPerRatedW());
        Walk walk = dark.walk(flows);
        double[] lowest = {0};
        double[] hours = new double[24];
        for (int hour = 0; hour < 24; hour++) {
            hours[hour] = walk.essentialHours(hour, NO_SUN_CAP_HOURS, NO_SUN_CAP_HOURS, lowest);
        }
        return Series.owning(hours);
    }

    private Trace trace(Setting setting, int startHour) {
        int hours = setting.outage().hours();
        int midnight = startHour - startHour % 24;
        Stretch stretch = new Stretch(midnight, 24, hours);
        StretchFlows flows = new StretchFlows(setting.rig(), setting.demand());
        flows.fill(stretch, setting.sunPerRatedW());
        Recorder recorder = new Recorder(flows, startHour, weather);
        Ledger ledger = new Ledger();
        double carried = setting.walk(flows).account(startHour - midnight, hours, ledger, recorder);
        return new Trace(startHour, flows.stepHours, setting.rig().capacityWh(), carried, ledger, recorder.steps());
    }

    private Ledger energy(Setting setting) {
        Outage outage = setting.outage();
        List<Stretch> stretches = Stretch.of(outage.months(), weather.years(), outage.hours());
        Ledger[] sums = new Ledger[stretches.size()];
        workers.forEach(stretches.size(), number -> {
            StretchFlows flows = new StretchFlows(setting.rig(), setting.demand());
            flows.fill(stretches.get(number), setting.sunPerRatedW());
            Walk walk = setting.walk(flows);
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

    /**
     * @param capHours how far hours are followed: to the asked length, or beyond it where no outage fails
     */
    private List<Lift> lifts(Rig rig, List<Load> loads, Setting base, int capHours) {
        Outage outage = base.outage();
        RigFigures figures = base.rig();
        List<Lift> lifts = new ArrayList<>();
        double[] before = score(base, capHours);
        Lifting lifting = (limit, words, lifted) -> {
            double[] after = score(lifted, capHours);
            lifts.add(new Lift(limit, words, after[0] - before[0], after[1] - before[1]));
        };
        lifting.add(
                "store size",
                "a store a quarter larger",
                base.with(figures.withCapacityWh(figures.capacityWh() * QUARTER_MORE)));
        lifting.add("charge at the start", "a full store at the start", base.with(fullAtStart(outage)));
        if (figures.arrayRatedW() > 0) {
            lifting.add(
                    "winter sun on the panels",
                    "a quarter more panel",
                    base.with(figures.withArrayRatedW(figures.arrayRatedW() * QUARTER_MORE)));
            lifting.add(
                    "controller current",
                    "no limit on the controller's output current",
                    base.with(figures.withControllerMaxW(Double.MAX_VALUE)));
            lifting.add(
                    "charging current of the store",
                    "no limit on the store's charging current",
                    base.with(figures.withMaxChargeW(Double.MAX_VALUE)));
            lifting.add("hours until the panels are out", "panels out at once", base.with(panelsOutAtOnce(outage)));
        }
        if (Sockets.of(rig, loads).standingW(rig) > 0) {
            lifting.add(
                    "inverter standing draw",
                    "no standing draw of the inverter",
                    new Setting(
                            figures,
                            BusDemand.withoutStanding(rig, loads, noonHour, stepsPerHour),
                            base.sunPerRatedW(),
                            outage));
        }
        lifts.sort(Comparator.comparingDouble(Lift::shareGain)
                .thenComparingDouble(Lift::meanHoursGain)
                .reversed());
        return lifts;
    }

    /** Takes one lifted setting. */
    private interface Lifting {
        void add(String limit, String words, Setting lifted);
    }

    private static Outage fullAtStart(Outage o) {
        return new Outage(o.months(), o.hours(), o.targetShare(), 1, o.panelsOutAfterHours(), o.keepBack());
    }

    private static Outage panelsOutAtOnce(Outage o) {
        return new Outage(o.months(), o.hours(), o.targetShare(), o.chargeAtStart(), 0, o.keepBack());
    }

    /** Carried share and mean hours carried over the asked months. */
    private double[] score(Setting setting, int capHours) {
        Outage outage = setting.outage();
        Starts starts = walkAll(setting, outage.months(), capHours);
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
