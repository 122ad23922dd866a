package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static tideover.engine.rig.RigKit.verdict;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.part.Battery;
import tideover.engine.part.BatteryCase;
import tideover.engine.part.Dimensions;
import tideover.engine.part.Enclosure;
import tideover.engine.part.Housing;
import tideover.engine.part.PlainStore;
import tideover.engine.why.Finding;
import tideover.engine.why.Stated;
import tideover.engine.why.Verdict;

/** Batteries go into the enclosure, or do not, or nobody tells. */
class FitRulesTest {
    private static final Dimensions SIZE = new Dimensions(330, 172, 215);
    private static final BatteryCase BUILD = new BatteryCase(SIZE, "M8 stud");
    private static final Housing HOUSING = housing(new Dimensions(350, 350, 220), List.of("post", "m8 stud"), 25);

    private static Housing housing(@Nullable Dimensions room, List<String> terminals, double holdsKg) {
        return new Housing(room, terminals, holdsKg, Double.NaN, Stated.UNKNOWN);
    }

    private static Rig rig(BatteryCase casing, int count, Housing housing) {
        PlainStore store = new PlainStore(500, .95, .95, 12, 50, 100);
        Battery battery = new Battery(Invented.listing("B", 100, 12), store, 4, 1, casing);
        Enclosure enclosure = new Enclosure(Invented.listing("E", 100, 3), 12, null, null, List.of(), housing);
        return Objects.requireNonNull(Assembly.of(List.of(new Chosen(enclosure, 1), new Chosen(battery, count)))
                .rig());
    }

    @Test
    void whatSuitsIsPassed() {
        Rig rig = rig(BUILD, 2, HOUSING);
        assertThat(verdict(rig, "fits-inside")).contains(Verdict.PASS);
        assertThat(verdict(rig, "fits-terminals")).contains(Verdict.PASS);
        assertThat(verdict(rig, "fits-mass")).contains(Verdict.PASS);
        assertThat(verdict(rig, "fits-unknown")).isEmpty();
    }

    /** Two of 172 mm in 350 mm leave 6 mm on that side and 5 mm above; a third has no room. */
    @Test
    void theBankStandsInsideInOneRow() {
        assertThat(RigKit.findings(rig(BUILD, 2, HOUSING), "fits-inside"))
                .singleElement()
                .extracting(Finding::margin)
                .isEqualTo(5.0);
        assertThat(verdict(rig(BUILD, 3, HOUSING), "fits-inside")).contains(Verdict.FAIL);
        Housing low = housing(new Dimensions(350, 350, 214), List.of(), Double.NaN);
        assertThat(verdict(rig(BUILD, 1, low), "fits-inside")).contains(Verdict.FAIL);
    }

    @Test
    void terminalsAreComparedByTheirWords() {
        assertThat(verdict(rig(new BatteryCase(SIZE, "Post"), 1, HOUSING), "fits-terminals"))
                .contains(Verdict.PASS);
        assertThat(verdict(rig(new BatteryCase(SIZE, "blade"), 1, HOUSING), "fits-terminals"))
                .contains(Verdict.FAIL);
    }

    @Test
    void allOfThemTogetherAreHeld() {
        assertThat(verdict(rig(BUILD, 2, housing(null, List.of(), 24)), "fits-mass"))
                .contains(Verdict.PASS);
        assertThat(verdict(rig(BUILD, 2, housing(null, List.of(), 23.9)), "fits-mass"))
                .contains(Verdict.FAIL);
    }

    @Test
    void whatIsNotToldIsOneCaution() {
        for (Rig rig : List.of(rig(BatteryCase.UNKNOWN, 1, HOUSING), rig(BUILD, 1, housing(null, List.of(), 30)))) {
            assertThat(RigKit.findings(rig, "fits-unknown")).singleElement().satisfies(finding -> {
                assertThat(finding.verdict()).isEqualTo(Verdict.CAUTION);
                assertThat(finding.sentence())
                        .isEqualTo("Whether invented B fits invented E is not told (size, terminals): measure before"
                                + " you buy.");
            });
            assertThat(verdict(rig, "fits-inside")).isEmpty();
            assertThat(verdict(rig, "fits-terminals")).isEmpty();
        }
        assertThat(RigKit.findings(rig(BatteryCase.UNKNOWN, 1, Housing.UNKNOWN), "fits-unknown"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.sentence()).contains("size, terminals, mass"));
    }

    @Test
    void withoutAnEnclosureNothingIsAsked() {
        assertThat(verdict(RigKit.rig(RigKit.agm()), "fits-unknown")).isEmpty();
    }
}
