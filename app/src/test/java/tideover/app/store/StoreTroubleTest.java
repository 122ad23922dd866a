package tideover.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What can go wrong around the file of plans: told in a sentence, and nothing lost. */
@Timeout(value = 2, unit = TimeUnit.MINUTES)
class StoreTroubleTest {
    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("plans.db");
    }

    /** A file of one plan that nobody has open. */
    private long closed() {
        try (Store store = Store.open(file())) {
            return store.add("Cabin", "one", Map.of("parts.csv", new byte[40_000]));
        }
    }

    private void assertWhole(long id) {
        try (Store store = Store.open(file())) {
            assertThat(store.plan(id).orElseThrow().text()).isEqualTo("one");
            assertThat(store.plan(id).orElseThrow().files()).containsOnlyKeys("parts.csv");
        }
    }

    @Test
    void aFullFileRefusesAChangeAndKeepsTheOthers() {
        long id = closed();
        try (Store store = Store.open(file())) {
            long pages = store.handle()
                    .createQuery("pragma page_count")
                    .mapTo(Long.class)
                    .one();
            store.handle().execute("pragma max_page_count = " + (pages + 5));
            assertThatThrownBy(() -> store.putFile(id, "large.csv", new byte[100_000]))
                    .isInstanceOf(StoreProblem.class)
                    .hasMessage("The disk is full: this change was not kept, all earlier ones were."
                            + " Make room and try again.");
            assertThat(store.plan(id).orElseThrow().files()).containsOnlyKeys("parts.csv");
            assertThat(store.plan(id).orElseThrow().revision()).isEqualTo(1);
            assertThat(store.replace(id, 1, "Cabin", "two"))
                    .as("small ones go on")
                    .isEqualTo(2);
            store.handle().execute("pragma max_page_count = 1000000");
            store.putFile(id, "large.csv", new byte[100_000]);
        }
        try (Store store = Store.open(file())) {
            assertThat(store.plan(id).orElseThrow().text()).isEqualTo("two");
            assertThat(store.plan(id).orElseThrow().files()).containsOnlyKeys("parts.csv", "large.csv");
        }
    }

    /** With disks of its own, so that it holds for whoever runs it, root too. */
    @Test
    void aFullDiskAndOneThatMayNotBeWritten() throws IOException, InterruptedException {
        List<String> apart = List.of("unshare", "--map-root-user", "--mount");
        assumeTrue(mounts(apart), "no mounts of one's own here");
        Path disk = Files.createDirectory(folder.resolve("disk"));
        try (OtherProgram other = OtherProgram.start(apart, SmallDisk.class, disk)) {
            String told = other.rest();
            assertThat(other.process.waitFor()).as(told).isZero();
            assertThat(told)
                    .contains("change: The disk is full: this change was not kept, all earlier ones were.")
                    .contains("copy: The disk is full: the copy ")
                    .contains("folder: The folder ")
                    .contains("file: The file ")
                    .contains("all as it should be");
        }
    }

    private boolean mounts(List<String> apart) throws InterruptedException {
        try {
            List<String> command = new java.util.ArrayList<>(apart);
            command.addAll(List.of("mount", "-t", "tmpfs", "-o", "size=1m", "tmpfs", folder.toString()));
            return new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        }
    }

    @Test
    void aFolderThatCannotBeMade() throws IOException {
        Path plain = Files.writeString(folder.resolve("plain"), "a file, no folder");
        assertThatThrownBy(() -> Store.open(plain.resolve("plans.db")).close())
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining("cannot be made");
        assertThatThrownBy(() ->
                        Store.open(plain.resolve("deeper").resolve("plans.db")).close())
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining("cannot be made");
        assertThatThrownBy(() -> Store.open(folder).close()).isInstanceOf(StoreProblem.class);
        assertThat(plain).hasContent("a file, no folder");
    }

    @Test
    void aSecondTideoverIsToldWhichIsTheFirst() throws Exception {
        long id = closed();
        try (OtherProgram other = OtherProgram.start(Holding.class, "pages", file())) {
            assertThat(other.line()).isEqualTo("open with 1");
            for (int i = 0; i < 2; i++) {
                assertThatThrownBy(() -> Store.open(file()).close())
                        .isInstanceOf(StoreProblem.class)
                        .hasMessage("Your plans in " + file() + " are open in another Tideover (process "
                                + other.process.pid() + "). Use that one, or end it first.");
            }
            Path copy = folder.resolve("copy.db");
            Store.backup(file(), copy, false);
            assertThat(copy).as("a copy disturbs nobody").exists();
            assertThatThrownBy(() -> Store.putBack(copy, file()))
                    .isInstanceOf(StoreProblem.class)
                    .hasMessageContaining("open in another Tideover");
            other.kill();
        }
        assertWhole(id);
    }

    @Test
    void aSecondTryHereDoesNotLetOthersIn() throws Exception {
        closed();
        try (Store store = Store.open(file())) {
            assertThatThrownBy(() -> Store.open(file()).close()).hasMessageContaining("open in another Tideover");
            Path link = Files.createSymbolicLink(folder.resolve("link"), folder);
            assertThatThrownBy(() -> Store.open(link.resolve("plans.db")).close())
                    .hasMessageContaining("open in another Tideover");
            try (OtherProgram other = OtherProgram.start(Holding.class, "pages", file())) {
                assertThat(other.line())
                        .contains("are open in another Tideover (process "
                                + ProcessHandle.current().pid() + ")");
            }
            assertThat(store.plans()).hasSize(1);
        }
    }

    @Test
    void anotherProgramThatIsWritingIsWaitedForAndTold() throws Exception {
        long id = closed();
        try (OtherProgram other = OtherProgram.start(Holding.class, "writing", file())) {
            assertThat(other.line()).isEqualTo("open");
            assertThatThrownBy(() -> Store.open(file()).close())
                    .isInstanceOf(StoreProblem.class)
                    .hasMessageContaining("held by another program");
        }
        try (Store store = Store.open(file())) {
            try (OtherProgram other = OtherProgram.start(Holding.class, "writing", file())) {
                assertThat(other.line()).isEqualTo("open");
                assertThatThrownBy(() -> store.replace(id, 1, "Cabin", "two"))
                        .isInstanceOf(StoreProblem.class)
                        .hasMessageContaining("held by another program");
                assertThat(store.plan(id).orElseThrow().text())
                        .as("reading goes on")
                        .isEqualTo("one");
            }
            assertThat(store.replace(id, 1, "Cabin", "two")).isEqualTo(2);
        }
    }

    @Test
    void aFileOfANewerTideoverIsLeftAlone() throws Exception {
        closed();
        Store.open(
                        file(),
                        java.time.Clock.systemDefaultZone(),
                        List.of(Store.scripts().get(0), "create table later (a integer) strict;"))
                .close();
        byte[] before = Files.readAllBytes(file());
        assertThatThrownBy(() -> Store.open(file()).close())
                .isInstanceOf(StoreProblem.class)
                .hasMessage(
                        "The file " + file() + " was written by a newer Tideover; use that one. Nothing was changed.");
        assertThatThrownBy(() -> Store.backup(file(), folder.resolve("copy.db"), false))
                .hasMessageContaining("newer Tideover");
        Path home = folder.resolve("home").resolve("plans.db");
        assertThatThrownBy(() -> Store.putBack(file(), home)).hasMessageContaining("newer Tideover");
        assertThat(home).doesNotExist();
        assertThat(file()).hasBinaryContent(before);
    }

    @Test
    void anotherProgramsDatabaseIsLeftAlone() throws Exception {
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file())) {
            other.createStatement().execute("create table song (title text)");
        }
        byte[] before = Files.readAllBytes(file());
        assertThatThrownBy(() -> Store.open(file()).close())
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining("some other program");
        assertThatThrownBy(() -> Store.backup(file(), folder.resolve("copy.db"), false))
                .isInstanceOf(StoreProblem.class);
        assertThat(file()).hasBinaryContent(before);
        assertThat(folder.resolve("copy.db")).doesNotExist();
    }

    @Test
    void whatIsNoDatabaseIsLeftAlone() throws IOException {
        for (int length : new int[] {1, 20, 100, 5000, 100_000}) {
            byte[] garbage = "Shopping: candles, bread. "
                    .repeat(4000)
                    .substring(0, length)
                    .getBytes(StandardCharsets.UTF_8);
            assertRefused(garbage, length + " letters");
        }
    }

    @Test
    void aFileCutShortIsLeftAloneAndACopyPutInItsPlace() throws IOException {
        long id = closed();
        Path copy = folder.resolve("copy.db");
        Store.backup(file(), copy, false);
        byte[] whole = Files.readAllBytes(file());
        for (int length : new int[] {1, 50, 100, 600, 4096, 4097, whole.length / 2, whole.length - 4096}) {
            assertRefused(Arrays.copyOf(whole, length), "cut to " + length);
        }
        Path kept = Store.putBack(copy, file()).orElseThrow();
        assertThat(kept).hasBinaryContent(Arrays.copyOf(whole, whole.length - 4096));
        assertWhole(id);
    }

    private void assertRefused(byte[] bytes, String what) throws IOException {
        Files.write(file(), bytes);
        assertThatThrownBy(() -> Store.open(file()).close())
                .as(what)
                .isInstanceOf(StoreProblem.class)
                .hasMessageContaining("cannot be read as plans of Tideover");
        assertThatThrownBy(() -> Store.backup(file(), folder.resolve("copy-of-it.db"), false))
                .as(what)
                .isInstanceOf(StoreProblem.class);
        assertThat(file()).as(what).hasBinaryContent(bytes);
        assertThat(folder.resolve("copy-of-it.db")).doesNotExist();
    }

    /** An empty file with a log beside it would be taken for a new one, and the log thrown away. */
    @Test
    void aLogWithoutItsFileIsNotThrownAway() throws Exception {
        closed();
        try (Store store = Store.open(file())) {
            store.add("Hut", "two", Map.of());
            Files.copy(folder.resolve("plans.db-wal"), folder.resolve("log"));
        }
        byte[] log = Files.readAllBytes(folder.resolve("log"));
        assertThat(log.length).isGreaterThan(1000);
        for (boolean empty : new boolean[] {true, false}) {
            Files.deleteIfExists(file());
            if (empty) {
                Files.createFile(file());
            }
            Files.write(folder.resolve("plans.db-wal"), log);
            assertThatThrownBy(() -> Store.open(file()).close())
                    .isInstanceOf(StoreProblem.class)
                    .hasMessageContaining("plans.db-wal");
            assertThat(folder.resolve("plans.db-wal")).hasBinaryContent(log);
        }
    }

    /** What was in the log of a program that was killed is in the copy, and in what is kept of a replaced file. */
    @Test
    void theLogOfAKilledProgramIsNotForgotten() throws Exception {
        long id = closed();
        Path first = folder.resolve("first.db");
        Store.backup(file(), first, false);
        Path killed = folder.resolve("killed");
        Files.createDirectory(killed);
        try (Store store = Store.open(file())) {
            store.replace(id, 1, "Cabin", "in the log only");
            Files.copy(file(), killed.resolve("plans.db"));
            Files.copy(folder.resolve("plans.db-wal"), killed.resolve("plans.db-wal"));
        }
        Path copy = folder.resolve("copy.db");
        Store.backup(killed.resolve("plans.db"), copy, false);
        try (Store store = Store.open(copy)) {
            assertThat(store.plan(id).orElseThrow().text()).isEqualTo("in the log only");
        }
        Path kept = Store.putBack(first, killed.resolve("plans.db")).orElseThrow();
        try (Store store = Store.open(kept)) {
            assertThat(store.plan(id).orElseThrow().text()).isEqualTo("in the log only");
        }
        try (Store store = Store.open(killed.resolve("plans.db"))) {
            assertThat(store.plan(id).orElseThrow().text()).isEqualTo("one");
        }
    }
}
