package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.battery.Chemistry;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Outage;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Surge;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.why.Stated;

/** A lead battery near full, in steps so long that its first well dips and fills again within one. */
class FullLeadTest {
    private static final double NOON = 12.2;

    @Test
    void neverHoldsMoreThanFull() {
        Weather weather = new Invented(7).weather(1);
        YearsShelf shelf = new YearsShelf(weather, Invented.plane(weather), weather.airDegC());
        Outage outage = new Outage(List.of(2, 3, 5), 48, 0.9, 0.95, 0, 1);
        int nearFull = 0;
        for (Chemistry chemistry : List.of(Chemistry.FLOODED_LEAD, Chemistry.GEL_LEAD, Chemistry.AGM_LEAD)) {
            for (int watts = 10; watts <= 80; watts += 10) {
                Rig rig = rig(chemistry, watts);
                double fullWh = CellBank.of((RatedStore) rig.store()).fullWh();
                Walk walk = Setup.of(rig, List.of(load()), shelf, NOON, 1, outage)
                        .walks(48)
                        .get();
                for (int day = 60; day < 180; day++) {
                    walk.onto(new Stretch(24 * day, 24, 48));
                    for (int hours = 1; hours <= 48; hours++) {
                        Ledger ledger = new Ledger();
                        walk.account(7, hours, ledger, null);
                        nearFull += ledger.endWh() > 0.999 * fullWh ? 1 : 0;
                        assertThat(ledger.endWh())
                                .as("%s, %d W of panel, day %d, hour %d", chemistry, watts, day, hours)
                                .isLessThanOrEqualTo(fullWh * (1 + 1e-9));
                    }
                }
            }
        }
        assertThat(nearFull).as("hours that end near full").isGreaterThan(1000);
    }

    private static Load load() {
        return new SteadyLoad("load", Invented.SOCKET, 2, true, new Need.AlwaysOn(), RoomKind.INDOORS);
    }

    private static Rig rig(Chemistry chemistry, double panelW) {
        RatedStore store = new RatedStore(
                chemistry,
                RatedStore.Capacity.of(20, 20),
                12,
                Double.NaN,
                10,
                30,
                new RatedStore.Guard(Surge.UNKNOWN, Double.NaN, Stated.UNKNOWN),
                RatedStore.Heater.NONE,
                0.9,
                new RatedStore.Worth(0.95, 1),
                6);
        List<Chosen> chosen = new ArrayList<>();
        chosen.add(new Chosen(new Battery(Invented.listing("B", 10_000, 6), store, 1), 1));
        chosen.add(new Chosen(
                new ChargeController(
                        Invented.listing("C", 2_000, 1),
                        new ControllerRating(
                                20,
                                100,
                                12,
                                24,
                                0.97,
                                tideover.engine.electronics.Tracking.BEST_POINT,
                                ControllerRating.PanelInput.UNKNOWN,
                                Set.of()),
                        List.of(new Outlet(Invented.SOCKET, 1, 100, 1))),
                1));
        chosen.add(new Chosen(Invented.panel("P", panelW, 5_000), 1));
        return Objects.requireNonNull(Assembly.of(chosen).rig());
    }
}
