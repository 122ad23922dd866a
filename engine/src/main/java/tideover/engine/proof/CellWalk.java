package tideover.engine.proof;

import org.jspecify.annotations.Nullable;
import tideover.engine.battery.ConstantPower;
import tideover.engine.battery.WellStep;
import tideover.engine.outage.Outage;

/**
 * The walk with every model on: two wells, volts under load, charge acceptance, cold, the electronics' cut-offs, a motor's
 * start, and sources beside the sun.
 *
 * <p>A step is cut into spans in which nothing switches; each ends at its event: a well full, the keep-back level, the
 * cut-off, empty. Within a span powers are constant and the volts are those of its beginning, so that only the losses
 * shift with the step's length; the wells are solved exactly and the energy closes for any length.
 *
 * <p>What switches itself by a temperature or a level ends a span where it switches. Its need is broken by what it keeps;
 * a gap in power breaks only needs that follow the clock. What a nice-to-have adds to the inverter's loss is reckoned
 * without the boxes and pumps that happen to run.
 */
final class CellWalk implements Walk {
    /** Rounding room on contents, as a share of the whole. */
    private static final double BREATH = 1e-12;

    /** A span shorter than this is over, h. */
    private static final double INSTANT_H = 1e-12;

    private static final int MOST_STEPS_TO_EVENT = 60;

    /** More events than this in one step are a fault of ours. */
    private static final int MOST_SPANS = 200;

    private final CellFlows flows;
    private final CellClimate.Hours climate;
    private final CellRig rig;
    private final @Nullable StartFloors starts;
    private final @Nullable StartFloors keptStarts;
    private final @Nullable Relief relief;
    private final Kept kept;
    private final Keeper[] keepers;
    private final boolean[] fed;
    private final double[] keptWh;
    private final double[] darkH;
    private final WellStep whole;
    private final double absorbedInStep;
    private final double boundFullWh;
    private final double perFirstWh;
    private final double perFullWh;
    private final double tinyWh;
    private final double keepWh;
    private final double chargeAtStart;
    private final int panelsOutSteps;
    private final boolean niceWanted;

    /** Whether what is nice to have may draw on the store; if not, it changes nothing for the essentials. */
    private final boolean niceTouchesStore;

    /** Whether some need follows the clock, so that any gap in power breaks it. */
    private final boolean clockNeeds;

    /** Whether outages that once fill the store go on alike: it has one well, and only the sun feeds it. */
    private final boolean meets;

    private final FullPoints points = new FullPoints();

    /** Contents of the two wells. */
    private double firstWh;

    private double boundWh;
    private boolean off;
    private boolean dead;

    /** What killed it; null while it lives. */
    private @Nullable Ending killedBy;

    private boolean gridNow;

    /** Of the step being walked. */
    private int hour;

    private double openV;
    private double ohm;
    private double reliefW;
    private double essentialHours;
    private double niceHours;
    private double gapFromHours;
    private boolean niceBarred;
    private boolean niceCounts;
    private boolean failed;
    private @Nullable Ending ending;

    /** Of what switches itself, in the span. */
    private double keptBusW;

    private double keptPlugW;
    private double keptLossW;
    private double keptOutletW;
    private double keptStandingW;

    CellWalk(
            CellFlows flows,
            CellRig rig,
            @Nullable StartFloors starts,
            @Nullable StartFloors keptStarts,
            @Nullable Relief relief,
            Outage outage,
            boolean niceWanted,
            Kept kept,
            boolean storm,
            boolean foreseen,
            boolean looked) {
        this.flows = flows;
        this.climate = flows.climate;
        this.rig = rig;
        this.starts = starts;
        this.keptStarts = keptStarts;
        this.relief = relief;
        this.whole = rig.wells.step(flows.stepHours);
        this.absorbedInStep = rig.wells.absorbed(1, flows.stepHours);
        this.boundFullWh = rig.fullWh - rig.firstWh;
        this.perFirstWh = 1 / rig.firstWh;
        this.perFullWh = 1 / rig.fullWh;
        this.tinyWh = BREATH * rig.fullWh;
        this.keepWh = outage.keepBack() * rig.fullWh;
        this.chargeAtStart = outage.chargeAtStart();
        this.panelsOutSteps = outage.panelsOutAfterHours() * flows.stepsPerHour;
        this.niceWanted = niceWanted;
        this.niceTouchesStore = outage.keepBack() < 1;
        this.kept = kept;
        this.keepers = kept.keepers(storm, foreseen, looked);
        this.keptWh = new double[keepers.length];
        this.darkH = new double[keepers.length];
        this.fed = new boolean[keepers.length];
        for (int k = 0; k < keepers.length; k++) {
            fed[k] = kept.all().get(k).isFed();
        }
        this.meets = boundFullWh <= 0 && relief == null;
        this.clockNeeds = flows.essential.wantAny();
    }

    @Override
    public void onto(Stretch stretch) {
        flows.fill(stretch);
        points.forget(meets ? stretch.hours() * flows.stepsPerHour : 0);
        for (Keeper keeper : keepers) {
            keeper.onto(stretch);
        }
    }

    @Override
    public double hoursCarried(int startHour, int capHours, int judgedHours, double[] lowestWh) {
        int start = startHour * flows.stepsPerHour;
        int steps = capHours * flows.stepsPerHour;
        int judged = judgedHours * flows.stepsPerHour;
        Ledger unread = new Ledger();
        begin(startHour);
        points.begin();
        niceCounts = niceWanted && niceTouchesStore;
        double lowest = firstWh + boundWh;
        for (int i = 0; i < steps; i++) {
            step(start + i, i, unread);
            int after = start + i + 1;
            if (gapFromHours >= 0) {
                lowestWh[0] = i < judged ? 0 : lowest;
                double hours = i * flows.stepHours + gapFromHours;
                points.settle(startHour + hours, after, ending);
                return hours;
            }
            if (i < judged) {
                lowest = Math.min(lowest, firstWh + boundWh);
            }
            points.content(after, firstWh + boundWh);
            if (meets && i >= panelsOutSteps && firstWh == rig.firstWh && allAsOnGrid()) {
                if (points.knows(after, start + steps)) {
                    return asBefore(startHour, after, capHours, judged, lowest, lowestWh);
                }
                points.pass(after);
            }
        }
        points.settle(Double.POSITIVE_INFINITY, start + steps, null);
        lowestWh[0] = Math.max(0, lowest);
        return capHours;
    }

    private boolean allAsOnGrid() {
        for (Keeper keeper : keepers) {
            if (!keeper.asOnGrid()) {
                return false;
            }
        }
        return true;
    }

    /** The rest of an outage that has come to where another has been. */
    private double asBefore(
            int startHour, int atStep, int capHours, int judgedSteps, double lowestSoFar, double[] lowestWh) {
        points.settleLike(atStep);
        double fails = points.failsAtHour(atStep);
        int judgedUntil = startHour * flows.stepsPerHour + judgedSteps;
        if (fails <= judgedUntil * flows.stepHours) {
            lowestWh[0] = 0;
        } else {
            lowestWh[0] = Math.max(0, Math.min(lowestSoFar, points.lowestWh(atStep + 1, judgedUntil)));
        }
        if (fails < startHour + capHours) {
            ending = points.ending(atStep);
            return fails - startHour;
        }
        return capHours;
    }

    @Override
    public double account(int startHour, int hours, Ledger ledger, @Nullable Tape tape) {
        int start = startHour * flows.stepsPerHour;
        int steps = hours * flows.stepsPerHour;
        begin(startHour);
        niceCounts = niceWanted;
        ledger.startWh = firstWh + boundWh;
        double firstGap = -1;
        for (int i = 0; i < steps; i++) {
            step(start + i, i, ledger);
            if (firstGap < 0 && gapFromHours >= 0) {
                firstGap = i * flows.stepHours + gapFromHours;
            }
            ledger.endWh = firstWh + boundWh;
            if (tape != null) {
                tape.after(i, i >= panelsOutSteps, ledger);
            }
        }
        return firstGap < 0 ? hours : firstGap;
    }

    @Override
    public @Nullable Ending ending() {
        return ending;
    }

    private void begin(int startHour) {
        firstWh = chargeAtStart * rig.firstWh;
        boundWh = chargeAtStart * boundFullWh;
        off = false;
        dead = false;
        killedBy = null;
        ending = null;
        for (int k = 0; k < keepers.length; k++) {
            keepers[k].begin(startHour);
            keptWh[k] = 0;
            darkH[k] = 0;
        }
    }

    @Override
    public int keepers() {
        return keepers.length;
    }

    @Override
    public KeptNow kept(int number) {
        Keeper keeper = keepers[number];
        return new KeptNow(keeper.kept(), keeper.air(), keptWh[number], darkH[number], keeper.broken() == null);
    }

    private void step(int at, int stepOfOutage, Ledger ledger) {
        hour = at / flows.stepsPerHour;
        int ofDay = at % flows.stepsPerDay;
        boolean gridOn = relief != null && relief.gridOn(stepOfOutage);
        gridNow = gridOn;
        reliefW = relief == null ? 0 : relief.busW(stepOfOutage, ofDay);
        double arrayW = stepOfOutage >= panelsOutSteps ? flows.arrayW[hour] : 0;
        gapFromHours = -1;
        niceBarred = false;
        selfDischarge(ledger);
        for (Keeper keeper : keepers) {
            keeper.step(hour, ofDay, stepOfOutage * flows.stepHours, arrayW, gridOn);
        }
        boolean served = letOn(gridOn, ofDay);
        double essentialW = gridOn ? 0 : flows.essential.busW[ofDay];
        double niceW = gridOn || !served || !niceCounts ? 0 : flows.nice.busW[ofDay];
        double clockW = served ? essentialW + climate.heaterW[hour] : 0;
        essentialHours = served || gridOn ? flows.stepHours : 0;
        niceHours = 0;
        double heatedHours = served ? flows.stepHours : 0;
        double left = flows.stepHours;
        int spans = 0;
        while (left > INSTANT_H) {
            if (++spans > MOST_SPANS) {
                throw new IllegalStateException("a step that does not end, in hour " + hour + " of its stretch");
            }
            double most = left;
            if (keepers.length > 0) {
                most = look(left, served, gridOn, ofDay);
                if (most <= INSTANT_H) {
                    pass(most, served, gridOn, ledger);
                    left -= most;
                    continue;
                }
                if (served && !gridOn && !canStart(ofDay)) {
                    note(Ending.START);
                    gapFromHours = gap(gridOn, left);
                    essentialHours -= left;
                    heatedHours -= left;
                    served = false;
                    off = true;
                    clockW = 0;
                    niceW = 0;
                    continue;
                }
            }
            double drawnW = clockW + keptBusW;
            double fill = firstWh * perFirstWh;
            openV = CellRig.at(rig.openV, fill);
            ohm = climate.ohm[hour] * CellRig.at(rig.ohmTimes, fill) + rig.leadOhm;
            double offeredW = offeredW(arrayW, drawnW);
            double limitedW = limitedW(offeredW, drawnW);
            double spareW = limitedW + reliefW - drawnW;
            failed = false;
            double span = spareW >= 0 ? charge(spareW, niceW, most, ledger) : drain(-spareW, 0, niceW, most, ledger);
            ledger.inWh += arrayW * span;
            ledger.controllerLossWh += (arrayW - offeredW) * span;
            ledger.controllerLimitWh += (offeredW - limitedW) * span;
            ledger.onBusWh += limitedW * span;
            left -= span;
            if (keepers.length > 0) {
                pass(span, served, gridOn, ledger);
                if (ending == null) {
                    judgeKept(left + span);
                }
            }
            if (failed) {
                // Before the failure all was served; whatever follows in this step is not.
                gapFromHours = gap(gridOn, left);
                if (!rig.latches && keepers.length == 0) {
                    double feedW = limitedW + reliefW;
                    essentialHours -= left * (1 - feedW / drawnW);
                    ledger.inWh += arrayW * left;
                    ledger.controllerLossWh += (arrayW - offeredW) * left;
                    ledger.controllerLimitWh += (offeredW - limitedW) * left;
                    ledger.onBusWh += limitedW * left;
                    ledger.helpInWh += reliefW * left;
                    break;
                }
                if (served) {
                    essentialHours -= gridOn ? 0 : left;
                    heatedHours -= left;
                    served = false;
                }
                off = true;
                clockW = 0;
                niceW = 0;
            }
        }
        book(ofDay, gridOn, heatedHours, ledger);
    }

    /** What goes by itself with time; nothing once the first well is dry. */
    private void selfDischarge(Ledger ledger) {
        double lostWh = climate.selfW[hour] * flows.stepHours;
        double all = firstWh + boundWh;
        if (lostWh > 0 && firstWh > lostWh) {
            double kept = 1 - lostWh / all;
            firstWh *= kept;
            boundWh *= kept;
            ledger.selfDischargeWh += all - firstWh - boundWh;
        }
    }

    /** Whether the store serves its loads in this step; what fails at the step's beginning fails here. */
    private boolean letOn(boolean gridOn, int ofDay) {
        if (!dead && firstWh + boundWh < climate.freezeWh[hour]) {
            dead = true;
            off = true;
            killedBy = Ending.FROZEN;
            fail(Ending.FROZEN, gridOn);
        }
        if (off && !dead && (rig.comesBack || gridOn)) {
            double volts = CellRig.at(rig.openV, firstWh * perFirstWh);
            // What roundings leave in an empty store does not bring it back.
            off = volts < rig.againV || firstWh <= climate.floorWh[hour] + tinyWh;
        }
        if (off) {
            fail(killedBy == null ? Ending.EMPTY : killedBy, gridOn);
            return false;
        }
        if (starts != null && !gridOn && firstWh < starts.firstWh(climate.degC[hour], ofDay)) {
            fail(Ending.START, false);
            return false;
        }
        return true;
    }

    /** Notes that essential needs go unserved from the step's beginning. */
    private void fail(Ending why, boolean gridOn) {
        if (!gridOn) {
            gapFromHours = gap(false, flows.stepHours);
            note(why);
        }
    }

    /** When needs that follow the clock first went without in this step, where they do from now on; negative for never. */
    private double gap(boolean gridOn, double left) {
        return gapFromHours < 0 && !gridOn && clockNeeds ? Math.max(0, flows.stepHours - left) : gapFromHours;
    }

    private void note(Ending why) {
        if (clockNeeds && !gridNow) {
            ending = ending == null ? why : ending;
        }
    }

    /** Asks what switches itself when it next does and what it draws till then; returns the hours until the first. */
    private double look(double left, boolean served, boolean gridOn, int ofDay) {
        double most = left;
        double acW = 0;
        boolean on = false;
        keptBusW = 0;
        keptPlugW = 0;
        keptOutletW = 0;
        for (int k = 0; k < keepers.length; k++) {
            Keeper keeper = keepers[k];
            boolean live = gridOn || (served && fed[k]);
            most = Math.min(most, keeper.untilSwitchH(left, live));
            if (gridOn || !live) {
                continue;
            }
            double plugW = keeper.plugW();
            Kept.One one = kept.all().get(k);
            keptPlugW += plugW;
            if (one.ac()) {
                acW += plugW;
                on |= keeper.allowed();
            } else {
                keptOutletW += plugW * (one.busPerPlugW() - 1);
            }
        }
        double clockAcW = flows.essential.acW[ofDay];
        keptLossW = acW > 0 ? kept.loss().lostW(clockAcW + acW) - kept.loss().lostW(clockAcW) : 0;
        keptStandingW = on ? kept.standingW() : 0;
        keptBusW = keptPlugW + keptLossW + keptOutletW + keptStandingW;
        return Math.max(0, most);
    }

    /** Whether the store is full enough for each motor that would start now. */
    private boolean canStart(int ofDay) {
        if (keptStarts == null) {
            return true;
        }
        for (int k = 0; k < keepers.length; k++) {
            if (fed[k] && keepers[k].starting()) {
                return firstWh >= keptStarts.firstWh(climate.degC[hour], ofDay);
            }
        }
        return true;
    }

    private void pass(double span, boolean served, boolean gridOn, Ledger ledger) {
        for (int k = 0; k < keepers.length; k++) {
            boolean live = gridOn || (served && fed[k]);
            double plugWh = live ? keepers[k].plugW() * span : 0;
            keptWh[k] += plugWh;
            darkH[k] += live && keepers[k].allowed() ? 0 : span;
            if (gridOn) {
                ledger.gridServedWh += plugWh;
            }
            keepers[k].pass(span, live);
        }
        if (served && !gridOn) {
            ledger.servedEssentialWh += keptPlugW * span;
            ledger.inverterLossWh += keptLossW * span;
            ledger.outletLossWh += keptOutletW * span;
            ledger.standingWh += keptStandingW * span;
        }
    }

    /** Whether something is no longer kept; what broke within a span counts from its beginning. */
    private void judgeKept(double left) {
        for (Keeper keeper : keepers) {
            Ending broken = keeper.broken();
            if (broken != null) {
                ending = broken;
                // At the step's very beginning roundings may put it before that, which would stand for never.
                gapFromHours = gapFromHours < 0 ? Math.max(0, flows.stepHours - left) : gapFromHours;
                return;
            }
        }
    }

    /** What the controller would put on the bus without its current limit, W. */
    private double offeredW(double arrayW, double drawnW) {
        if (!rig.held) {
            return rig.controllerEff * arrayW;
        }
        if (arrayW == 0) {
            return 0;
        }
        // Held at the store's volts, which its own current lifts: one look ahead is enough.
        double netW = flows.heldA(hour, openV) * openV - drawnW;
        double volts = Math.min(climate.absorbV[hour], openV + netW * ohm / openV);
        return Math.min(arrayW, rig.controllerEff * volts * flows.heldA(hour, volts));
    }

    private double limitedW(double offeredW, double drawnW) {
        if (rig.controllerMaxA == 0) {
            return 0;
        }
        double volts = openV;
        if (ohm > 0 && offeredW > 0.8 * rig.controllerMaxA * openV) {
            double netA = Math.min(rig.controllerMaxA, offeredW / openV) - drawnW / openV;
            double liftedV = openV + Math.min(netA, climate.chargeA[hour]) * ohm;
            volts = Math.max(openV / 2, Math.min(liftedV, Math.max(openV, climate.absorbV[hour])));
        }
        return Math.min(offeredW, rig.controllerMaxA * volts);
    }

    /** A span in which the sun and the other sources give no less than is drawn; returns its length. */
    private double charge(double spareW, double niceW, double left, Ledger ledger) {
        double all = firstWh + boundWh;
        boolean below = all < keepWh - tinyWh;
        double forStoreW = spareW;
        double niceTakenW = 0;
        if (niceW > 0 && !below) {
            if (niceW > spareW && !niceBarred && all > keepWh + tinyWh) {
                return drain(0, spareW, niceW, left, ledger);
            }
            niceTakenW = Math.min(niceW, spareW);
            forStoreW = spareW - niceTakenW;
        }
        double efficiency = CellRig.at(rig.chargeEff, all * perFullWh);
        double mostA = dead || (off && !rig.sunRevives) ? 0 : climate.chargeA[hour];
        if (ohm > 0) {
            mostA = Math.max(0, Math.min(mostA, (climate.absorbV[hour] - openV) / ohm));
        }
        double mostW = (openV + mostA * ohm) * mostA;
        double intoW = Math.min(forStoreW, mostW);
        if (intoW > 0 && climate.harmed[hour] > 0) {
            dead = true;
            failed = true;
            killedBy = Ending.CHARGED_COLD;
            note(Ending.CHARGED_COLD);
            return 0;
        }
        double amps = intoW < mostW ? ConstantPower.chargeA(openV, ohm, intoW) : mostA;
        double keptW = openV * amps * efficiency;
        double span = left;
        boolean full = firstWh >= rig.firstWh - tinyWh;
        if (full && keptW >= rig.wells.absorbingCurrent(boundFullWh - boundWh)) {
            // The first well stays full; the second takes what it will.
            double missingWh = Math.max(0, boundFullWh - boundWh);
            double gainedWh =
                    span == flows.stepHours ? missingWh * absorbedInStep : rig.wells.absorbed(missingWh, span);
            boundWh += gainedWh;
            keptW = gainedWh / span;
            amps = keptW / (openV * efficiency);
            intoW = (openV + amps * ohm) * amps;
        } else {
            if (below && niceW > 0 && keptW > 0) {
                span = Math.min(span, Math.max(INSTANT_H, (keepWh - all) / keptW));
            }
            double first = after(firstWh, all, -keptW, span);
            if (first > rig.firstWh) {
                // One that is full gives the second well what it cannot yet get, and is full again before the span
                // ends.
                double missingWh = Math.max(tinyWh, rig.firstWh - firstWh);
                double untilFull = rig.wells.hoursToEmpty(missingWh, Math.max(0, boundFullWh - boundWh), keptW);
                span = Math.min(span, Math.max(INSTANT_H, untilFull));
            }
            firstWh = Math.min(first, rig.firstWh);
            boundWh = all + keptW * span - firstWh;
            full = false;
        }
        double overW = forStoreW - intoW;
        if (below) {
            niceTakenW = Math.min(niceW, overW);
            overW -= niceTakenW;
        }
        niceHours += niceW > 0 ? niceTakenW / niceW * span : 0;
        double unusedW = Math.min(reliefW, overW);
        ledger.helpInWh += (reliefW - unusedW) * span;
        if (full) {
            ledger.noRoomWh += (overW - unusedW) * span;
        } else {
            ledger.chargeLimitWh += (overW - unusedW) * span;
        }
        ledger.chargeLossWh += (intoW - keptW) * span;
        return span;
    }

    /**
     * A span in which the store gives.
     *
     * @param gapW   that essential loads lack
     * @param spareW that sources give beyond them; either is 0
     */
    private double drain(double gapW, double spareW, double niceW, double left, Ledger ledger) {
        double all = firstWh + boundWh;
        double extraW = 0;
        if (!niceBarred && niceW > spareW && all > keepWh + tinyWh) {
            // No more than the current that the essentials leave.
            double mostA = climate.dischargeA[hour];
            extraW = Math.max(0, Math.min(niceW - spareW, (openV - mostA * ohm) * mostA - gapW));
        }
        double wantedW = gapW + extraW;
        double amps = ConstantPower.dischargeA(openV, ohm, wantedW);
        boolean tooMuch = !(wantedW <= climate.dischargeA[hour] * openV * Gains.BREATH
                || amps <= climate.dischargeA[hour] * Gains.BREATH);
        boolean tooLow = !(openV - amps * ohm >= rig.offV);
        double floorWh = Math.max(rig.depthFloorWh, climate.freezeWh[hour]);
        if (tooMuch || tooLow || firstWh < climate.floorWh[hour] || all < floorWh) {
            return giveUp(extraW > 0, tooMuch ? Ending.CURRENT : tooLow ? Ending.VOLTS : Ending.EMPTY);
        }
        double takenW = openV * amps / rig.dischargeEff;
        double span = left;
        Ending hit = null;
        if (extraW > 0) {
            span = Math.min(span, (all - keepWh) / takenW);
        }
        double untilFloor = (all - floorWh + PlainWalk.EMPTY_WH) / takenW;
        if (untilFloor < span) {
            span = untilFloor;
            hit = Ending.EMPTY;
        }
        double first = after(firstWh, all, takenW, span);
        double least = climate.floorWh[hour];
        if (rig.offV > 0 && CellRig.at(rig.openV, first * perFirstWh) - amps * ohm < rig.offV) {
            double fill = rig.fillAt(rig.offV + wantedW / rig.offV * ohm);
            least = Math.max(least, Math.min(fill * rig.firstWh, firstWh));
        }
        if (first < least - tinyWh) {
            hit = least > climate.floorWh[hour] ? Ending.VOLTS : Ending.EMPTY;
            span = hoursUntil(least, all, takenW, span);
            first = after(firstWh, all, takenW, span);
        }
        if (hit != null && extraW > 0) {
            niceBarred = true; // the essentials alone, from here on
        } else if (hit != null) {
            failed = true;
            note(hit);
        }
        firstWh = Math.max(0, first);
        boundWh = all - takenW * span - firstWh;
        if (firstWh + boundWh < 0) {
            firstWh = 0;
            boundWh = 0;
        }
        niceHours += niceW > 0 ? (Math.min(niceW, spareW) + extraW) / niceW * span : 0;
        ledger.helpInWh += reliefW * span;
        ledger.dischargeLossWh += (takenW - wantedW) * span;
        return span;
    }

    /** The store cannot give what is asked: without the nice-to-have first; else it is over. */
    private double giveUp(boolean withNice, Ending why) {
        if (withNice) {
            niceBarred = true;
        } else {
            failed = true;
            note(why);
        }
        return 0;
    }

    /** Content of the first well after a span of drawing from inside; negative when filling. */
    private double after(double first, double all, double takenW, double span) {
        WellStep step = span == flows.stepHours ? whole : rig.wells.step(span);
        return step.available(first, all, takenW);
    }

    /** When the first well comes down to a content within a span at whose end it is below. */
    private double hoursUntil(double leastWh, double all, double takenW, double span) {
        if (boundFullWh == 0) {
            return Math.max(0, Math.min(span, (firstWh - leastWh) / takenW));
        }
        // Regula falsi, the end that stays put halved (Illinois): a handful of steps, where halving takes fifty.
        double early = 0;
        double late = span;
        double over = firstWh - leastWh;
        double under = after(firstWh, all, takenW, span) - leastWh;
        int kept = 0;
        for (int i = 0; i < MOST_STEPS_TO_EVENT && late - early > INSTANT_H && over > 0; i++) {
            double at = early + (late - early) * over / (over - under);
            double found = after(firstWh, all, takenW, at) - leastWh;
            if (Math.abs(found) <= tinyWh) {
                return at;
            }
            if (found > 0) {
                early = at;
                over = found;
                under = kept < 0 ? under / 2 : under;
                kept = -1;
            } else {
                late = at;
                under = found;
                over = kept > 0 ? over / 2 : over;
                kept = 1;
            }
        }
        return early;
    }

    private void book(int ofDay, boolean gridOn, double heatedHours, Ledger ledger) {
        FlowArrays essential = flows.essential;
        FlowArrays nice = flows.nice;
        if (gridOn) {
            ledger.gridServedWh += essential.plugW[ofDay] * flows.stepHours;
        } else {
            ledger.servedEssentialWh += essential.plugW[ofDay] * essentialHours;
            ledger.unservedEssentialWh += essential.plugW[ofDay] * (flows.stepHours - essentialHours);
            ledger.inverterLossWh += essential.inverterLossW[ofDay] * essentialHours;
            ledger.outletLossWh += essential.outletLossW[ofDay] * essentialHours;
            ledger.standingWh += essential.standingW[ofDay] * essentialHours;
            ledger.wantedNiceWh += nice.plugW[ofDay] * flows.stepHours;
        }
        ledger.servedNiceWh += nice.plugW[ofDay] * niceHours;
        ledger.inverterLossWh += nice.inverterLossW[ofDay] * niceHours;
        ledger.outletLossWh += nice.outletLossW[ofDay] * niceHours;
        ledger.standingWh += nice.standingW[ofDay] * niceHours;
        ledger.heaterWh += climate.heaterW[hour] * heatedHours;
    }
}
