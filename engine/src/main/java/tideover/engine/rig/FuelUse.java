package tideover.engine.rig;

import org.jspecify.annotations.Nullable;
import tideover.engine.outage.Outage;
import tideover.engine.part.Engine;

/**
 * What a rig's own engine burns in one outage at most: it runs through all of the plan's engine hours in the outage that has most of
 * them, and its charger draws what it draws at full current all the time. Nobody need run it so long once the store is full, and
 * a charger draws less towards the end; neither is counted on.
 *
 * @param hours   that it runs
 * @param drawnW  by the charger
 * @param litres  burnt
 * @param refills how often its tank is filled again
 * @param cents   price of those litres, whole cents
 */
public record FuelUse(double hours, double drawnW, double litres, int refills, long cents) {
    /** Null where the rig has no engine, or none that feeds it. */
    public static @Nullable FuelUse of(Rig rig, Outage outage) {
        Engine engine = rig.engine();
        Rig.MainsCharge charge = rig.mainsCharge();
        if (engine == null || charge == null) {
            return null;
        }
        double drawnW = Math.min(engine.ratedW(), charge.drawnW());
        double hours = outage.tending().mostHours(outage.hours());
        return of(engine, hours, drawnW, hours * engine.litresPerH(drawnW));
    }

    /** Of an engine that burns so much. */
    public static FuelUse of(Engine engine, double hours, double drawnW, double litres) {
        return new FuelUse(
                hours,
                drawnW,
                litres,
                (int) Math.max(0, Math.ceil(litres / engine.fuel().tankL() - 1e-9) - 1),
                engine.fuel().cents(litres));
    }
}
