package tideover.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static tideover.engine.wiring.WiringKit.LAYING;
import static tideover.engine.wiring.WiringKit.MAKE;
import static tideover.engine.wiring.WiringKit.OTHER_MAKE;
import static tideover.engine.wiring.WiringKit.failing;
import static tideover.engine.wiring.WiringKit.full;
import static tideover.engine.wiring.WiringKit.wire;
import static tideover.engine.wiring.WiringKit.with;
import static tideover.engine.wiring.WiringKit.without;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.engine.Invented;
import tideover.engine.load.Load;
import tideover.engine.part.Battery;
import tideover.engine.part.BatterySwitch;
import tideover.engine.part.Breaker;
import tideover.engine.part.Busbar;
import tideover.engine.part.Cable;
import tideover.engine.part.ChargeController;
import tideover.engine.part.ControllerRating.PanelInput;
import tideover.engine.part.Cord;
import tideover.engine.part.Fuse;
import tideover.engine.part.FuseHolder;
import tideover.engine.part.Lug;
import tideover.engine.part.PanelBranch;
import tideover.engine.part.PanelLead;
import tideover.engine.part.SmallPart;
import tideover.engine.rig.Chosen;
import tideover.engine.rig.Rig;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/**
 * Each rule of wiring kept and broken, and each in the whole: what breaks it is cheapest by far and yet not chosen, and where
 * there is nothing else the rig fails.
 */
@SuppressWarnings("NullAway") // what is not there fails the test by itself
class WireRulesTest {
    private static final Rig RIG = WiringKit.rig(1, 2);

    /** 1000 / .9 + 6 = 1117.1 W at 10.5 V: 106.4 A lasting, 133.0 A with the code's quarter. */
    private static final Run INVERTER = run(Run.Kind.INVERTER, 106.4, 133.0, 0);

    private static final Run CONTROLLER = run(Run.Kind.CONTROLLER, 20, 25, 0);

    private static Run run(Run.Kind kind, double lastingA, double designA, double momentA) {
        return new Run(kind, "", 1, .5, 12.8, 14.6, new Amps(lastingA, designA, momentA, 4533));
    }

    /** The bad piece is by far the cheapest of its kind. */
    private static void avoided(
            SmallPart bad, String rule, Run.Kind kind, String missing, Laying laying, Rig rig, Load... loads) {
        Build build = wire(with(full(), bad), laying, rig, loads);
        WiredRun wired = Objects.requireNonNull(build.circuit().of(kind), kind.name());
        assertThat(wired.needs()).doesNotContainKey(bad);
        assertThat(failing(build)).isEmpty();
        Build alone = wire(with(without(full(), rivals(bad)), bad), laying, rig, loads);
        assertThat(alone.circuit().of(kind)).isNull();
        assertThat(alone.circuit().findings()).anySatisfy(finding -> {
            assertThat(finding.rule()).isEqualTo(missing);
            assertThat(finding.verdict()).isEqualTo(Verdict.FAIL);
            assertThat(finding.sentence()).contains(rule);
        });
    }

    /** What could take its place. */
    private static Predicate<SmallPart> rivals(SmallPart bad) {
        boolean protects = bad instanceof Fuse || bad instanceof Breaker;
        return part -> protects ? part instanceof Fuse || part instanceof Breaker : part.getClass() == bad.getClass();
    }

    private static Protection fused(double ratedA, double mostDcV, double interruptingA) {
        return new Protection(
                WiringKit.fuse("F", WiringKit.STRIP, ratedA, mostDcV, interruptingA, 1),
                new FuseHolder(WiringKit.listing("H", 1), WiringKit.STRIP, 1000, 1));
    }

    private static Protection broken(double ratedA, double mostDcV, Stated polarised) {
        return new Protection(WiringKit.breaker("K", ratedA, mostDcV, polarised, 1), null);
    }

    @ParameterizedTest
    @EnumSource(Cable.Metal.class)
    void onlyCopperCounts(Cable.Metal metal) {
        boolean copper = metal == Cable.Metal.COPPER;
        Cable cheap = WiringKit.cable("cheap", "1/0 AWG", metal, 1);
        assertThat(WireRules.metal(INVERTER, cheap).verdict()).isEqualTo(copper ? Verdict.PASS : Verdict.FAIL);
        if (copper) {
            assertThat(wire(with(full(), cheap), LAYING, RIG)
                            .circuit()
                            .of(Run.Kind.INVERTER)
                            .conductor())
                    .isEqualTo(cheap);
        } else {
            avoided(cheap, "wire-metal", Run.Kind.INVERTER, "no-cable", LAYING, RIG);
        }
    }

    /**
     * At 40 degC, of 90 degC insulation, with terminals of 75 degC: 1 AWG bears the least of 130 and .91 x 145 = 132 A,
     * 1/0 AWG the least of 150 and .91 x 170 = 155 A. The next fuse above 133 A is of 150 A.
     */
    @Test
    void aWireIsNotProtectedAboveWhatItBears() {
        assertThat(WireRules.ampacity(INVERTER, "1/0", 150, 150).verdict()).isEqualTo(Verdict.PASS);
        assertThat(WireRules.ampacity(INVERTER, "1/0", 150.1, 150).verdict()).isEqualTo(Verdict.FAIL);
        WiredRun wired = wire(full(), LAYING, RIG).circuit().of(Run.Kind.INVERTER);
        assertThat(wired.protection().ratedA()).isEqualTo(150);
        assertThat(wired.size().words()).isEqualTo("1/0 AWG");
        assertThat(wired.allowedA()).isEqualTo(150);
        avoided(
                WiringKit.cable("thin", "1 AWG", Cable.Metal.COPPER, 1),
                "wire-ampacity",
                Run.Kind.INVERTER,
                "no-cable",
                LAYING,
                RIG);
    }

    /** Whatever is smaller than 200 A has gone: 3/0 AWG, of 200 A at 75 degC and .91 x 225 = 205 A, is the thinnest. */
    @Test
    void theWireGrowsWithTheFuse() {
        List<SmallPart> coarse = without(
                full(),
                part -> part instanceof Breaker || (part instanceof Fuse fuse && inside(fuse.ratedA(), 31, 199)));
        WiredRun wired = wire(coarse, LAYING, RIG).circuit().of(Run.Kind.INVERTER);
        assertThat(wired.protection().ratedA()).isEqualTo(200);
        assertThat(wired.size().words()).isEqualTo("3/0 AWG");
    }

    private static boolean inside(double value, double least, double most) {
        return least <= value && value <= most;
    }

    /** 53 degC lets 1/0 AWG carry no more than .76 x 170 = 129 A; 2/0 AWG .76 x 195 = 148 A; 3/0 AWG .76 x 225 = 171 A. */
    @Test
    void theWireGrowsWithTheHeat() {
        assertThat(wire(full(), WiringKit.hot(53), RIG)
                        .circuit()
                        .of(Run.Kind.INVERTER)
                        .size()
                        .words())
                .isEqualTo("3/0 AWG");
    }

    /** .03 x 12.8 V is .384 V. Over 4 m and back 20 A lose .41 V on 8 AWG and .26 V on 6 AWG. */
    @Test
    void noMoreThanThreeInAHundredAreLost() {
        assertThat(WireRules.drop(CONTROLLER, .383).verdict()).isEqualTo(Verdict.PASS);
        assertThat(WireRules.drop(CONTROLLER, .385).verdict()).isEqualTo(Verdict.FAIL);
        Laying far = WiringKit.controllerAt(4);
        WiredRun wired = wire(full(), far, RIG).circuit().of(Run.Kind.CONTROLLER);
        assertThat(wired.size().words()).isEqualTo("6 AWG");
        avoided(
                WiringKit.cable("thin", "8 AWG", Cable.Metal.COPPER, 1),
                "wire-drop",
                Run.Kind.CONTROLLER,
                "no-cable",
                far,
                RIG);
    }

    /**
     * A start of 6000 VA takes .6 x 6000 / .9 + 6 = 4006 W, or 381.5 A at 10.5 V. Half of it asks for a fuse of 200 A and so
     * for 3/0 AWG, which over 2 m loses .38 V, fuse and joints less than half a volt; over 10 m two side by side lose .96 V
     * and a breaker with six joints .36 V: 1.32 V, more than 1.28 V.
     */
    @Test
    void aMotorsStartLosesNoMoreThanATenth() {
        Run starts = run(Run.Kind.INVERTER, 106.4, 133, 381.5);
        assertThat(WireRules.sag(starts, 1.27).verdict()).isEqualTo(Verdict.PASS);
        assertThat(WireRules.sag(starts, 1.29).verdict()).isEqualTo(Verdict.FAIL);
        Load pump = WiringKit.motor("pump", Invented.MAINS, 400, 6000);
        WiredRun near =
                wire(full(), WiringKit.inverterAt(2), RIG, pump).circuit().of(Run.Kind.INVERTER);
        assertThat(near.protection().ratedA()).isEqualTo(200);
        assertThat(near.size().words()).isEqualTo("3/0 AWG");
        avoided(
                WiringKit.cable("thin", "3/0 AWG", Cable.Metal.COPPER, 1),
                "wire-sag",
                Run.Kind.INVERTER,
                "no-cable",
                WiringKit.inverterAt(10),
                RIG,
                pump);
    }

    @Test
    void aFuseIsRatedForWhatFlowsForHours() {
        assertThat(WireRules.rating(INVERTER, fused(133, 58, 5000)).verdict()).isEqualTo(Verdict.PASS);
        assertThat(WireRules.rating(INVERTER, fused(132, 58, 5000)).verdict()).isEqualTo(Verdict.FAIL);
        avoided(
                WiringKit.fuse("small", WiringKit.CLASS_T, 125, 125, 20_000, 1),
                "protection-rating",
                Run.Kind.INVERTER,
                "no-protection",
                LAYING,
                RIG);
    }

    /** 381.5 A for a moment ask for half as much, 190.7 A. */
    @Test
    void aFuseOutlastsAStart() {
        Run starts = run(Run.Kind.INVERTER, 106.4, 133, 381.5);
        assertThat(WireRules.rating(starts, fused(191, 58, 5000)).verdict()).isEqualTo(Verdict.PASS);
        assertThat(WireRules.rating(starts, fused(190, 58, 5000)).verdict()).isEqualTo(Verdict.FAIL);
        avoided(
                WiringKit.fuse("small", WiringKit.CLASS_T, 175, 125, 20_000, 1),
                "protection-rating",
                Run.Kind.INVERTER,
                "no-protection",
                LAYING,
                RIG,
                WiringKit.motor("pump", Invented.MAINS, 400, 6000));
    }

    /** Four cells are charged at 14.6 V. */
    @Test
    void aFusePartsTheDirectVolts() {
        assertThat(WireRules.directVolts(INVERTER, fused(150, 14.6, 5000)).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(WireRules.directVolts(INVERTER, fused(150, 14.5, 5000)).verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(WireRules.directVolts(INVERTER, fused(150, Double.NaN, 5000)))
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.FAIL);
                    assertThat(finding.rule()).isEqualTo("fuse-volts");
                });
        for (double volts : new double[] {14.5, Double.NaN}) {
            avoided(
                    WiringKit.fuse("low", WiringKit.CLASS_T, 150, volts, 20_000, 1),
                    "fuse-volts",
                    Run.Kind.INVERTER,
                    "no-protection",
                    LAYING,
                    RIG);
        }
    }

    /** A breaker for alternating current alone states no direct volts. */
    @Test
    void aBreakerPartsTheDirectVolts() {
        assertThat(WireRules.directVolts(INVERTER, broken(150, 14.6, Stated.NO)).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(WireRules.directVolts(INVERTER, broken(150, Double.NaN, Stated.NO)))
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.FAIL);
                    assertThat(finding.rule()).isEqualTo("breaker-dc");
                });
        for (double volts : new double[] {12, Double.NaN}) {
            avoided(
                    WiringKit.breaker("house", 150, volts, Stated.NO, 1),
                    "breaker-dc",
                    Run.Kind.INVERTER,
                    "no-protection",
                    LAYING,
                    RIG);
        }
    }

    /** Bare cells of .3 x 4 x .25 / 100 = 3 milliohm at 13.6 V: 4533 A. */
    @Test
    void aFusePartsTheFaultOfTheBattery() {
        assertThat(WireRules.interrupting(INVERTER, fused(150, 58, 4533)).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(WireRules.interrupting(INVERTER, fused(150, 58, 4532)).verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(WireRules.interrupting(INVERTER, fused(150, 58, Double.NaN)).verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(wire(full(), LAYING, RIG)
                        .circuit()
                        .of(Run.Kind.INVERTER)
                        .run()
                        .amps()
                        .fault())
                .isBetween(4533.0, 4534.0);
        for (double amps : new double[] {4500, Double.NaN}) {
            avoided(
                    WiringKit.fuse("weak", WiringKit.CLASS_T, 150, 125, amps, 1),
                    "interrupting",
                    Run.Kind.INVERTER,
                    "no-protection",
                    LAYING,
                    RIG);
            avoided(
                    new Breaker(WiringKit.listing("weak", 1), 150, 60, amps, Stated.NO),
                    "interrupting",
                    Run.Kind.INVERTER,
                    "no-protection",
                    LAYING,
                    RIG);
        }
    }

    /** A fault between controller and battery may come from either end. */
    @ParameterizedTest
    @EnumSource(Stated.class)
    void aBreakerAtAControllerPartsEitherWay(Stated polarised) {
        boolean eitherWay = polarised == Stated.NO;
        assertThat(WireRules.polarity(
                                CONTROLLER, (Breaker) broken(30, 60, polarised).device())
                        .verdict())
                .isEqualTo(eitherWay ? Verdict.PASS : Verdict.FAIL);
        assertThat(WireRules.polarity(
                                INVERTER, (Breaker) broken(150, 60, polarised).device())
                        .verdict())
                .as("current out of the battery only")
                .isEqualTo(eitherWay ? Verdict.PASS : Verdict.CAUTION);
        Breaker cheap = WiringKit.breaker("cheap", 30, 60, polarised, 1);
        if (eitherWay) {
            assertThat(wire(with(full(), cheap), LAYING, RIG)
                            .circuit()
                            .of(Run.Kind.CONTROLLER)
                            .protection()
                            .device())
                    .isEqualTo(cheap);
        } else {
            avoided(cheap, "breaker-polarity", Run.Kind.CONTROLLER, "no-protection", LAYING, RIG);
        }
        Breaker atInverter = WiringKit.breaker("cheap", 150, 60, polarised, 1);
        WiredRun wired = wire(with(full(), atInverter), LAYING, RIG).circuit().of(Run.Kind.INVERTER);
        assertThat(wired.protection().device()).isEqualTo(atInverter);
        assertThat(verdicts(wired.findings(), "breaker-polarity"))
                .containsExactly(eitherWay ? Verdict.PASS : Verdict.CAUTION);
    }

    private static List<Verdict> verdicts(List<Finding> findings, String rule) {
        return findings.stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(Finding::verdict)
                .toList();
    }

    @Test
    void aHolderTakesItsFormatAndBearsItsFuse() {
        Fuse fuse = WiringKit.fuse("F", "Strip", 150, 58, 5000, 1);
        assertThat(WireRules.holds(new FuseHolder(WiringKit.listing("H", 1), "strip", 150, 1), fuse))
                .isTrue();
        assertThat(WireRules.holds(new FuseHolder(WiringKit.listing("H", 1), "strip", 149, 1), fuse))
                .isFalse();
        assertThat(WireRules.holds(new FuseHolder(WiringKit.listing("H", 1), "blade", 150, 1), fuse))
                .isFalse();
        FuseHolder weak = new FuseHolder(WiringKit.listing("weak", 1), WiringKit.CLASS_T, 149, 1);
        FuseHolder strange = new FuseHolder(WiringKit.listing("strange", 1), "none of these", 1000, 1);
        assertThat(wire(with(full(), weak, strange), LAYING, RIG)
                        .circuit()
                        .of(Run.Kind.INVERTER)
                        .needs())
                .doesNotContainKeys(weak, strange);
        Build alone = wire(
                with(without(full(), part -> part instanceof FuseHolder || part instanceof Breaker), weak, strange),
                LAYING,
                RIG);
        assertThat(failing(alone)).contains("no-protection");
        assertThat(alone.circuit().of(Run.Kind.INVERTER)).isNull();
    }

    @Test
    void aSwitchBearsTheCurrentAndTheVolts() {
        assertThat(WireRules.parts(WiringKit.hand("S", 133, 14.6, 1), INVERTER)).isTrue();
        assertThat(WireRules.parts(WiringKit.hand("S", 132, 14.6, 1), INVERTER)).isFalse();
        assertThat(WireRules.parts(WiringKit.hand("S", 133, 14.5, 1), INVERTER)).isFalse();
        BatterySwitch weak = WiringKit.hand("weak", 130, 60, 1);
        BatterySwitch low = WiringKit.hand("low", 300, 14, 1);
        assertThat(wire(with(full(), weak, low), LAYING, RIG)
                        .circuit()
                        .of(Run.Kind.INVERTER)
                        .parting()
                        .listing()
                        .id())
                .isEqualTo("switch");
    }

    /** A caution, not a fault: where no switch suits, the fuse must be pulled. */
    @Test
    void anInverterIsPartedByHand() {
        BatterySwitch hand = WiringKit.hand("S", 300, 60, 1);
        assertThat(WireRules.parting(INVERTER, fused(150, 58, 5000), hand).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(WireRules.parting(INVERTER, fused(150, 58, 5000), null).verdict())
                .isEqualTo(Verdict.CAUTION);
        assertThat(WireRules.parting(INVERTER, broken(150, 60, Stated.NO), null).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(parting(full())).containsExactly(Verdict.PASS);
        List<SmallPart> bare = without(full(), part -> part instanceof BatterySwitch || part instanceof Breaker);
        assertThat(parting(bare)).containsExactly(Verdict.CAUTION);
        assertThat(failing(wire(bare, LAYING, RIG))).isEmpty();
        assertThat(parting(with(bare, WiringKit.hand("weak", 132, 60, 1))))
                .as("132 A where 133 A may flow")
                .containsExactly(Verdict.CAUTION);
        assertThat(parting(with(bare, WiringKit.breaker("K", 150, 60, Stated.NO, 1))))
                .containsExactly(Verdict.PASS);
        assertThat(verdicts(
                        wire(bare, LAYING, RIG)
                                .circuit()
                                .of(Run.Kind.CONTROLLER)
                                .findings(),
                        "battery-switch"))
                .isEmpty();
    }

    private static List<Verdict> parting(List<SmallPart> stock) {
        return verdicts(wire(stock, LAYING, RIG).circuit().of(Run.Kind.INVERTER).findings(), "battery-switch");
    }

    @Test
    void aCordBearsItsLoad() {
        Load heater = WiringKit.lamp("heater", 900);
        Run run = CordPicker.run(heater, 3);
        assertThat(WireRules.cordAmps(run, WiringKit.cord("cord", "10 AWG", 3, 7.5, 1))
                        .verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(WireRules.cordAmps(run, WiringKit.cord("cord", "10 AWG", 3, 7.4, 1))
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        avoided(
                WiringKit.cord("weak", "10 AWG", 3, 7, 1),
                "cord-amps",
                Run.Kind.CORD,
                "no-cord",
                WiringKit.corded("heater", 3),
                RIG,
                heater);
    }

    /** .03 x 120 V is 3.6 V. 7.5 A over 15 m of 16 AWG lose 30 x 4.99 / 304.8 x 7.5 = 3.68 V. */
    @Test
    void aLongCordIsThick() {
        avoided(
                WiringKit.cord("thin", "16 AWG", 15, 13, 1),
                "wire-drop",
                Run.Kind.CORD,
                "no-cord",
                WiringKit.corded("heater", 15),
                RIG,
                WiringKit.lamp("heater", 900));
    }

    /**
     * 400 W run at 500 VA, 4.2 A; 6000 VA at the start are 50 A. Over 15 m of 16 AWG that is 24.6 V, twice the 12 V that may
     * be lost, where the lasting current loses 2.0 V; 14 AWG loses 15.5 V, 12 AWG 9.7 V.
     */
    @Test
    void aThinCordStarvesAMotor() {
        Load pump = WiringKit.motor("pump", Invented.MAINS, 400, 6000);
        avoided(
                WiringKit.cord("thin", "16 AWG", 15, 13, 1),
                "wire-sag",
                Run.Kind.CORD,
                "no-cord",
                WiringKit.corded("pump", 15),
                RIG,
                pump);
        assertThat(wire(full(), WiringKit.corded("pump", 15), RIG, pump)
                        .circuit()
                        .of(Run.Kind.CORD)
                        .size()
                        .words())
                .isEqualTo("12 AWG");
    }

    /** Cords are not put one into another, and the plug must fit. */
    @Test
    void aCordIsLongEnoughAndFits() {
        Load lamp = WiringKit.lamp("lamp", 20);
        Laying laying = WiringKit.corded("lamp", 5);
        avoided(WiringKit.cord("short", "14 AWG", 4.9, 15, 1), "length", Run.Kind.CORD, "no-cord", laying, RIG, lamp);
        Cord other = new Cord(WiringKit.listing("other", 1), WiringKit.size("14 AWG"), 5, 15, 120, "another plug");
        avoided(other, "plug or volts", Run.Kind.CORD, "no-cord", laying, RIG, lamp);
        Cord higher = new Cord(WiringKit.listing("higher", 1), WiringKit.size("14 AWG"), 5, 15, 230, WiringKit.PLUG);
        avoided(higher, "plug or volts", Run.Kind.CORD, "no-cord", laying, RIG, lamp);
    }

    private static Run panels(double lastingA) {
        return new Run(
                Run.Kind.PANELS, "", 1, 8, 18, 24, new Amps(lastingA, Runs.LASTING_TIMES * 1.25 * lastingA, 0, 0));
    }

    /** Known makes must agree at either end; where one is not known it is a caution. */
    @Test
    void panelPlugsAreMatedWithinAMake() {
        Run run = panels(12);
        PanelLead screws = WiringKit.lead("L", MAKE, PanelInput.BARE_ENDS, "10 AWG", 10, 1);
        PanelLead plugs = WiringKit.lead("L", MAKE, MAKE, "10 AWG", 10, 1);
        PanelLead any = WiringKit.lead("L", PanelLead.ANY_MAKE, PanelInput.BARE_ENDS, "10 AWG", 10, 1);
        assertThat(mated(run, MAKE, PanelInput.BARE_ENDS, screws)).isEqualTo(Verdict.PASS);
        assertThat(mated(run, "Make One", MAKE, plugs)).isEqualTo(Verdict.PASS);
        assertThat(mated(run, OTHER_MAKE, PanelInput.BARE_ENDS, screws)).isEqualTo(Verdict.FAIL);
        assertThat(mated(run, MAKE, MAKE, screws)).isEqualTo(Verdict.FAIL);
        assertThat(mated(run, "", MAKE, screws)).isEqualTo(Verdict.FAIL);
        assertThat(mated(run, OTHER_MAKE, "", screws)).isEqualTo(Verdict.FAIL);
        assertThat(mated(run, "", PanelInput.BARE_ENDS, screws)).isEqualTo(Verdict.CAUTION);
        assertThat(mated(run, MAKE, "", screws)).isEqualTo(Verdict.CAUTION);
        assertThat(mated(run, MAKE, MAKE, any)).isEqualTo(Verdict.CAUTION);
        avoided(
                WiringKit.lead("other", OTHER_MAKE, PanelInput.BARE_ENDS, "10 AWG", 10, 1),
                "mated-connectors",
                Run.Kind.PANELS,
                "no-panel-lead",
                LAYING,
                RIG);
        avoided(
                WiringKit.lead("plugs", MAKE, MAKE, "10 AWG", 10, 1),
                "mated-connectors",
                Run.Kind.PANELS,
                "no-panel-lead",
                LAYING,
                RIG);
    }

    private static Verdict mated(Run run, String panelMake, String inputMake, PanelLead lead) {
        return WireRules.connectors(run, panelMake, inputMake, lead).verdict();
    }

    /** Two of 6 A give 1.25 x 12 = 15 A in bright light. */
    @Test
    void panelPlugsBearBrightLight() {
        PanelLead weak = rated("weak", 14.9);
        assertThat(WireRules.plugAmps(panels(12), rated("L", 15)).verdict()).isEqualTo(Verdict.PASS);
        assertThat(WireRules.plugAmps(panels(12), weak).verdict()).isEqualTo(Verdict.FAIL);
        avoided(weak, "plug-amps", Run.Kind.PANELS, "no-panel-lead", LAYING, RIG);
    }

    private static PanelLead rated(String id, double ratedA) {
        return new PanelLead(
                WiringKit.listing(id, 1), MAKE, PanelInput.BARE_ENDS, WiringKit.size("10 AWG"), 90, 10, ratedA);
    }

    /** 1.5625 x 12 A = 18.75 A is more than the 15 A of 14 AWG; no drop at 1 m tells otherwise. */
    @Test
    void panelLeadsBearBrightLightForHours() {
        avoided(
                WiringKit.lead("thin", MAKE, PanelInput.BARE_ENDS, "14 AWG", 3, 1),
                "wire-ampacity",
                Run.Kind.PANELS,
                "no-panel-lead",
                WiringKit.panelsAt(1),
                RIG);
    }

    /** Under a roof of 60 + 33 degC nothing of 90 degC carries anything; at 45 + 33 degC 12 AWG bears .41 x 30 = 12.3 A. */
    @Test
    void panelLeadsBearTheHeatAboveARoof() {
        assertThat(failing(wire(full(), onRoof(8, 60), WiringKit.rig(1, 1)))).contains("no-panel-lead");
        Laying warm = onRoof(1, 45);
        avoided(
                WiringKit.lead("thin", MAKE, PanelInput.BARE_ENDS, "12 AWG", 3, 1),
                "wire-ampacity",
                Run.Kind.PANELS,
                "no-panel-lead",
                warm,
                RIG);
    }

    private static Laying onRoof(double panelsM, double hottestDegC) {
        return new Laying(panelsM, .5, .5, .5, 1, 8, .3, .3, hottestDegC, 2, true, Map.of());
    }

    /**
     * .03 x 18 V is .54 V and .10 x 18 V is 1.8 V: up to there it is a caution. 12 A over 10 m of 12 AWG lose 20 x 1.98 / 304.8 x
     * 12 = 1.56 V, over 15 m 2.34 V.
     */
    @Test
    void aLongPanelLeadIsThick() {
        assertThat(WireRules.drop(panels(12), .53).verdict()).isEqualTo(Verdict.PASS);
        assertThat(WireRules.drop(panels(12), .55).verdict()).isEqualTo(Verdict.CAUTION);
        assertThat(WireRules.drop(panels(12), 1.79).verdict()).isEqualTo(Verdict.CAUTION);
        assertThat(WireRules.drop(panels(12), 1.81).verdict()).isEqualTo(Verdict.FAIL);
        PanelLead thin = WiringKit.lead("thin", MAKE, PanelInput.BARE_ENDS, "12 AWG", 10, 1);
        assertThat(wire(with(full(), thin), WiringKit.panelsAt(6), RIG)
                        .circuit()
                        .of(Run.Kind.PANELS)
                        .conductor())
                .isNotEqualTo(thin);
        Build alone = wire(with(without(full(), part -> part instanceof PanelLead), thin), WiringKit.panelsAt(6), RIG);
        assertThat(alone.circuit().of(Run.Kind.PANELS).conductor()).isEqualTo(thin);
        assertThat(verdicts(alone.circuit().of(Run.Kind.PANELS).findings(), "wire-drop"))
                .containsExactly(Verdict.CAUTION);
        avoided(
                WiringKit.lead("thin", MAKE, PanelInput.BARE_ENDS, "12 AWG", 15, 1),
                "wire-drop",
                Run.Kind.PANELS,
                "no-panel-lead",
                WiringKit.panelsAt(6),
                RIG);
    }

    /** Of two, one bears what the other gives; of three, two feed 1.25 x 12 A = 15 A into one. */
    @Test
    void threeStringsHaveFuses() {
        assertThat(WireRules.needsStringFuses(1, 5, 6)).isFalse();
        assertThat(WireRules.needsStringFuses(2, Double.NaN, 6)).isFalse();
        assertThat(WireRules.needsStringFuses(2, 7.5, 6)).isFalse();
        assertThat(WireRules.needsStringFuses(2, 7.4, 6))
                .as("its sheet bears less")
                .isTrue();
        assertThat(WireRules.needsStringFuses(3, Double.NaN, 6)).isTrue();
        assertThat(WireRules.needsStringFuses(3, 14.9, 6)).isTrue();
        assertThat(WireRules.needsStringFuses(3, 15, 6))
                .as("its sheet bears both")
                .isFalse();
        Fuse fuse = WiringKit.fuse("F", WiringKit.INLINE, 10, 1000, 5000, 1);
        assertThat(WireRules.stringFuse(panels(18), 3, Double.NaN, 6, fuse).verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(WireRules.stringFuse(panels(18), 3, Double.NaN, 6, null).verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(WireRules.stringFuse(panels(12), 2, Double.NaN, 6, null).verdict())
                .isEqualTo(Verdict.PASS);
    }

    /** Each of three: at least 1.5625 x 6 A = 9.4 A, at most what the sheet allows, volts for 22 V open in the cold. */
    @Test
    void stringFusesLieBetweenTheCurrentAndTheSheet() {
        Rig three = strings(3, 12);
        WiredRun wired = wire(full(), WiringKit.panelsAt(3), three).circuit().of(Run.Kind.PANELS);
        assertThat(wired.protection().words()).isEqualTo("10 A fuse, panel inline");
        assertThat(wired.needs()).containsEntry(wired.protection().device(), 3.0);
        assertThat(wired.needs()).containsEntry(wired.protection().holder(), 3.0);
        for (Fuse bad : List.of(
                WiringKit.fuse("small", WiringKit.INLINE, 9, 1000, 30_000, 1),
                WiringKit.fuse("large", WiringKit.INLINE, 15, 1000, 30_000, 1),
                WiringKit.fuse("low", WiringKit.INLINE, 10, 23, 30_000, 1),
                WiringKit.fuse("none", WiringKit.INLINE, 10, Double.NaN, 30_000, 1),
                WiringKit.fuse("other", WiringKit.CYLINDER, 10, 1000, 30_000, 1))) {
            assertThat(wire(with(full(), bad), WiringKit.panelsAt(3), three)
                            .circuit()
                            .of(Run.Kind.PANELS)
                            .needs())
                    .doesNotContainKey(bad);
            Build alone = wire(
                    with(without(full(), part -> part instanceof Fuse fuse && isInline(fuse)), bad),
                    WiringKit.panelsAt(3),
                    three);
            assertThat(alone.circuit().of(Run.Kind.PANELS)).isNull();
            assertThat(failing(alone)).containsExactly("no-string-fuse");
        }
        assertThat(failing(wire(full(), WiringKit.panelsAt(3), strings(3, 9))))
                .as("a sheet that allows less than the string gives")
                .containsExactly("no-string-fuse");
    }

    private static boolean isInline(Fuse fuse) {
        return fuse.format().equals(WiringKit.INLINE);
    }

    private static Rig strings(int count, double mostFuseA) {
        return WiringKit.rig(
                WiringKit.one(WiringKit.battery()),
                WiringKit.one(WiringKit.controller(20, 120)),
                new Chosen(WiringKit.panel(MAKE, mostFuseA), count));
    }

    @Test
    void stringsMeetInForksOfTheirMake() {
        PanelBranch other = new PanelBranch(WiringKit.listing("other", 1), OTHER_MAKE, 50);
        PanelBranch weak = new PanelBranch(WiringKit.listing("weak", 1), MAKE, 14.9);
        assertThat(wire(with(full(), other, weak), LAYING, RIG)
                        .circuit()
                        .of(Run.Kind.PANELS)
                        .needs())
                .doesNotContainKeys(other, weak)
                .hasEntrySatisfying(
                        new PanelBranch(WiringKit.listing("fork " + MAKE, 900), MAKE, 50),
                        count -> assertThat(count).isEqualTo(1.0));
        Build alone = wire(with(without(full(), part -> part instanceof PanelBranch), other, weak), LAYING, RIG);
        assertThat(failing(alone)).containsExactly("no-panel-branch");
    }

    /** Two in a row of 22 V open reach 2 x 22 x (1 + .003 x 35) = 48.6 V at -10 degC, above the 30 V that a plug may part. */
    @Test
    void aSwitchPartsPanelsOfManyVolts() {
        assertThat(WireRules.panelSwitch(panels(6), null).verdict()).isEqualTo(Verdict.CAUTION);
        assertThat(WireRules.panelSwitch(panels(6), WiringKit.hand("S", 40, 600, 1))
                        .verdict())
                .isEqualTo(Verdict.PASS);
        Rig row = rowOfTwo();
        assertThat(row.panelsInSeries()).isEqualTo(2);
        WiredRun wired = wire(full(), LAYING, row).circuit().of(Run.Kind.PANELS);
        assertThat(wired.parting().listing().id()).isEqualTo("panel switch");
        assertThat(verdicts(wired.findings(), "panel-switch")).containsExactly(Verdict.PASS);
        BatterySwitch low = WiringKit.hand("low", 40, 48, 1);
        assertThat(wire(with(full(), low), LAYING, row)
                        .circuit()
                        .of(Run.Kind.PANELS)
                        .parting())
                .isNotEqualTo(low);
        WiredRun none = wire(with(without(full(), part -> part instanceof BatterySwitch), low), LAYING, row)
                .circuit()
                .of(Run.Kind.PANELS);
        assertThat(none.parting()).isNull();
        assertThat(verdicts(none.findings(), "panel-switch")).containsExactly(Verdict.CAUTION);
        assertThat(verdicts(
                        wire(full(), LAYING, RIG).circuit().of(Run.Kind.PANELS).findings(), "panel-switch"))
                .as("24 V")
                .isEmpty();
    }

    private static Rig rowOfTwo() {
        return WiringKit.rig(
                new Chosen(WiringKit.battery(), 2),
                WiringKit.one(WiringKit.inverter(1000, 24)),
                WiringKit.one(WiringKit.controller(20, 120)),
                new Chosen(WiringKit.panel(MAKE, 15), 2));
    }

    @Test
    void linksBetweenBatteriesAreAlike() {
        assertThat(WireRules.links(WiringKit.links(.3, .3)).verdict()).isEqualTo(Verdict.PASS);
        assertThat(WireRules.links(WiringKit.links(.3, .4)).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(failing(wire(full(), WiringKit.links(.3, .4), WiringKit.rig(2, 0))))
                .containsExactly("links-alike");
        assertThat(failing(wire(full(), WiringKit.links(.3, .3), WiringKit.rig(2, 0))))
                .isEmpty();
        assertThat(failing(wire(full(), WiringKit.links(.3, .4), WiringKit.rig(1, 0))))
                .as("one battery has no links")
                .isEmpty();
    }

    @Test
    void whatCannotBeHadFailsTheRig() {
        assertThat(failing(wire(without(full(), part -> part instanceof Cable), LAYING, RIG)))
                .containsExactly("no-cable", "no-cable");
        assertThat(failing(wire(without(full(), part -> part instanceof Lug), LAYING, RIG)))
                .containsExactly("no-cable", "no-cable");
        assertThat(failing(wire(without(full(), part -> part instanceof Fuse || part instanceof Breaker), LAYING, RIG)))
                .containsExactly("no-protection", "no-protection");
        assertThat(failing(wire(without(full(), part -> part instanceof PanelLead), LAYING, RIG)))
                .containsExactly("no-panel-lead");
        assertThat(failing(wire(without(full(), part -> part instanceof PanelBranch), LAYING, RIG)))
                .containsExactly("no-panel-branch");
        assertThat(failing(wire(
                        without(full(), part -> part instanceof Cord),
                        WiringKit.corded("lamp", 5),
                        RIG,
                        WiringKit.lamp("lamp", 20))))
                .containsExactly("no-cord");
        assertThat(failing(wire(full(), LAYING, RIG))).isEmpty();
    }

    /**
     * Batteries in a row meet the bars through one fuse, and are joined by a cable as strong as that. 1000 / .9 + 6 = 1117.1 W at
     * 21 V are 53.2 A, and 120 W at 25.6 V 4.7 A: 72.4 A with the quarter, a fuse of 80 A. With terminals of 60 degC 4 AWG bears
     * 70 A, 3 AWG 85 A.
     */
    @Test
    void aRowIsAsStrongAsItsFuse() {
        Rig row = rowOfTwo();
        Build build = wire(full(), LAYING, row);
        WiredRun link = build.circuit().of(Run.Kind.LINK);
        assertThat(link.run().count()).isEqualTo(1);
        assertThat(link.run().amps().design()).isBetween(72.35, 72.36);
        assertThat(link.protection().ratedA()).isEqualTo(80);
        WiredRun wired = build.circuit().of(Run.Kind.SERIES);
        assertThat(wired.protection()).isNull();
        assertThat(wired.size().words()).isEqualTo("3 AWG");
        assertThat(wired.allowedA()).isEqualTo(85);
        assertThat(build.partsList().lines()).anyMatch(line -> line.part() instanceof Busbar && line.needed() == 2);
        Fuse large = WiringKit.fuse("large", WiringKit.CLASS_T, 225, 125, 20_000, 1);
        List<SmallPart> one = with(without(full(), rivals(large)), large);
        Circuit larger = wire(one, LAYING, row).circuit();
        assertThat(larger.of(Run.Kind.LINK).protection().ratedA()).isEqualTo(225);
        assertThat(larger.of(Run.Kind.SERIES).allowedA())
                .as("by the row's fuse, not by its current")
                .isGreaterThanOrEqualTo(225);
        List<SmallPart> thin = without(
                full(), part -> part instanceof Cable cable && cable.size().areaMm2() > 22);
        assertThat(failing(wire(thin, LAYING, row))).contains("no-cable");
        assertThat(wire(thin, LAYING, row).circuit().of(Run.Kind.SERIES)).isNull();
    }

    /** What is one battery alone meets no bars. */
    @Test
    void oneBatteryHasNoRowFuse() {
        Build build = wire(full(), LAYING, RIG);
        assertThat(build.circuit().of(Run.Kind.LINK)).isNull();
        assertThat(build.partsList().lines()).noneMatch(line -> line.part() instanceof Busbar);
    }

    /** 6000 VA take 381.5 A for a moment; half of it is more than the 25 A that a controller gives with the quarter. */
    @Test
    void aControllersOutletsBearAStart() {
        Load pump = WiringKit.motor("pump", Invented.MAINS, 400, 6000);
        Circuit starts = wire(full(), LAYING, RIG, pump).circuit();
        WiredRun wired = starts.of(Run.Kind.CONTROLLER);
        assertThat(wired.run().amps().moment())
                .isEqualTo(starts.of(Run.Kind.INVERTER).run().amps().moment())
                .isBetween(381.0, 382.0);
        assertThat(wired.protection().ratedA()).isGreaterThanOrEqualTo(381.5 / 2);
        assertThat(verdicts(wired.findings(), "wire-sag")).containsExactly(Verdict.PASS);
        Rig bare = WiringKit.rig(
                WiringKit.one(WiringKit.battery()),
                WiringKit.one(WiringKit.inverter(1000, 12)),
                WiringKit.one(new ChargeController(
                        Invented.listing("C", 40_00, 1),
                        WiringKit.controller(20, 1).rating(),
                        List.of())));
        WiredRun outOfTheWay = wire(full(), LAYING, bare, pump).circuit().of(Run.Kind.CONTROLLER);
        assertThat(outOfTheWay.run().amps().moment()).isZero();
        assertThat(outOfTheWay.protection().ratedA()).isEqualTo(25);
    }

    /** What the panels' maker does not tell must not let two makes meet in a fork. */
    @Test
    void forkAndLeadAreOfOneMake() {
        Rig untold = WiringKit.rig(
                WiringKit.one(WiringKit.battery()),
                WiringKit.one(WiringKit.controller(20, 120)),
                new Chosen(WiringKit.panel("", 15), 2));
        PanelBranch cheap = new PanelBranch(WiringKit.listing("cheap", 1), OTHER_MAKE, 50);
        PanelLead lead = WiringKit.lead("cheap lead", MAKE, PanelInput.BARE_ENDS, "8 AWG", 10, 1);
        WiredRun wired =
                wire(with(full(), cheap, lead), LAYING, untold).circuit().of(Run.Kind.PANELS);
        String fork = wired.needs().keySet().stream()
                .filter(PanelBranch.class::isInstance)
                .map(part -> ((PanelBranch) part).connector())
                .findFirst()
                .orElseThrow();
        assertThat(((PanelLead) wired.conductor()).connector()).isEqualTo(fork);
    }

    /** Two batteries that feed one that has failed. */
    @Test
    void theFuseOfARowPartsWhatTheOthersFeed() {
        Battery battery = WiringKit.battery();
        Rig three = WiringKit.rig(new Chosen(battery, 3), WiringKit.one(WiringKit.inverter(1000, 12)));
        WiredRun link = wire(full(), LAYING, three).circuit().of(Run.Kind.LINK);
        assertThat(link.run().amps().fault()).isBetween(2 * 4533.0, 2 * 4534.0);
        avoided(
                WiringKit.fuse("weak", WiringKit.CLASS_T, 60, 125, 9000, 1),
                "interrupting",
                Run.Kind.LINK,
                "no-protection",
                LAYING,
                three);
    }
}
