package tideover.engine.proof;

import org.jspecify.annotations.Nullable;

/**
 * A keeper reckoned from its state alone, that does not look before its own next event as long as it has power: where the store
 * cuts a step it is none of its business. From the first lack of power on, or from a step in which it leaves its limits though it
 * has power, it goes with every cut. Where the years go round it is put where its life on the grid is at their beginning: the last
 * hour of the last year does not flow into the first.
 */
final class PatientKeeper implements Keeper {
    private final Keeper keeper;

    /** Lives through every step first, with power, to tell whether it stays within its limits. */
    private final Keeper scout;

    private boolean patient;
    private boolean ran;

    /** Of hours that went by without being reckoned, how many there are and in how many it does something. */
    private double owedH;

    private double untilH;
    private double leftOfStepH;
    private final double stepH;

    private final int stepsPerHour;
    private final int hoursOfYears;
    private int firstHour;

    PatientKeeper(Keeper keeper, Keeper scout, int stepsPerHour, int hoursOfYears) {
        this.stepsPerHour = stepsPerHour;
        this.hoursOfYears = hoursOfYears;
        this.keeper = keeper;
        this.scout = scout;
        this.stepH = 1.0 / stepsPerHour;
    }

    @Override
    public void onto(Stretch stretch) {
        firstHour = stretch.firstStartHour();
        keeper.onto(stretch);
        scout.onto(stretch);
    }

    @Override
    public void begin(int hourOfStretch) {
        keeper.begin(hourOfStretch);
        scout.begin(hourOfStretch);
        patient = true;
        ran = false;
        owedH = 0;
    }

    @Override
    public void step(int hourOfStretch, int stepOfDay, double hourOfOutage, double arrayW, boolean gridOn) {
        settle();
        if (patient && (firstHour + hourOfStretch) % hoursOfYears == 0 && stepOfDay % stepsPerHour == 0) {
            keeper.begin(hourOfStretch);
            scout.begin(hourOfStretch);
        }
        keeper.step(hourOfStretch, stepOfDay, hourOfOutage, arrayW, gridOn);
        leftOfStepH = stepH;
        patient = patient && staysWithinLimits(hourOfStretch, stepOfDay);
        next();
    }

    private boolean staysWithinLimits(int hourOfStretch, int stepOfDay) {
        scout.step(hourOfStretch, stepOfDay, 0, 0, true);
        boolean within = true;
        double left = stepH;
        while (left > 0) {
            double span = Math.min(left, scout.untilSwitchH(left, true));
            scout.pass(span, true);
            left -= span;
            within &= !scout.uneasy();
        }
        return within;
    }

    /** Looks ahead once. */
    private void next() {
        untilH = patient ? keeper.untilSwitchH(leftOfStepH, true) : 0;
    }

    /** Reckons what went by. */
    private void settle() {
        if (owedH > 0) {
            keeper.pass(owedH, true);
            leftOfStepH -= owedH;
            owedH = 0;
        }
    }

    @Override
    public boolean allowed() {
        return keeper.allowed();
    }

    @Override
    public double plugW() {
        return keeper.plugW();
    }

    @Override
    public boolean motor() {
        return keeper.motor();
    }

    @Override
    public boolean starting() {
        return patient ? keeper.motor() && !ran : keeper.starting();
    }

    @Override
    public double untilSwitchH(double most, boolean live) {
        if (patient && !live) {
            settle();
            patient = false;
        }
        return patient ? Math.max(0, untilH - owedH) : keeper.untilSwitchH(most, live);
    }

    @Override
    public void pass(double hours, boolean live) {
        if (!patient) {
            keeper.pass(hours, live);
            return;
        }
        ran = keeper.motor();
        owedH += hours;
        double most = Math.min(untilH, leftOfStepH);
        if (owedH >= most - INSTANT_H) {
            owedH = most;
            settle();
            next();
        }
    }

    @Override
    public @Nullable Ending broken() {
        return keeper.broken();
    }

    @Override
    public boolean uneasy() {
        return keeper.uneasy();
    }

    @Override
    public double kept() {
        return keeper.kept();
    }

    @Override
    public double air() {
        return keeper.air();
    }

    @Override
    public double imbalance() {
        return keeper.imbalance();
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
