package tideover.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.part.Charger;
import tideover.engine.part.Engine;
import tideover.engine.part.Fuel;
import tideover.engine.part.Outlet;
import tideover.engine.part.Part;
import tideover.engine.part.PlainStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.Surge;
import tideover.engine.why.Stated;

/** Which chargers and engines the grammar puts beside a store. */
class CoresTest {
    private static final Invented INVENTED = new Invented(1);
    private static final Charger MAINS = new Charger(Invented.listing("M", 3_000, 1), 10, 12, 14.6, .8, Set.of());
    private static final Charger CAR =
            new Charger(Invented.listing("D", 3_000, 1), 5, 12, 14.6, .8, Set.of(), Invented.SOCKET);
    private static final Engine ENGINE = INVENTED.engine("E", 20_000);
    private static final Engine TRUCK = new Engine(
            Invented.listing("V", 0, 1),
            true,
            200,
            Surge.UNKNOWN,
            List.of(new Outlet(Invented.SOCKET, 1, 120, 1)),
            new Fuel(Fuel.Kind.PETROL, 40, 105, 6),
            Engine.Burn.atIdle(1.2),
            Engine.Habits.UNKNOWN);

    private static ReadyBox box(double mainsChargeW) {
        return new ReadyBox(
                Invented.listing("BX", 20_000, 8),
                new PlainStore(500, .97, .96, 12.8, 20, 45),
                null,
                null,
                List.of(),
                mainsChargeW,
                Stated.UNKNOWN);
    }

    private static List<String> ids(boolean chargers, Part... parts) {
        List<String> ids = new ArrayList<>();
        Cores.forEach(
                List.of(parts),
                new Grammar(1, 1, chargers),
                core -> ids.add(String.join(
                        "+",
                        core.chosen().stream()
                                .map(one -> one.part().listing().id())
                                .toList())));
        return ids;
    }

    @Test
    void everyPairOfAChargerAndWhatFeedsIt() {
        assertThat(ids(false, INVENTED.battery("B", 500, 9_000), MAINS, CAR, ENGINE, TRUCK))
                .containsExactlyInAnyOrder("B", "B+M+E", "B+D+V");
    }

    @Test
    void chargersAloneWhereThePlanFeedsThem() {
        assertThat(ids(true, INVENTED.battery("B", 500, 9_000), MAINS, CAR, ENGINE, TRUCK))
                .containsExactlyInAnyOrder("B", "B+M", "B+M+E", "B+D+V");
    }

    @Test
    void aBoxWithItsOwnChargerTakesAnEngine() {
        assertThat(ids(false, box(200), ENGINE, TRUCK)).containsExactlyInAnyOrder("BX", "BX+E");
        assertThat(ids(false, box(0), ENGINE, TRUCK)).containsExactly("BX");
    }
}
