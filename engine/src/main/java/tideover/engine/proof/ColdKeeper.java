package tideover.engine.proof;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Compressor;
import tideover.engine.cold.Contents;
import tideover.engine.cold.Defrost;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Duty;
import tideover.engine.load.Need;
import tideover.engine.quantity.Decay;
import tideover.engine.quantity.Series;

/**
 * A cold box followed through an outage. The air goes exponentially to where walls, contents, door and compressor would
 * leave it; contents are held for the length of a span, at most a step, and then take what came to them. So heat closes
 * exactly, and only the contents' lag behind the air depends on the step.
 */
final class ColdKeeper implements Keeper {
    private final ColdLoad load;
    private final ColdBox box;
    private final Series roomOfYears;
    private final @Nullable GridLife life;
    private final boolean foreseen;
    private final double stepHours;
    private final double wallWPerK;
    private final double perSumK;
    private final double tauHours;
    private final double keptInStep;
    private final double onDegC;
    private final double offDegC;
    private final double[] airWPerK;
    private final Contents[] lumps;

    /** Of each lump: freezing point, heat of melting, and kelvins for each watt-hour on either side of it. */
    private final double[] freezingDegC;

    private final double[] meltWh;
    private final double[] belowKPerWh;
    private final double[] aboveKPerWh;

    private final double defrostW;
    private final double defrostHours;
    private final double defrostEveryHours;
    private final boolean[] dutyByStep;
    private final boolean[] awakeByStep;
    private final double agencyHours;

    /** Of what counts as kept. */
    private final double leastDegC;

    private final double mostDegC;
    private final double mostHoursAbove;
    private final boolean mayNotThaw;

    /** At or below it a freezer's hours without power are counted anew; other boxes' never are. */
    private final double backDegC;

    private double[] roomDegC = {};
    private double[] runningW = {};
    private double[] movedW = {};

    /** State. */
    private double airDegC;

    private final double[] heatWh;
    private final double[] lumpDegC;
    private boolean on;
    private double defrostClockH;

    /** Since the outage began. */
    private double darkHours;

    private double hoursAbove;
    private @Nullable Ending broken;
    private double balanceWh;

    /** Of the step. */
    private double roomNow;

    private double runningNowW;
    private double movedNowW;
    private double doorW;
    private boolean allowed;
    private boolean ran;

    /** Of the span, as {@link #untilSwitchH} left it. */
    private double switchesInH;

    private double targetDegC;

    ColdKeeper(ColdLoad load, Series roomOfYears, @Nullable GridLife life, int stepsPerHour, boolean foreseen) {
        this.load = load;
        this.box = load.box();
        this.roomOfYears = roomOfYears;
        this.life = life;
        this.foreseen = foreseen;
        this.stepHours = 1.0 / stepsPerHour;
        this.lumps = box.contents().toArray(Contents[]::new);
        this.airWPerK = new double[lumps.length];
        double sum = box.wallWPerK();
        for (int i = 0; i < lumps.length; i++) {
            airWPerK[i] = lumps[i].airWPerK();
            sum += airWPerK[i];
        }
        this.wallWPerK = box.wallWPerK();
        this.perSumK = 1 / sum;
        this.freezingDegC = of(lumps, lump -> lump.food().freezingDegC());
        this.meltWh = of(lumps, lump -> lump.kg() * lump.food().meltWhPerKg());
        this.belowKPerWh = of(lumps, lump -> 1 / (lump.kg() * lump.food().belowWhPerKgK()));
        this.aboveKPerWh = of(lumps, lump -> 1 / (lump.kg() * lump.food().aboveWhPerKgK()));
        Defrost defrost = box.defrost();
        this.defrostW = defrost == null ? 0 : defrost.heaterW();
        this.defrostHours = defrost == null ? 0 : defrost.minutes() / 60;
        this.defrostEveryHours = defrost == null ? Double.POSITIVE_INFINITY : defrost.everyHours();
        this.tauHours = box.airWhPerK() / sum;
        this.keptInStep = StrictMath.exp(-stepHours / tauHours);
        this.onDegC = box.setDegC() + box.bandK() / 2;
        this.offDegC = box.setDegC() - box.bandK() / 2;
        this.heatWh = new double[lumps.length];
        this.lumpDegC = new double[lumps.length];
        int stepsPerDay = 24 * stepsPerHour;
        this.dutyByStep = byStep(load.duty().hours(), stepsPerDay);
        this.awakeByStep = byStep(
                List.of(new DayWindow(ColdBox.AWAKE_FROM_HOUR, ColdBox.AWAKE_FROM_HOUR + ColdBox.AWAKE_HOURS)),
                stepsPerDay);
        this.agencyHours = load.agencyHours();
        Need need = load.need();
        this.leastDegC = need instanceof Need.Band band ? band.leastDegC() : Double.NEGATIVE_INFINITY;
        this.mostDegC = need instanceof Need.Band band
                ? band.mostDegC()
                : need instanceof Need.Below below ? below.limitDegC() : ((Need.HoursAbove) need).limitDegC();
        this.mostHoursAbove = need instanceof Need.HoursAbove above ? above.hours() : 0;
        this.mayNotThaw = need instanceof Need.Below;
        this.backDegC = box.kind().freezes() ? onDegC : Double.NEGATIVE_INFINITY;
    }

    private static double[] of(Contents[] lumps, ToDoubleFunction<Contents> figure) {
        return Arrays.stream(lumps).mapToDouble(figure).toArray();
    }

    /** Whether at least half of each step lies in the windows. */
    private static boolean[] byStep(List<DayWindow> windows, int stepsPerDay) {
        boolean[] inside = new boolean[stepsPerDay];
        double hours = 24.0 / stepsPerDay;
        for (int step = 0; step < stepsPerDay; step++) {
            double overlap = 0;
            for (DayWindow window : windows) {
                overlap += window.overlapHours(step * hours, hours);
            }
            inside[step] = overlap >= hours / 2;
        }
        return inside;
    }

    @Override
    public void onto(Stretch stretch) {
        int hours = stretch.hours();
        if (roomDegC.length != hours) {
            roomDegC = new double[hours];
            runningW = new double[hours];
            movedW = new double[hours];
        }
        roomOfYears.copyRound(stretch.firstStartHour(), roomDegC);
        Compressor compressor = box.compressor();
        for (int hour = 0; hour < hours && compressor != null; hour++) {
            runningW[hour] = compressor.watts(roomDegC[hour]);
            movedW[hour] = runningW[hour] * box.movedPerW(roomDegC[hour]);
        }
        firstHour = stretch.firstStartHour();
    }

    private int firstHour;

    @Override
    public void begin(int hourOfStretch) {
        // What has no compressor is packed as the outage begins, from what was kept cold.
        if (life == null || box.compressor() == null) {
            airDegC = box.setDegC();
            for (int i = 0; i < lumps.length; i++) {
                heatWh[i] = lumps[i].heatWh(box.setDegC());
            }
            on = false;
            defrostClockH = 0;
        } else {
            life.restore(this, firstHour + hourOfStretch);
        }
        if (box.takesIceIn()) {
            heatWh[1] = lumps[1].heatWh(box.iceStartsDegC());
        }
        if (foreseen && !Double.isNaN(load.chilledToDegC())) {
            airDegC = Math.min(airDegC, load.chilledToDegC());
            for (int i = 0; i < lumps.length; i++) {
                heatWh[i] = Math.min(heatWh[i], lumps[i].heatWh(load.chilledToDegC()));
            }
        }
        restored();
        darkHours = 0;
        hoursAbove = 0;
        broken = null;
        ran = false;
    }

    @Override
    public void restored() {
        balanceWh = -heldWh();
        readTemperatures();
    }

    private double heldWh() {
        double held = box.airWhPerK() * airDegC;
        for (double heat : heatWh) {
            held += heat;
        }
        return held;
    }

    private void readTemperatures() {
        for (int i = 0; i < lumps.length; i++) {
            lumpDegC[i] = lumpDegC(i);
        }
    }

    /** As {@link Contents#degC}, with its figures laid out. */
    private double lumpDegC(int i) {
        double heat = heatWh[i];
        if (heat < 0) {
            return freezingDegC[i] + heat * belowKPerWh[i];
        }
        double over = heat - meltWh[i];
        return over <= 0 ? freezingDegC[i] : freezingDegC[i] + over * aboveKPerWh[i];
    }

    @Override
    public void step(int hourOfStretch, int stepOfDay, double hourOfOutage, double arrayW, boolean gridOn) {
        roomNow = roomDegC[hourOfStretch];
        runningNowW = runningW[hourOfStretch];
        movedNowW = movedW[hourOfStretch];
        doorW = awakeByStep[stepOfDay] && box.openingsPerDay() > 0 ? box.doorW(roomNow) : 0;
        boolean inDuty =
                dutyByStep[stepOfDay] && (load.duty().kind() != Duty.Kind.WHILE_SUNNY || arrayW >= runningNowW / 2);
        allowed = box.compressor() != null && (gridOn || inDuty);
    }

    @Override
    public boolean allowed() {
        return allowed;
    }

    private boolean defrosting() {
        return defrostClockH < defrostHours;
    }

    @Override
    public double plugW() {
        if (!allowed) {
            return 0;
        }
        if (defrosting()) {
            return defrostW;
        }
        return on ? runningNowW : 0;
    }

    @Override
    public boolean motor() {
        return allowed && on && !defrosting();
    }

    @Override
    public boolean starting() {
        return motor() && !ran;
    }

    @Override
    public boolean uneasy() {
        return lumpDegC[0] > mostDegC || lumpDegC[0] < leastDegC || (mayNotThaw && heatWh[0] > 0);
    }

    /** Where the air would come to rest, degC. */
    private double targetDegC(boolean live) {
        double heatW = wallWPerK * roomNow + doorW;
        for (int i = 0; i < lumps.length; i++) {
            heatW += airWPerK[i] * lumpDegC[i];
        }
        if (live && allowed) {
            heatW += defrosting() ? Defrost.INTO_BOX * defrostW : on ? -movedNowW : 0;
        }
        return heatW * perSumK;
    }

    @Override
    public double untilSwitchH(double most, boolean live) {
        switchesInH = Double.POSITIVE_INFINITY;
        if (!live || !allowed) {
            targetDegC = targetDegC(live);
            return switchesInH;
        }
        boolean defrosting = defrosting();
        switchesInH = (defrosting ? defrostHours : defrostEveryHours) - defrostClockH;
        if (defrosting) {
            targetDegC = targetDegC(true);
            return switchesInH;
        }
        double at = on ? offDegC : onDegC;
        if (on ? airDegC <= at : airDegC >= at) {
            on = !on;
            at = on ? offDegC : onDegC;
        }
        double target = targetDegC(true);
        targetDegC = target;
        if (on ? target < at : target > at) {
            // Whether it comes within the time asked for is told without a logarithm; a short time is not worth asking.
            double kept = most == stepHours ? keptInStep : 0;
            double now = airDegC - target;
            double then = at - target;
            if (on ? then >= kept * now : then <= kept * now) {
                switchesInH = Math.min(switchesInH, tauHours * Decay.until(then / now));
            }
        }
        return switchesInH;
    }

    @Override
    public void pass(double hours, boolean live) {
        boolean runs = live && allowed;
        boolean defrosts = runs && defrosting();
        double target = targetDegC;
        double kept = hours == stepHours ? keptInStep : 1 - Decay.gone(hours / tauHours);
        double airBefore = airDegC;
        airDegC = target + (airBefore - target) * kept;
        double airKh = target * hours + (airBefore - airDegC) * tauHours;
        for (int i = 0; i < lumps.length; i++) {
            heatWh[i] += airWPerK[i] * (airKh - lumpDegC[i] * hours);
            lumpDegC[i] = lumpDegC(i);
        }
        balanceWh -= wallWPerK * (roomNow * hours - airKh) + doorW * hours;
        if (defrosts) {
            balanceWh -= Defrost.INTO_BOX * defrostW * hours;
        } else if (runs && on) {
            balanceWh += movedNowW * hours;
        }
        ran = runs && on && !defrosts;
        if (runs) {
            defrostClockH += hours;
            if (switchesInH - hours <= INSTANT_H) {
                switchOver();
            }
        }
        judge(hours, runs);
    }

    private void switchOver() {
        if (defrostClockH >= defrostEveryHours - INSTANT_H) {
            defrostClockH = 0;
        } else if (defrostHours > 0 && Math.abs(defrostClockH - defrostHours) <= INSTANT_H) {
            defrostClockH = defrostHours;
        } else {
            on = !on;
        }
    }

    private void judge(double hours, boolean runs) {
        double foodDegC = lumpDegC[0];
        if (runs) {
            darkHours = foodDegC <= backDegC ? 0 : darkHours;
        } else {
            darkHours += hours;
        }
        if (broken != null) {
            return;
        }
        if (foodDegC > mostDegC) {
            hoursAbove += hours;
        }
        if (mayNotThaw && heatWh[0] > 0) {
            broken = Ending.THAWED;
        } else if (hoursAbove > mostHoursAbove) {
            broken = Ending.TOO_WARM;
        } else if (foodDegC < leastDegC) {
            broken = Ending.TOO_COLD;
        } else if (darkHours > agencyHours + INSTANT_H) {
            broken = Ending.AGENCY_HOURS;
        }
    }

    @Override
    public @Nullable Ending broken() {
        return broken;
    }

    @Override
    public double kept() {
        return lumpDegC[0];
    }

    @Override
    public double air() {
        return airDegC;
    }

    @Override
    public double imbalance() {
        return balanceWh + heldWh();
    }

    @Override
    public int figures() {
        return 3 + lumps.length;
    }

    @Override
    public void save(double[] figures, int from) {
        figures[from] = airDegC;
        figures[from + 1] = on ? 1 : 0;
        figures[from + 2] = defrostClockH;
        System.arraycopy(heatWh, 0, figures, from + 3, heatWh.length);
    }

    @Override
    public void restore(double[] figures, int from) {
        airDegC = figures[from];
        on = figures[from + 1] > 0;
        defrostClockH = figures[from + 2];
        System.arraycopy(figures, from + 3, heatWh, 0, heatWh.length);
    }
}
