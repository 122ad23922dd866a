package tideover.engine.proof;

import org.jspecify.annotations.Nullable;

/**
 * A keeper that lives on the tape of its grid-on life for as long as it gets all it asks for, and reckons for itself from
 * the first lack of power on. It finds the same as the keeper alone, but for roundings and the little that a step cut by the store's
 * events shifts the contents' lag.
 */
final class Follower implements Keeper {
    private final Keeper keeper;
    private final GridLife life;
    private final int stepsPerHour;
    private final double stepHours;

    private int firstHour;
    private int startHourOfStretch;
    private boolean follows;
    private boolean ran;

    /** Of the step. */
    private int hourOfStretch;

    private int stepOfDay;
    private double hourOfOutage;
    private double arrayW;
    private boolean gridOn;
    private double passedH;
    private int next;
    private int end;
    private double plugW;
    private boolean motor;

    Follower(Keeper keeper, GridLife life, int stepsPerHour) {
        this.keeper = keeper;
        this.life = life;
        this.stepsPerHour = stepsPerHour;
        this.stepHours = 1.0 / stepsPerHour;
    }

    @Override
    public void onto(Stretch stretch) {
        firstHour = stretch.firstStartHour();
        keeper.onto(stretch);
    }

    @Override
    public void begin(int hour) {
        startHourOfStretch = hour;
        follows = true;
        ran = false;
    }

    @Override
    public void step(int hour, int ofDay, double ofOutage, double panelsW, boolean onGrid) {
        hourOfStretch = hour;
        stepOfDay = ofDay;
        hourOfOutage = ofOutage;
        arrayW = panelsW;
        gridOn = onGrid;
        passedH = 0;
        if (!follows) {
            keeper.step(hour, ofDay, ofOutage, panelsW, onGrid);
            return;
        }
        int at = life.step(firstHour + hour, ofDay % stepsPerHour);
        if (life.tape().isUneasy(at)) {
            leave();
            return;
        }
        next = life.tape().first(at);
        end = life.tape().end(at);
        plugW = life.tape().plugW(at);
        motor = life.tape().motor(at);
    }

    /** Takes over where the tape has come to. */
    private void leave() {
        follows = false;
        int startsAt = hourOfStretch;
        keeper.begin(startHourOfStretch);
        life.restore(keeper, firstHour + startsAt);
        keeper.restored();
        double untilNow = stepOfDay % stepsPerHour * stepHours + passedH;
        int firstStep = stepOfDay - stepOfDay % stepsPerHour;
        double done = 0;
        for (int step = 0; done < untilNow - INSTANT_H; step++) {
            double hours = Math.min(stepHours, untilNow - done);
            GridLife.powered(keeper, startsAt, firstStep + step, hours);
            done += hours;
        }
        keeper.step(hourOfStretch, stepOfDay, hourOfOutage, arrayW, gridOn);
    }

    @Override
    public boolean allowed() {
        return follows || keeper.allowed();
    }

    @Override
    public double plugW() {
        return follows ? plugW : keeper.plugW();
    }

    @Override
    public boolean motor() {
        return follows ? motor : keeper.motor();
    }

    @Override
    public boolean starting() {
        return follows ? motor && !ran : keeper.starting();
    }

    @Override
    public double untilSwitchH(double most, boolean live) {
        if (follows && !live) {
            leave();
        }
        if (!follows) {
            return keeper.untilSwitchH(most, live);
        }
        return next < end ? Math.max(0, life.tape().atHours(next) - passedH) : Double.POSITIVE_INFINITY;
    }

    @Override
    public void pass(double hours, boolean live) {
        if (!follows) {
            keeper.pass(hours, live);
            return;
        }
        ran = motor;
        passedH += hours;
        while (next < end && passedH >= life.tape().atHours(next) - INSTANT_H) {
            plugW = life.tape().afterW(next);
            motor = life.tape().motorAfter(next);
            next++;
        }
    }

    @Override
    public @Nullable Ending broken() {
        return follows ? null : keeper.broken();
    }

    @Override
    public boolean uneasy() {
        return !follows && keeper.uneasy();
    }

    @Override
    public boolean asOnGrid() {
        return follows;
    }

    @Override
    public double kept() {
        throw new IllegalStateException("what lives on a tape is not looked into");
    }

    @Override
    public double air() {
        return kept();
    }

    @Override
    public double imbalance() {
        return kept();
    }

    @Override
    public int figures() {
        return keeper.figures();
    }

    @Override
    public void save(double[] figures, int from) {
        keeper.save(figures, from);
    }

    @Override
    public void restore(double[] figures, int from) {
        keeper.restore(figures, from);
    }

    @Override
    public void restored() {
        keeper.restored();
    }
}
