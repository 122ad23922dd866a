package tideover.engine.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.rig.StartEvent;
import tideover.engine.rig.StartVerdict;
import tideover.engine.rig.StartVerdict.Kind;
import tideover.engine.rig.StartVerdict.Link;
import tideover.engine.why.Verdict;

class JudgedStartTest {
    private static final Link ROOMY = new Link(Kind.INVERTER_VA, 500, 1000, "VA", true, Verdict.PASS);
    private static final Link TIGHT = new Link(Kind.SAG, 400, 440, "W", true, Verdict.PASS);
    private static final Link BREAKS = new Link(Kind.STORE_AMPS, 60, 50, "A", true, Verdict.FAIL);

    /** Seconds that nobody tells: a limit of nought, and a caution only. */
    private static final Link UNTOLD = new Link(Kind.INVERTER_SECONDS, 0.5, 0, "s", false, Verdict.CAUTION);

    @Test
    void theWeakestLinkIsTheOneThatBreaksThenTheOneWithTheLeastLeft() {
        assertThat(start(ROOMY, TIGHT).weakest()).contains(TIGHT);
        assertThat(start(ROOMY, UNTOLD, TIGHT).weakest()).contains(UNTOLD);
        assertThat(start(ROOMY, UNTOLD, BREAKS, TIGHT).weakest()).contains(BREAKS);
        assertThat(start().weakest()).isEmpty();
    }

    @Test
    void theHardestStartIsTheOneThatLeavesLeast() {
        JudgedStart easy = start(ROOMY);
        JudgedStart hard = start(ROOMY, TIGHT);
        JudgedStart broken = start(BREAKS);
        assertThat(JudgedStart.hardest(List.of(easy, hard))).containsSame(hard);
        assertThat(JudgedStart.hardest(List.of(easy, broken, hard))).containsSame(broken);
        assertThat(JudgedStart.hardest(List.of(start(ROOMY), easy)))
                .as("of two alike the first")
                .get()
                .isNotSameAs(easy);
        assertThat(JudgedStart.hardest(List.of())).isEmpty();
    }

    private static JudgedStart start(Link... links) {
        StartEvent event = new StartEvent(List.of(), List.of(), List.of(), 500, 300, 0, 330, 0.5, true, true);
        return new JudgedStart(event, new StartVerdict(List.of(links), Double.NaN), 0, 0);
    }
}
