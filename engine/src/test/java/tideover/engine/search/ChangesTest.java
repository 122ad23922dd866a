package tideover.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.part.Part;
import tideover.engine.rig.Chosen;

class ChangesTest {
    private static final Invented INVENTED = new Invented(5);
    private static final Part BATTERY = INVENTED.battery("B", 500, 1);
    private static final Part OTHER = INVENTED.battery("O", 700, 1);
    private static final Part PANEL = Invented.panel("P", 100, 1);
    private static final Part INVERTER = INVENTED.inverter("I", 1, 1);
    private static final Part CONTROLLER = INVENTED.controller("C", 10, 1);
    private static final List<Part> PARTS = List.of(PANEL, CONTROLLER, INVERTER, OTHER, BATTERY);

    /** Counted by hand; parts stand in the grammar's order, whatever the file's. */
    @Test
    void everySingleChangeOnce() {
        List<Changes.Change> changes =
                Changes.of(List.of(new Chosen(BATTERY, 2), new Chosen(CONTROLLER, 1)), PARTS, new Grammar(2, 2));
        assertThat(changes.stream().map(ChangesTest::ids).toList())
                .containsExactlyInAnyOrder(
                        // One more than the grammar's two, one less, none, the other kind.
                        "3xB+C",
                        "B+C",
                        "C",
                        "O+C",
                        "2xO+C",
                        // No controller; with panels, with an inverter.
                        "2xB",
                        "2xB+C+P",
                        "2xB+C+2xP",
                        "2xB+I+C");
    }

    @Test
    void changesAreNamed() {
        List<Changes.Change> changes = Changes.of(List.of(new Chosen(BATTERY, 2)), PARTS, new Grammar(1, 2));
        assertThat(changes.stream().map(Changes.Change::words).toList())
                .containsExactlyInAnyOrder(
                        "one more invented B, 3 in all",
                        "one less invented B, 1 in all",
                        "instead of 2 x invented B: invented O",
                        "instead of 2 x invented B: 2 x invented O",
                        "adding invented P",
                        "adding invented C",
                        "adding invented I");
    }

    private static String ids(Changes.Change change) {
        return change.chosen().stream()
                .map(one -> (one.count() == 1 ? "" : one.count() + "x")
                        + one.part().listing().id())
                .collect(Collectors.joining("+"));
    }
}
