package tideover.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed amid a storm of edits, again and again, loses at most the edit in flight of each of its threads. */
@Timeout(value = 30, unit = TimeUnit.MINUTES)
class StormTest {
    private static final int KILLS = Boolean.getBoolean("tideover.deep") ? 200 : 20;
    private static final int LONGEST_MS = 300;

    @TempDir
    private Path folder;

    @Test
    void aKilledProgramLosesAtMostTheEditInFlight() throws Exception {
        long seed = Long.getLong("tideover.seed", 20);
        Random random = new Random(seed);
        Path file = folder.resolve("plans.db");
        Storm.Expected[] expected = {new Storm.Expected(1), new Storm.Expected(2)};
        try (Store store = Store.open(file)) {
            for (long id = 1; id <= 2; id++) {
                assertThat(store.add("Plan " + id, Storm.text(id, 1), Map.of())).isEqualTo(id);
            }
        }
        long edits = 0;
        int inFlight = 0;
        for (int kill = 1; kill <= KILLS; kill++) {
            String which = "seed " + seed + ", kill " + kill;
            long[] said = {expected[0].revision(), expected[1].revision()};
            try (OtherProgram storm = OtherProgram.start(Storm.class, file)) {
                String first = storm.line();
                assertThat(first).as(which).isNotNull();
                note(first, said);
                Thread.sleep(random.nextInt(LONGEST_MS));
                assertThat(storm.process.isAlive())
                        .as(which + ": it stops by itself")
                        .isTrue();
                storm.kill();
                String rest = storm.rest();
                // A line that was cut short was not said.
                for (String line : rest.substring(0, rest.lastIndexOf('\n') + 1).split("\n")) {
                    if (!line.isEmpty()) {
                        note(line, said);
                    }
                }
            }
            try (Store store = Store.open(file)) {
                assertThat(store.handle()
                                .createQuery("pragma integrity_check")
                                .mapTo(String.class)
                                .list())
                        .as(which)
                        .containsExactly("ok");
                assertThat(store.handle()
                                .createQuery("pragma foreign_key_check")
                                .mapToMap()
                                .list())
                        .as(which)
                        .isEmpty();
                for (int i = 0; i < 2; i++) {
                    StoredPlan plan = store.plan(i + 1).orElseThrow();
                    assertThat(plan.revision()).as(which).isBetween(said[i], said[i] + 1);
                    inFlight += (int) (plan.revision() - said[i]);
                    edits += plan.revision() - expected[i].revision();
                    while (expected[i].revision() < plan.revision()) {
                        expected[i].step();
                    }
                    assertThat(expected[i].is(plan))
                            .as(which + ": plan " + (i + 1) + " is whole at revision " + plan.revision())
                            .isTrue();
                }
            }
        }
        System.getLogger("storm")
                .log(
                        System.Logger.Level.INFO,
                        "{0} kills, {1} edits kept, {2} of them kept and not yet said",
                        KILLS,
                        edits,
                        inFlight);
        assertThat(edits).as("it was a storm").isGreaterThan(KILLS * 10L);
    }

    private static void note(String line, long[] said) {
        String[] words = line.split(" ");
        int plan = Integer.parseInt(words[0]) - 1;
        long revision = Long.parseLong(words[1]);
        assertThat(revision).isEqualTo(said[plan] + 1);
        said[plan] = revision;
    }
}
