package tideover.engine.proof;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import tideover.engine.battery.ConstantPower;
import tideover.engine.outage.Outage;

/**
 * What bounds tell of outages before any is walked: which are lost under the best store that a battery by its data sheet could be,
 * and which are carried under the worst. Only what lies between has to be walked.
 *
 * <p>The best: {@link RigFigures}. The worst is a plain store too, made anew for each stretch of weather from the extremes of its
 * hours. It is empty where the coldest hour, the deepest volts at the heaviest load, the depth or a motor's start would end
 * the real one, and full where the real one still takes all it is offered; between, it pays the highest price for every Wh in or
 * out, loses the most with time, and takes no more than the coldest sunny hour allows. A real store that holds as much never
 * gains less nor gives more, so it stays ahead of the worst to the end.
 *
 * <p>Two wells count as their whole. While P is taken at most, the heads part by no more than {@code P/(c k')}, since
 * {@code d(h2 - h1)/dt = I/c - k'(h2 - h1)}; so the first well holds at least {@code c (y - (1 - c) P/(c k'))} of a whole y.
 *
 * <p>Told only where nothing but the sun and the store feeds loads that follow the clock, the panels are not held at the store's
 * volts, nothing nice to have draws on the store and no heater is on; elsewhere nothing is sure.
 */
final class Fates {
    /** First-well filling up to which the worst store charges: above, real ones taper. */
    private static final double[] TOPS = {0.97, 0.92, 0.85, 0.75, 0.6};

    /** Room for rounding, as a share of the whole; far above what sums of an outage leave. */
    private static final double ROUNDING = 1e-6;

    private static final double CAPACITY_BREATH_WH = 1e-6;

    private final Setup setup;
    private final Outage outage;
    private final int stepsPerHour;
    private final double[] busW;
    private final RigFigures best;
    private final CellRig flat;
    private final Setup.Cells cells;
    private final boolean worstToo;
    private final CellClimate.Hours climate = new CellClimate.Hours();

    private Fates(Setup setup, Setup.Cells cells, boolean worstToo) {
        this.setup = setup;
        this.outage = setup.outage();
        this.stepsPerHour = setup.demand().stepsPerHour();
        this.busW = setup.demand().essentialBusW();
        this.best = setup.figures().withMaxDischargeW(Double.MAX_VALUE);
        this.cells = cells;
        this.flat = CellRig.of(setup.rig(), cells.bank(), setup.inverterLeftOn(), cells.controllerMaxA());
        this.worstToo = worstToo;
    }

    /** Belongs to one thread; null where nothing can be told. */
    static @Nullable Fates of(Setup setup) {
        Setup.Cells cells = setup.cells();
        if (cells == null
                || setup.rig().isHelped(setup.outage())
                || !setup.kept().isEmpty()) {
            return null;
        }
        boolean niceDraws = setup.demand().hasNice() && setup.outage().keepBack() < 1;
        boolean heated = cells.bank().store().heater().watts() > 0;
        return new Fates(setup, cells, cells.held() == null && !niceDraws && !heated);
    }

    /** The same of a stretch by itself; all open where nothing can be told. */
    static int[] in(Setup setup, Stretch stretch) {
        Fates fates = of(setup);
        return fates == null ? new int[stretch.starts()] : fates.of(stretch);
    }

    /**
     * Of each start of a stretch: 1 where the outage is lost, -1 where it is carried, 0 where only a walk can tell.
     *
     * <p>The panels' loss on their leads and the controller's are in both.
     */
    int[] of(Stretch stretch) {
        int[] fates = new int[stretch.starts()];
        double[] arrayW = new double[stretch.hours()];
        setup.sunPerRatedW().copyRound(stretch.firstStartHour(), arrayW);
        for (int hour = 0; hour < arrayW.length; hour++) {
            arrayW[hour] *= best.arrayRatedW();
        }
        double[] lost = needed(best, busW, arrayW, stretch.starts(), outage.chargeAtStart());
        for (int start = 0; start < fates.length; start++) {
            fates[start] = lost[start] > best.capacityWh() + CAPACITY_BREATH_WH ? 1 : 0;
        }
        if (worstToo) {
            carried(stretch, arrayW, fates);
        }
        return fates;
    }

    private double[] needed(RigFigures figures, double[] demandW, double[] arrayW, int starts, double chargeAtStart) {
        Gains gains = new Gains(figures, demandW, stepsPerHour);
        double[] sunBusW = new double[arrayW.length];
        for (int hour = 0; hour < arrayW.length; hour++) {
            sunBusW[hour] = gains.sunBusW(arrayW[hour]);
        }
        double[] gainWh = new double[arrayW.length * stepsPerHour];
        double[] darkWh = gains.darkDayWh();
        gains.fill(sunBusW, darkWh, gainWh);
        return Drawdown.neededWh(
                darkWh, gainWh, starts, stepsPerHour, outage.panelsOutAfterHours(), outage.hours(), chargeAtStart);
    }

    private void carried(Stretch stretch, double[] arrayW, int[] fates) {
        cells.climate().fill(stretch.firstStartHour(), stretch.hours(), climate);
        Worst worst = worst(stretch, arrayW);
        if (worst == null) {
            return;
        }
        double[] demandW = new double[busW.length];
        Arrays.setAll(demandW, step -> busW[step] + worst.alwaysW());
        double startWh = Math.min(worst.figures().capacityWh(), outage.chargeAtStart() * flat.fullWh - worst.floorWh());
        if (startWh <= 0) {
            return;
        }
        double capacityWh = worst.figures().capacityWh() - ROUNDING * flat.fullWh;
        double[] needed = needed(
                worst.figures(),
                demandW,
                arrayW,
                stretch.starts(),
                startWh / worst.figures().capacityWh());
        for (int start = 0; start < fates.length; start++) {
            if (needed[start] <= capacityWh) {
                fates[start] = -1;
            }
        }
    }

    /**
     * The worst plain store.
     *
     * @param floorWh of the whole, below which it is empty
     * @param alwaysW drawn at all times beside the loads
     */
    private record Worst(RigFigures figures, double floorWh, double alwaysW) {}

    /** Null where nothing is sure. */
    private @Nullable Worst worst(Stretch stretch, double[] arrayW) {
        double ohm = most(climate.ohm) * most(flat.ohmTimes) + flat.leadOhm;
        double demandW = most(busW);
        double selfW = most(climate.selfW);
        double heldFloorWh = Math.max(most(climate.floorWh), startFloorWh(stretch));
        int floor = floorPlace(heldFloorWh / flat.firstWh, demandW, ohm);
        if (floor > CellRig.GRID) {
            return null;
        }
        double lowV = least(flat.openV, floor, CellRig.GRID);
        double drawA = ConstantPower.dischargeA(lowV, ohm, demandW);
        double takenW = lowV * drawA / flat.dischargeEff;
        double dischargeEff = Math.min(1, demandW / takenW);
        double share = flat.wells.availableShare();
        double apartPerW = share == 1 ? 0 : (1 - share) / (share * flat.wells.ratePerHour());
        double firstFloorWh = floor * flat.firstWh / CellRig.GRID + takenW / stepsPerHour;
        double floorWh = Math.max(
                firstFloorWh / share + apartPerW * (takenW + selfW),
                Math.max(flat.depthFloorWh, most(climate.freezeWh)) + takenW / stepsPerHour);
        double sunW = flat.controllerMaxA == 0 ? 0 : flat.controllerEff * most(arrayW);
        if (sunW > 0 && anyInSun(climate.harmed, arrayW)) {
            return null;
        }
        double lowestA = leastInSun(climate.chargeA, arrayW);
        Charge charge = charge(sunW, lowestA, floor, lowV, ohm, apartPerW);
        double chargeEff = least(flat.chargeEff, 0, CellRig.GRID) * lowV / (lowV + charge.mostA() * ohm);
        double capacityWh = charge.topWh() - floorWh;
        if (!(capacityWh > 0) || !(chargeEff > 0.01) || !(dischargeEff > 0.01)) {
            return null;
        }
        RigFigures figures = new RigFigures(
                capacityWh,
                chargeEff,
                dischargeEff,
                charge.mostW(),
                Double.MAX_VALUE,
                best.arrayRatedW(),
                Math.max(0, flat.controllerMaxA * (lowV - drawA * ohm)),
                flat.controllerEff);
        return new Worst(figures, floorWh, selfW / chargeEff);
    }

    /**
     * What the worst store takes.
     *
     * @param topWh of the whole, above which it takes nothing
     * @param mostA into the real one
     */
    private record Charge(double topWh, double mostW, double mostA) {}

    /** The highest top up to which the real store takes all that the worst one does; no charge where none suits. */
    private Charge charge(double sunW, double lowestA, int floor, double lowV, double ohm, double apartPerW) {
        double mostA = Math.min(most(climate.chargeA), sunW / lowV);
        if (sunW > 0 && lowestA > 0) {
            for (double top : TOPS) {
                int place = (int) (top * CellRig.GRID);
                double highV = mostOf(flat.openV, 0, place);
                double tapersA = ohm == 0 ? Double.POSITIVE_INFINITY : (least(climate.absorbV) - highV) / ohm;
                double takesA = Math.min(lowestA, tapersA);
                double topWh = place * flat.fullWh / CellRig.GRID - apartPerW * sunW - sunW / stepsPerHour;
                if (place > floor
                        && takesA > 0
                        && topWh > 0
                        && (takesA >= Math.min(lowestA, mostA) || top == TOPS[TOPS.length - 1])) {
                    return new Charge(topWh, lowV * takesA, mostA);
                }
            }
        }
        return new Charge(flat.fullWh, 0, 0);
    }

    /** What the motors that start by the clock ask of the first well, at the most. */
    private double startFloorWh(Stretch stretch) {
        StartFloors starts = cells.starts();
        if (starts == null) {
            return 0;
        }
        double most = 0;
        for (int hour = 0; hour < stretch.hours(); hour++) {
            for (int step = 0; step < stepsPerHour; step++) {
                most = Math.max(most, starts.firstWh(climate.degC[hour], hour % 24 * stepsPerHour + step));
            }
        }
        return most;
    }

    /** The lowest place of the tables from which on the heaviest load is served whatever the filling; beyond them where none is. */
    private int floorPlace(double heldShare, double demandW, double ohm) {
        double mostA = least(climate.dischargeA);
        int place = CellRig.GRID + 1;
        for (int i = CellRig.GRID; i >= 0 && i >= heldShare * CellRig.GRID; i--) {
            double amps = ConstantPower.dischargeA(flat.openV[i], ohm, demandW);
            if (!(amps <= mostA) || !(flat.openV[i] - amps * ohm >= flat.offV)) {
                break;
            }
            place = i;
        }
        return place;
    }

    private static double most(double[] values) {
        return mostOf(values, 0, values.length - 1);
    }

    private static double mostOf(double[] values, int from, int to) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = from; i <= to; i++) {
            most = Math.max(most, values[i]);
        }
        return most;
    }

    private static double least(double[] values) {
        return least(values, 0, values.length - 1);
    }

    private static double least(double[] values, int from, int to) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = from; i <= to; i++) {
            least = Math.min(least, values[i]);
        }
        return least;
    }

    private static boolean anyInSun(double[] flags, double[] arrayW) {
        for (int hour = 0; hour < arrayW.length; hour++) {
            if (arrayW[hour] > 0 && flags[hour] > 0) {
                return true;
            }
        }
        return false;
    }

    private static double leastInSun(double[] values, double[] arrayW) {
        double least = Double.POSITIVE_INFINITY;
        for (int hour = 0; hour < arrayW.length; hour++) {
            least = arrayW[hour] > 0 ? Math.min(least, values[hour]) : least;
        }
        return least == Double.POSITIVE_INFINITY ? 0 : least;
    }
}
