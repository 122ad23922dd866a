package tideover.engine.proof;

import org.jspecify.annotations.Nullable;
import tideover.engine.load.PitLoad;

/** A pit followed through an outage: straight lines between the float's two points. It begins full to the upper one. */
final class PitKeeper implements Keeper {
    private final PitLoad load;
    private final double stepHours;
    private final boolean storm;

    private double litres;
    private boolean on;
    private boolean ran;
    private double inLPerH;
    private double switchesInH;
    private boolean flooded;
    private double balanceL;

    PitKeeper(PitLoad load, int stepsPerHour, boolean storm) {
        this.load = load;
        this.stepHours = 1.0 / stepsPerHour;
        this.storm = storm;
    }

    @Override
    public void onto(Stretch stretch) {}

    @Override
    public void begin(int hourOfStretch) {
        litres = load.pit().onL();
        on = true;
        ran = false;
        flooded = false;
        balanceL = -litres;
    }

    @Override
    public void step(int hourOfStretch, int stepOfDay, double hourOfOutage, double arrayW, boolean gridOn) {
        inLPerH = load.inflow().lPerH(hourOfOutage + stepHours / 2, storm);
    }

    @Override
    public boolean allowed() {
        return true;
    }

    @Override
    public double plugW() {
        return on ? load.runningW() : 0;
    }

    @Override
    public boolean motor() {
        return on;
    }

    @Override
    public boolean uneasy() {
        return flooded;
    }

    @Override
    public void restored() {
        balanceL = -litres;
    }

    @Override
    public boolean starting() {
        return on && !ran;
    }

    @Override
    public double untilSwitchH(double most, boolean live) {
        double riseLPerH = inLPerH - (live && on ? load.pumpedLPerH() : 0);
        switchesInH = Double.POSITIVE_INFINITY;
        if (live && on && riseLPerH < 0) {
            switchesInH = litres / -riseLPerH;
        } else if (!on && riseLPerH > 0) {
            switchesInH = Math.max(0, load.pit().onL() - litres) / riseLPerH;
        }
        return switchesInH;
    }

    @Override
    public void pass(double hours, boolean live) {
        double pumpedL = live && on ? load.pumpedLPerH() * hours : 0;
        double inL = inLPerH * hours;
        litres += inL - pumpedL;
        balanceL += pumpedL - inL;
        ran = live && on;
        if (litres > load.pit().brimL()) {
            flooded = true;
            balanceL += litres - load.pit().brimL();
            litres = load.pit().brimL();
        }
        if (switchesInH - hours <= INSTANT_H) {
            on = !on;
        }
    }

    @Override
    public @Nullable Ending broken() {
        return flooded ? Ending.FLOODED : null;
    }

    @Override
    public double kept() {
        return litres;
    }

    @Override
    public double air() {
        return litres;
    }

    @Override
    public double imbalance() {
        return balanceL + litres;
    }

    @Override
    public int figures() {
        return 2;
    }

    @Override
    public void save(double[] figures, int from) {
        figures[from] = litres;
        figures[from + 1] = on ? 1 : 0;
    }

    @Override
    public void restore(double[] figures, int from) {
        litres = figures[from];
        on = figures[from + 1] > 0;
    }
}
