package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static tideover.engine.rig.RigKit.verdict;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.part.Battery;
import tideover.engine.part.Enclosure;
import tideover.engine.part.PlainStore;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/** The heaviest that is moved, against 10.6 kg from the floor to a bench; never shared between people. */
class LiftRulesTest {
    private static final Enclosure CASE = new Enclosure(Invented.listing("E", 100, 2.5), 12, null, null, List.of());

    private static Rig rig(double batteryKg, int count, boolean enclosed) {
        Battery battery =
                new Battery(Invented.listing("B", 100, batteryKg), new PlainStore(500, .95, .95, 12, 50, 100), 4);
        Chosen bank = new Chosen(battery, count);
        return Objects.requireNonNull(Assembly.of(enclosed ? List.of(new Chosen(CASE, 1), bank) : List.of(bank))
                .rig());
    }

    @Test
    void aSinglePieceIsJudgedByItself() {
        assertThat(verdict(rig(10.6, 2, false), "lift")).contains(Verdict.PASS);
        assertThat(verdict(rig(10.7, 2, false), "lift")).contains(Verdict.CAUTION);
        assertThat(Lifting.needsWheels(rig(10.6, 2, false))).isFalse();
        assertThat(Lifting.needsWheels(rig(10.7, 2, false))).isTrue();
    }

    @Test
    void anEnclosureIsMovedWithWhatStandsInIt() {
        assertThat(verdict(rig(4, 2, true), "lift")).contains(Verdict.PASS);
        assertThat(verdict(rig(4.1, 2, true), "lift")).contains(Verdict.CAUTION);
        assertThat(Lifting.needsWheels(rig(4.1, 2, true))).isTrue();
        assertThat(rig(4.1, 2, true).heaviestMovedKg()).isEqualTo(10.7);
    }

    @Test
    void bothMassesAreTold() {
        Finding finding = RigKit.findings(rig(8, 2, true), "lift").get(0);

        assertThat(finding.value()).isEqualTo(18.5);
        assertThat(finding.sentence())
                .isEqualTo(
                        "Each battery is 8.0 kg; moved whole, invented E with its batteries inside is 18.5 kg: put them in"
                                + " where it stands. From the floor to a bench 10.6 kg is the most for one person, 23 kg in the best"
                                + " posture. Above that use wheels or a hoist; a second person does not halve a lift.");
    }
}
