package tideover.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StoreTest {
    private static final byte[] TABLE = "id,name\n".getBytes(StandardCharsets.UTF_8);

    @TempDir
    private Path folder;

    private Path file;
    private Store store;
    private final Hands clock = new Hands();

    /** A clock that is moved by hand. */
    private static final class Hands extends Clock {
        private Instant at = Instant.parse("2026-01-10T08:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return at;
        }
    }

    @BeforeEach
    void open() {
        file = folder.resolve("data").resolve("plans.db");
        store = Store.open(file, clock);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private void reopen() {
        store.close();
        store = Store.open(file, clock);
    }

    private StoredPlan plan(long id) {
        return store.plan(id).orElseThrow();
    }

    @Test
    void aPlanIsKeptWithItsFiles() {
        long id = store.add("Cabin", "plan: Cabin\n# Ω, 🔋\n", Map.of("parts/electronics.csv", TABLE));
        reopen();
        StoredPlan plan = plan(id);
        assertThat(plan.text()).isEqualTo("plan: Cabin\n# Ω, 🔋\n");
        assertThat(plan.revision()).isEqualTo(1);
        assertThat(plan.changed()).isEqualTo("2026-01-10 08:00:00");
        assertThat(plan.files()).containsOnlyKeys("parts/electronics.csv");
        assertThat(plan.files().get("parts/electronics.csv")).isEqualTo(TABLE);
        assertThat(store.plans()).containsExactly(new PlanLine(id, "Cabin", "2026-01-10 08:00:00", 1));
        assertThat(store.plan(id + 1)).isEmpty();
    }

    @Test
    void theLastChangedComesFirst() {
        long first = store.add("First", "a", Map.of());
        clock.at = clock.at.plusSeconds(5);
        long second = store.add("Second", "b", Map.of());
        assertThat(store.plans()).extracting(PlanLine::id).containsExactly(second, first);
        clock.at = clock.at.plusSeconds(5);
        store.replace(first, 1, "First", "c");
        assertThat(store.plans()).extracting(PlanLine::id).containsExactly(first, second);
    }

    @Test
    void aChangeMadeForAnOlderTextIsRefused() {
        long id = store.add("Cabin", "one", Map.of());
        assertThat(store.replace(id, 1, "Hut", "two")).isEqualTo(2);
        assertThatThrownBy(() -> store.replace(id, 1, "Shed", "three")).isInstanceOf(StaleEdit.class);
        assertThat(plan(id).text()).isEqualTo("two");
        assertThat(store.plans().get(0).name()).isEqualTo("Hut");
        assertThat(store.replace(id, 2, "Shed", "three")).isEqualTo(3);
    }

    @Test
    void twoThreadsLoseNoEdit() throws Exception {
        long id = store.add("Cabin", "0", Map.of());
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<?>> all = IntStream.range(0, 4)
                    .<Future<?>>mapToObj(thread -> threads.submit(() -> {
                        for (int done = 0; done < 25; ) {
                            StoredPlan now = plan(id);
                            try {
                                String more = String.valueOf(Integer.parseInt(now.text()) + 1);
                                store.replace(id, now.revision(), "Cabin", more);
                                done++;
                            } catch (StaleEdit e) {
                                // Somebody was quicker: read again.
                            }
                        }
                    }))
                    .toList();
            for (Future<?> one : all) {
                one.get();
            }
        } finally {
            threads.shutdownNow();
        }
        assertThat(plan(id).text()).isEqualTo("100");
        assertThat(plan(id).revision()).isEqualTo(101);
    }

    @Test
    void textsAreTakenBackOneByOne() {
        long id = store.add("A", "a", Map.of());
        store.replace(id, 1, "B", "b");
        store.replace(id, 2, "C", "c");
        reopen();
        assertThat(store.undo(id)).isTrue();
        assertThat(plan(id).text()).isEqualTo("b");
        assertThat(plan(id).revision()).as("taking back is a change too").isEqualTo(4);
        assertThat(store.undo(id)).isTrue();
        assertThat(plan(id).text()).isEqualTo("a");
        assertThat(store.plans().get(0).name()).isEqualTo("A");
        assertThat(store.undo(id)).isFalse();
        assertThat(plan(id).revision()).isEqualTo(5);
    }

    @Test
    void twoHundredTextsCanBeTakenBack() {
        long id = store.add("A", "1", Map.of());
        for (int revision = 1; revision <= 210; revision++) {
            store.replace(id, revision, "A", String.valueOf(revision + 1));
        }
        int back = 0;
        while (store.undo(id)) {
            back++;
        }
        assertThat(back).isEqualTo(200);
        assertThat(plan(id).text()).isEqualTo("11");
    }

    @Test
    void filesAreChangesOfThePlan() {
        long id = store.add("A", "a", Map.of("a.csv", TABLE));
        store.putFile(id, "b.csv", new byte[] {1, 2});
        store.putFile(id, "a.csv", new byte[0]);
        assertThat(plan(id).revision()).isEqualTo(3);
        assertThat(plan(id).files().get("a.csv")).isEmpty();
        assertThat(plan(id).files().get("b.csv")).containsExactly(1, 2);
        store.removeFile(id, "b.csv");
        assertThat(plan(id).files()).containsOnlyKeys("a.csv");
        assertThat(plan(id).revision()).isEqualTo(4);
        assertThatThrownBy(() -> store.replace(id, 1, "A", "b")).isInstanceOf(StaleEdit.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../a.csv",
                "/a.csv",
                "a/../b.csv",
                "a/b/c.csv",
                "a\\b.csv",
                "C:a.csv",
                "",
                ".",
                "..",
                ".hidden",
                "a/",
                "/",
                "a\nb",
                "a\u0000b",
                "parts/.x"
            })
    void noNameLeadsOutOfThePlan(String name) {
        assertThatThrownBy(() -> store.add("A", "a", Map.of(name, TABLE))).isInstanceOf(StoreProblem.class);
        long id = store.add("A", "a", Map.of());
        assertThatThrownBy(() -> store.putFile(id, name, TABLE)).isInstanceOf(StoreProblem.class);
        assertThat(plan(id).files()).isEmpty();
        assertThat(plan(id).revision()).isEqualTo(1);
        assertThat(store.plans()).hasSize(1);
    }

    @Test
    void filesHaveBounds() {
        long id = store.add("A", "a", Map.of());
        store.putFile(id, "a.csv", new byte[(int) Store.MOST_BYTES_TOGETHER - 10]);
        assertThatThrownBy(() -> store.putFile(id, "b.csv", new byte[11]))
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining("64 MB");
        assertThat(plan(id).files()).containsOnlyKeys("a.csv");
        store.putFile(id, "b.csv", new byte[10]);
        store.putFile(id, "a.csv", new byte[1]);
        for (int i = 0; i < 58; i++) {
            store.putFile(id, "file" + i, new byte[1]);
        }
        assertThatThrownBy(() -> store.putFile(id, "onemore", new byte[1]))
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining("60 files");
        assertThat(plan(id).files()).hasSize(60);
        store.putFile(id, "file1", new byte[2]);
    }

    @Test
    void aCopyGoesItsOwnWay() {
        long id = store.add("A", "a", Map.of("a.csv", TABLE));
        long copy = store.copy(id, "B", "b");
        store.removeFile(copy, "a.csv");
        assertThat(plan(id).files()).containsOnlyKeys("a.csv");
        assertThat(plan(copy).text()).isEqualTo("b");
        assertThat(store.undo(copy)).isFalse();
    }

    @Test
    void whatIsDeletedCanBeHadBackForThirtyDays() {
        long id = store.add("A", "a", Map.of("a.csv", TABLE));
        store.replace(id, 1, "A", "b");
        store.delete(id);
        assertThat(store.plans()).isEmpty();
        assertThat(store.plan(id)).isEmpty();
        assertThat(store.deleted()).extracting(PlanLine::id).containsExactly(id);
        assertThatThrownBy(() -> store.replace(id, 2, "A", "c")).isInstanceOf(StoreProblem.class);
        assertThatThrownBy(() -> store.putFile(id, "b.csv", TABLE)).isInstanceOf(StoreProblem.class);
        assertThatThrownBy(() -> store.undo(id)).isInstanceOf(StoreProblem.class);

        clock.at = clock.at.plus(Duration.ofDays(29));
        reopen();
        store.restore(id);
        assertThat(plan(id).text()).isEqualTo("b");
        assertThat(plan(id).files()).containsOnlyKeys("a.csv");
        assertThat(store.undo(id)).isTrue();

        store.delete(id);
        clock.at = clock.at.plus(Duration.ofDays(31));
        reopen();
        assertThat(store.deleted()).isEmpty();
        store.restore(id);
        assertThat(store.plan(id)).isEmpty();
        assertThat(count("plan_file") + count("earlier"))
                .as("nothing of it is left")
                .isZero();
        assertThat(store.add("B", "b", Map.of()))
                .as("an address is not given twice")
                .isGreaterThan(id);
    }

    private long count(String table) {
        return store.handle()
                .createQuery("select count(*) from " + table)
                .mapTo(Long.class)
                .one();
    }

    @Test
    void choicesAreKept() {
        assertThat(store.setting("light")).isEmpty();
        store.set("light", "dark");
        store.set("light", "paper");
        reopen();
        assertThat(store.setting("light")).contains("paper");
    }

    @Test
    void theFileIsSetToSurviveAPowerCut() {
        assertThat(pragma("journal_mode")).isEqualTo("wal");
        assertThat(pragma("synchronous")).as("FULL").isEqualTo("2");
        assertThat(pragma("foreign_keys")).isEqualTo("1");
        assertThatThrownBy(() -> store.handle()
                        .execute("insert into plan (name, text, revision, changed) values ('a', 'a', 'many', '')"))
                .as("strict tables")
                .hasMessageContaining("cannot store TEXT value in INTEGER column");
    }

    private String pragma(String name) {
        return store.handle().createQuery("pragma " + name).mapTo(String.class).one();
    }

    @Test
    void anOlderFileIsBroughtUpAndACopyOfItKept() throws Exception {
        long id = store.add("A", "a", Map.of("a.csv", TABLE));
        store.close();
        List<String> scripts =
                List.of(Store.scripts().get(0), "alter table plan add column colour text not null default 'blue';");
        store = Store.open(file, clock, scripts);
        assertThat(pragma("user_version")).isEqualTo("2");
        assertThat(plan(id).text()).isEqualTo("a");
        assertThat(store.handle()
                        .createQuery("select colour from plan")
                        .mapTo(String.class)
                        .one())
                .isEqualTo("blue");
        Path before = file.resolveSibling("plans-before-2.db");
        try (Store old = Store.open(before, clock)) {
            assertThat(old.plan(id).orElseThrow().files()).containsOnlyKeys("a.csv");
        }
        store.close();
        store = Store.open(file, clock, scripts);
        assertThat(Files.list(folder.resolve("data")).map(Path::getFileName).map(Path::toString))
                .filteredOn(name -> name.endsWith(".db"))
                .as("once only")
                .containsExactlyInAnyOrder("plans.db", "plans-before-2.db");
    }

    @Test
    void whatCannotBeBroughtUpStaysAsItWas() {
        long id = store.add("A", "a", Map.of());
        store.close();
        List<String> scripts = List.of(
                Store.scripts().get(0),
                "alter table plan add column colour text; insert into no_such_table values (1);");
        assertThatThrownBy(() -> Store.open(file, clock, scripts).close()).hasMessageContaining("no_such_table");
        store = Store.open(file, clock);
        assertThat(pragma("user_version")).isEqualTo("1");
        assertThat(plan(id).text()).isEqualTo("a");
        assertThat(Files.exists(file.resolveSibling("plans-before-2.db")))
                .as("no copy for each try")
                .isFalse();
    }

    @Test
    void aCopyHoldsEverything() {
        long id = store.add("A", "a", Map.of("a.csv", TABLE));
        store.set("light", "dark");
        Path copy = folder.resolve("copy of 'plans'.db");
        store.backup(copy, false);
        store.replace(id, 1, "A", "b");
        try (Store other = Store.open(copy, clock)) {
            assertThat(other.plan(id).orElseThrow().text()).isEqualTo("a");
            assertThat(other.plan(id).orElseThrow().files()).containsOnlyKeys("a.csv");
            assertThat(other.setting("light")).contains("dark");
        }
        assertThat(plan(id).text()).isEqualTo("b");
    }

    @Test
    void aCopyWritesNothingOverUnasked() throws Exception {
        store.add("A", "a", Map.of());
        Path copy = Files.writeString(folder.resolve("precious.txt"), "precious");
        assertThatThrownBy(() -> store.backup(copy, false))
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining("already");
        assertThat(copy).hasContent("precious");
        store.backup(copy, true);
        assertThat(Files.size(copy)).isGreaterThan(1000);
        assertThatThrownBy(() -> store.backup(folder, true))
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining("folder");
        assertThatThrownBy(() -> store.backup(folder.resolve("none").resolve("a.db"), true))
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining("folder");
        assertThat(leftovers()).isEmpty();
    }

    private List<String> leftovers() throws Exception {
        try (var all = Files.walk(folder)) {
            return all.map(path -> String.valueOf(path.getFileName()))
                    .filter(name -> name.contains(".part"))
                    .toList();
        }
    }

    @Test
    void aCopyNeverTakesThePlaceOfWhatIsCopied() throws Exception {
        long id = store.add("A", "a", Map.of());
        for (String name : List.of("plans.db", "plans.db-wal", "plans.db-shm", "plans.db.lock", "../data/plans.db")) {
            assertThatThrownBy(() -> store.backup(file.resolveSibling(name), true))
                    .as(name)
                    .isInstanceOf(StoreProblem.class);
            assertThatThrownBy(() -> Store.backup(file, file.resolveSibling(name), true))
                    .as(name)
                    .isInstanceOf(StoreProblem.class);
        }
        Path link = Files.createSymbolicLink(folder.resolve("link.db"), file);
        assertThatThrownBy(() -> store.backup(link, true)).isInstanceOf(StoreProblem.class);
        store.replace(id, 1, "A", "b");
        reopen();
        assertThat(plan(id).text()).isEqualTo("b");
    }

    @Test
    void aCopyIsMadeWhileThePagesAreOpenWithoutThem() {
        long id = store.add("A", "a", Map.of());
        Path copy = folder.resolve("copy.db");
        Store.backup(file, copy, false);
        store.replace(id, 1, "A", "b");
        try (Store other = Store.open(copy, clock)) {
            assertThat(other.plan(id).orElseThrow().text()).isEqualTo("a");
        }
        assertThatThrownBy(() -> Store.backup(folder.resolve("none").resolve("plans.db"), copy, true))
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining("no plans");
        assertThat(folder.resolve("none")).as("nothing is made by asking").doesNotExist();
    }

    @Test
    void aCopyIsPutBackAndWhatWasThereKept() {
        long id = store.add("A", "a", Map.of("a.csv", TABLE));
        Path copy = folder.resolve("copy.db");
        store.backup(copy, false);
        store.replace(id, 1, "A", "b");
        store.close();
        Path kept = Store.putBack(copy, file).orElseThrow();
        try (Store before = Store.open(kept, clock)) {
            assertThat(before.plan(id).orElseThrow().text()).isEqualTo("b");
        }
        store = Store.open(file, clock);
        assertThat(plan(id).text()).isEqualTo("a");
        store.replace(id, 1, "A", "c");
        store.close();
        Path keptToo = Store.putBack(copy, file).orElseThrow();
        assertThat(keptToo).as("the first is not written over").isNotEqualTo(kept);
        try (Store before = Store.open(keptToo, clock)) {
            assertThat(before.plan(id).orElseThrow().text()).isEqualTo("c");
        }
        try (Store before = Store.open(kept, clock)) {
            assertThat(before.plan(id).orElseThrow().text()).isEqualTo("b");
        }
        store = Store.open(file, clock);
        assertThat(plan(id).text()).isEqualTo("a");
        assertThat(copy).exists();
    }

    @Test
    void aCopyIsPutBackWhereNothingIs() {
        long id = store.add("A", "a", Map.of());
        Path copy = folder.resolve("copy.db");
        store.backup(copy, false);
        Path fresh = folder.resolve("fresh").resolve("plans.db");
        assertThat(Store.putBack(copy, fresh)).isEmpty();
        try (Store other = Store.open(fresh, clock)) {
            assertThat(other.plan(id).orElseThrow().text()).isEqualTo("a");
        }
    }

    @Test
    void onlyASoundCopyOfOursIsPutBack() throws Exception {
        long id = store.add("A", "a", Map.of("a.csv", new byte[100_000]));
        Path copy = folder.resolve("copy.db");
        store.backup(copy, false);
        store.close();
        Path garbage = Files.writeString(folder.resolve("garbage.db"), "no database at all, by far".repeat(100));
        Path none = folder.resolve("none.db");
        Path empty = Files.createFile(folder.resolve("empty.db"));
        Path cut = folder.resolve("cut.db");
        byte[] bytes = Files.readAllBytes(copy);
        Files.write(cut, java.util.Arrays.copyOf(bytes, bytes.length / 2));
        for (Path wrong : List.of(garbage, none, empty, cut, file, folder)) {
            assertThatThrownBy(() -> Store.putBack(wrong, file))
                    .as(wrong.toString())
                    .isInstanceOf(StoreProblem.class);
        }
        assertThat(none).doesNotExist();
        store = Store.open(file, clock);
        assertThat(plan(id).text()).isEqualTo("a");
        assertThatThrownBy(() -> Store.putBack(copy, file))
                .as("while it is open")
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining("open in another Tideover");
        store.replace(id, 1, "A", "b");
        assertThat(leftovers()).isEmpty();
    }

    @Test
    void takesOverACopyWhileItIsOpen(@TempDir Path folder) {
        Path copy = folder.resolve("copy.db");
        try (Store store = Store.open(folder.resolve("plans.db"))) {
            long id = store.add("a", "first", Map.of("x.csv", new byte[] {1}));
            store.backup(copy, false);
            store.replace(id, 1, "a", "second");
            store.add("b", "other", Map.of());
            Path replaced = store.takeOver(copy);
            assertThat(store.plans()).hasSize(1);
            assertThat(store.plan(id).orElseThrow().text()).isEqualTo("first");
            assertThat(store.plan(id).orElseThrow().files()).containsOnlyKeys("x.csv");
            store.takeOver(replaced);
            assertThat(store.plans()).hasSize(2);
            assertThatThrownBy(() -> store.takeOver(folder.resolve("none.db"))).isInstanceOf(StoreProblem.class);
            assertThat(store.plans()).hasSize(2);
        }
    }
}
