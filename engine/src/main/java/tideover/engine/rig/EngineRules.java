package tideover.engine.rig;

import static tideover.engine.why.Finding.atMost;
import static tideover.engine.why.Finding.inWords;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.load.Supply;
import tideover.engine.outage.Outage;
import tideover.engine.part.Charger;
import tideover.engine.part.Engine;
import tideover.engine.part.Fuel;
import tideover.engine.part.Outlet;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/**
 * Whether a rig's own engine suits the charger that it feeds, whether its fuel lasts and may be kept, and who starts it. That it runs
 * outdoors only stands with the place.
 */
final class EngineRules {
    /** Watts per volt-ampere that a charger without correction takes. Common practice, no source. */
    static final double CHARGER_POWER_FACTOR = 0.65;

    private EngineRules() {}

    static void find(Rig rig, Site site, List<Finding> found) {
        Engine engine = rig.engine();
        Rig.MainsCharge charge = rig.mainsCharge();
        if (engine == null || charge == null) {
            return;
        }
        Charger charger = Assembly.charger(rig);
        Supply fedBy = charger == null ? null : charger.fedBy();
        Optional<Outlet> outlet = outlet(engine, fedBy);
        plug(engine, charge, fedBy, outlet, found);
        outlet.ifPresent(one -> watts(engine, charge, one, found));
        Outage outage = site.outage();
        FuelUse use = outage == null ? null : FuelUse.of(rig, outage);
        if (outage != null && use != null) {
            fuel(engine, use, outage.tending().storedL(), found);
        }
        storage(engine, found);
    }

    /** The outlet that the charger is plugged into. One whose plug is not told goes into any outlet for the mains. */
    private static Optional<Outlet> outlet(Engine engine, @Nullable Supply fedBy) {
        return engine.outlets().stream()
                .filter(one -> fedBy == null ? one.supply().isAc() : Sockets.fits(fedBy, one.supply()))
                .findFirst();
    }

    private static void plug(
            Engine engine,
            Rig.MainsCharge charge,
            @Nullable Supply fedBy,
            Optional<Outlet> outlet,
            List<Finding> found) {
        boolean told = fedBy != null;
        found.add(inWords(
                "engine-plug",
                outlet.isEmpty() ? Verdict.FAIL : told ? Verdict.PASS : Verdict.CAUTION,
                told ? Basis.MAKER : Basis.GUESS,
                told ? "parts file" : "not told in the parts file",
                outlet.isEmpty()
                        ? "The charger is fed by %1$s; no outlet of %2$s is that."
                        : told
                                ? "The charger, fed by %1$s, goes into an outlet of %2$s."
                                : "What plug the charger has is not told: see that it goes into an outlet of %2$s, with its volts"
                                        + " and hertz, without an adapter.",
                fedBy != null ? fedBy.words() : charge.fromMains() ? "the mains" : "direct current",
                engine.listing().name()));
    }

    private static void watts(Engine engine, Rig.MainsCharge charge, Outlet outlet, List<Finding> found) {
        double eachW = outlet.maxW() / outlet.count();
        // The watts told of AC outlets are what all of them give together, on whichever of them it is drawn.
        double mostW = Math.min(engine.ratedW(), outlet.supply().isAc() ? outlet.maxW() : eachW);
        found.add(atMost(
                "engine-watts",
                Verdict.FAIL,
                charge.drawnW(),
                mostW,
                "W",
                Basis.MAKER,
                "parts file",
                "The charger draws %.0f W at its full current; %s gives %.0f W on the outlet it is plugged into.",
                charge.drawnW(),
                engine.listing().name(),
                mostW));
        if (outlet.supply().isAc()) {
            double va = charge.drawnW() / CHARGER_POWER_FACTOR;
            found.add(atMost(
                    "engine-va",
                    Verdict.CAUTION,
                    va,
                    engine.mostVa(),
                    "VA",
                    Basis.COMMON_PRACTICE,
                    "a charger without correction takes .65 W for each volt-ampere, and most as it is switched on",
                    "The charger may take %.0f VA, for a charger draws in peaks; %s gives %.0f VA. If it trips or hunts, set the"
                            + " charger to less current.",
                    va,
                    engine.listing().name(),
                    engine.mostVa()));
        }
    }

    private static void fuel(Engine engine, FuelUse use, double storedL, List<Finding> found) {
        double tankL = engine.fuel().tankL();
        found.add(atMost(
                "engine-fuel",
                Verdict.FAIL,
                use.litres(),
                tankL + storedL,
                "L",
                Basis.YOURS,
                "fuel stored in the plan, and the tank in the parts file",
                "%s runs %.1f h of the longest outage asked and burns %.1f L of %s; %.1f L are in its tank and %.1f L may be stored.",
                engine.listing().name(),
                use.hours(),
                use.litres(),
                engine.fuel().kind().words(),
                tankL,
                storedL));
        if (use.refills() > 0) {
            found.add(inWords(
                    "engine-refill",
                    Verdict.CAUTION,
                    Basis.COMMON_PRACTICE,
                    "fuel on a hot engine burns",
                    "%s is filled again %d times in an outage: switched off, cooled down, outdoors, nothing burning near.",
                    engine.listing().name(),
                    use.refills()));
        }
        double serviceH = engine.habits().serviceHours();
        if (use.hours() > serviceH) {
            found.add(inWords(
                    "engine-service",
                    Verdict.CAUTION,
                    Basis.MAKER,
                    "parts file",
                    "%s runs %.0f h in an outage and wants a service every %.0f h: have its oil there.",
                    engine.listing().name(),
                    use.hours(),
                    serviceH));
        }
    }

    /** What concerns the cans, whatever the engine. */
    private static void storage(Engine engine, List<Finding> found) {
        Fuel fuel = engine.fuel();
        boolean ages = !Double.isInfinite(fuel.keepsMonths());
        found.add(inWords(
                "fuel-storage",
                Verdict.CAUTION,
                Basis.COMMON_PRACTICE,
                "local fire codes and insurers limit what a household stores",
                "Local codes and insurers limit how much %s a household may store, and where: ask before buying cans. In cans made"
                        + " for it, outside living rooms, away from flames and pilot lights%s.",
                fuel.kind().words(),
                ages ? "; used up and bought anew every " + PlainNumber.of(fuel.keepsMonths()) + " months" : ""));
    }

    /** What hangs on somebody's health must not wait for an engine that nobody may start. */
    static void medical(Rig rig, List<Load> loads, List<Finding> found) {
        Engine engine = rig.engine();
        if (engine == null || engine.habits().startsItself() == Stated.YES) {
            return;
        }
        for (Load load : loads) {
            Medical medical = load.nature().medical();
            if (medical != null && load.plugged()) {
                found.add(inWords(
                        "medical-engine",
                        medical.someoneAble() ? Verdict.CAUTION : Verdict.FAIL,
                        medical.someoneAble() ? Basis.COMMON_PRACTICE : Basis.YOURS,
                        medical.someoneAble() ? "engines fail to start" : "the plan",
                        medical.someoneAble()
                                ? "%s hangs on %s being started by hand in time, day after day: engines fail to start. Try it every"
                                        + " month, and know how long the battery lasts without it."
                                : "%s would hang on %s being started by hand, and nobody is named who is always there and able to.",
                        load.name(),
                        engine.listing().name()));
            }
        }
    }
}
