package tideover.engine.electronics;

import tideover.engine.quantity.Require;

/**
 * What an inverter loses: a constant draw, a part in proportion to what it gives and one to its square.
 *
 * <p>{@code dc = ac + standing + share ac + perW ac^2} in W, which is the form of Schmidt &amp; Sauer 1996 (Sonnenenergie
 * 4/96; from memory), {@code efficiency = p / (p + ps + v p + r p^2)} with {@code p = ac / rated}, {@code ps = standing /
 * rated}, {@code v = share}, {@code r = perW rated}. Valid up to the rating; a start above it follows the same curve.
 * Battery volts, temperature and the load's power factor are left out.
 *
 * @param standingW   drawn whenever it is on, W
 * @param share       lost for each watt given
 * @param perW        lost for each squared watt given, 1/W
 */
public record InverterLoss(double standingW, double share, double perW) {
    public InverterLoss {
        Require.atLeast(0, "standingW", standingW, "W");
        Require.atLeast(0, "share", share, "");
        Require.atLeast(0, "perW", perW, "1/W");
    }

    /** Constant efficiency beside a standing draw: all that a plain label tells. */
    public static InverterLoss constant(double efficiency, double standingW) {
        return new InverterLoss(standingW, 1 / Require.within(0.01, 1, "efficiency", efficiency, "") - 1, 0);
    }

    /**
     * Through the no-load draw and two efficiencies of a data sheet, the standing draw within them. Where the figures
     * allow no curve with losses that only grow, the nearest one stands in that loses more: a straight line through the
     * lower of the two.
     *
     * @param partShare  output of the first, as a share of the rating
     * @param partEff    AC out per DC in there
     * @param fullEff    the same at the rating
     */
    public static InverterLoss through(
            double ratedW, double standingW, double partShare, double partEff, double fullEff) {
        double partW = partShare * ratedW;
        double partLost = partW / partEff - partW - standingW;
        double fullLost = ratedW / fullEff - ratedW - standingW;
        double perW = (fullLost / ratedW - partLost / partW) / (ratedW - partW);
        double share = fullLost / ratedW - perW * ratedW;
        if (perW >= 0 && share >= 0) {
            return new InverterLoss(standingW, share, perW);
        }
        return new InverterLoss(standingW, Math.max(0, Math.max(partLost / partW, fullLost / ratedW)), 0);
    }

    /** Through three efficiencies, each at its share of the rating, standing draw within them. */
    public static InverterLoss through(double ratedW, double[] shares, double[] efficiencies) {
        double[] lost = new double[3];
        for (int i = 0; i < 3; i++) {
            lost[i] = shares[i] / efficiencies[i] - shares[i];
        }
        // lost = ps + v p + r p^2 by divided differences.
        double first = (lost[1] - lost[0]) / (shares[1] - shares[0]);
        double second = (lost[2] - lost[1]) / (shares[2] - shares[1]);
        double r = (second - first) / (shares[2] - shares[0]);
        double v = first - r * (shares[0] + shares[1]);
        double ps = lost[0] - v * shares[0] - r * shares[0] * shares[0];
        return new InverterLoss(ps * ratedW, v, r / ratedW);
    }

    /** DC watts taken while it gives {@code acW}, its own draw included. */
    public double dcW(double acW) {
        return acW + standingW + lostW(acW);
    }

    /** Lost on what it gives, its own draw apart. */
    public double lostW(double acW) {
        return (share + perW * acW) * acW;
    }

    public double efficiency(double acW) {
        return acW / dcW(acW);
    }

    public InverterLoss withoutStanding() {
        return withStanding(0);
    }

    public InverterLoss withStanding(double watts) {
        return new InverterLoss(watts, share, perW);
    }
}
