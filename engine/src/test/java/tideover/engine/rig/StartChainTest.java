package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tideover.engine.rig.RigKit.alone;
import static tideover.engine.rig.RigKit.freeMotor;
import static tideover.engine.rig.RigKit.lamp;
import static tideover.engine.rig.RigKit.motor;
import static tideover.engine.rig.RigKit.rig;
import static tideover.engine.rig.RigKit.start;
import static tideover.engine.rig.RigKit.timedMotor;

import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.battery.Chemistry;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.part.Battery;
import tideover.engine.part.PlainStore;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Surge;
import tideover.engine.quantity.Curve;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

class StartChainTest {
    private static final double WARM_DEG_C = 25;

    /**
     * AGM, 12 V, 100 Ah, 5 milliohm, leads 6 milliohm. 900 VA at a power factor of .6 are 540 W; through nine tenths with 6 W
     * standing, 606 W. Full and warm the battery's resistance is .8 of that half full: 4 + 6 = 10 milliohm behind 12.65 V.
     * I = 2 x 606 / (12.65 + sqrt(12.65^2 - 4 x .010 x 606)) = 1212 / (12.65 + 11.65258) = 49.871 A, and 12.65 - .49871 =
     * 12.1513 V are left. At the cut-off of 10.5 V it would give 10.5 x 2.15 / .010 = 2257.5 W.
     */
    @Test
    void aStartWorkedByHand() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter());
        StartEvent event = only(rig, motor("fridge", 80, start(900)));
        assertThat(event.surgeVa()).isEqualTo(900);
        assertThat(event.acW()).isCloseTo(540, within(1e-9));
        assertThat(event.dcW()).isCloseTo(606, within(1e-9));
        StartVerdict verdict = StartChain.judge(rig, event, 1, WARM_DEG_C);
        assertThat(verdict.endV()).isCloseTo(12.1513, within(1e-4));
        assertThat(verdict.link(StartVerdict.Kind.STORE_AMPS).orElseThrow().value())
                .isCloseTo(49.871, within(1e-3));
        assertThat(verdict.link(StartVerdict.Kind.SAG).orElseThrow().limit()).isCloseTo(2257.5, within(1e-9));
        assertThat(verdict.holds()).isTrue();
        // 2500/900 = 2.8, 300/49.9 = 6.0, 2257.5/606 = 3.7.
        assertThat(verdict.weakest().orElseThrow().kind()).isEqualTo(StartVerdict.Kind.INVERTER_VA);
    }

    /**
     * The same with 2100 VA: 1406 W, at 10.5 V 133.905 A. At 25 degC between fillings of .25 and .5 the open volts are 11.88 +
     * .72 f and the battery's ohms 5 (1.66667 - 1.33333 f) thousandths: 1.38 + .72 f = 133.905 (.0143333 - .00666667 f), f =
     * .33441. At 0 degC, 1.4 times the ohms, between .5 and .75: 11.82 + .84 f and 7 (1.2 - .4 f): f = .60823/1.21493 = .50063.
     */
    @Test
    void fillingNeededWorkedByHand() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter());
        StartEvent event = only(rig, motor("pump", 300, start(2100)));
        assertThat(event.dcW()).isCloseTo(1406, within(1e-9));
        assertThat(StartChain.fillNeeded(rig, event, 25)).isCloseTo(0.33441, within(2e-6));
        assertThat(StartChain.fillNeeded(rig, event, 0)).isCloseTo(0.50063, within(5e-6));
    }

    /** Where the filling that is needed ends, the verdict changes. */
    @Test
    void fillingNeededIsWhereTheVerdictTurns() {
        Invented invented = new Invented(71);
        int inside = 0;
        for (int i = 0; i < 300; i++) {
            Chemistry chemistry = Chemistry.values()[i % Chemistry.values().length];
            RatedStore.Guard guard = new RatedStore.Guard(
                    invented.chance(0.5) ? new Surge(invented.between(80, 300), 10) : Surge.UNKNOWN,
                    Double.NaN,
                    Stated.YES);
            Rig rig = rig(
                    RigKit.battery(RigKit.store(chemistry, invented.between(0.002, 0.03), guard)), RigKit.inverter());
            StartEvent event = only(rig, motor("pump", 100, start(invented.between(300, 2400))));
            double degC = invented.between(-19, 30);
            double fill = StartChain.fillNeeded(rig, event, degC);
            if (Double.isInfinite(fill)) {
                assertThat(StartChain.judge(rig, event, 1, degC).holds()).isFalse();
            } else {
                assertThat(StartChain.judge(rig, event, fill, degC).holds()).isTrue();
                assertThat(StartChain.judge(rig, event, Math.min(1, fill + 0.1), degC)
                                .holds())
                        .isTrue();
                if (fill > 0) {
                    inside++;
                    assertThat(StartChain.judge(rig, event, fill - 2e-6, degC).holds())
                            .isFalse();
                }
            }
        }
        assertThat(inside).isGreaterThan(50);
    }

    /** A guard that trips on current before the volts are low: 606 W within 50 A need 12.12 V at the inverter. */
    @Test
    void currentCountsInTheFilling() {
        RatedStore.Guard weak = new RatedStore.Guard(new Surge(50, 10), Double.NaN, Stated.YES);
        RatedStore store = RigKit.store(Chemistry.AGM_LEAD, 0.005, weak);
        RatedStore limited = new RatedStore(
                store.chemistry(), store.capacity(), 12, 0.005, 50, 40, weak, store.heater(), 0.5, store.worth(), 20);
        Rig rig = rig(RigKit.battery(limited), RigKit.inverter());
        StartEvent event = only(rig, motor("fridge", 80, start(900)));
        double fill = StartChain.fillNeeded(rig, event, WARM_DEG_C);
        assertThat(fill).isBetween(0.9, 1.0);
        SagPath path = StartChain.path(rig, limited, event);
        assertThat(path.amps(606, fill, WARM_DEG_C)).isCloseTo(50, within(1e-4));
        assertThat(path.endV(606, fill, WARM_DEG_C)).isCloseTo(12.12, within(1e-4));
    }

    /** AGM of 100 Ah that tells no ohms: six cells at the usual ohms for each Ah, and at the high end. */
    @Test
    void ohmsThatNobodyTellsAreTakenHighForAWornBattery() {
        RatedStore sound = RigKit.store(Chemistry.AGM_LEAD, Double.NaN, RigKit.STRONG);
        assertThat(SagPath.of(sound, 0, 0, 0).ohm())
                .isCloseTo(sound.chemistry().traits().ohmAh() * 6 / 100, within(1e-12));
        RatedStore worn = sound.withWorth(new RatedStore.Worth(0.5, 0.75));
        assertThat(SagPath.of(worn, 0, 0, 0).ohm())
                .isCloseTo(sound.chemistry().traits().mostOhmAh() * 6 / 100, within(1e-12));
        RatedStore told = RigKit.store(Chemistry.AGM_LEAD, 0.005, RigKit.STRONG);
        assertThat(SagPath.of(told.withWorth(new RatedStore.Worth(0.5, 0.75)), 0, 0, 0)
                        .ohm())
                .isEqualTo(0.005);
    }

    @Test
    void colderEmptierAndThinnerNeverStartsBetter() {
        Invented invented = new Invented(72);
        for (int i = 0; i < 500; i++) {
            RatedStore store = invented.ratedStore(invented.between(30, 200));
            double lead = invented.between(0, 0.02);
            double endOffV = invented.chance(0.2) ? 0 : invented.between(9, 11.5);
            double postOffV = invented.chance(0.5) ? 0 : invented.between(9, 11.5);
            SagPath path = SagPath.of(store, lead, endOffV, postOffV);
            SagPath thinner = SagPath.of(store, lead + invented.between(0, 0.01), endOffV, postOffV);
            double watts = invented.between(50, 2500);
            double degC = invented.between(-30, 40);
            double colder = degC - invented.between(0, 20);
            double fill = invented.between(0, 1);
            double emptier = fill * invented.between(0, 1);
            assertThat(path.mostW(emptier, degC)).isLessThanOrEqualTo(path.mostW(fill, degC));
            assertThat(path.mostW(fill, colder)).isLessThanOrEqualTo(path.mostW(fill, degC));
            assertThat(thinner.mostW(fill, degC)).isLessThanOrEqualTo(path.mostW(fill, degC));
            double mostA = invented.chance(0.5) ? 200 : Double.POSITIVE_INFINITY;
            double needed = path.fillNeeded(watts, mostA, degC);
            assertThat(path.fillNeeded(watts, mostA, colder)).isGreaterThanOrEqualTo(needed);
            assertThat(thinner.fillNeeded(watts, mostA, degC)).isGreaterThanOrEqualTo(needed);
            assertThat(path.fillNeeded(1.1 * watts, mostA, degC)).isGreaterThanOrEqualTo(needed);
        }
    }

    /** Against trying every current: the most watts with both volts above their cut-offs. */
    @Test
    void mostWattsAsTriedByHand() {
        Curve flat = Curve.flat(1);
        for (double[] volts : new double[][] {{10.5, 0}, {0, 10}, {9, 10}, {11.5, 10}, {0, 0}, {5, 4}, {12.5, 0}}) {
            SagPath path = new SagPath(Curve.flat(12), 0.02, flat, flat, 0.01, volts[0], volts[1]);
            double most = 0;
            for (int i = 0; i <= 40_000; i++) {
                double amps = i * 0.01;
                if (12 - amps * 0.02 >= volts[1] && 12 - amps * 0.03 >= volts[0]) {
                    most = Math.max(most, amps * (12 - amps * 0.03));
                }
            }
            assertThat(path.mostW(1, 25)).as("%.1f %.1f", volts[0], volts[1]).isCloseTo(most, within(0.15));
        }
    }

    @Test
    void motorsThatNothingKeepsApartStartTogether() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter());
        Load fridge = motor("fridge", 80, start(900));
        Load freezer = motor("freezer", 120, start(700));
        Load lamp = lamp("lamp", 10, true);
        StartEvent event = only(rig, fridge, freezer, lamp);
        assertThat(event.starting()).containsExactly(fridge, freezer);
        assertThat(event.beside()).containsExactly(lamp);
        assertThat(event.surgeVa()).isCloseTo(900 + 700 + 10, within(1e-9));
        assertThat(event.acW()).isCloseTo(0.6 * 1600 + 10, within(1e-9));
        assertThat(event.words()).isEqualTo("fridge and freezer together");
        assertThat(event.mayCome(3.2, 0.25)).isTrue();
    }

    /** 80 W and 120 W at a power factor of .8 are 100 VA and 150 VA. */
    @Test
    void oneKeptApartStartsByItselfBesideTheOthers() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter());
        Load fridge = motor("fridge", 80, start(900));
        Load freezer = motor("freezer", 120, alone(700));
        List<StartEvent> events = StartChain.events(rig, List.of(fridge, freezer));
        assertThat(events).hasSize(2);
        assertThat(events.get(0).starting()).containsExactly(fridge);
        assertThat(events.get(0).surgeVa()).isCloseTo(900 + 150, within(1e-9));
        assertThat(events.get(1).starting()).containsExactly(freezer);
        assertThat(events.get(1).surgeVa()).isCloseTo(700 + 100, within(1e-9));
    }

    @Test
    void oneByTheClockStartsAsItsHoursBegin() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter());
        Load fridge = motor("fridge", 80, start(900));
        Load pump = timedMotor("pump", 200, start(1200), new DayWindow(22.5, 1));
        List<StartEvent> events = StartChain.events(rig, List.of(fridge, pump));
        StartEvent both = named(events, "fridge and pump together");
        assertThat(both.mayCome(22.5, 0.25)).isTrue();
        assertThat(both.mayCome(22.25, 0.25)).isFalse();
        assertThat(both.mayCome(22.75, 0.25)).isFalse();
        List<StartEvent> alone =
                events.stream().filter(event -> event.words().equals("fridge")).toList();
        assertThat(alone).hasSize(2);
        StartEvent beside = alone.stream()
                .filter(event -> event.beside().contains(pump))
                .findFirst()
                .orElseThrow();
        assertThat(beside.mayCome(0, 0.25)).isTrue();
        assertThat(beside.mayCome(22.75, 0.25)).isTrue();
        assertThat(beside.mayCome(1, 0.25)).isFalse();
        assertThat(beside.mayCome(12, 0.25)).isFalse();
    }

    @Test
    void oneThatMayChooseMayBeginWheneverItsWindowLetsIt() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter());
        Load pump = freeMotor("pump", 200, start(1200), 2, new DayWindow(8, 18));
        StartEvent any = only(rig, pump);
        assertThat(any.mayCome(8, 0.25)).isTrue();
        assertThat(any.mayCome(17.75, 0.25)).isTrue();
        assertThat(any.mayCome(18, 0.25)).isFalse();
        StartEvent walked = StartChain.events(rig, List.of(pump), 12).get(0);
        assertThat(walked.mayCome(11, 0.25)).isTrue();
        assertThat(walked.mayCome(11.25, 0.25)).isFalse();
        assertThat(walked.mayCome(8, 0.25)).isFalse();
    }

    /** 60 W at the plug through four fifths are 75 W of the bus; the pump's 300 VA of direct current are 375 W. */
    @Test
    void directCurrentMotorsHaveTheSameChainWithoutTheInverter() {
        Rig rig = rig(RigKit.agm(), RigKit.controller());
        Load pump = motor("pump", Invented.SOCKET, 60, start(300), true);
        StartEvent event = only(rig, pump);
        assertThat(event.inverterOn()).isFalse();
        assertThat(event.surgeVa()).isZero();
        assertThat(event.dcW()).isCloseTo(375, within(1e-9));
        StartVerdict verdict = StartChain.judge(rig, event, 1, WARM_DEG_C);
        assertThat(verdict.link(StartVerdict.Kind.INVERTER_VA)).isEmpty();
        // The posts may fall to 6 x 1.75 V: 2.15 V over 4 milliohm are 537.5 A, and 12.65 - 5.375 V are left at the
        // end.
        assertThat(verdict.link(StartVerdict.Kind.SAG).orElseThrow().limit()).isCloseTo(537.5 * 7.275, within(1e-6));
    }

    /** An inverter left on for something else trips when a direct current motor pulls the volts down. */
    @Test
    void theInverterCountsThoughItDoesNotStartTheMotor() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter(), RigKit.controller());
        Load pump = motor("pump", Invented.SOCKET, 60, start(300), true);
        StartEvent event = only(rig, pump, lamp("lamp", 9, true));
        assertThat(event.inverterOn()).isTrue();
        assertThat(event.dcW()).isCloseTo(375 + 10 + 6, within(1e-9));
        StartVerdict verdict = StartChain.judge(rig, event, 1, WARM_DEG_C);
        assertThat(verdict.link(StartVerdict.Kind.SAG).orElseThrow().limit()).isCloseTo(2257.5, within(1e-6));
        assertThat(verdict.link(StartVerdict.Kind.INVERTER_VA)).isEmpty();
    }

    @Test
    void whatIsNiceToHaveMakesEventsOfItsOwn() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter());
        Load fridge = motor("fridge", 80, start(900));
        Load saw = motor("saw", Invented.MAINS, 400, start(2400), false);
        List<StartEvent> events = StartChain.events(rig, List.of(fridge, saw));
        assertThat(events).hasSize(2);
        assertThat(events.get(0).essential()).isTrue();
        assertThat(events.get(0).starting()).containsExactly(fridge);
        assertThat(events.get(0).beside()).isEmpty();
        assertThat(events.get(1).essential()).isFalse();
        assertThat(events.get(1).starting()).containsExactly(fridge, saw);
    }

    /** A lower bound is lifted: six times 100 VA; a soft one takes at least what it takes when running. */
    @Test
    void startsAreNeverTakenTooSmall() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter());
        Load labelled = motor("fridge", 80, new tideover.engine.load.Start(300, 0.6, 0.5, true, ""));
        assertThat(only(rig, labelled).surgeVa()).isCloseTo(600, within(1e-9));
        Load soft = motor("fridge", 80, new tideover.engine.load.Start(50, 0.6, 0.5, false, ""));
        assertThat(only(rig, soft).surgeVa()).isCloseTo(100, within(1e-9));
        assertThat(only(rig, soft).acW()).isCloseTo(80, within(1e-9));
    }

    @Test
    void whatHasNoOutletStartsNothing() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter());
        assertThat(StartChain.events(rig, List.of(motor("pump", Invented.SOCKET, 60, start(300), true))))
                .isEmpty();
        assertThat(StartChain.events(rig, List.of(lamp("lamp", 10, true)))).isEmpty();
    }

    /** A label tells no volts: 606 W at 12 V are 50.5 A. */
    @Test
    void plainStoresAreJudgedByTheirCurrentAlone() {
        Load fridge = motor("fridge", 80, start(900));
        Rig strong = rig(plain(51), RigKit.inverter());
        StartEvent event = only(strong, fridge);
        StartVerdict verdict = StartChain.judge(strong, event, 1, WARM_DEG_C);
        assertThat(verdict.link(StartVerdict.Kind.SAG)).isEmpty();
        assertThat(verdict.endV()).isNaN();
        assertThat(StartChain.fillNeeded(strong, event, -20)).isZero();
        Rig weak = rig(plain(50), RigKit.inverter());
        assertThat(StartChain.fillNeeded(weak, event, -20)).isInfinite();
    }

    @Test
    void aStartThatTheInverterCannotGiveNeedsMoreThanAnyFilling() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter(new Surge(1500, 10)));
        StartEvent event = only(rig, motor("pump", 300, start(1600)));
        assertThat(StartChain.fillNeeded(rig, event, WARM_DEG_C)).isInfinite();
        assertThat(StartChain.judge(rig, event, 1, WARM_DEG_C)
                        .weakest()
                        .orElseThrow()
                        .kind())
                .isEqualTo(StartVerdict.Kind.INVERTER_VA);
    }

    @Test
    void secondsThatNobodyTellsAreACaution() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter(new Surge(2500, Double.NaN)));
        StartEvent event = only(rig, motor("pump", 300, start(1600)));
        StartVerdict verdict = StartChain.judge(rig, event, 1, WARM_DEG_C);
        assertThat(verdict.link(StartVerdict.Kind.INVERTER_SECONDS)
                        .orElseThrow()
                        .verdict())
                .isEqualTo(Verdict.CAUTION);
        assertThat(verdict.holds()).isTrue();
        // 2500/1600 = 1.6; the current and the volts have more left.
        assertThat(verdict.weakest().orElseThrow().kind()).isEqualTo(StartVerdict.Kind.INVERTER_VA);
    }

    private static Battery plain(double mostA) {
        return new Battery(Invented.listing("B", 100, 10), new PlainStore(1000, 0.95, 0.95, 12, 50, mostA), 4);
    }

    private static StartEvent only(Rig rig, Load... loads) {
        List<StartEvent> events = StartChain.events(rig, List.of(loads));
        assertThat(events).hasSize(1);
        return events.get(0);
    }

    private static StartEvent named(List<StartEvent> events, String words) {
        return events.stream()
                .filter(event -> event.words().equals(words))
                .findFirst()
                .orElseThrow();
    }
}
