package tideover.engine.proof;

import org.jspecify.annotations.Nullable;
import tideover.engine.outage.Outage;
import tideover.engine.quantity.Series;

/**
 * The walk through a plain store. Inside a step sun and demand are constant; the store filling up, reaching the
 * keep-back level or running empty happens at its instant inside the step, so the energy is exact for any step length.
 *
 * <p>Order of service: essential loads from the sun, then from the store. Nice-to-have loads get sun that the store
 * cannot take; above the keep-back level also the store itself. Below that level they never take from an essential.
 */
final class PlainWalk implements Walk {
    /** Below this the store counts as empty: rounding, a ten-millionth of a watt-hour. */
    static final double EMPTY_WH = 1e-7;

    private final StretchFlows flows;
    private final Series sunPerRatedW;
    private final RigFigures rig;
    private final boolean niceTouchesStore;
    private final double keepWh;
    private final int panelsOutSteps;
    private final double startWh;

    private double storedWh;
    private @Nullable Ending ending;

    /** The short walk's store, the lowest it has been, and when it ran empty. */
    private double walkedWh;

    private double walkedLowestWh;
    private double failedAtHours;

    /** Hours of the step in which essential and nice-to-have loads were served, and when the first gap began. */
    private double essentialHours;

    private double niceHours;
    private double gapFromHours;

    /** @param sunPerRatedW hourly DC watts per rated watt through all weather years */
    PlainWalk(RigFigures rig, BusDemand demand, Series sunPerRatedW, Outage outage) {
        this.flows = new StretchFlows(rig, demand);
        this.sunPerRatedW = sunPerRatedW;
        this.rig = rig;
        this.niceTouchesStore = outage.keepBack() < 1 && demand.hasNice();
        this.keepWh = outage.keepBack() * rig.capacityWh();
        this.panelsOutSteps = outage.panelsOutAfterHours() * flows.stepsPerHour;
        this.startWh = outage.chargeAtStart() * rig.capacityWh();
    }

    @Override
    public void onto(Stretch stretch) {
        flows.fill(stretch, sunPerRatedW);
    }

    /** The short form: essential loads only. Where nice-to-have loads draw on the store, the accounting walk instead. */
    @Override
    public double hoursCarried(int startHour, int capHours, int judgedHours, double[] lowestWh) {
        return niceTouchesStore
                ? accountedHours(startHour, capHours, judgedHours, lowestWh)
                : essentialHours(startHour, capHours, judgedHours, lowestWh);
    }

    double essentialHours(int startHour, int capHours, int judgedHours, double[] lowestWh) {
        int steps = capHours * flows.stepsPerHour;
        int judged = Math.min(steps, judgedHours * flows.stepsPerHour);
        int dark = Math.min(steps, panelsOutSteps);
        ending = null;
        walkedWh = startWh;
        walkedLowestWh = startWh;
        int step = followDark(startHour, 0, Math.min(dark, judged));
        if (step < 0) {
            lowestWh[0] = 0;
            return failedAtHours;
        }
        step = follow(startHour, step, judged);
        if (step < 0) {
            lowestWh[0] = 0;
            return failedAtHours;
        }
        lowestWh[0] = Math.max(0, walkedLowestWh);
        step = followDark(startHour, step, dark);
        step = step < 0 ? step : follow(startHour, step, steps);
        return step < 0 ? failedAtHours : capHours;
    }

    /** Follows the store over sunny steps {@code from} to {@code to} of the outage; {@code to}, or -1 where it ran empty. */
    private int follow(int startHour, int from, int to) {
        double[] gainWh = flows.gainWh;
        int start = startHour * flows.stepsPerHour;
        double full = rig.capacityWh();
        double wh = walkedWh;
        double lowest = walkedLowestWh;
        for (int i = from; i < to; i++) {
            double next = wh + gainWh[start + i];
            if (next > full) {
                next = full;
            } else if (next < lowest) {
                if (next < -EMPTY_WH) {
                    ending = next == Double.NEGATIVE_INFINITY ? Ending.CURRENT : Ending.EMPTY;
                    failedAtHours = (i + Math.max(0, wh) / -gainWh[start + i]) * flows.stepHours;
                    return -1;
                }
                lowest = next;
            }
            wh = next;
        }
        walkedWh = wh;
        walkedLowestWh = lowest;
        return Math.max(from, to);
    }

    /** The same before the panels are out. */
    private int followDark(int startHour, int from, int to) {
        int ofDay = (startHour * flows.stepsPerHour + from) % flows.stepsPerDay;
        for (int i = from; i < to; i++) {
            double gain = flows.darkGainWh[ofDay];
            ofDay = ofDay + 1 == flows.stepsPerDay ? 0 : ofDay + 1;
            double next = walkedWh + gain;
            if (next < -EMPTY_WH) {
                ending = next == Double.NEGATIVE_INFINITY ? Ending.CURRENT : Ending.EMPTY;
                failedAtHours = (i + Math.max(0, walkedWh) / -gain) * flows.stepHours;
                return -1;
            }
            walkedWh = next;
            walkedLowestWh = Math.min(walkedLowestWh, next);
        }
        return Math.max(from, to);
    }

    @Override
    public double account(int startHour, int hours, Ledger ledger, @Nullable Tape tape) {
        int start = startHour * flows.stepsPerHour;
        int steps = hours * flows.stepsPerHour;
        ending = null;
        storedWh = startWh;
        ledger.startWh = startWh;
        double firstGap = hours;
        boolean gap = false;
        for (int i = 0; i < steps; i++) {
            step(start + i, i >= panelsOutSteps, ledger);
            if (!gap && !Double.isNaN(gapFromHours)) {
                gap = true;
                firstGap = i * flows.stepHours + gapFromHours;
            }
            ledger.endWh = storedWh;
            if (tape != null) {
                tape.after(i, i >= panelsOutSteps, ledger);
            }
        }
        return firstGap;
    }

    /** As {@link #essentialHours}, by the accounting walk: for nice-to-have loads that draw on the store. */
    double accountedHours(int startHour, int capHours, int judgedHours, double[] lowestWh) {
        int start = startHour * flows.stepsPerHour;
        int steps = capHours * flows.stepsPerHour;
        int judged = judgedHours * flows.stepsPerHour;
        Ledger unread = new Ledger();
        ending = null;
        storedWh = startWh;
        double lowest = startWh;
        for (int i = 0; i < steps; i++) {
            step(start + i, i >= panelsOutSteps, unread);
            if (!Double.isNaN(gapFromHours)) {
                lowestWh[0] = i < judged ? 0 : lowest;
                return i * flows.stepHours + gapFromHours;
            }
            if (i < judged) {
                lowest = Math.min(lowest, storedWh);
            }
        }
        lowestWh[0] = Math.max(0, lowest);
        return capHours;
    }

    @Override
    public @Nullable Ending ending() {
        return ending;
    }

    private void step(int at, boolean panelsOut, Ledger ledger) {
        double hours = flows.stepHours;
        int hour = at / flows.stepsPerHour;
        int ofDay = at % flows.stepsPerDay;
        double sunW = panelsOut ? flows.sunBusW[hour] : 0;
        if (panelsOut) {
            double offeredW = rig.controllerEff() * flows.arrayW[hour];
            ledger.inWh += flows.arrayW[hour] * hours;
            ledger.controllerLossWh += (flows.arrayW[hour] - offeredW) * hours;
            ledger.controllerLimitWh += (offeredW - sunW) * hours;
            ledger.onBusWh += sunW * hours;
        }
        double essentialW = flows.essential.busW[ofDay];
        double niceW = flows.nice.busW[ofDay];
        essentialHours = hours;
        niceHours = 0;
        gapFromHours = Double.NaN;
        if (sunW >= essentialW) {
            withSpareSun(sunW - essentialW, niceW, ledger);
        } else if (essentialW - sunW <= rig.maxDischargeW() * Gains.BREATH) {
            onTheStore(essentialW, sunW, niceW, ledger);
        } else {
            // More than the store can give: what sun there is serves what it can.
            ending = ending == null ? Ending.CURRENT : ending;
            gapFromHours = 0;
            essentialHours = sunW / essentialW * hours;
        }
        book(ofDay, ledger);
    }

    private void withSpareSun(double spareW, double niceW, Ledger ledger) {
        double left = flows.stepHours;
        if (storedWh < keepWh) {
            double intoW = Math.min(spareW, rig.maxChargeW());
            double untilKept = intoW > 0 ? (keepWh - storedWh) / (intoW * rig.chargeEff()) : Double.POSITIVE_INFINITY;
            double span = Math.min(left, untilKept);
            double overW = spareW - intoW;
            double takenW = Math.min(niceW, overW);
            ledger.chargeLimitWh += (overW - takenW) * span;
            niceHours += niceW > 0 ? takenW / niceW * span : 0;
            charge(intoW, span, ledger);
            if (span == untilKept) {
                storedWh = keepWh;
            }
            left -= span;
        }
        if (left <= 0) {
            return;
        }
        if (niceW <= spareW) {
            niceHours += niceW > 0 ? left : 0;
            double restW = spareW - niceW;
            double intoW = Math.min(restW, rig.maxChargeW());
            double untilFull =
                    intoW > 0 ? (rig.capacityWh() - storedWh) / (intoW * rig.chargeEff()) : Double.POSITIVE_INFINITY;
            double span = Math.min(left, Math.max(0, untilFull));
            ledger.chargeLimitWh += (restW - intoW) * span;
            charge(intoW, span, ledger);
            ledger.noRoomWh += restW * (left - span);
        } else {
            double fromStoreW = Math.min(niceW - spareW, rig.maxDischargeW());
            double span = Math.min(left, Math.max(0, (storedWh - keepWh) * rig.dischargeEff() / fromStoreW));
            discharge(fromStoreW, span, ledger);
            niceHours += (spareW + fromStoreW) / niceW * span + spareW / niceW * (left - span);
        }
    }

    private void onTheStore(double essentialW, double sunW, double niceW, Ledger ledger) {
        double left = flows.stepHours;
        double gapW = essentialW - sunW;
        if (storedWh > keepWh && niceW > 0) {
            double extraW = Math.min(niceW, Math.max(0, rig.maxDischargeW() - gapW));
            double span = Math.min(left, (storedWh - keepWh) * rig.dischargeEff() / (gapW + extraW));
            discharge(gapW + extraW, span, ledger);
            niceHours += extraW / niceW * span;
            left -= span;
        }
        if (storedWh - gapW * left / rig.dischargeEff() >= -EMPTY_WH) {
            discharge(gapW, left, ledger);
            return;
        }
        double span = Math.max(0, storedWh) * rig.dischargeEff() / gapW;
        discharge(gapW, span, ledger);
        storedWh = 0;
        ending = ending == null ? Ending.EMPTY : ending;
        gapFromHours = flows.stepHours - left + span;
        essentialHours -= (left - span) * (gapW / essentialW);
    }

    private void charge(double watts, double hours, Ledger ledger) {
        storedWh += watts * hours * rig.chargeEff();
        ledger.chargeLossWh += watts * hours * (1 - rig.chargeEff());
    }

    private void discharge(double watts, double hours, Ledger ledger) {
        double takenWh = watts * hours / rig.dischargeEff();
        storedWh -= takenWh;
        ledger.dischargeLossWh += takenWh - watts * hours;
    }

    private void book(int ofDay, Ledger ledger) {
        FlowArrays essential = flows.essential;
        FlowArrays nice = flows.nice;
        ledger.servedEssentialWh += essential.plugW[ofDay] * essentialHours;
        ledger.unservedEssentialWh += essential.plugW[ofDay] * (flows.stepHours - essentialHours);
        ledger.servedNiceWh += nice.plugW[ofDay] * niceHours;
        ledger.wantedNiceWh += nice.plugW[ofDay] * flows.stepHours;
        ledger.inverterLossWh +=
                essential.inverterLossW[ofDay] * essentialHours + nice.inverterLossW[ofDay] * niceHours;
        ledger.outletLossWh += essential.outletLossW[ofDay] * essentialHours + nice.outletLossW[ofDay] * niceHours;
        ledger.standingWh += essential.standingW[ofDay] * essentialHours + nice.standingW[ofDay] * niceHours;
    }
}
