package tideover.engine.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The written order: what comes later counts only where all before is equal. */
class SafetyTest {
    /** From the safest to the least safe; each is better than the next in one thing and worse in all that come after it. */
    private static final List<Safety> IN_ORDER = List.of(
            new Safety(Set.of(), 2, Set.of("wave", "sleeps"), 50, 40, 900),
            new Safety(Set.of("lift"), 0, Set.of("wave", "sleeps"), 50, 40, 900),
            new Safety(Set.of("rain"), 1, Set.of("wave"), 50, 40, 900),
            new Safety(Set.of("lift"), 1, Set.of("wave", "sleeps"), 3, 40, 900),
            new Safety(Set.of("lift"), 1, Set.of("wave", "sleeps"), 4, 12, 900),
            new Safety(Set.of("lift"), 1, Set.of("wave", "sleeps"), 4, 13, 7),
            new Safety(Set.of("lift"), 1, Set.of("wave", "sleeps"), 4, 13, 8));

    @Test
    void theFirstDifferenceDecides() {
        assertThat(IN_ORDER).isSorted();
        for (int i = 0; i + 1 < IN_ORDER.size(); i++) {
            assertThat(IN_ORDER.get(i)).isLessThan(IN_ORDER.get(i + 1));
        }
    }

    @Test
    void theSentenceNamesIt() {
        assertThat(IN_ORDER.get(0).against(IN_ORDER.get(1)))
                .isEqualTo("fewer cautions about what may hurt people or ruin a battery (0 against 1; gone: lift)");
        assertThat(IN_ORDER.get(1).against(IN_ORDER.get(2)))
                .isEqualTo("its battery is new and known by its data sheet");
        assertThat(IN_ORDER.get(2).against(IN_ORDER.get(3))).isEqualTo("fewer cautions (1 against 2; gone: sleeps)");
        assertThat(IN_ORDER.get(3).against(IN_ORDER.get(4)))
                .isEqualTo("no more cautions, and of 100 outages 3 fail against 4");
        assertThat(IN_ORDER.get(4).against(IN_ORDER.get(5)))
                .isEqualTo("no more cautions, and less to lift: 12.0 kg at once against 13.0 kg");
        assertThat(IN_ORDER.get(5).against(IN_ORDER.get(6))).isEqualTo("as safe, and cheaper");
    }
}
