package tideover.engine.answer;

import tideover.engine.part.Engine;

/**
 * What an engine costs from year to year while it waits: fuel that ages and is bought anew, and one service a year where its price is
 * told (oil ages too; common practice, no source). What a vehicle has in its tank is used up on the road, and so is its service.
 */
final class EngineStandby {
    private static final double MONTHS_A_YEAR = 12;

    private EngineStandby() {}

    /** @param litres kept ready for one outage */
    static double centsPerYear(Engine engine, double litres) {
        double agingL = engine.vehicle() ? Math.max(0, litres - engine.fuel().tankL()) : litres;
        // Fuel that does not age divides by infinity.
        double fuelCents = agingL
                * engine.fuel().centsPerL()
                * MONTHS_A_YEAR
                / engine.fuel().keepsMonths();
        double serviceCents = engine.vehicle() || Double.isNaN(engine.habits().serviceCents())
                ? 0
                : engine.habits().serviceCents();
        return fuelCents + serviceCents;
    }
}
