package tideover.engine.proof;

import java.util.Objects;
import tideover.engine.battery.CellTraits;
import tideover.engine.battery.TwoWells;
import tideover.engine.part.RatedStore;
import tideover.engine.rig.Rig;

/**
 * One outage on a battery by its data sheet, essential loads only, in steps of seconds straight from the differential
 * equations: no exact wells, no spans, no tables. Slow and plain on purpose.
 */
final class DumbBattery {
    private static final double STEP_H = 4.0 / 3600;

    private final Setup setup;
    private final Setup.Cells cells;
    private final CellBank bank;
    private final CellTraits traits;
    private final RatedStore store;
    private final Rig rig;

    DumbBattery(Setup setup) {
        this.setup = setup;
        this.cells = Objects.requireNonNull(setup.cells());
        this.bank = cells.bank();
        this.traits = bank.traits();
        this.store = bank.store();
        this.rig = setup.rig();
    }

    private final CellClimate.Hours climate = new CellClimate.Hours();

    double hoursCarried(int startHour, int capHours) {
        TwoWells wells = bank.wells();
        double c = wells.availableShare();
        double pipe = wells.ratePerHour() * c * (1 - c);
        double full = bank.fullWh();
        double first = setup.outage().chargeAtStart() * c * full;
        double bound = setup.outage().chargeAtStart() * (1 - c) * full;
        double offV = setup.inverterLeftOn() ? Math.max(bank.cutOffV(), rig.inverterOffV()) : bank.cutOffV();
        int stepsPerDay = setup.demand().stepsPerDay();
        for (double hour = 0; hour < capHours; hour += STEP_H) {
            int weatherHour = (startHour + (int) hour) % setup.sunPerRatedW().length();
            double clock = (startHour % 24 + hour) % 24;
            double loadW =
                    setup.demand().essential((int) (clock / 24 * stepsPerDay)).busW()
                            + cells.warmth().heaterW().at(weatherHour);
            cells.climate().fill(weatherHour, 1, climate);
            double openV = bank.openV().at(first / (c * full));
            double ohm = bank.innerOhm()
                            * traits.ohmTimesByDegC().at(climate.degC[0])
                            * traits.ohmTimesByFill().at(first / (c * full))
                    + rig.leadOhm();
            double sunW = 0;
            if (hour >= setup.outage().panelsOutAfterHours() && rig.controller() != null) {
                double arrayW =
                        setup.figures().arrayRatedW() * setup.sunPerRatedW().at(weatherHour);
                sunW = rig.controller().efficiency() * arrayW;
                double volts = openV + (sunW - loadW) / openV * ohm;
                if (cells.held() != null && arrayW > 0) {
                    HeldArray held = cells.held();
                    double amps = heldA(held, weatherHour, openV);
                    volts = Math.min(climate.absorbV[0], openV + (amps - loadW / openV) * ohm);
                    sunW = Math.min(arrayW, rig.controller().efficiency() * volts * heldA(held, weatherHour, volts));
                }
                sunW = Math.min(sunW, rig.controller().maxOutputA() * Math.min(volts, bank.mostChargeV()));
            }
            double all = first + bound;
            double self = Math.min(climate.selfW[0] * STEP_H, first) / Math.max(all, 1e-9);
            double inner;
            if (sunW >= loadW) {
                if (sunW > loadW && climate.harmed[0] > 0) {
                    return hour;
                }
                double mostA = Math.min(climate.chargeA[0], Math.max(0, (climate.absorbV[0] - openV) / ohm));
                double amps = Math.min(mostA, ampsOf(openV, ohm, sunW - loadW));
                inner = -openV * amps * traits.chargeEffByFill().at(all / full);
            } else {
                double amps = -ampsOf(openV, ohm, sunW - loadW);
                boolean low = Double.isNaN(amps) || openV - amps * ohm < offV;
                if (low
                        || amps > climate.dischargeA[0]
                        || first <= climate.floorWh[0]
                        || all <= full * (1 - store.depth())) {
                    return hour;
                }
                inner = openV * amps;
            }
            if (all < climate.freezeWh[0]) {
                return hour;
            }
            double flow = c == 1 ? 0 : pipe * (bound / (1 - c) - first / c);
            first += (flow - inner) * STEP_H;
            bound -= flow * STEP_H;
            first = Math.min(first, c * full) * (1 - self);
            bound *= 1 - self;
        }
        return capHours;
    }

    /** Amps into the battery for watts at its terminals, by halving; negative out; NaN where it cannot. */
    private static double ampsOf(double openV, double ohm, double watts) {
        double low = watts < 0 ? -openV / (2 * ohm) : 0;
        double high = watts < 0 ? 0 : watts / openV;
        if (watts < 0 && (openV + low * ohm) * low > watts) {
            return Double.NaN;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if ((openV + middle * ohm) * middle < watts) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double heldA(HeldArray held, int hour, double volts) {
        double place = Math.max(0, Math.min(held.amps().size() - 1, (volts - held.leastV()) / held.stepV()));
        int i = Math.min((int) place, held.amps().size() - 2);
        return held.amps().get(i).at(hour)
                + (place - i)
                        * (held.amps().get(i + 1).at(hour) - held.amps().get(i).at(hour));
    }
}
