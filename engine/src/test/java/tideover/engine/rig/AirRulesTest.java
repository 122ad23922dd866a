package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.battery.Chemistry;
import tideover.engine.part.Battery;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Housing;
import tideover.engine.part.PlainStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/** Air for lead: 12 V and 100 Ah want 16.8 cm2 flooded and 6.72 cm2 sealed, charged hard. */
class AirRulesTest {
    private static final Site AWAKE = new Site(-10, false);
    private static final Site ASLEEP = new Site(-10, true);

    private static Battery battery(Chemistry chemistry) {
        return RigKit.battery(RigKit.store(chemistry, .01, RigKit.STRONG));
    }

    private static Rig enclosed(Chemistry chemistry, double ventCm2, int count) {
        Housing housing = new Housing(null, List.of(), Double.NaN, ventCm2, Stated.UNKNOWN);
        Enclosure enclosure = new Enclosure(Invented.listing("E", 100, 3), 12, null, null, List.of(), housing);
        return Objects.requireNonNull(
                Assembly.of(List.of(new Chosen(enclosure, 1), new Chosen(battery(chemistry), count)))
                        .rig());
    }

    private static List<Finding> findings(Rig rig, Site site, String rule) {
        return RuleBook.partFindings(rig, site).stream()
                .filter(finding -> finding.rule().equals(rule))
                .toList();
    }

    private static Optional<Verdict> worst(Rig rig, Site site, String rule) {
        return findings(rig, site, rule).stream().map(Finding::verdict).max(Verdict::compareTo);
    }

    private static Verdict inEnclosure(Rig rig) {
        return findings(rig, AWAKE, "ventilation").get(0).verdict();
    }

    @Test
    void theEnclosuresOpeningsSuffice() {
        assertThat(inEnclosure(enclosed(Chemistry.FLOODED_LEAD, 16.9, 1))).isEqualTo(Verdict.PASS);
        assertThat(inEnclosure(enclosed(Chemistry.FLOODED_LEAD, 16.7, 1))).isEqualTo(Verdict.FAIL);
        assertThat(inEnclosure(enclosed(Chemistry.AGM_LEAD, 6.8, 1))).isEqualTo(Verdict.PASS);
        assertThat(inEnclosure(enclosed(Chemistry.AGM_LEAD, 6.7, 1))).isEqualTo(Verdict.FAIL);
        assertThat(inEnclosure(enclosed(Chemistry.GEL_LEAD, 0, 1))).isEqualTo(Verdict.FAIL);
    }

    @Test
    void twoSideBySideWantTwiceAsMuch() {
        assertThat(inEnclosure(enclosed(Chemistry.AGM_LEAD, 13.5, 2))).isEqualTo(Verdict.PASS);
        assertThat(inEnclosure(enclosed(Chemistry.AGM_LEAD, 13.4, 2))).isEqualTo(Verdict.FAIL);
    }

    @Test
    void openingsThatNobodyTellsAreNone() {
        assertThat(inEnclosure(enclosed(Chemistry.FLOODED_LEAD, Double.NaN, 1))).isEqualTo(Verdict.FAIL);
        assertThat(inEnclosure(enclosed(Chemistry.AGM_LEAD, Double.NaN, 1))).isEqualTo(Verdict.CAUTION);
        assertThat(inEnclosure(enclosed(Chemistry.GEL_LEAD, Double.NaN, 1))).isEqualTo(Verdict.CAUTION);
    }

    @Test
    void theRoomIsAired() {
        Rig rig = RigKit.rig(battery(Chemistry.FLOODED_LEAD));
        assertThat(findings(rig, AWAKE, "ventilation")).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.CAUTION);
            assertThat(finding.sentence())
                    .contains("0.60 m3 of fresh air an hour", "17 cm2")
                    .contains("Within a hand's breadth of its vents take the air for explosive");
        });
        assertThat(findings(enclosed(Chemistry.AGM_LEAD, 50, 1), AWAKE, "ventilation"))
                .as("what leaves the enclosure is in the room")
                .hasSize(2);
        assertThat(findings(rig, new Site(-10, false, RoomKind.OUTDOORS, null, false), "ventilation"))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.sentence()).doesNotContain("m3").contains("Within a hand's breadth"));
    }

    @Test
    void floodedLeadIsKeptFromWherePeopleSleep() {
        Rig flooded = RigKit.rig(battery(Chemistry.FLOODED_LEAD));
        assertThat(worst(flooded, ASLEEP, "flooded-slept-in")).contains(Verdict.FAIL);
        assertThat(worst(flooded, AWAKE, "flooded-slept-in")).isEmpty();
        assertThat(worst(RigKit.rig(battery(Chemistry.AGM_LEAD)), ASLEEP, "flooded-slept-in"))
                .isEmpty();
        assertThat(worst(enclosed(Chemistry.FLOODED_LEAD, 50, 1), ASLEEP, "flooded-slept-in"))
                .contains(Verdict.FAIL);
    }

    @Test
    void lithiumWantsNone() {
        assertThat(worst(RigKit.rig(battery(Chemistry.IRON_PHOSPHATE)), ASLEEP, "ventilation"))
                .isEmpty();
    }

    /** A label that tells no chemistry may be lead; a sealed box is its maker's matter. */
    @Test
    void whatMayBeLeadIsACaution() {
        PlainStore store = new PlainStore(500, .95, .95, 12.8, 50, 100);
        Rig plain = RigKit.rig(new Battery(Invented.listing("B", 100, 9), store, 1));
        assertThat(findings(plain, AWAKE, "ventilation")).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.CAUTION);
            assertThat(finding.sentence())
                    .contains("If it is lead", "each 100 Ah at 12.8 V", "0.6 m3", "17 cm2", "hand's breadth");
        });
        Rig box = RigKit.rig(new ReadyBox(Invented.listing("X", 100, 9), store, null, null, List.of()));
        assertThat(worst(box, AWAKE, "ventilation")).isEmpty();
    }
}
