package tideover.engine.cold;

/**
 * A second, plain way to walk one box, to judge quicker ones from outside: Euler steps of its differential equations.
 *
 * <p>Air: {@code airWhPerK dT/dt = walls + lumps + door + heater - moved}; each lump {@code dH/dt = airWPerK (air - lump)},
 * its temperature read back from its heat content. The thermostat switches on at half a band above the set temperature, off at
 * half a band below. The defrost clock counts hours with power and holds the compressor still while the heater is on.
 */
public final class DumbColdBox {
    private static final double USUAL_STEP_S = 2;

    private final ColdBox box;
    private final double stepH;
    private final double[] lumpWh;
    private double airDegC;
    private boolean cooling;
    private double clockHour;
    private double poweredH;

    private double usedWh;
    private double wallWh;
    private double doorWh;
    private double heaterWh;
    private double movedWh;
    private double airDegCHours;
    private double compressorH;
    private int switchedOff;

    /** All of it at one temperature, at midnight, compressor still, defrost clock just reset. */
    public DumbColdBox(ColdBox box, double degC) {
        this(box, degC, degC, USUAL_STEP_S);
    }

    public DumbColdBox(ColdBox box, double airDegC, double lumpsDegC, double stepS) {
        this.box = box;
        this.airDegC = airDegC;
        stepH = stepS / 3600;
        lumpWh = new double[box.contents().size()];
        for (int i = 0; i < lumpWh.length; i++) {
            lumpWh[i] = box.contents().get(i).heatWh(lumpsDegC);
        }
    }

    public DumbColdBox atHour(double hourOfDay) {
        clockHour = hourOfDay;
        return this;
    }

    /** Hours of power since the defrost clock last began. */
    public DumbColdBox defrostClockAt(double hours) {
        poweredH = hours;
        return this;
    }

    /** Walks on by so many hours in a room that stays as it is. */
    public void run(double hours, double roomDegC, boolean powered) {
        long steps = Math.round(hours / stepH);
        for (long i = 0; i < steps; i++) {
            step(roomDegC, powered);
        }
    }

    public void step(double roomDegC, boolean powered) {
        double drawnW = 0;
        double heaterW = 0;
        double movedW = 0;
        if (powered) {
            if (airDegC >= box.setDegC() + box.bandK() / 2) {
                cooling = true;
            } else if (airDegC <= box.setDegC() - box.bandK() / 2) {
                if (cooling) {
                    switchedOff++;
                }
                cooling = false;
            }
            Defrost defrost = box.defrost();
            Compressor compressor = box.compressor();
            if (defrost != null && due(defrost)) {
                drawnW = defrost.heaterW();
                heaterW = Defrost.INTO_BOX * drawnW;
            } else if (cooling && compressor != null) {
                drawnW = compressor.watts(roomDegC);
                movedW = drawnW * box.movedPerW(roomDegC);
                compressorH += stepH;
            }
            poweredH += stepH;
        }
        double wallW = box.wallWPerK() * (roomDegC - airDegC);
        double doorW = awake() ? box.doorW(roomDegC) : 0;
        double fromLumpsW = 0;
        for (int i = 0; i < lumpWh.length; i++) {
            double intoLumpW = box.contents().get(i).airWPerK() * (airDegC - lumpDegC(i));
            lumpWh[i] += intoLumpW * stepH;
            fromLumpsW -= intoLumpW;
        }
        airDegCHours += airDegC * stepH;
        airDegC += (wallW + doorW + heaterW - movedW + fromLumpsW) * stepH / box.airWhPerK();
        usedWh += drawnW * stepH;
        wallWh += wallW * stepH;
        doorWh += doorW * stepH;
        heaterWh += heaterW * stepH;
        movedWh += movedW * stepH;
        clockHour = (clockHour + stepH) % 24;
    }

    private boolean due(Defrost defrost) {
        return poweredH >= defrost.everyHours() && poweredH % defrost.everyHours() < defrost.minutes() / 60;
    }

    private boolean awake() {
        return clockHour >= ColdBox.AWAKE_FROM_HOUR && clockHour < ColdBox.AWAKE_FROM_HOUR + ColdBox.AWAKE_HOURS;
    }

    /** Forgets what was counted; warmth, thermostat and clocks stay. */
    public void countAfresh() {
        usedWh = 0;
        wallWh = 0;
        doorWh = 0;
        heaterWh = 0;
        movedWh = 0;
        airDegCHours = 0;
        compressorH = 0;
        switchedOff = 0;
    }

    public double airDegC() {
        return airDegC;
    }

    public double lumpDegC(int i) {
        return box.contents().get(i).degC(lumpWh[i]);
    }

    /** Share of a lump that has melted, 0 to 1. */
    public double meltedShare(int i) {
        Contents lump = box.contents().get(i);
        return Math.max(0, Math.min(1, lumpWh[i] / lump.kg() / lump.food().meltWhPerKg()));
    }

    /** Of the first lump. */
    public double foodDegC() {
        return lumpDegC(0);
    }

    /** Heat in air and lumps, Wh, from an arbitrary zero. */
    public double heldWh() {
        double held = box.airWhPerK() * airDegC;
        for (double wh : lumpWh) {
            held += wh;
        }
        return held;
    }

    public boolean cooling() {
        return cooling;
    }

    public double usedWh() {
        return usedWh;
    }

    public double wallWh() {
        return wallWh;
    }

    public double doorWh() {
        return doorWh;
    }

    /** Of the defrost heater, as far as it stays inside. */
    public double heaterWh() {
        return heaterWh;
    }

    public double movedWh() {
        return movedWh;
    }

    /** Integral of the air's temperature, degC h. */
    public double airDegCHours() {
        return airDegCHours;
    }

    public double compressorH() {
        return compressorH;
    }

    /** How often the thermostat stopped the compressor. */
    public int switchedOff() {
        return switchedOff;
    }
}
