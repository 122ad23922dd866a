package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.outage.Outage;
import tideover.engine.part.ControllerRating.PanelInput;
import tideover.engine.part.PanelLead;
import tideover.engine.part.SmallPart;
import tideover.engine.proof.CarriedShare;
import tideover.engine.proof.Prover;
import tideover.engine.proof.RigFigures;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.site.Weather;

/** What panel leads lose is taken from what the proof counts of the sun. */
class LeadLossTest {
    private static final Rig RIG = WiringKit.rig(1, 2);
    private static final Load LAMP = WiringKit.lamp("lamp", 20);

    /** One lead of 12 AWG, so long. */
    private static Rig led(double metres) {
        List<SmallPart> stock = WiringKit.with(
                WiringKit.without(WiringKit.full(), part -> part instanceof PanelLead),
                WiringKit.lead("lead", WiringKit.MAKE, PanelInput.BARE_ENDS, "12 AWG", metres, 1));
        Build build = WiringKit.wire(stock, WiringKit.panelsAt(metres), RIG, LAMP);
        assertThat(WiringKit.failing(build)).isEmpty();
        return build.rig();
    }

    /** 12 A through twice 11 m of 1.98 ohm / 304.8 m lose 1.715 V of 18 V, 9.53 %; of a controller of .95 that leaves .8595. */
    @Test
    void theProofCountsIt() {
        assertThat(led(11).leads().sunLoss()).isCloseTo(.0953, within(.00005));
        assertThat(RigFigures.of(led(11)).controllerEff()).isCloseTo(.8595, within(.00005));
        assertThat(RigFigures.of(led(1)).controllerEff()).isCloseTo(.95 * (1 - .0953 / 11), within(.00005));
        assertThat(RIG.leads().sunLoss()).as("before it is wired").isZero();
    }

    /** In every invented year, and where the load is near the edge truly less. */
    @Test
    void longThinLeadsCarryNoMore() {
        Invented invented = new Invented(5);
        Weather weather = invented.weather(2);
        Prover prover = new Prover(
                weather,
                Invented.plane(weather),
                weather.airDegC(),
                Invented.PLACE.meanSolarNoonHour(),
                4,
                7,
                Workers.of(1));
        Outage outage = new Outage(List.of(0, 1, 2, 9, 10, 11), 96, .9, .85, 0, 1);
        int less = 0;
        for (double watts = 5; watts <= 50; watts += 5) {
            List<Load> loads = List.of(WiringKit.lamp("lamp", watts));
            // All else alike: the cables at the battery do not change.
            CarriedShare near = prover.share(led(1), loads, outage);
            CarriedShare far = prover.share(led(11), loads, outage);
            assertThat(far.carried()).as("%.0f W", watts).isLessThanOrEqualTo(near.carried());
            less += far.carried() < near.carried() ? 1 : 0;
        }
        assertThat(less).isPositive();
        assertThat(led(11).leadOhm()).isEqualTo(led(1).leadOhm());
    }
}
