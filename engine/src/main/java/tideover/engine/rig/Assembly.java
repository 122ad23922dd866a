package tideover.engine.rig;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Engine;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.Panel;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.SocketBoard;
import tideover.engine.part.Store;

/**
 * Turns a choice of parts into a rig, or says why the parts are no rig. A rig has one store (a ready-made box, or
 * batteries of one kind), at most one kind of panel, one controller and one inverter, whether built in or separate, and at most one
 * engine, to feed its charger. Aids may stand beside anything.
 */
public final class Assembly {
    /** A small switching charger. Common practice, no source. */
    private static final double BOX_CHARGER_EFFICIENCY = 0.88;

    private final List<String> faults = new ArrayList<>();
    private @Nullable ReadyBox box;
    private @Nullable Enclosure enclosure;
    private @Nullable Battery battery;
    private int batteryCount;
    private @Nullable Panel panel;
    private int panelCount;
    private @Nullable ControllerRating controller;
    private @Nullable InverterRating inverter;
    private @Nullable Charger charger;
    private @Nullable Engine engine;
    private final List<Outlet> outlets = new ArrayList<>();

    private Assembly() {}

    /**
     * What came of it.
     *
     * @param rig    null where there are faults
     * @param faults plain sentences
     */
    public record Result(@Nullable Rig rig, List<String> faults) {
        public Result {
            faults = List.copyOf(faults);
        }
    }

    public static Result of(List<Chosen> chosen) {
        Assembly assembly = new Assembly();
        chosen.forEach(assembly::take);
        return assembly.finish(chosen);
    }

    private void take(Chosen chosen) {
        String id = chosen.part().listing().id();
        if (chosen.part() instanceof ReadyBox taken) {
            single(chosen, box != null || enclosure != null, "a second box or enclosure");
            box = taken;
            electronics(id, taken.controller(), taken.inverter(), taken.outlets());
        } else if (chosen.part() instanceof Enclosure taken) {
            single(chosen, box != null || enclosure != null, "a second box or enclosure");
            enclosure = taken;
            electronics(id, taken.controller(), taken.inverter(), taken.outlets());
        } else if (chosen.part() instanceof Battery taken) {
            if (battery != null) {
                faults.add(id + " is a second kind of battery; a bank is made of one kind."
                        + " Batteries unlike in age, size or chemistry must not stand side by side.");
            }
            battery = taken;
            batteryCount = chosen.count();
        } else if (chosen.part() instanceof Panel taken) {
            if (panel != null) {
                faults.add(id + " is a second kind of panel; an array is made of one kind.");
            }
            panel = taken;
            panelCount = chosen.count();
        } else if (chosen.part() instanceof ChargeController taken) {
            single(chosen, false, "");
            electronics(id, taken.rating(), null, taken.outlets());
        } else if (chosen.part() instanceof Inverter taken) {
            single(chosen, false, "");
            electronics(id, null, taken.rating(), taken.outlets());
        } else if (chosen.part() instanceof Charger taken) {
            single(chosen, charger != null, "a second charger");
            charger = taken;
        } else if (chosen.part() instanceof SocketBoard taken) {
            single(chosen, false, "");
            outlets.addAll(taken.outlets());
        } else if (chosen.part() instanceof Engine taken) {
            single(chosen, engine != null, "a second engine or vehicle");
            engine = taken;
        }
    }

    private void single(Chosen chosen, boolean already, String what) {
        if (already) {
            faults.add(chosen.part().listing().id() + " is " + what + "; a rig has one.");
        }
        if (chosen.count() > 1) {
            faults.add(chosen.part().listing().id() + " is taken " + chosen.count()
                    + " times; only panels and batteries may be.");
        }
    }

    private void electronics(
            String id,
            @Nullable ControllerRating newController,
            @Nullable InverterRating newInverter,
            List<Outlet> more) {
        if (newController != null && controller != null) {
            faults.add(id + " brings a second charge controller; a rig has one.");
        }
        if (newInverter != null && inverter != null) {
            faults.add(id + " brings a second inverter; a rig has one.");
        }
        controller = newController == null ? controller : newController;
        inverter = newInverter == null ? inverter : newInverter;
        outlets.addAll(more);
    }

    private Result finish(List<Chosen> chosen) {
        Store store = null;
        int inSeries = 1;
        Route route = Route.SEPARATE_PARTS;
        if (box != null) {
            store = box.store();
            route = Route.READY_BOX;
            if (battery != null) {
                faults.add(battery.listing().id() + " has no place: "
                        + box.listing().id() + " has its battery inside.");
            }
        } else if (battery != null) {
            inSeries = batteriesInSeries(battery);
            store = battery.store().bank(inSeries, batteryCount / inSeries);
            route = enclosure != null ? Route.ENCLOSURE : Route.SEPARATE_PARTS;
        } else {
            faults.add("There is no store: neither a box nor a battery.");
        }
        if (panel != null && controller == null) {
            faults.add(panel.listing().id() + " has no charge controller to feed.");
        }
        Rig.MainsCharge mainsCharge = store == null ? null : mainsCharge(store.nominalV());
        if (engine != null && mainsCharge == null) {
            faults.add(engine.listing().id() + " has no charger to feed.");
        }
        if (store == null || !faults.isEmpty()) {
            return new Result(null, faults);
        }
        Rig rig = new Rig(
                route,
                chosen,
                store,
                inSeries,
                panel,
                panelCount,
                panelsInSeries(store.nominalV()),
                controller,
                inverter,
                mainsCharge,
                engine,
                outlets,
                new Rig.Leads(route.guessedLeadOhm(), 0));
        return new Result(rig, List.of());
    }

    /** So many in a row as reach the volts that the enclosure or the inverter wants, if the count can be shared out. */
    private int batteriesInSeries(Battery one) {
        double wantedV = enclosure != null
                ? enclosure.batteryV()
                : inverter != null ? inverter.inputV() : one.store().nominalV();
        int series = (int) Math.max(1, Math.round(wantedV / one.store().nominalV()));
        return batteryCount % series == 0 ? series : 1;
    }

    /** The shortest string whose volts let the controller charge, if the panels can be shared out; else side by side. */
    private int panelsInSeries(double busV) {
        if (panel == null || controller == null) {
            return 1;
        }
        for (int series = 1; series <= panelCount; series++) {
            if (panelCount % series == 0 && PanelVolts.reach(panel, series, controller, busV)) {
                return series;
            }
        }
        return 1;
    }

    private Rig.@Nullable MainsCharge mainsCharge(double busV) {
        double engineW = engine == null ? 0 : engine.ratedW();
        if (charger != null) {
            return new Rig.MainsCharge(charger.maxOutputA() * busV, charger.efficiency(), !charger.isDirect(), engineW);
        }
        return box != null && box.mainsChargeW() > 0
                ? new Rig.MainsCharge(box.mainsChargeW(), BOX_CHARGER_EFFICIENCY, true, engineW)
                : null;
    }

    /** The charger by itself; null where there is none. */
    static @Nullable Charger charger(Rig rig) {
        return rig.chosen().stream()
                .filter(one -> one.part() instanceof Charger)
                .map(one -> (Charger) one.part())
                .findFirst()
                .orElse(null);
    }

    static @Nullable Enclosure enclosure(Rig rig) {
        return rig.chosen().stream()
                .filter(one -> one.part() instanceof Enclosure)
                .map(one -> (Enclosure) one.part())
                .findFirst()
                .orElse(null);
    }

    /** The batteries by themselves; null for a ready-made box. */
    static @Nullable Chosen bank(Rig rig) {
        return rig.chosen().stream()
                .filter(one -> one.part() instanceof Battery)
                .findFirst()
                .orElse(null);
    }

    static double enclosureV(Rig rig) {
        Enclosure enclosure = enclosure(rig);
        return enclosure == null ? Double.NaN : enclosure.batteryV();
    }

    static int parallelLimit(Rig rig) {
        Chosen bank = bank(rig);
        return bank == null ? 1 : ((Battery) bank.part()).mostInParallel();
    }

    static int seriesLimit(Rig rig) {
        Chosen bank = bank(rig);
        return bank == null ? 1 : ((Battery) bank.part()).mostInSeries();
    }

    static int batteriesIn(Rig rig) {
        Chosen bank = bank(rig);
        return bank == null ? 1 : bank.count();
    }
}
