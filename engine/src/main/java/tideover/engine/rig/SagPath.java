package tideover.engine.rig;

import tideover.engine.battery.CellTraits;
import tideover.engine.battery.ConstantPower;
import tideover.engine.part.RatedStore;
import tideover.engine.quantity.Curve;
import tideover.engine.quantity.Require;

/**
 * The way of a surge out of a battery: open volts behind the inner resistance, then the leads, then what switches off when
 * the volts at the leads' end fall too low.
 *
 * <p>A load of constant watts at the leads' end, {@code P = I (V - I R)}, of which the branch of the higher volts is the
 * stable one; {@code R = ohm r(degC) r(filling) + leads}. Valid for the first seconds. Neglected: the slower fall of the
 * volts in minutes, and the spikes of the inverter's own switching, which its input capacitors carry.
 *
 * @param openV          volts at rest by filling 0..1, rising
 * @param ohm            inside, half full, 25 degC
 * @param ohmTimesByDegC against 25 degC, falling
 * @param ohmTimesByFill against half full, falling
 * @param leadOhm        both ways, with fuse and joints
 * @param endOffV        volts at the leads' end below which the inverter switches off; 0 where nothing does
 * @param postOffV       volts at the battery's own posts below which it lets go; 0 where nothing does
 */
public record SagPath(
        Curve openV,
        double ohm,
        Curve ohmTimesByDegC,
        Curve ohmTimesByFill,
        double leadOhm,
        double endOffV,
        double postOffV) {
    /** Halvings of the range of filling: to a millionth. */
    private static final int HALVINGS = 20;

    public SagPath {
        Require.atLeast(0, "ohm", ohm, "ohm");
        Require.atLeast(0, "leadOhm", leadOhm, "ohm");
        Require.atLeast(0, "endOffV", endOffV, "V");
        Require.atLeast(0, "postOffV", postOffV, "V");
    }

    /**
     * Out of a bank known by its data sheet, with its chemistry's figures for what that does not tell: usual ones for a sound
     * battery, those of the high end for one whose label is not worth much.
     */
    public static SagPath of(RatedStore bank, double leadOhm, double endOffV, double postOffV) {
        CellTraits traits = bank.chemistry().traits();
        return new SagPath(
                traits.openVByFill().times(traits.cells(bank.nominalV())),
                bank.ohm(),
                traits.ohmTimesByDegC(),
                traits.ohmTimesByFill(),
                leadOhm,
                endOffV,
                postOffV);
    }

    /** Resistance inside the battery, ohm. */
    public double innerOhm(double fill, double degC) {
        return ohm * ohmTimesByDegC.at(degC) * ohmTimesByFill.at(fill);
    }

    /** A, under so many watts at the leads' end; NaN where it cannot give them at all. */
    public double amps(double watts, double fill, double degC) {
        return ConstantPower.dischargeA(openV.at(fill), innerOhm(fill, degC) + leadOhm, watts);
    }

    /** V at the leads' end under so many watts there; NaN where it cannot give them at all. */
    public double endV(double watts, double fill, double degC) {
        return openV.at(fill) - amps(watts, fill, degC) * (innerOhm(fill, degC) + leadOhm);
    }

    /** Most watts at the leads' end before anything lets go, W; 0 where it lets go without any load. */
    public double mostW(double fill, double degC) {
        double inside = innerOhm(fill, degC);
        double whole = inside + leadOhm;
        double open = openV.at(fill);
        // The end's volts can fall to its cut-off, to where the posts reach theirs, or to half, where power is
        // greatest.
        double postsAmps = inside > 0 ? (open - postOffV) / inside : Double.POSITIVE_INFINITY;
        double leastV = Math.max(endOffV, open / 2);
        double amps = Math.min((open - leastV) / whole, postsAmps);
        return amps > 0 && open >= postOffV ? amps * (open - amps * whole) : 0;
    }

    /**
     * The lowest filling, 0..1, at which so many watts are given with all volts at or above their cut-offs and no more than
     * {@code mostA}; infinity where even a full battery cannot. Fuller is never worse, so halving finds it; the figure
     * returned is one that holds.
     */
    public double fillNeeded(double watts, double mostA, double degC) {
        if (!holds(watts, mostA, 1, degC)) {
            return Double.POSITIVE_INFINITY;
        }
        if (holds(watts, mostA, 0, degC)) {
            return 0;
        }
        double fails = 0;
        double holds = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (fails + holds) / 2;
            if (holds(watts, mostA, middle, degC)) {
                holds = middle;
            } else {
                fails = middle;
            }
        }
        return holds;
    }

    private boolean holds(double watts, double mostA, double fill, double degC) {
        double amps = amps(watts, fill, degC);
        double postV = openV.at(fill) - amps * innerOhm(fill, degC);
        // Where the watts cannot be given all of these are NaN, and nothing holds.
        return amps <= mostA && postV >= postOffV && postV - amps * leadOhm >= endOffV;
    }
}
