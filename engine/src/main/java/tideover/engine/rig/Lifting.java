package tideover.engine.rig;

/**
 * What one person should lift: the revised lifting equation of NIOSH (Waters, Putz-Anderson &amp; Garg 1994, NIOSH 94-110, revised
 * 2021), {@code RWL = LC HM VM DM AM FM CM}: load constant; multipliers of the horizontal distance H of the hands from the
 * ankles, their height V at the origin, the way D up or down, the twist A, how often, and how good the grip is.
 *
 * <p>Valid for two hands, standing, smoothly, on a floor that does not slip, with no carrying. Beyond H 63, V 175, D 175 cm or
 * 135 degrees nothing should be lifted (from memory). It is for <em>one</em> person and must not be multiplied by two:
 * the weight is never shared evenly, and one slips.
 */
public final class Lifting {
    /** The most for one person in the best posture, kg. */
    public static final double LOAD_CONSTANT_KG = 23;

    /** From the floor to a bench, the box held close to a bent knee. Common practice, no source. */
    static final Posture FLOOR_TO_BENCH = new Posture(40, 20, 70, 0);

    /** Good grip, and not often. */
    static final double ONE = 1;

    private static final double MOST_TWIST_DEG = 135;

    private Lifting() {}

    /**
     * How it is lifted, in the length of its {@link Form}.
     *
     * @param horizontal hands from the middle between the ankles
     * @param vertical   hands above the floor where the lift begins
     * @param travel     way up or down
     * @param twistDeg   angle between feet and load
     */
    record Posture(double horizontal, double vertical, double travel, double twistDeg) {}

    /**
     * The equation is printed twice, with constants that are rounded apart; they differ by some 2 %. Ours is the metric one; the other
     * lets printed examples in inches be worked.
     */
    enum Form {
        /** cm and kg. */
        METRIC(LOAD_CONSTANT_KG, 25, .003, 75, 4.5, 63, 175),
        /** Inches and pounds. */
        INCH(51, 10, .0075, 30, 1.8, 25, 70);

        private final double loadConstant;
        private final double close;
        private final double verticalSlope;
        private final double knuckle;
        private final double travelTerm;
        private final double farthest;
        private final double highest;

        Form(
                double loadConstant,
                double close,
                double verticalSlope,
                double knuckle,
                double travelTerm,
                double farthest,
                double highest) {
            this.loadConstant = loadConstant;
            this.close = close;
            this.verticalSlope = verticalSlope;
            this.knuckle = knuckle;
            this.travelTerm = travelTerm;
            this.farthest = farthest;
            this.highest = highest;
        }

        double horizontal(double distance) {
            return distance > farthest ? 0 : Math.min(1, close / distance);
        }

        double vertical(double height) {
            return height < 0 || height > highest ? 0 : 1 - verticalSlope * Math.abs(height - knuckle);
        }

        double travel(double way) {
            return way > highest ? 0 : Math.min(1, .82 + travelTerm / way);
        }
    }

    /**
     * The recommended weight limit, in the form's unit.
     *
     * @param frequency FM, 1 for a lift now and then
     * @param grip      CM, 1 for good handles, .95 fair, .90 poor
     */
    static double limit(Form form, Posture posture, double frequency, double grip) {
        double twist = posture.twistDeg() > MOST_TWIST_DEG ? 0 : 1 - .0032 * posture.twistDeg();
        return form.loadConstant
                * form.horizontal(posture.horizontal())
                * form.vertical(posture.vertical())
                * form.travel(posture.travel())
                * twist
                * frequency
                * grip;
    }

    /** The most for one person from the floor to a bench, now and then, with good handles, kg. */
    public static double floorToBenchKg() {
        return limit(Form.METRIC, FLOOR_TO_BENCH, ONE, ONE);
    }

    /** Whether something of the rig is moved that nobody should lift from the floor: a hand truck or a hoist is needed. */
    public static boolean needsWheels(Rig rig) {
        return rig.heaviestMovedKg() > floorToBenchKg();
    }
}
