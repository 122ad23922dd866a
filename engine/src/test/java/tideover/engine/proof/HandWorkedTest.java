package tideover.engine.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Outage;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.PlainStore;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Assembly;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;

/** The arithmetic of the models page, "The plain store" and "controller", worked by hand there. */
class HandWorkedTest {
    private static final int START = 340 * 24;

    /** 1000 Wh, in 0.95, out 0.90, 85 % at the start; 45 W; 145 W of sun in the eleventh and twelfth hour. */
    @Test
    void storeLastsAsWorkedByHand() {
        Trace trace = walk(12.5, 1000, 45, 145, 200);
        assertThat(storedAfter(trace, 10)).isCloseTo(350, within(1e-9));
        // The panel's table is within .05 % of its rating; from there on the arithmetic is exact.
        double sunW = trace.steps().get(40).arrayW();
        assertThat(sunW).isCloseTo(145, within(0.0005 * 145));
        double risenWh = 2 * (sunW - 145) * 0.95;
        assertThat(storedAfter(trace, 12)).isCloseTo(540 + risenWh, within(1e-9));
        assertThat(trace.hoursCarried()).isCloseTo(12 + 10.8 + risenWh * 0.9 / 45, within(1e-9));
        assertThat(TraceChecker.faults(trace, rig(12.5, 1000, 200))).isEmpty();
    }

    /** 10 A carry 125 W on 12.5 V and 250 W on 25 V, loads and store together. */
    @Test
    void controllerCurrentLimitsTheWholeOutput() {
        TraceStep low = walk(12.5, 1000, 45, 400, 10).steps().get(40);
        assertThat(low.onBusW()).isCloseTo(125, within(1e-9));
        assertThat(low.controllerLimitW()).isCloseTo(low.arrayW() - 125, within(1e-9));
        assertThat(low.arrayW()).isCloseTo(400, within(0.0005 * 400));
        TraceStep high = walk(25, 1000, 45, 400, 10).steps().get(40);
        assertThat(high.onBusW()).isCloseTo(250, within(1e-9));
        assertThat(high.controllerLimitW()).isCloseTo(high.arrayW() - 250, within(1e-9));
    }

    private static double storedAfter(Trace trace, int hours) {
        return trace.steps().get(hours * 4 - 1).storedWh();
    }

    private static Trace walk(double volts, double capacityWh, double loadW, double sunW, double controllerA) {
        double[] plane = new double[ModelYear.HOURS];
        // 25 degC cells give the rated watts at 1000 W/m2; the air is as much colder as the sun heats them.
        plane[START + 10] = 1000;
        plane[START + 11] = 1000;
        double[] air = new double[ModelYear.HOURS];
        Arrays.fill(air, 25 - (45 - 20) / 800.0 * 1000);
        double[] none = new double[ModelYear.HOURS];
        Weather weather =
                new Weather(1, Series.of(none), Series.of(none), Series.of(air), "made for an example by hand");
        PlaneWeather sun = new PlaneWeather(Series.of(plane), Series.of(air), 0);
        Load load = new SteadyLoad("load", Invented.SOCKET, loadW, true, new Need.AlwaysOn(), RoomKind.INDOORS);
        Outage outage = new Outage(List.of(11), 48, 0.9, 0.85, 0, 1);
        return new Prover(weather, sun, weather.airDegC(), 12, 4, 1, Workers.of(1))
                .trace(rig(volts, capacityWh, controllerA, sunW), List.of(load), outage, START);
    }

    private static Rig rig(double volts, double capacityWh, double controllerA) {
        return rig(volts, capacityWh, controllerA, 145);
    }

    private static Rig rig(double volts, double capacityWh, double controllerA, double panelW) {
        Battery battery =
                new Battery(Invented.listing("B", 1, 1), new PlainStore(capacityWh, 0.95, 0.90, volts, 100, 100), 1);
        ChargeController controller = new ChargeController(
                Invented.listing("C", 1, 1),
                new ControllerRating(controllerA, 100, 12, 48, 1),
                List.of(new Outlet(Invented.SOCKET, 1, 100, 1)));
        return Objects.requireNonNull(Assembly.of(List.of(
                        new Chosen(battery, 1),
                        new Chosen(controller, 1),
                        new Chosen(Invented.panel("P", panelW, 1), 1)))
                .rig());
    }
}
