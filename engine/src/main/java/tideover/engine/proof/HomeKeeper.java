package tideover.engine.proof;

import org.jspecify.annotations.Nullable;
import tideover.engine.load.HeatLoad;
import tideover.engine.quantity.Decay;
import tideover.engine.quantity.Series;

/** A heated home followed through an outage: one temperature, exponential between the thermostat's two points. */
final class HomeKeeper implements Keeper {
    private final HeatLoad load;
    private final Series outdoorDegC;
    private final @Nullable GridLife life;
    private final double stepHours;
    private final double keptInStep;
    private final double onDegC;
    private final double offDegC;

    private double[] outDegC = {};
    private int firstHour;
    private double degC;
    private boolean on;
    private boolean ran;
    private double outNow;
    private double switchesInH;
    private boolean tooCold;
    private double balanceKh;

    HomeKeeper(HeatLoad load, Series outdoorDegC, @Nullable GridLife life, int stepsPerHour) {
        this.load = load;
        this.outdoorDegC = outdoorDegC;
        this.life = life;
        this.stepHours = 1.0 / stepsPerHour;
        this.keptInStep = StrictMath.exp(-stepHours / load.home().tauHours());
        this.onDegC = load.home().setDegC() - load.home().bandK() / 2;
        this.offDegC = load.home().setDegC() + load.home().bandK() / 2;
    }

    @Override
    public void onto(Stretch stretch) {
        outDegC = outDegC.length == stretch.hours() ? outDegC : new double[stretch.hours()];
        outdoorDegC.copyRound(stretch.firstStartHour(), outDegC);
        firstHour = stretch.firstStartHour();
    }

    @Override
    public void begin(int hourOfStretch) {
        if (life == null) {
            degC = load.home().setDegC();
            on = false;
        } else {
            life.restore(this, firstHour + hourOfStretch);
        }
        ran = false;
        tooCold = false;
        balanceKh = -load.home().tauHours() * degC;
    }

    @Override
    public void step(int hourOfStretch, int stepOfDay, double hourOfOutage, double arrayW, boolean gridOn) {
        outNow = outDegC[hourOfStretch];
    }

    @Override
    public boolean allowed() {
        return true;
    }

    @Override
    public double plugW() {
        return on ? load.runningW() : load.standbyW();
    }

    @Override
    public boolean motor() {
        return on;
    }

    @Override
    public boolean uneasy() {
        return degC < load.limit().limitDegC();
    }

    @Override
    public void restored() {
        balanceKh = -load.home().tauHours() * degC;
    }

    @Override
    public boolean starting() {
        return on && !ran;
    }

    private double targetDegC(boolean live) {
        return outNow + HeatLoad.Home.GAIN_K + (live && on ? load.home().liftK() : 0);
    }

    @Override
    public double untilSwitchH(double most, boolean live) {
        switchesInH = Double.POSITIVE_INFINITY;
        if (!live) {
            return switchesInH;
        }
        if (on ? degC >= offDegC : degC <= onDegC) {
            on = !on;
        }
        double at = on ? offDegC : onDegC;
        double target = targetDegC(true);
        if (on ? target > at : target < at) {
            double left = (at - target) / (degC - target);
            double kept = most == stepHours
                    ? keptInStep
                    : StrictMath.exp(-most / load.home().tauHours());
            if (left >= kept) {
                switchesInH = load.home().tauHours() * Decay.until(left);
            }
        }
        return switchesInH;
    }

    @Override
    public void pass(double hours, boolean live) {
        double tau = load.home().tauHours();
        double target = targetDegC(live);
        double kept = hours == stepHours ? keptInStep : 1 - Decay.gone(hours / tau);
        double before = degC;
        degC = target + (before - target) * kept;
        double insideKh = target * hours + (before - degC) * tau;
        balanceKh -= target * hours - insideKh;
        ran = live && on;
        tooCold |= degC < load.limit().limitDegC();
        if (live && switchesInH - hours <= INSTANT_H) {
            on = !on;
        }
    }

    @Override
    public @Nullable Ending broken() {
        return tooCold ? Ending.ROOM_COLD : null;
    }

    @Override
    public double kept() {
        return degC;
    }

    @Override
    public double air() {
        return degC;
    }

    @Override
    public double imbalance() {
        return balanceKh + load.home().tauHours() * degC;
    }

    @Override
    public int figures() {
        return 2;
    }

    @Override
    public void save(double[] figures, int from) {
        figures[from] = degC;
        figures[from + 1] = on ? 1 : 0;
    }

    @Override
    public void restore(double[] figures, int from) {
        degC = figures[from];
        on = figures[from + 1] > 0;
    }
}
