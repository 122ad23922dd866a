package tideover.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoreTest {
    @TempDir
    private Path folder = Path.of("");

    private Path file() {
        return folder.resolve("deep").resolve("plans.db");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void keepsWhatItIsGiven() {
        long id;
        try (Store store = Store.open(file())) {
            id = store.add("House", "plan: House\n", Map.of("parts/a.csv", bytes("x")));
            assertThat(store.replace(id, 1, "Home", "plan: Home\n")).isEqualTo(2);
            store.putFile(id, "weather.csv", bytes("w"));
            store.set("light", "dark");
        }
        try (Store store = Store.open(file())) {
            StoredPlan plan = store.plan(id).orElseThrow();
            assertThat(plan.text()).isEqualTo("plan: Home\n");
            assertThat(plan.revision()).isEqualTo(3);
            assertThat(plan.files()).containsOnlyKeys("parts/a.csv", "weather.csv");
            assertThat(plan.files().get("weather.csv")).isEqualTo(bytes("w"));
            assertThat(store.plans()).extracting(PlanLine::name).containsExactly("Home");
            assertThat(store.setting("light")).contains("dark");
            assertThat(store.setting("other")).isEmpty();
        }
    }

    @Test
    void aChangeMadeForAnOlderStateIsRefused() {
        try (Store store = Store.open(file())) {
            long id = store.add("a", "one", Map.of());
            store.replace(id, 1, "a", "two");
            assertThatThrownBy(() -> store.replace(id, 1, "a", "three")).isInstanceOf(StaleEdit.class);
            assertThat(store.plan(id).orElseThrow().text()).isEqualTo("two");
            assertThatThrownBy(() -> store.replace(99, 1, "a", "x")).isInstanceOf(StoreProblem.class);
        }
    }

    @Test
    void undoGoesBackOneByOne() {
        try (Store store = Store.open(file())) {
            long id = store.add("a", "0", Map.of());
            for (int turn = 1; turn <= 250; turn++) {
                store.replace(id, turn, "a", String.valueOf(turn));
            }
            for (int back = 249; back >= 50; back--) {
                assertThat(store.undo(id)).isTrue();
                assertThat(store.plan(id).orElseThrow().text()).isEqualTo(String.valueOf(back));
            }
            assertThat(store.undo(id)).isFalse();
            assertThat(store.plan(id).orElseThrow().revision()).isEqualTo(451);
        }
    }

    @Test
    void deletedPlansComeBackForThirtyDays() {
        Instant now = Instant.parse("2026-01-01T12:00:00Z");
        long id;
        try (Store store = Store.open(file(), Clock.fixed(now, ZoneOffset.UTC))) {
            id = store.add("a", "text", Map.of("x.csv", bytes("x")));
            store.delete(id);
            assertThat(store.plan(id)).isEmpty();
            assertThat(store.plans()).isEmpty();
            assertThat(store.deleted()).hasSize(1);
            store.restore(id);
            assertThat(store.plan(id).orElseThrow().files()).hasSize(1);
            store.delete(id);
        }
        try (Store store = Store.open(file(), Clock.fixed(now.plus(Duration.ofDays(29)), ZoneOffset.UTC))) {
            assertThat(store.deleted()).hasSize(1);
        }
        try (Store store = Store.open(file(), Clock.fixed(now.plus(Duration.ofDays(31)), ZoneOffset.UTC))) {
            assertThat(store.deleted()).isEmpty();
        }
    }

    @Test
    void filesAreBoundedAndLeadNowhere() {
        try (Store store = Store.open(file())) {
            long id = store.add("a", "text", Map.of());
            for (String name : List.of("../x", "/x", "a/b/c", ".hidden", "", "a\\b", "a b", "x\u0000")) {
                assertThatThrownBy(() -> store.putFile(id, name, bytes("x")))
                        .as(name)
                        .isInstanceOf(StoreProblem.class);
            }
            store.putFile(id, "a.csv", new byte[40_000_000]);
            assertThatThrownBy(() -> store.putFile(id, "b.csv", new byte[40_000_000]))
                    .isInstanceOf(StoreProblem.class);
            assertThat(store.plan(id).orElseThrow().files()).containsOnlyKeys("a.csv");
        }
    }

    @Test
    void copiesGoOutAndComeBack() throws IOException {
        Path copy = folder.resolve("copy.db");
        try (Store store = Store.open(file())) {
            long id = store.add("a", "first", Map.of("x.csv", bytes("x")));
            store.backup(copy, false);
            assertThatThrownBy(() -> store.backup(copy, false)).isInstanceOf(StoreProblem.class);
            store.replace(id, 1, "a", "second");
            store.add("b", "other", Map.of());
            Path replaced = store.putBack(copy);
            assertThat(store.plans()).hasSize(1);
            assertThat(store.plan(id).orElseThrow().text()).isEqualTo("first");
            store.putBack(replaced);
            assertThat(store.plans()).hasSize(2);
            Path wrong = Files.writeString(
                    folder.resolve("wrong.db"), "this is no database at all, and long enough to be read");
            assertThatThrownBy(() -> store.putBack(wrong))
                    .isInstanceOf(StoreProblem.class)
                    .hasMessageContaining("no sound copy");
            Path cut = folder.resolve("cut.db");
            byte[] whole = Files.readAllBytes(copy);
            Files.write(cut, java.util.Arrays.copyOf(whole, whole.length / 2));
            assertThatThrownBy(() -> store.putBack(cut)).isInstanceOf(StoreProblem.class);
            assertThat(store.plans()).hasSize(2);
        }
    }

    // --- trouble: a clear sentence, and nothing lost

    private static void sql(Path file, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            for (String one : statements) {
                statement.execute(one);
            }
        }
    }

    private void refused(Path file, String words) throws IOException {
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> Store.open(file))
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining(words);
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void whatIsNotOursIsLeftAlone() throws Exception {
        Path strange = folder.resolve("strange.db");
        sql(strange, "create table letters (text text)", "insert into letters values ('mine')");
        refused(strange, "some other program");
        refused(
                Files.writeString(
                        folder.resolve("garbage.db"),
                        "no database, only some text that is long enough to be looked at"),
                "cannot be read as plans");
        Path newer = folder.resolve("newer.db");
        Store.open(newer).close();
        sql(newer, "pragma user_version = 99");
        refused(newer, "newer Tideover");
    }

    @Test
    void secondProgramIsToldApart() throws Exception {
        try (Store store = Store.open(file())) {
            long id = store.add("a", "text", Map.of());
            Process other = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            Storm.class.getName(),
                            file().toString(),
                            "1")
                    .redirectErrorStream(true)
                    .start();
            String said = new String(other.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(other.waitFor()).isNotZero();
            assertThat(said).contains("open in another Tideover");
            assertThat(store.plan(id)).isPresent();
        }
    }

    @Test
    void lockedByAnotherProgram() throws Exception {
        try (Store store = Store.open(file())) {
            long id = store.add("a", "text", Map.of());
            try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file());
                    Statement statement = other.createStatement()) {
                statement.execute("begin immediate");
                assertThatThrownBy(() -> store.replace(id, 1, "a", "new"))
                        .isInstanceOf(StoreProblem.class)
                        .hasMessageContaining("held by another program");
                statement.execute("rollback");
            }
            assertThat(store.replace(id, 1, "a", "new")).isEqualTo(2);
        }
    }

    @Test
    void fullDiskKeepsAllThatWasKept() {
        try (Store store = Store.open(file())) {
            long id = store.add("a", "text", Map.of());
            store.limitPages(60);
            assertThatThrownBy(() -> store.putFile(id, "big.csv", new byte[3_000_000]))
                    .isInstanceOf(StoreProblem.class)
                    .hasMessageContaining("disk is full");
            assertThat(store.plan(id).orElseThrow().files()).isEmpty();
            store.limitPages(1_000_000);
            store.putFile(id, "big.csv", new byte[3_000_000]);
            assertThat(store.plan(id).orElseThrow().files()).hasSize(1);
        }
    }

    @Test
    void readOnlyIsTold() {
        try (Store store = Store.open(file())) {
            long id = store.add("a", "text", Map.of());
            store.readOnly(true);
            assertThatThrownBy(() -> store.replace(id, 1, "a", "new"))
                    .isInstanceOf(StoreProblem.class)
                    .hasMessageContaining("may not be written to");
            store.readOnly(false);
            assertThat(store.plan(id).orElseThrow().text()).isEqualTo("text");
        }
        // A folder that cannot be one: a file stands in its place. Holds for whoever may do everything, too.
        assertThatThrownBy(() -> Store.open(file().resolve("below").resolve("plans.db")))
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining("cannot be made");
    }
}
