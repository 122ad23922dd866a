package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.cold.AgencyHours;
import tideover.engine.cold.BoxKind;
import tideover.engine.cold.ColdBox;
import tideover.engine.cold.Contents;
import tideover.engine.cold.Food;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Duty;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.part.Cooler;
import tideover.engine.part.Jug;
import tideover.engine.part.StandIn;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Verdict;

class AidsTest {
    private static final Load LAMP =
            new SteadyLoad("Lamp", Invented.SOCKET, 8, true, new Need.AlwaysOn(), RoomKind.INDOORS);
    private static final Load RADIO =
            new SteadyLoad("Radio", Invented.SOCKET, 3, true, new Need.AlwaysOn(), RoomKind.INDOORS);
    private static final Jug JUG = new Jug(Invented.listing("J", 250, 5.5), "chest freezer", 5);
    private static final StandIn LANTERN = new StandIn(Invented.listing("L", 1800, 0.6), "lamp", 30);

    private static ColdLoad freezer(String name, double foodKg) {
        ColdBox box = ColdBox.ofLabel(
                BoxKind.CHEST_FREEZER, 200, 200, null, null, List.of(Contents.of(Food.LEAN_BEEF, foodKg)));
        return new ColdLoad(
                name,
                Invented.MAINS,
                box,
                new Need.Below(-1.7),
                Duty.AS_IT_NEEDS,
                Double.NaN,
                RoomKind.INDOORS,
                Nature.PLAIN);
    }

    private static ColdLoad fridge(double foodKg, Nature nature) {
        ColdBox box = ColdBox.ofLabel(
                BoxKind.REFRIGERATOR, 150, 250, null, null, List.of(Contents.of(Food.LEAN_BEEF, foodKg)));
        return new ColdLoad(
                "Fridge",
                Invented.MAINS,
                box,
                new Need.HoursAbove(AgencyHours.LIMIT_DEG_C, 4),
                Duty.AS_IT_NEEDS,
                Double.NaN,
                RoomKind.INDOORS,
                nature);
    }

    /** 30 kg in 200 L are three tenths of full; four jugs of 5 kg make it half full, which the agencies give a day. */
    @Test
    void jugsFillAFreezerAndNothingElseMakesItsHoursLonger() {
        ColdLoad bare = freezer("Freezer", 30);
        assertThat(bare.agencyHours()).isCloseTo(24 * 0.3 / 0.5, within(1e-9));
        Load served =
                Aids.served(List.of(new Chosen(JUG, 4)), List.of(LAMP, bare)).get(1);
        assertThat(((ColdLoad) served).box().contents().get(1).kg()).isEqualTo(20);
        assertThat(((ColdLoad) served).box().food()).isEqualTo(bare.box().food());
        assertThat(((ColdLoad) served).agencyHours()).isCloseTo(24, within(1e-9));
        Load more = Aids.served(List.of(new Chosen(JUG, 8)), List.of(bare)).get(0);
        assertThat(((ColdLoad) more).agencyHours()).isCloseTo(24, within(1e-9));
    }

    /** 100 kg is full: 30 kg of food leave room for 14 jugs of 5 kg, and no more. */
    @Test
    void noMoreJugsThanThereIsRoomFor() {
        List<Load> loads = List.of(freezer("Freezer", 30));
        assertThat(Aids.served(List.of(new Chosen(JUG, 14)), loads)).isNotEqualTo(loads);
        assertThat(Aids.served(List.of(new Chosen(JUG, 15)), loads)).isSameAs(loads);
        assertThat(Aids.findings(List.of(new Chosen(JUG, 15)), loads, 24))
                .anyMatch(finding -> finding.rule().equals("aid-place") && finding.verdict() == Verdict.FAIL);
        assertThat(Aids.sets(List.of(JUG), loads, 20, 24)).hasSize(15);
        assertThat(Aids.sets(List.of(JUG), loads, 4, 24)).hasSize(5);
    }

    @Test
    void standInTakesItsLoadAwayAndNoOther() {
        List<Load> loads = List.of(RADIO, LAMP, freezer("Freezer", 30));
        assertThat(Aids.served(List.of(new Chosen(LANTERN, 1)), loads)).containsExactly(RADIO, loads.get(2));
        assertThat(Aids.lastHours(List.of(new Chosen(LANTERN, 3), new Chosen(JUG, 1))))
                .isEqualTo(90);
        assertThat(Aids.lastHours(List.of(new Chosen(JUG, 1)))).isInfinite();
        // one of them lasts 30 h: a day takes one, two days two, and four days more than are at hand
        assertThat(Aids.sets(List.of(LANTERN), loads, 4, 24)).contains(List.of(new Chosen(LANTERN, 1)));
        assertThat(Aids.sets(List.of(LANTERN), loads, 4, 48)).contains(List.of(new Chosen(LANTERN, 2)));
        assertThat(Aids.findings(List.of(new Chosen(LANTERN, 1)), loads, 48))
                .singleElement()
                .matches(finding -> finding.verdict() == Verdict.FAIL);
    }

    @Test
    void aidsAskedTwiceActOnce() {
        List<Load> loads = List.of(RADIO, LAMP, freezer("One", 30), freezer("Two", 30), fridge(8, Nature.PLAIN));
        List<Chosen> aids = List.of(
                new Chosen(JUG, 3),
                new Chosen(new Cooler(Invented.listing("C", 1, 4), "refrigerator", 45, 0.5, 9), 1),
                new Chosen(LANTERN, 1));
        List<Load> once = Aids.served(aids, loads);
        assertThat(once).hasSize(4).contains(loads.get(3)).doesNotContain(loads.get(2), loads.get(4));
        assertThat(Aids.served(aids, once)).isEqualTo(once);
    }

    /** Where somebody's health hangs on it nothing stands in, and no ice is laid beside it. */
    @Test
    void nothingActsOnWhatHealthHangsOn() {
        Nature medical = Nature.PLAIN.with(new Medical(0, "", "me", true, "neighbour's ice"));
        Cooler cooler = new Cooler(Invented.listing("C", 1, 4), "refrigerator", 45, 0.5, 9);
        Load lamp = new SteadyLoad("Lamp", Invented.SOCKET, 8, true, new Need.AlwaysOn(), RoomKind.INDOORS, medical);
        List<Load> loads = List.of(fridge(8, medical), lamp);
        assertThat(Aids.served(List.of(new Chosen(cooler, 1), new Chosen(LANTERN, 1)), loads))
                .isSameAs(loads);
    }

    @Test
    void coolerTakesARefrigeratorsFoodAndNoPlug() {
        Cooler cooler = new Cooler(Invented.listing("C", 1, 4), "Fridge", 45, 0.5, 9);
        ColdLoad bare = fridge(8, Nature.PLAIN);
        ColdLoad moved = (ColdLoad)
                Aids.served(List.of(new Chosen(cooler, 1)), List.<Load>of(bare)).get(0);
        assertThat(moved.plugged()).isFalse();
        assertThat(moved.need()).isEqualTo(bare.need());
        assertThat(moved.box().food()).isEqualTo(bare.box().food());
        assertThat(moved.box().contents().get(1).kg()).isEqualTo(9);
        // 14 kg and 9 kg of ice are more than half of 45 L
        List<Load> much = List.of(fridge(14, Nature.PLAIN));
        assertThat(Aids.served(List.of(new Chosen(cooler, 1)), much)).isSameAs(much);
        List<Load> frozen = List.of(freezer("Fridge", 8));
        assertThat(Aids.served(List.of(new Chosen(cooler, 1)), frozen)).isSameAs(frozen);
    }

    /** 10 kg melting over three days take 10 * 334 / 3.6 = 928 Wh in 72 h at 32.2 K: 0.400 W/K. */
    @Test
    void wallsFromTheDaysThatIceLasts() {
        assertThat(Cooler.wallWPerK(10, 3, 32.2)).isCloseTo(0.4002, within(5e-5));
    }

    @Test
    void aidsStandBesideAnyRig() {
        Rig rig = new Invented(7).rig();
        List<Chosen> chosen = new java.util.ArrayList<>(List.of(new Chosen(JUG, 4), new Chosen(LANTERN, 1)));
        chosen.addAll(rig.chosen());
        Rig aided = Objects.requireNonNull(Assembly.of(chosen).rig());
        assertThat(aided.store()).isEqualTo(rig.store());
        assertThat(aided.massKg()).isCloseTo(rig.massKg() + 4 * 5.5 + 0.6, within(1e-9));
        assertThat(Sockets.of(aided, List.of(LAMP, RADIO)).plugged()).hasSize(1);
        assertThat(Assembly.of(List.of(new Chosen(JUG, 4))).rig()).isNull();
    }

    @Test
    void setsAreEveryChoiceOfEachKindTheEmptyOneFirst() {
        List<Load> loads = List.of(LAMP, RADIO, freezer("Freezer", 30), fridge(8, Nature.PLAIN));
        Cooler cooler = new Cooler(Invented.listing("C", 1, 4), "refrigerator", 45, 0.5, 9);
        StandIn cells = new StandIn(Invented.listing("R", 1, 1), "Radio", 100);
        List<List<Chosen>> sets = Aids.sets(List.of(JUG, cooler, LANTERN, cells), loads, 3, 24);
        assertThat(sets).hasSize(4 * 2 * 2 * 2).doesNotHaveDuplicates().startsWith(List.<Chosen>of());
        assertThat(Aids.countSets(List.of(JUG, cooler, LANTERN, cells), loads, 4, 24))
                .isEqualTo(40);
        assertThat(Aids.sets(List.of(JUG, cooler, LANTERN, cells), loads, 4, 24))
                .hasSize(Aids.MOST_SETS);
    }
}
