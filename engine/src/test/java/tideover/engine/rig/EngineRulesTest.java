package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Tending;
import tideover.engine.part.Charger;
import tideover.engine.part.Engine;
import tideover.engine.part.Fuel;
import tideover.engine.part.Outlet;
import tideover.engine.part.Part;
import tideover.engine.part.PlainStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.Surge;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/** Engines beside a rig: 1000 W, .28, .45 and .72 L/h, a tank of 2.6 L, as worked by hand on the models page. */
class EngineRulesTest {
    private static final Outage OUTAGE = new Outage(List.of(0), 36, .9, 1, 0, 1);
    private static final Supply CAR = Invented.SOCKET;

    private static Engine engine(double ratedW, Supply supply, double outletW, Stated startsItself) {
        return new Engine(
                Invented.listing("E", 20_000, 14),
                false,
                ratedW,
                Surge.UNKNOWN,
                List.of(new Outlet(supply, 2, outletW, 1)),
                new Fuel(Fuel.Kind.PETROL, 2.6, 105, 6),
                new Engine.Burn(.28, .45, .72),
                new Engine.Habits(58, 60, startsItself, 100, 1800));
    }

    private static Engine engine() {
        return engine(1000, Invented.MAINS, 1000, Stated.NO);
    }

    private static Engine truck(double ratedW, double socketsW) {
        return new Engine(
                Invented.listing("V", 0, 1),
                true,
                ratedW,
                Surge.UNKNOWN,
                List.of(new Outlet(CAR, 2, socketsW, 1)),
                new Fuel(Fuel.Kind.PETROL, 40, 105, 6),
                Engine.Burn.atIdle(1.2),
                Engine.Habits.UNKNOWN);
    }

    private static Charger charger(double amps, @Nullable Supply fedBy) {
        return new Charger(Invented.listing("M", 3_000, 1), amps, 12, 14.6, .80, Set.of(), fedBy);
    }

    private static Rig rig(Part... more) {
        return Objects.requireNonNull(assembled(more).rig());
    }

    private static Assembly.Result assembled(Part... more) {
        List<Chosen> chosen = new ArrayList<>();
        chosen.add(new Chosen(new Invented(1).battery("B", 900, 10_000), 1));
        for (Part part : more) {
            chosen.add(new Chosen(part, 1));
        }
        return Assembly.of(chosen);
    }

    private static Optional<Finding> finding(Rig rig, Outage outage, String rule) {
        Site site = new Site(-10, false, RoomKind.SHED, null, false, outage);
        return RuleBook.partFindings(rig, site).stream()
                .filter(one -> one.rule().equals(rule))
                .peek(Finding::sentence)
                .findFirst();
    }

    private static Optional<Verdict> verdict(Rig rig, String rule) {
        return finding(rig, OUTAGE, rule).map(Finding::verdict);
    }

    /** 160 W are .16 of its rating: .3344 L/h; 36 h begun at 18:00 hold eight engine hours. */
    @Test
    void fuelIsAsWorkedByHand() {
        FuelUse use = Objects.requireNonNull(FuelUse.of(rig(charger(10, Invented.MAINS), engine()), OUTAGE));
        assertThat(use.drawnW()).isCloseTo(160, within(1e-9));
        assertThat(use.hours()).isCloseTo(8, within(1e-9));
        assertThat(use.litres()).isCloseTo(8 * .3344, within(1e-9));
        assertThat(use.refills()).isEqualTo(1);
        assertThat(use.cents()).isEqualTo(281);
    }

    @Test
    void whatBurnsNothingOrFeedsNothingHasNoFuel() {
        assertThat(FuelUse.of(rig(charger(10, null)), OUTAGE)).isNull();
        assertThat(assembled(engine()).faults()).containsExactly("E has no charger to feed.");
        assertThat(assembled(charger(10, null), engine(), truck(200, 200)).faults())
                .containsExactly("V is a second engine or vehicle; a rig has one.");
    }

    @Test
    void aBoxMayBeFedThroughItsOwnCharger() {
        ReadyBox box = new ReadyBox(
                Invented.listing("BX", 20_000, 8),
                new PlainStore(500, .97, .96, 12.8, 20, 45),
                null,
                null,
                List.of(),
                200,
                Stated.UNKNOWN);
        Rig rig = Objects.requireNonNull(Assembly.of(List.of(new Chosen(box, 1), new Chosen(engine(), 1)))
                .rig());
        assertThat(verdict(rig, "engine-plug")).contains(Verdict.CAUTION);
        assertThat(verdict(rig, "engine-watts")).contains(Verdict.PASS);
        assertThat(rig.isHelped(OUTAGE)).isTrue();
    }

    @Test
    void theMostHoursInAnyOutageAreFound() {
        Tending usual = Tending.USUAL;
        assertThat(usual.mostHours(3)).isEqualTo(3);
        assertThat(usual.mostHours(14)).isEqualTo(5);
        assertThat(usual.mostHours(13)).isEqualTo(4);
        assertThat(usual.mostHours(72)).isEqualTo(15);
        assertThat(new Tending(List.of(DayWindow.ALL_DAY), 0).mostHours(30)).isEqualTo(30);
    }

    @Test
    void theChargerGoesIntoAnOutlet() {
        assertThat(verdict(rig(charger(10, Invented.MAINS), engine()), "engine-plug"))
                .contains(Verdict.PASS);
        assertThat(verdict(rig(charger(10, null), engine()), "engine-plug")).contains(Verdict.CAUTION);
        assertThat(verdict(rig(charger(10, Supply.ac(230, 50, "F")), engine()), "engine-plug"))
                .contains(Verdict.FAIL);
        assertThat(verdict(rig(charger(5, CAR), engine()), "engine-plug")).contains(Verdict.FAIL);
        assertThat(verdict(rig(charger(5, CAR), truck(200, 240)), "engine-plug"))
                .contains(Verdict.PASS);
        assertThat(verdict(rig(charger(5, null), truck(200, 240)), "engine-plug"))
                .contains(Verdict.FAIL);
    }

    /** 128 W into the store are 160 W from the engine; 64 W are 80 W. */
    @Test
    void theChargerDrawsNoMoreThanIsGiven() {
        assertThat(verdict(rig(charger(10, null), engine(160.1, Invented.MAINS, 500, Stated.NO)), "engine-watts"))
                .contains(Verdict.PASS);
        assertThat(verdict(rig(charger(10, null), engine(159.9, Invented.MAINS, 500, Stated.NO)), "engine-watts"))
                .contains(Verdict.FAIL);
        assertThat(verdict(rig(charger(10, null), engine(500, Invented.MAINS, 159.9, Stated.NO)), "engine-watts"))
                .contains(Verdict.FAIL);
        // Two sockets of 160 W together: one carries 80 W.
        assertThat(verdict(rig(charger(5, CAR), truck(200, 160.1)), "engine-watts"))
                .contains(Verdict.PASS);
        assertThat(verdict(rig(charger(5, CAR), truck(200, 159.9)), "engine-watts"))
                .contains(Verdict.FAIL);
    }

    /** 160 W at .65 W a volt-ampere are 246 VA. */
    @Test
    void peaksOfTheChargerAreMinded() {
        assertThat(verdict(rig(charger(10, null), engine(247, Invented.MAINS, 500, Stated.NO)), "engine-va"))
                .contains(Verdict.PASS);
        assertThat(verdict(rig(charger(10, null), engine(246, Invented.MAINS, 500, Stated.NO)), "engine-va"))
                .contains(Verdict.CAUTION);
    }

    /** 2.675 L for an outage, of which 2.6 L are in the tank. */
    @Test
    void fuelHasToBeThere() {
        Rig rig = rig(charger(10, null), engine());
        Outage enough = OUTAGE.with(new Tending(Tending.USUAL.engineHours(), .08));
        Outage tooLittle = OUTAGE.with(new Tending(Tending.USUAL.engineHours(), .07));
        assertThat(finding(rig, enough, "engine-fuel").map(Finding::verdict)).contains(Verdict.PASS);
        assertThat(finding(rig, tooLittle, "engine-fuel").map(Finding::verdict)).contains(Verdict.FAIL);
        assertThat(verdict(rig, "engine-refill")).contains(Verdict.CAUTION);
        assertThat(verdict(rig, "fuel-storage")).contains(Verdict.CAUTION);
        assertThat(verdict(rig, "engine-outdoors")).contains(Verdict.CAUTION);
        assertThat(verdict(rig(charger(10, null)), "engine-outdoors")).isEmpty();
    }

    @Test
    void nobodysHealthHangsOnAnEngineThatNobodyStarts() {
        assertThat(medical(engine(), true)).containsExactly(Verdict.CAUTION);
        assertThat(medical(engine(), false)).containsExactly(Verdict.FAIL);
        assertThat(medical(engine(1000, Invented.MAINS, 1000, Stated.UNKNOWN), false))
                .containsExactly(Verdict.FAIL);
        assertThat(medical(engine(1000, Invented.MAINS, 1000, Stated.YES), false))
                .isEmpty();
    }

    private static List<Verdict> medical(Engine engine, boolean able) {
        Load pump = new SteadyLoad(
                "pump",
                CAR,
                10,
                true,
                new Need.AlwaysOn(),
                RoomKind.INDOORS,
                new Nature(1, null, false, false).with(new Medical(600, "beeps", "a neighbour", able, "the clinic")));
        return RuleBook.loadFindings(rig(charger(10, null), engine), List.of(pump)).stream()
                .filter(one -> one.rule().equals("medical-engine"))
                .peek(Finding::sentence)
                .map(Finding::verdict)
                .toList();
    }
}
