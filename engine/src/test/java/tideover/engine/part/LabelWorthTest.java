package tideover.engine.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tideover.engine.battery.Chemistry;
import tideover.engine.part.RatedStore.Worth;

/** Whatever the figures, a better pedigree never makes a label worth less, and a measurement beats every guess. */
class LabelWorthTest {
    @Test
    void newIsWorthMoreThanUsedAndAKnownMakerMoreThanAnUnknownOne() {
        for (Chemistry chemistry : Chemistry.values()) {
            Worth known = LabelWorth.unmeasured(chemistry, Condition.NEW, true);
            Worth unknown = LabelWorth.unmeasured(chemistry, Condition.NEW, false);
            Worth used = LabelWorth.unmeasured(chemistry, Condition.USED, true);

            assertThat(known.least()).isGreaterThan(unknown.least());
            assertThat(known.likely()).isGreaterThan(unknown.likely());
            assertThat(unknown.least()).isGreaterThan(used.least());
            assertThat(unknown.likely()).isGreaterThan(used.likely());
        }
    }

    @Test
    void whatIsOwnedIsTakenAsUsedWhoeverMadeIt() {
        for (Chemistry chemistry : Chemistry.values()) {
            Worth used = LabelWorth.unmeasured(chemistry, Condition.USED, false);

            assertThat(LabelWorth.unmeasured(chemistry, Condition.OWNED, false)).isEqualTo(used);
            assertThat(LabelWorth.unmeasured(chemistry, Condition.OWNED, true)).isEqualTo(used);
        }
    }

    @Test
    void usedLeadIsWorthLessThanUsedLithium() {
        assertThat(LabelWorth.unmeasured(Chemistry.AGM_LEAD, Condition.USED, true)
                        .least())
                .isLessThan(LabelWorth.unmeasured(Chemistry.IRON_PHOSPHATE, Condition.USED, true)
                        .least());
    }

    @Test
    void nothingIsBelievedAsCloselyAsAMeasurement() {
        Worth measured = Worth.measured(.8);
        for (Chemistry chemistry : Chemistry.values()) {
            for (Condition condition : Condition.values()) {
                Worth guessed = LabelWorth.unmeasured(chemistry, condition, true);

                assertThat(guessed.least() / guessed.likely()).isLessThan(measured.least() / measured.likely());
            }
        }
    }
}
