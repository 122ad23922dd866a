package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static tideover.engine.rig.RigKit.rig;
import static tideover.engine.rig.RigKit.verdict;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.battery.Chemistry;
import tideover.engine.electronics.Wave;
import tideover.engine.part.Battery;
import tideover.engine.part.Condition;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Listing;
import tideover.engine.part.PlainStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.Store;
import tideover.engine.part.Surge;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/** The store's volts against the inverter's, unlike batteries, old cells where people sleep. */
class StoreRulesTest {
    private static final Surge SURGE = new Surge(2500, 10);

    /** AGM is charged at 14.6 V at 25 degC and at 14.6 + 25 x .024 = 15.2 V at 0 degC. */
    @Test
    void chargingDoesNotTripTheInverter() {
        assertThat(verdict(windowed(10.5, 15.2), "inverter-window")).contains(Verdict.PASS);
        assertThat(verdict(windowed(10.5, 15.1), "inverter-window"))
                .as("in the cold")
                .contains(Verdict.CAUTION);
        assertThat(verdict(windowed(10.5, 14.5), "inverter-window")).contains(Verdict.FAIL);
        assertThat(verdict(windowed(10.5, Double.NaN), "inverter-window"))
                .as("not told: 15 V")
                .contains(Verdict.PASS);
    }

    /** At rest AGM shows 12.65 V full and 12.24 V half full, and half of it is used. */
    @Test
    void theInverterStaysOnThroughTheChargeThatIsUsed() {
        assertThat(verdict(windowed(12.24, 15.5), "inverter-window")).contains(Verdict.PASS);
        assertThat(verdict(windowed(12.3, 15.5), "inverter-window")).contains(Verdict.CAUTION);
        assertThat(verdict(windowed(12.7, 15.5), "inverter-window")).contains(Verdict.FAIL);
    }

    @Test
    void unlikeBatteriesAreNoBank() {
        Assembly.Result result =
                Assembly.of(List.of(new Chosen(RigKit.agm(), 1), new Chosen(RigKit.iron(RigKit.STRONG), 1)));
        assertThat(result.rig()).isNull();
        assertThat(result.faults().get(0)).contains("unlike in age, size or chemistry must not stand side by side");
    }

    @Test
    void oldLithiumStaysOutOfWherePeopleSleep() {
        Store other = RigKit.store(Chemistry.OTHER_LITHIUM, 0.01, RigKit.STRONG);
        assertThat(sleptIn(new Battery(listing(Condition.USED), other, 1))).isEqualTo(Verdict.FAIL);
        assertThat(sleptIn(new Battery(listing(Condition.OWNED), other, 1))).isEqualTo(Verdict.FAIL);
        assertThat(sleptIn(new Battery(listing(Condition.NEW), other, 1))).isEqualTo(Verdict.PASS);
        Store iron = RigKit.store(Chemistry.IRON_PHOSPHATE, 0.01, RigKit.STRONG);
        assertThat(sleptIn(new Battery(listing(Condition.USED), iron, 1))).isEqualTo(Verdict.PASS);
        Store plain = new PlainStore(500, 0.95, 0.95, 12, 20, 50);
        assertThat(sleptIn(new Battery(listing(Condition.USED), plain, 1)))
                .as("chemistry not known")
                .isEqualTo(Verdict.CAUTION);
        assertThat(sleptIn(new ReadyBox(listing(Condition.USED), other, null, null, List.of())))
                .isEqualTo(Verdict.FAIL);
        assertThat(sleptIn(new ReadyBox(listing(Condition.OWNED), other, null, null, List.of())))
                .isEqualTo(Verdict.CAUTION);
        Rig used = rig(new Battery(listing(Condition.USED), other, 1));
        assertThat(RuleBook.partFindings(used, new Site(-10, false)))
                .as("a shed where nobody sleeps")
                .noneMatch(finding -> finding.rule().equals("slept-in"));
    }

    private static Verdict sleptIn(tideover.engine.part.Part store) {
        return RuleBook.partFindings(rig(store), new Site(-10, true)).stream()
                .filter(finding -> finding.rule().equals("slept-in"))
                .map(Finding::verdict)
                .findFirst()
                .orElse(Verdict.PASS);
    }

    private static Listing listing(Condition condition) {
        return new Listing("B", "a store", 0, "USD", LocalDate.of(2026, 1, 1), condition, 1, 5, "test");
    }

    private static Rig windowed(double offV, double mostV) {
        return rig(
                RigKit.agm(),
                RigKit.inverter(
                        SURGE, new InverterRating.Window(offV, Double.NaN, mostV), Wave.SINE, RigKit.GOOD_HABITS));
    }
}
