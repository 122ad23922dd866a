package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static tideover.engine.rig.RigKit.lamp;
import static tideover.engine.rig.RigKit.motor;
import static tideover.engine.rig.RigKit.rig;
import static tideover.engine.rig.RigKit.start;
import static tideover.engine.rig.RigKit.timedMotor;
import static tideover.engine.rig.RigKit.verdict;

import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.electronics.Wave;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Surge;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/** What an inverter does to loads that nobody watches, and its volt-amperes. */
class InverterRulesTest {
    @Test
    void someLoadsNeedASineWave() {
        assertThat(verdict(waved(Wave.SINE), "wave", needsSine(true))).contains(Verdict.PASS);
        assertThat(verdict(waved(Wave.MODIFIED), "wave", needsSine(true))).contains(Verdict.FAIL);
        assertThat(verdict(waved(Wave.MODIFIED), "wave", needsSine(false))).contains(Verdict.CAUTION);
        assertThat(verdict(waved(Wave.UNKNOWN), "wave", needsSine(true))).contains(Verdict.CAUTION);
        assertThat(verdict(waved(Wave.MODIFIED), "wave", lamp("lamp", 9, true))).isEmpty();
    }

    @Test
    void aSmallLoadAloneDoesNotKeepABoxAwake() {
        Rig rig = sleeping(10, Stated.YES);
        assertThat(verdict(rig, "sleeps", lamp("router", 10, true))).contains(Verdict.PASS);
        assertThat(verdict(rig, "sleeps", lamp("router", 9, true))).contains(Verdict.FAIL);
        assertThat(verdict(rig, "sleeps", lamp("router", 6, true), lamp("phone", 5, true)))
                .as("together they do")
                .contains(Verdict.PASS);
        assertThat(verdict(rig, "sleeps", lamp("router", 6, true), lamp("lamp", 50, false)))
                .as("what is nice to have may be off")
                .contains(Verdict.FAIL);
        assertThat(verdict(rig, "sleeps", watched(6))).as("somebody is by").isEmpty();
    }

    /** The thermostat lets the total fall to nothing; the box sleeps, and must wake when the compressor asks. */
    @Test
    void aPausingMotorLetsTheBoxFallAsleep() {
        Load fridge = motor("fridge", 80, start(600));
        assertThat(verdict(sleeping(10, Stated.YES), "sleeps", fridge)).contains(Verdict.PASS);
        assertThat(verdict(sleeping(10, Stated.NO), "sleeps", fridge)).contains(Verdict.FAIL);
        assertThat(verdict(sleeping(10, Stated.UNKNOWN), "sleeps", fridge)).contains(Verdict.CAUTION);
        assertThat(verdict(sleeping(10, Stated.NO), "sleeps", fridge, lamp("router", 12, true)))
                .as("the router keeps it awake")
                .contains(Verdict.PASS);
    }

    @Test
    void soDoesALoadByTheClock() {
        Load pump = timedMotor("pump", 200, start(600), new DayWindow(8, 9));
        assertThat(verdict(sleeping(10, Stated.NO), "sleeps", pump)).contains(Verdict.FAIL);
        assertThat(verdict(sleeping(10, Stated.YES), "sleeps", pump)).contains(Verdict.PASS);
    }

    @Test
    void sleepThatNobodyTellsIsACaution() {
        assertThat(verdict(sleeping(Double.NaN, Stated.UNKNOWN), "sleeps", lamp("router", 100, true)))
                .contains(Verdict.CAUTION);
        assertThat(verdict(sleeping(0, Stated.UNKNOWN), "sleeps", lamp("router", 1, true)))
                .contains(Verdict.PASS);
    }

    @Test
    void whatStaysOffAfterRunningFlatIsToldOnce() {
        Load[] loads = {lamp("router", 10, true), lamp("lamp", 10, true)};
        for (Stated restarts : Stated.values()) {
            Rig rig = with(new InverterRating.Habits(0, Stated.YES, restarts));
            assertThat(RigKit.findings(rig, "after-flat", loads)).hasSize(1);
            assertThat(verdict(rig, "after-flat", loads))
                    .contains(restarts == Stated.YES ? Verdict.PASS : Verdict.CAUTION);
        }
        assertThat(verdict(with(InverterRating.Habits.UNKNOWN), "after-flat", watched(50)))
                .isEmpty();
        assertThat(verdict(with(InverterRating.Habits.UNKNOWN), "after-flat", lamp("lamp", 50, false)))
                .isEmpty();
    }

    /** 800 W at a power factor of .8 are 1000 VA. */
    @Test
    void apparentPowersCountAgainstTheRating() {
        Rig rig = rig(RigKit.agm(), RigKit.inverter());
        assertThat(verdict(rig, "apparent-load", motor("pump", 800, start(1500))))
                .contains(Verdict.PASS);
        assertThat(verdict(rig, "apparent-load", motor("pump", 801, start(1500))))
                .contains(Verdict.FAIL);
        assertThat(verdict(rig, "inverter-load", motor("pump", 801, start(1500))))
                .as("its watts alone would do")
                .contains(Verdict.PASS);
        assertThat(verdict(rig, "apparent-load", motor("pump", Invented.MAINS, 801, start(1500), false)))
                .as("nice to have")
                .contains(Verdict.CAUTION);
        assertThat(verdict(rig, "apparent-load", lamp("lamp", 1001, true)))
                .as("says nothing that the watts do not")
                .isEmpty();
    }

    private static Rig waved(Wave wave) {
        return rig(RigKit.agm(), RigKit.inverter(new Surge(2500, 10), RigKit.WINDOW, wave, RigKit.GOOD_HABITS));
    }

    private static Rig sleeping(double belowW, Stated wakes) {
        return with(new InverterRating.Habits(belowW, wakes, Stated.YES));
    }

    private static Rig with(InverterRating.Habits habits) {
        return rig(RigKit.agm(), RigKit.inverter(new Surge(2500, 10), RigKit.WINDOW, Wave.SINE, habits));
    }

    private static Load needsSine(boolean essential) {
        return new SteadyLoad(
                "blanket",
                Invented.MAINS,
                60,
                essential,
                new Need.AlwaysOn(),
                RoomKind.INDOORS,
                new Nature(1, null, true, false));
    }

    private static Load watched(double watts) {
        return new SteadyLoad(
                "radio",
                Invented.MAINS,
                watts,
                true,
                new Need.AlwaysOn(),
                RoomKind.INDOORS,
                new Nature(1, null, false, true));
    }
}
