package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.battery.Chemistry;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Housing;
import tideover.engine.part.Part;
import tideover.engine.part.PlainStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.site.Room;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/** Heat, frost, rain and an engine: cautions about the place, for which no rig is to blame. */
class PlaceRulesTest {
    private static final Part IRON = RigKit.iron(RigKit.STRONG);

    private static Site site(RoomKind room, double lowestDegC, double highestDegC, boolean engine) {
        return new Site(-10, false, room, new Room.Extremes(lowestDegC, highestDegC), engine);
    }

    private static Optional<Verdict> verdict(Site site, String rule, Part... parts) {
        List<Finding> findings = RuleBook.partFindings(RigKit.rig(parts), site);
        findings.forEach(Finding::sentence);
        return findings.stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(Finding::verdict)
                .max(Verdict::compareTo);
    }

    @Test
    void aHotRoomAgesABattery() {
        assertThat(verdict(site(RoomKind.SHED, 5, 40, false), "room-warmth", IRON))
                .contains(Verdict.PASS);
        assertThat(verdict(site(RoomKind.SHED, 5, 40.1, false), "room-warmth", IRON))
                .contains(Verdict.CAUTION);
        assertThat(verdict(new Site(-10, false), "room-warmth", IRON))
                .as("before the weather is known")
                .isEmpty();
    }

    /** The acid of an empty one freezes at -11 degC; 4 K are left for one run flat. Lithium has nothing to freeze. */
    @Test
    void leadRunFlatFreezes() {
        Site atLimit = site(RoomKind.SHED, -7, 20, false);
        Site below = site(RoomKind.SHED, -7.1, 20, false);
        assertThat(verdict(atLimit, "room-warmth", RigKit.agm())).contains(Verdict.PASS);
        assertThat(verdict(below, "room-warmth", RigKit.agm())).contains(Verdict.CAUTION);
        assertThat(verdict(below, "room-warmth", IRON)).contains(Verdict.PASS);
    }

    private static ReadyBox box(Stated keepsRainOut) {
        PlainStore store = new PlainStore(500, .95, .95, 12, 20, 50);
        return new ReadyBox(Invented.listing("X", 100, 9), store, null, null, List.of(), 0, keepsRainOut);
    }

    private static Enclosure enclosure(Stated keepsRainOut) {
        Housing housing = new Housing(null, List.of(), Double.NaN, Double.NaN, keepsRainOut);
        return new Enclosure(Invented.listing("E", 100, 3), 12.8, null, null, List.of(), housing);
    }

    @Test
    void outdoorsOnlyWhatIsToldToKeepRainOutDoes() {
        Site outdoors = site(RoomKind.OUTDOORS, 0, 30, false);
        assertThat(verdict(outdoors, "rain", box(Stated.YES))).contains(Verdict.PASS);
        assertThat(verdict(outdoors, "rain", box(Stated.UNKNOWN))).contains(Verdict.CAUTION);
        assertThat(verdict(outdoors, "rain", box(Stated.NO))).contains(Verdict.CAUTION);
        assertThat(verdict(outdoors, "rain", enclosure(Stated.YES), IRON)).contains(Verdict.PASS);
        assertThat(verdict(outdoors, "rain", enclosure(Stated.UNKNOWN), IRON)).contains(Verdict.CAUTION);
        assertThat(verdict(outdoors, "rain", IRON)).as("bare").contains(Verdict.CAUTION);
        assertThat(verdict(site(RoomKind.SHED, 0, 30, false), "rain", IRON)).isEmpty();
    }

    @Test
    void anEngineRunsOutdoorsAndAway() {
        assertThat(verdict(site(RoomKind.SHED, 0, 30, true), "engine-outdoors", IRON))
                .contains(Verdict.CAUTION);
        assertThat(verdict(site(RoomKind.SHED, 0, 30, false), "engine-outdoors", IRON))
                .isEmpty();
        String sentence = RuleBook.partFindings(RigKit.rig(IRON), site(RoomKind.SHED, 0, 30, true)).stream()
                .filter(finding -> finding.rule().equals("engine-outdoors"))
                .findFirst()
                .orElseThrow()
                .sentence();
        assertThat(sentence)
                .contains("outdoors only", "6.1 m (20 ft)", "garage", "porch", "carport", "carbon monoxide");
    }

    /** Candidates are judged before the weather is known, so that none of this may reject a rig. */
    @Test
    void thePlaceRejectsNoRig() {
        for (RoomKind room : RoomKind.values()) {
            for (Part store : List.of(
                    IRON, RigKit.agm(), RigKit.battery(RigKit.store(Chemistry.OTHER_LITHIUM, .01, RigKit.STRONG)))) {
                Rig rig = RigKit.rig(store);
                assertThat(failed(rig, new Site(-10, false, room, null, false)))
                        .isEqualTo(failed(rig, site(room, -40, 60, true)));
            }
        }
    }

    private static List<String> failed(Rig rig, Site site) {
        return RuleBook.partFindings(rig, site).stream()
                .filter(finding -> finding.verdict() == Verdict.FAIL)
                .map(Finding::rule)
                .toList();
    }
}
