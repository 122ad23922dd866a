package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final List<String> KEYS = List.of("store room", "months", "lasts", "carried");

    @Test
    void oneSlipOfEachKindIsCountedOnce() {
        assertThat(Nearest.slips("month", "months")).isEqualTo(1);
        assertThat(Nearest.slips("monthss", "months")).isEqualTo(1);
        assertThat(Nearest.slips("nonths", "months")).isEqualTo(1);
        assertThat(Nearest.slips("motnhs", "months")).isEqualTo(1);
        assertThat(Nearest.slips("", "months")).isEqualTo(6);
    }

    @Test
    void capitalsAndJoinsDoNotCount() {
        assertThat(Nearest.to("Store_Room", KEYS)).contains("store room");
        assertThat(Nearest.to("store-rom", KEYS)).contains("store room");
    }

    @Test
    void aWordCutAtItsJoinIsNear() {
        assertThat(Nearest.to("store", KEYS)).contains("store room");
        assertThat(Nearest.to("room", KEYS)).contains("store room");
        assertThat(Nearest.to("months of the year", KEYS)).contains("months");
        assertThat(Nearest.to("room", List.of("store room", "room kind"))).isEmpty();
    }

    @Test
    void anotherWordIsNoSlip() {
        assertThat(Nearest.to("budget", KEYS)).isEmpty();
        assertThat(Nearest.to("x", KEYS)).isEmpty();
        assertThat(Nearest.to("", KEYS)).isEmpty();
    }
}
