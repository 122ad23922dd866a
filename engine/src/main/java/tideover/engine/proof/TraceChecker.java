package tideover.engine.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.part.RatedStore;
import tideover.engine.rig.Rig;

/**
 * Judges a walked outage from outside: it knows only the rows and the rig's figures, and adds up for itself. In every
 * step energy in is energy served, lost by name and stored; the store stays between empty and full; no current limit is
 * passed; nothing is negative; essential loads go short only with the store empty or its discharge limit reached.
 */
public final class TraceChecker {
    /** Share of the energy moved that a sum may be off. */
    private static final double CLOSURE = 1e-9;

    private static final double TINY_WH = 1e-6;

    private TraceChecker() {}

    /** What is wrong, in plain sentences; empty where all is well. */
    public static List<String> faults(Trace trace, Rig rig) {
        return faults(trace, Limits.of(rig, trace.kept().isEmpty()));
    }

    /**
     * What no step may pass.
     *
     * @param capacityWh full
     * @param riseW      fastest that the content may grow
     * @param fallW      fastest that it may fall, what goes by itself apart
     * @param onBusW     most from the controller
     * @param plain      whether essential loads may go short only for want of charge or current; a real battery has more
     *                   reasons
     */
    private record Limits(double capacityWh, double riseW, double fallW, double onBusW, boolean plain) {
        static Limits of(Rig rig, boolean clockAlone) {
            RigFigures figures = RigFigures.of(rig);
            if (rig.store() instanceof RatedStore store) {
                return new Limits(
                        CellBank.of(store).fullWh(),
                        figures.maxChargeW(),
                        figures.maxDischargeW(),
                        figures.controllerMaxW(),
                        false);
            }
            return new Limits(
                    figures.capacityWh(),
                    figures.maxChargeW() * figures.chargeEff(),
                    figures.maxDischargeW() / figures.dischargeEff(),
                    figures.controllerMaxW(),
                    clockAlone);
        }
    }

    private static List<String> faults(Trace trace, Limits rig) {
        List<String> faults = new ArrayList<>();
        double storedWh = trace.ledger().startWh();
        double inWh = 0;
        double outWh = 0;
        double firstShortHour = Double.NaN;
        for (TraceStep step : trace.steps()) {
            double hours = trace.stepHours();
            double in = (step.arrayW() + step.helpW()) * hours;
            double out = hours
                    * (step.essentialServedW()
                            + step.niceServedW()
                            + step.controllerLossW()
                            + step.controllerLimitW()
                            + step.chargeLimitW()
                            + step.noRoomW()
                            + step.inverterLossW()
                            + step.outletLossW()
                            + step.standingW()
                            + step.heaterW()
                            + step.selfW()
                            + step.chargeLossW()
                            + step.dischargeLossW());
            double risen = step.storedWh() - storedWh;
            expect(
                    Math.abs(in - out - risen) <= CLOSURE * (in + out + rig.capacityWh()),
                    faults,
                    "hour %.2f: %.9f Wh in, %.9f Wh served and lost, %.9f Wh stored",
                    step.hour(),
                    in,
                    out,
                    risen);
            limits(step, storedWh, rig, hours, faults);
            if (Double.isNaN(firstShortHour) && step.essentialUnservedW() * hours > TINY_WH) {
                firstShortHour = step.hour();
            }
            storedWh = step.storedWh();
            inWh += in;
            outWh += out;
        }
        double changed = storedWh - trace.ledger().startWh();
        expect(
                Math.abs(inWh - outWh - changed) <= CLOSURE * Math.max(1, inWh + outWh),
                faults,
                "whole outage: %.9f Wh in, %.9f Wh served and lost, %.9f Wh stored",
                inWh,
                outWh,
                changed);
        double firstBrokenHour = keptFaults(trace, faults);
        firstShortHour =
                Math.min(Double.isNaN(firstShortHour) ? Double.POSITIVE_INFINITY : firstShortHour, firstBrokenHour);
        if (firstShortHour < Double.POSITIVE_INFINITY) {
            // A rig that lets go while nothing by the clock is wanted fails then; what it keeps may hold on for hours,
            // and
            // what it feeds later in the day is missed only then.
            boolean mayBeEarlier = !trace.kept().isEmpty() || wantsNothing(trace, trace.hoursCarried());
            expect(
                    (mayBeEarlier || trace.hoursCarried() >= firstShortHour - TINY_WH)
                            && trace.hoursCarried() <= firstShortHour + trace.stepHours() + TINY_WH,
                    faults,
                    "said to carry %.4f h, but the first need is broken in the step of hour %.2f",
                    trace.hoursCarried(),
                    firstShortHour);
        }
        return faults;
    }

    /** Whether no essential load is on in the step of an hour, so that only what the rig draws by itself can go short. */
    private static boolean wantsNothing(Trace trace, double hour) {
        for (TraceStep step : trace.steps()) {
            if (step.hour() <= hour && hour < step.hour() + trace.stepHours()) {
                return (step.essentialServedW() + step.essentialUnservedW()) * trace.stepHours() <= TINY_WH;
            }
        }
        return false;
    }

    /** What is kept is judged again by its need alone; returns the first hour in which one is broken, infinite for never. */
    private static double keptFaults(Trace trace, List<String> faults) {
        double first = Double.POSITIVE_INFINITY;
        for (int number = 0; number < trace.kept().size(); number++) {
            Load load = trace.kept().get(number);
            double hoursAbove = 0;
            for (TraceStep step : trace.steps()) {
                TraceStep.KeptStep kept = step.kept().get(number);
                expect(
                        kept.plugW() <= load.runningW() * (1 + CLOSURE) + TINY_WH,
                        faults,
                        "hour %.2f: %s draws %.3f of %.3f W",
                        step.hour(),
                        load.name(),
                        kept.plugW(),
                        load.runningW());
                boolean breaks = breaks(load.need(), kept.kept());
                if (load.need() instanceof Need.HoursAbove some) {
                    hoursAbove += kept.kept() > some.limitDegC() ? trace.stepHours() : 0;
                    breaks = hoursAbove > some.hours() + 2 * trace.stepHours();
                }
                expect(
                        !(breaks && kept.whole()),
                        faults,
                        "hour %.2f: %s said to be kept at %.3f",
                        step.hour(),
                        load.name(),
                        kept.kept());
                if (!kept.whole()) {
                    first = Math.min(first, step.hour());
                    break;
                }
            }
        }
        return first;
    }

    private static boolean breaks(Need need, double kept) {
        if (need instanceof Need.Below below) {
            return kept > below.limitDegC() + TINY_WH;
        }
        if (need instanceof Need.Band band) {
            return kept > band.mostDegC() + TINY_WH || kept < band.leastDegC() - TINY_WH;
        }
        return need instanceof Need.Above above && kept < above.limitDegC() - TINY_WH;
    }

    private static void limits(TraceStep step, double beforeWh, Limits rig, double hours, List<String> faults) {
        double at = step.hour();
        expect(step.storedWh() >= -TINY_WH, faults, "hour %.2f: store at %.6f Wh", at, step.storedWh());
        expect(
                step.storedWh() <= rig.capacityWh() + TINY_WH,
                faults,
                "hour %.2f: store at %.6f of %.6f Wh",
                at,
                step.storedWh(),
                rig.capacityWh());
        expect(
                step.onBusW() <= rig.onBusW() * (1 + CLOSURE) + CLOSURE,
                faults,
                "hour %.2f: controller gives %.3f W",
                at,
                step.onBusW());
        double risenW = (step.storedWh() - beforeWh) / hours;
        expect(risenW <= rig.riseW() * (1 + CLOSURE) + TINY_WH, faults, "hour %.2f: store rises by %.3f W", at, risenW);
        expect(
                -risenW - step.selfW() <= rig.fallW() * (1 + 1e-8) + TINY_WH,
                faults,
                "hour %.2f: store gives %.3f W",
                at,
                -risenW);
        double least = Math.min(
                Math.min(
                        Math.min(step.essentialServedW(), step.essentialUnservedW()),
                        Math.min(step.niceServedW(), step.noRoomW())),
                Math.min(
                        Math.min(
                                Math.min(step.helpW(), Math.min(step.selfW(), step.controllerLossW())),
                                Math.min(step.chargeLimitW(), step.controllerLimitW())),
                        Math.min(step.chargeLossW(), step.dischargeLossW())));
        expect(least >= -TINY_WH, faults, "hour %.2f: a flow of %.9f W", at, least);
        boolean atDischargeLimit = step.dischargeLossW() == 0 && step.storedWh() == beforeWh;
        expect(
                !rig.plain()
                        || step.essentialUnservedW() * hours <= TINY_WH
                        || step.storedWh() <= TINY_WH
                        || atDischargeLimit,
                faults,
                "hour %.2f: essential loads short of %.6f W with %.6f Wh in the store",
                at,
                step.essentialUnservedW(),
                step.storedWh());
    }

    private static void expect(boolean holds, List<String> faults, String pattern, Object... figures) {
        if (!holds) {
            faults.add(String.format(Locale.ROOT, pattern, figures));
        }
    }
}
