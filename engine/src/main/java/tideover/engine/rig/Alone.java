package tideover.engine.rig;

import java.util.List;
import tideover.engine.electronics.InverterLoss;
import tideover.engine.electronics.Wave;
import tideover.engine.part.Engine;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.PlainStore;
import tideover.engine.why.Stated;

/**
 * An engine without a battery, as a rig, so that the same rules and the same walk judge it: in the place of the store stands one that
 * never runs dry. How long its fuel lasts is asked elsewhere. It gives alternating current alone; loads of direct current want
 * their own mains adapters.
 */
public final class Alone {
    /** No outage takes so much. */
    private static final double ENDLESS_WH = 1e8;

    /** Of a vehicle whose sockets do not tell. */
    private static final double BUS_V = 12;

    /** More than any engine gives, where its own watts and volt-amperes are the limit. */
    private static final double NO_LIMIT_A = 1e5;

    private static final double LEAD_OHM = 0;

    private Alone() {}

    /** An engine that feeds the loads from its outlets. */
    public static Rig of(Engine engine) {
        boolean itself = engine.habits().startsItself() == Stated.YES;
        InverterRating rating = new InverterRating(
                engine.ratedW(),
                InverterLoss.constant(1, 0),
                BUS_V,
                engine.surge(),
                InverterRating.Window.UNKNOWN,
                Wave.UNKNOWN,
                new InverterRating.Habits(
                        0, Stated.YES, Stated.YES, itself ? engine.habits().untilLoadSeconds() : Double.NaN));
        return rig(List.of(new Chosen(engine, 1)), engine, rating, engine.outlets(), BUS_V, NO_LIMIT_A);
    }

    /**
     * A vehicle that idles, with an inverter at its battery. What its alternator has to spare is all that counts: its starting battery
     * lends nothing, also not for a moment, so that it can start again.
     */
    public static Rig of(Engine vehicle, Inverter inverter) {
        return rig(
                List.of(new Chosen(vehicle, 1), new Chosen(inverter, 1)),
                vehicle,
                inverter.rating(),
                inverter.outlets(),
                batteryV(vehicle),
                vehicle.ratedW() / batteryV(vehicle));
    }

    /** A socket without a converter gives the battery's volts. */
    private static double batteryV(Engine vehicle) {
        return vehicle.outlets().stream()
                .filter(outlet -> outlet.efficiency() == 1)
                .mapToDouble(outlet -> outlet.supply().volts())
                .max()
                .orElse(BUS_V);
    }

    private static Rig rig(
            List<Chosen> chosen,
            Engine engine,
            InverterRating inverter,
            List<Outlet> outlets,
            double busV,
            double mostA) {
        return new Rig(
                Route.READY_BOX,
                chosen,
                new PlainStore(ENDLESS_WH, 1, 1, busV, NO_LIMIT_A, mostA),
                1,
                null,
                0,
                1,
                null,
                inverter,
                null,
                engine,
                outlets,
                new Rig.Leads(LEAD_OHM, 0));
    }

    /** Whether a rig is such an engine. */
    public static boolean is(Rig rig) {
        return rig.engine() != null && rig.mainsCharge() == null;
    }
}
