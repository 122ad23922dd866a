package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tideover.engine.load.Load;

/**
 * A rig worked out by hand with the invented parts and prices of {@link WiringKit}: 100 Ah of iron phosphate, an inverter of
 * 1000 W, a controller of 20 A, two panels of 100 W side by side 8 m away, a lamp 4 m away; 40 degC.
 */
class BenchPinnedTest {
    private static final Load LAMP = WiringKit.lamp("lamp", 20);
    private static final Build BUILD =
            WiringKit.wire(WiringKit.full(), WiringKit.corded("lamp", 4), WiringKit.rig(1, 2), LAMP);

    private static WiredRun run(Run.Kind kind) {
        return BUILD.circuit().runs().stream()
                .filter(wired -> wired.run().kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    /**
     * 1000 W / .9 + 6 W = 1117.1 W at 10.5 V: 106.4 A, and 133.0 A with the quarter. Shorted, the battery gives 13.6 V /
     * (.3 x 4 x .25 / 100) ohm = 4533 A, too much for the strip fuses' 2000 A: class T, the next is 150 A. One of 18.00, holder
     * 25.00 and switch 25.00 make 68.00, a breaker 105.00. Above 100 A the terminals count as 75 degC: 1/0 AWG bears the least
     * of 150 A and .91 x 170 A. Battery and both sides of the fuse, battery minus, inverter, both sides of the switch: 8 lugs.
     */
    @Test
    void batteryToInverter() {
        WiredRun wired = run(Run.Kind.INVERTER);
        assertThat(wired.run().amps().lasting()).isCloseTo(106.392, within(.0005));
        assertThat(wired.run().amps().design()).isCloseTo(132.989, within(.0005));
        assertThat(wired.run().amps().fault()).isCloseTo(4533.33, within(.005));
        assertThat(wired.allowedA()).isEqualTo(150);
        assertThat(needs(wired))
                .containsExactlyInAnyOrderEntriesOf(
                        Map.of("cable 1/0 AWG", 1.1, "T 150", 1.0, "T holder", 1.0, "switch", 1.0, "lug 1/0 AWG", 8.0));
        // 1 m of .122 ohm / 304.8 m.
        assertThat(wired.dropV()).isCloseTo(106.392 * .00040026, within(.00001));
        // With .07 V / 150 A in the fuse and a tenth of a milliohm for each of 8 joints.
        assertThat(wired.ohm()).isCloseTo(.00040026 + .00046667 + .0008, within(1e-8));
        assertThat(BUILD.rig().leadOhm()).isEqualTo(wired.ohm());
    }

    /**
     * 20 A, 25 A with the quarter; its outlets take 120 W / 12.8 V = 9.4 A, which is less. A cylinder fuse of 25 A; up to 100 A
     * terminals count as 60 degC: 10 AWG bears the least of 30 A, its cap of 30 A and .91 x 40 A. Four lugs; the controller clamps.
     */
    @Test
    void batteryToController() {
        WiredRun wired = run(Run.Kind.CONTROLLER);
        assertThat(wired.run().amps().lasting()).isEqualTo(20);
        assertThat(wired.run().amps().design()).isEqualTo(25);
        assertThat(wired.allowedA()).isEqualTo(30);
        assertThat(needs(wired))
                .containsExactlyInAnyOrderEntriesOf(
                        Map.of("cable 10 AWG", 1.1, "cylinder 25", 1.0, "cylinder holder", 1.0, "lug 10 AWG", 4.0));
        // 1 m of 1.24 ohm / 304.8 m at 20 A.
        assertThat(wired.dropV()).isCloseTo(.08136, within(.000005));
    }

    /**
     * Twice 6 A; 1.5625 times that is 18.75 A. Of 18 V .54 V may be lost: leads are of 10 m, and 20 m at 12 A lose .61 V on 8 AWG,
     * .39 V on 6 AWG. 22 V x (1 + 35 K x .003) = 24.3 V open in the cold: no switch. 1.25 x 6 A of one flow into the other,
     * whose sheet bears 15 A: no string fuses. One fork.
     */
    @Test
    void panelsToController() {
        WiredRun wired = run(Run.Kind.PANELS);
        assertThat(wired.run().amps().design()).isEqualTo(18.75);
        assertThat(wired.run().mostV()).isCloseTo(24.31, within(.005));
        assertThat(needs(wired))
                .containsExactlyInAnyOrderEntriesOf(Map.of("lead make one 6 AWG 10 m", 1.0, "fork make one", 1.0));
        assertThat(wired.dropV()).isCloseTo(12 * 20 * .491 / 304.8, within(1e-9));
    }

    /** In the order of need: runs, then what belongs to them, then tools. Cable by the whole metre; a spare of each fuse. */
    @Test
    void everyPieceIsCounted() {
        Map<String, Integer> bought = new LinkedHashMap<>();
        BUILD.partsList()
                .lines()
                .forEach(line -> bought.put(line.part().listing().id(), line.bought()));
        Map<String, Integer> expected = new LinkedHashMap<>();
        expected.put("cable 1/0 AWG", 2);
        expected.put("T 150", 2);
        expected.put("T holder", 1);
        expected.put("switch", 1);
        expected.put("lug 1/0 AWG", 8);
        expected.put("cable 10 AWG", 2);
        expected.put("cylinder 25", 2);
        expected.put("cylinder holder", 1);
        expected.put("lug 10 AWG", 4);
        expected.put("lead make one 6 AWG 10 m", 1);
        expected.put("fork make one", 1);
        expected.put("cord 16 AWG 5 m", 1);
        expected.put("fitting heat shrink", 12);
        expected.put("fitting terminal cover", 2);
        expected.put("fitting strap", 1);
        // Four runs, and one for the whole.
        expected.put("fitting label", 5);
        expected.put("fitting board", 1);
        // A battery of 12 kg; from the floor to a bench 23 x 25/40 x (1 - .003 x 55) x (.82 + 4.5/70) = 10.6 kg.
        expected.put("fitting hand truck", 1);
        expected.put("fitting battery meter", 1);
        for (String tool : List.of(
                "light crimper",
                "heavy crimper",
                "cable cutter",
                "wire stripper",
                "heat gun",
                "insulated spanner",
                "torque wrench",
                "multimeter",
                "eye protection")) {
            expected.put("tool " + tool, 1);
        }
        assertThat(bought).containsExactlyInAnyOrderEntriesOf(expected);
        assertThat(BUILD.partsList().missing()).isEmpty();
    }

    /**
     * Inverter's run: 2 m at 11.10, 8 lugs at 2.87, two fuses at 18.00, holder 25.00, switch 25.00: 131.16. Controller's: 2 m
     * at 1.46, 4 lugs at .46, two fuses at 3.75, holder 7.00: 19.26. Panels: lead 49.91, fork 9.00. Cord 6.14. Fittings:
     * 12 x 1.00 + 2 x 1.10 + 1.20 + 5 x 1.30 + 1.40 + 1.50 + 1.60 = 26.40. Together 241.87. Tools 126.00. Main parts 300 + 90 + 40 +
     * 2 x 80 = 590.00.
     */
    @Test
    void costsToTheCent() {
        Price price = Price.of(BUILD, List.of(LAMP), new Allowances(1, 2, 3), Terms.NONE);
        assertThat(price).isEqualTo(new Price(590_00, 241_87, 126_00, 0));
        assertThat(price.totalCents()).isEqualTo(957_87);
    }

    private static Map<String, Double> needs(WiredRun wired) {
        Map<String, Double> needs = new LinkedHashMap<>();
        wired.needs().forEach((part, pieces) -> needs.put(part.listing().id(), Math.round(1e9 * pieces) / 1e9));
        return needs;
    }
}
