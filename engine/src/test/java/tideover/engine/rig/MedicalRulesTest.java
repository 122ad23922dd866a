package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static tideover.engine.rig.RigKit.rig;
import static tideover.engine.rig.RigKit.verdict;

import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.electronics.Wave;
import tideover.engine.load.Load;
import tideover.engine.load.Medical;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.part.Inverter;
import tideover.engine.part.Surge;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Basis;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/** What must be arranged around a load that somebody's health hangs on: each rule kept, and broken. */
class MedicalRulesTest {
    private static final Medical GOOD =
            new Medical(600, "its own alarm, on its own cell", "Aunt Vela", true, "hand pump beside the bed");

    @Test
    void takingOverByItselfIsHeldAgainstWhatThePersonCanBridge() {
        Finding kept = only(transferring(0.02), breather(bridging(0.02)));
        assertThat(kept.verdict()).isEqualTo(Verdict.PASS);
        assertThat(kept.basis()).isEqualTo(Basis.MAKER);
        assertThat(kept.value()).isEqualTo(0.02);
        assertThat(kept.limit()).isEqualTo(0.02);
        assertThat(kept.sentence())
                .isEqualTo(
                        "Each time the grid fails breather is without power for about 0.02 s: the rig takes over by itself"
                                + " if it stands plugged into the wall, charged and switched on, and breather is plugged into it all"
                                + " the time. The person can be without it for 0.02 s.");

        Finding broken = only(transferring(0.02), breather(bridging(0)));
        assertThat(broken.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(broken.margin()).isEqualTo(-0.02);
        assertThat(broken.sentence()).contains("cannot be without it at all", "takes over faster: ask its maker");
    }

    @Test
    void elseSomebodyPlugsItOver() {
        Finding kept = only(transferring(Double.NaN), breather(bridging(Gap.BY_HAND_SECONDS)));
        assertThat(kept.verdict()).isEqualTo(Verdict.PASS);
        assertThat(kept.basis()).isEqualTo(Basis.COMMON_PRACTICE);
        assertThat(kept.value()).isEqualTo(300);
        assertThat(kept.sentence()).contains("for about 5 min", "Aunt Vela must notice, go there and plug it over");

        Finding broken = only(transferring(Double.NaN), breather(bridging(299)));
        assertThat(broken.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(broken.sentence()).endsWith("a rig that takes over by itself.");
    }

    /** What the maker tells is of its AC outlets. */
    @Test
    void directCurrentIsPluggedOverByHandWhateverTheInverterDoes() {
        Rig rig = rig(RigKit.agm(), RigKit.controller(), inverter(0));
        assertThat(only(rig, medical("breather", Invented.SOCKET, bridging(60), true))
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(only(rig, medical("breather", Invented.MAINS, bridging(60), true))
                        .verdict())
                .isEqualTo(Verdict.PASS);
    }

    @Test
    void withNobodyAbleAndNothingByItselfItStaysOff() {
        Medical nobody = new Medical(86_400, GOOD.alarm(), "", true, GOOD.secondPlan());
        Medical unable = new Medical(86_400, GOOD.alarm(), "Aunt Vela", false, GOOD.secondPlan());
        for (Medical medical : List.of(nobody, unable)) {
            Finding gap = only(transferring(Double.NaN), breather(medical));
            assertThat(gap.verdict()).isEqualTo(Verdict.FAIL);
            assertThat(gap.sentence())
                    .contains("goes off and stays off", "24 h")
                    .doesNotContain("Infinity");
            assertThat(Gap.of(transferring(Double.NaN), breather(medical), medical))
                    .isEqualTo(new Gap(Double.POSITIVE_INFINITY, Gap.Way.NOBODY));
            assertThat(only(transferring(1), breather(medical)).verdict()).isEqualTo(Verdict.PASS);
        }
    }

    @Test
    void somebodyAbleMustBeNamed() {
        keptAndBroken(
                "medical-nobody", new Medical(600, GOOD.alarm(), " ", true, GOOD.secondPlan()), "Nobody is named");
        keptAndBroken(
                "medical-nobody",
                new Medical(600, GOOD.alarm(), "Aunt Vela", false, GOOD.secondPlan()),
                "Aunt Vela is named to act when breather stops, but is not always there and able to.");
    }

    @Test
    void anAlarmMustBeNamed() {
        keptAndBroken(
                "medical-alarm", new Medical(600, "", "Aunt Vela", true, GOOD.secondPlan()), "with everybody asleep");
    }

    @Test
    void aSecondPlanMustBeNamed() {
        keptAndBroken(
                "medical-second-plan",
                new Medical(600, GOOD.alarm(), "Aunt Vela", true, ""),
                "No second plan is named for breather.");
    }

    /** Nothing is proven of what is nice to have. */
    @Test
    void itMustBeEssential() {
        assertThat(verdict(transferring(0), "medical-nice-to-have", breather(GOOD)))
                .isEmpty();
        assertThat(verdict(transferring(0), "medical-nice-to-have", medical("breather", Invented.MAINS, GOOD, false)))
                .contains(Verdict.FAIL);
    }

    @Test
    void otherLoadsAreLeftAlone() {
        assertThat(RuleBook.findings(
                        transferring(Double.NaN), List.of(RigKit.lamp("lamp", 9, true)), new Site(-10, true)))
                .noneMatch(finding -> finding.rule().startsWith("medical"));
    }

    /** Names come from people: a per cent sign in one is no format. */
    @Test
    void everySentenceRendersWhateverIsTyped() {
        Medical odd = new Medical(1, "100 %s", "50 % of us", true, "%d plan");
        Load load = medical("vent %n", Invented.MAINS, odd, true);
        assertThat(RuleBook.medicalFindings(List.of(load)))
                .extracting(Finding::sentence)
                .anyMatch(s -> s.contains("vent %n has stopped: 100 %s."))
                .anyMatch(s -> s.contains("50 % of us"))
                .anyMatch(s -> s.contains("%d plan"));
        assertThat(only(transferring(Double.NaN), load).sentence()).contains("vent %n", "50 % of us must notice");
    }

    private static void keptAndBroken(String rule, Medical bad, String says) {
        assertThat(verdict(transferring(0), rule, breather(GOOD))).contains(Verdict.PASS);
        List<Finding> broken = RigKit.findings(transferring(0), rule, breather(bad));
        assertThat(broken).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.FAIL);
            assertThat(finding.sentence()).contains(says);
        });
    }

    private static Finding only(Rig rig, Load load) {
        List<Finding> found = RigKit.findings(rig, "medical-gap", load);
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static Medical bridging(double seconds) {
        return new Medical(seconds, GOOD.alarm(), GOOD.whoActs(), true, GOOD.secondPlan());
    }

    private static Load breather(Medical medical) {
        return medical("breather", Invented.MAINS, medical, true);
    }

    private static Load medical(String name, Supply supply, Medical medical, boolean essential) {
        return new SteadyLoad(
                name, supply, 60, essential, new Need.AlwaysOn(), RoomKind.INDOORS, Nature.PLAIN.with(medical));
    }

    private static Rig transferring(double seconds) {
        return rig(RigKit.agm(), inverter(seconds));
    }

    private static Inverter inverter(double seconds) {
        return RigKit.inverter(new Surge(2500, 10), RigKit.WINDOW, Wave.SINE, RigKit.GOOD_HABITS.transferring(seconds));
    }
}
