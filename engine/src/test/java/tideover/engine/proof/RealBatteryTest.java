package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.battery.Chemistry;
import tideover.engine.electronics.InverterLoss;
import tideover.engine.electronics.Tracking;
import tideover.engine.electronics.Wave;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.Start;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.TimedLoad;
import tideover.engine.outage.Help;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Rolling;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.RatedStore;
import tideover.engine.part.Surge;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.rig.StartChain;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.why.Stated;

/** What a real battery does in outages made for the purpose: steady temperature, sun in two hours or none. */
class RealBatteryTest {
    private static final int START = 340 * 24;
    private static final Load RADIO =
            new SteadyLoad("radio", Invented.SOCKET, 12, true, new Need.AlwaysOn(), RoomKind.INDOORS);

    private static RatedStore store(Chemistry chemistry, double nominalV, double ohm, Stated lockOut, double depth) {
        return new RatedStore(
                chemistry,
                RatedStore.Capacity.of(100, 20),
                nominalV,
                ohm,
                50,
                100,
                new RatedStore.Guard(Surge.UNKNOWN, Double.NaN, lockOut),
                RatedStore.Heater.NONE,
                depth,
                new RatedStore.Worth(1, 1),
                12);
    }

    private static Rig rig(RatedStore store, InverterRating inverter) {
        return Objects.requireNonNull(Assembly.of(List.of(
                        new Chosen(new Battery(Invented.listing("B", 1, 12), store, 4), 1),
                        new Chosen(
                                new Inverter(
                                        Invented.listing("I", 1, 1),
                                        inverter,
                                        List.of(new Outlet(Invented.MAINS, 2, 600, 1))),
                                1),
                        new Chosen(
                                new ChargeController(
                                        Invented.listing("C", 1, 1),
                                        new ControllerRating(
                                                30,
                                                100,
                                                12,
                                                24,
                                                1,
                                                Tracking.BEST_POINT,
                                                ControllerRating.PanelInput.UNKNOWN,
                                                Set.of()),
                                        List.of(new Outlet(Invented.SOCKET, 1, 200, 1))),
                                1),
                        new Chosen(Invented.panel("P", 200, 1), 1),
                        new Chosen(new Charger(Invented.listing("M", 1, 1), 10, 12, 12.8, 0.9, Set.of()), 1)))
                .rig());
    }

    private static InverterRating inverter(double offV) {
        return new InverterRating(
                600,
                InverterLoss.constant(0.9, 0),
                12,
                new Surge(3000, 5),
                new InverterRating.Window(offV, Double.NaN, Double.NaN),
                Wave.SINE,
                InverterRating.Habits.UNKNOWN);
    }

    private static Outage outage(int hours, double charge) {
        return new Outage(List.of(11), hours, 0.9, charge, 0, 1);
    }

    /** @param sunWm2 in the eleventh and twelfth hour of the outage */
    private static Trace walk(Rig rig, Load load, Outage outage, double degC, double sunWm2) {
        double[] plane = new double[ModelYear.HOURS];
        plane[START + 10] = sunWm2;
        plane[START + 11] = sunWm2;
        double[] air = new double[ModelYear.HOURS];
        Arrays.fill(air, degC);
        double[] none = new double[ModelYear.HOURS];
        Weather weather = new Weather(1, Series.of(none), Series.of(none), Series.of(air), "made for a test");
        PlaneWeather sun = new PlaneWeather(Series.of(plane), Series.of(air), 0);
        Trace trace = new Prover(weather, sun, weather.airDegC(), 12, 4, 1, Workers.of(1))
                .trace(rig, List.of(load), outage, START);
        assertThat(TraceChecker.faults(trace, rig)).isEmpty();
        return trace;
    }

    /**
     * By hand: iron phosphate, 12.8 V 100 Ah, no resistance but the leads' 6 mohm, used to 80 %, 25 degC. The mean of the
     * open volts' curve is 4 x 3.2703 = 13.081 V, so that 100 Ah hold 1308 Wh and 1046.5 Wh may be taken; 12 W and the
     * self-discharge of 3 % in 720 h (.0545 W) take them in 86.81 h; the leads' loss, .9 A squared on 6 mohm, is .005 W.
     */
    @Test
    void lastsAsWorkedByHand() {
        Rig rig = rig(store(Chemistry.IRON_PHOSPHATE, 12.8, 0, Stated.YES, 0.8), inverter(10.5));
        double meanV = 4 * Chemistry.IRON_PHOSPHATE.traits().openVByFill().mean();
        assertThat(meanV).isCloseTo(13.081, within(0.001));
        Trace trace = walk(rig, RADIO, outage(120, 1), 25, 0);
        assertThat(trace.hoursCarried()).isCloseTo(86.81, within(0.1));
        assertThat(trace.ending()).isEqualTo(Ending.EMPTY);
    }

    @Test
    void lithiumThatLocksItselfOutTakesNoSunInTheCold() {
        Rig rig = rig(store(Chemistry.IRON_PHOSPHATE, 12.8, 0.01, Stated.YES, 1), inverter(10.5));
        Trace cold = walk(rig, RADIO, outage(24, 0.5), -3, 800);
        assertThat(cold.ending()).isNull();
        assertThat(cold.ledger().chargeLossWh()).isZero();
        assertThat(cold.ledger().chargeLimitWh()).isGreaterThan(200);
        Trace mild = walk(rig, RADIO, outage(24, 0.5), 12, 800);
        assertThat(mild.ledger().endWh()).isGreaterThan(cold.ledger().endWh() + 150);
    }

    @Test
    void lithiumWithoutAStatedLockOutIsRuinedByTheFirstColdSun() {
        for (Stated lockOut : List.of(Stated.NO, Stated.UNKNOWN)) {
            Rig rig = rig(store(Chemistry.IRON_PHOSPHATE, 12.8, 0.01, lockOut, 1), inverter(10.5));
            Trace cold = walk(rig, RADIO, outage(24, 0.5), -3, 800);
            assertThat(cold.ending()).isEqualTo(Ending.CHARGED_COLD);
            assertThat(cold.hoursCarried()).isEqualTo(10);
            assertThat(walk(rig, RADIO, outage(24, 0.5), 1, 800).ending()).isNull();
        }
    }

    @Test
    void aHalfEmptyLeadBatteryFreezesWhereAFullOneDoesNot() {
        Rig rig = rig(store(Chemistry.AGM_LEAD, 12, 0.006, Stated.UNKNOWN, 1), inverter(10.5));
        Trace half = walk(rig, RADIO, outage(4, 0.45), -27, 0);
        assertThat(half.ending()).isEqualTo(Ending.FROZEN);
        assertThat(half.hoursCarried()).isZero();
        assertThat(walk(rig, RADIO, outage(4, 0.95), -27, 0).ending()).isNull();
    }

    /** The cut-off falls at its own instant: steps a quarter as long find it within seconds of the same hour. */
    @Test
    void theCutOffFallsInsideTheStep() {
        Rig rig = rig(store(Chemistry.AGM_LEAD, 12, 0.03, Stated.UNKNOWN, 1), inverter(11.4));
        Load heater = new SteadyLoad("heater", Invented.MAINS, 217, true, new Need.AlwaysOn(), RoomKind.INDOORS);
        Trace trace = walk(rig, heater, outage(24, 1), 25, 0);
        assertThat(trace.ending()).isEqualTo(Ending.VOLTS);
        double steps = trace.hoursCarried() * 4;
        assertThat(Math.abs(steps - Math.rint(steps))).isGreaterThan(0.01);
        // What was served says the same to the second, for a load without a pause.
        assertThat(trace.ledger().servedEssentialWh() / 217).isCloseTo(trace.hoursCarried(), within(1.0 / 3600));
    }

    @Test
    void offMeansOffUntilTheVoltsAreBack() {
        Rig rig = rig(store(Chemistry.AGM_LEAD, 12, 0.03, Stated.UNKNOWN, 1), inverter(11.4));
        Load heater = new SteadyLoad("heater", Invented.MAINS, 217, true, new Need.AlwaysOn(), RoomKind.INDOORS);
        List<TraceStep> steps = walk(rig, heater, outage(24, 0.8), 25, 500).steps();
        // The sun of the eleventh hour does not bring back an inverter that its maker does not say comes back.
        assertThat(steps.get(44).essentialServedW()).isZero();
        assertThat(steps.get(44).storedWh()).isGreaterThan(steps.get(39).storedWh());
    }

    /** A motor is not started by a battery below the filling that the chain needs, and is above it. */
    @Test
    void anOutageEndsWhereAMotorCannotStart() {
        RatedStore store = store(Chemistry.AGM_LEAD, 12, 0.02, Stated.UNKNOWN, 1);
        Rig rig = rig(store, inverter(10.5));
        Nature motor = new Nature(0.7, new Start(1000, 0.6, 0.5, false, ""), false, false);
        Load pump = new TimedLoad(
                "pump",
                Invented.MAINS,
                100,
                true,
                List.of(new DayWindow(2, 3), new DayWindow(6, 7), new DayWindow(10, 11), new DayWindow(14, 15)),
                RoomKind.INDOORS,
                motor);
        double needed =
                StartChain.fillNeeded(rig, StartChain.events(rig, List.of(pump)).get(0), 25);
        assertThat(needed).isBetween(0.2, 0.9);
        assertThat(walk(rig, pump, outage(5, needed + 0.15), 25, 0).ending()).isNull();
        Trace low = walk(rig, pump, outage(5, needed - 0.05), 25, 0);
        assertThat(low.ending()).isEqualTo(Ending.START);
        assertThat(low.hoursCarried()).isEqualTo(2);
        assertThat(walk(rig, RADIO, outage(5, needed - 0.05), 25, 0).ending()).isNull();
    }

    @Test
    void aGridThatComesAndGoesFeedsLoadsAndCharger() {
        Rig rig = rig(store(Chemistry.IRON_PHOSPHATE, 12.8, 0.01, Stated.YES, 0.8), inverter(10.5));
        Outage base = outage(96, 0.5);
        Outage rolling = new Outage(base.months(), 96, 0.9, 0.5, 0, 1, new Rolling(6, 2), List.of());
        Trace alone = walk(rig, RADIO, base, 20, 0);
        Trace helped = walk(rig, RADIO, rolling, 20, 0);
        assertThat(alone.hoursCarried()).isLessThan(50);
        assertThat(helped.hoursCarried()).isEqualTo(96);
        assertThat(helped.ledger().gridServedWh()).isCloseTo(12 * 24, within(1e-9));
        // Each two hours put back what each six took, until full; 12 W for 72 h and losses.
        assertThat(helped.ledger().helpInWh()).isBetween(864.0, 1600.0);
    }

    @Test
    void anEngineKeepsItsHoursAndABroughtBatteryItsTime() {
        Rig rig = rig(store(Chemistry.IRON_PHOSPHATE, 12.8, 0.01, Stated.YES, 0.8), inverter(10.5));
        Outage engine = new Outage(
                List.of(11), 24, 0.9, 0.4, 0, 1, null, List.of(new Help.Engine(List.of(new DayWindow(7, 8)), 1000)));
        Trace run = walk(rig, RADIO, engine, 20, 0);
        // 10 A into 12.8 V for one hour, beside a load of 12 W.
        assertThat(run.ledger().helpInWh()).isCloseTo(128, within(1e-6));
        assertThat(run.steps().get(28).helpW()).isCloseTo(128, within(1e-6));
        assertThat(run.steps().get(27).helpW()).isZero();
        Outage brought = new Outage(List.of(11), 24, 0.9, 0.4, 0, 1, null, List.of(new Help.Handover(5, 100, 40)));
        Trace handed = walk(rig, RADIO, brought, 20, 0);
        assertThat(handed.ledger().helpInWh()).isCloseTo(100, within(1e-6));
        assertThat(handed.steps().get(20).helpW()).isCloseTo(40, within(1e-6));
        assertThat(handed.steps().get(30).helpW()).isZero();
    }
}
