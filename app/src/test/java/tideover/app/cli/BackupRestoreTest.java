package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.app.store.Store;

/** Copies of all plans, by command. */
class BackupRestoreTest {
    @TempDir
    private Path folder;

    private Path plans;
    private Path copy;
    private long id;

    @BeforeEach
    void onePlan() {
        plans = folder.resolve("plans.db");
        copy = folder.resolve("copy.db");
        try (Store store = Store.open(plans)) {
            id = store.add("Cabin", "one", Map.of("parts.csv", new byte[] {1}));
        }
    }

    private void change(String text) {
        try (Store store = Store.open(plans)) {
            store.replace(id, store.plan(id).orElseThrow().revision(), "Cabin", text);
        }
    }

    private static String text(Path file, long id) {
        try (Store store = Store.open(file)) {
            return store.plan(id).orElseThrow().text();
        }
    }

    @Test
    void aCopyIsMadeAndPutBack() {
        Ran backup = Ran.of("backup", copy, "--store", plans);
        assertThat(backup.err()).isEmpty();
        assertThat(backup.status()).isZero();
        assertThat(backup.out()).contains("All plans of " + plans + " were copied into " + copy + ".");
        change("two");
        Ran restore = Ran.of("restore", copy, "--store", plans);
        assertThat(restore.err()).isEmpty();
        assertThat(restore.status()).isZero();
        Path kept = folder.resolve("plans-replaced-1.db");
        assertThat(restore.out())
                .contains("The plans of " + copy + " are now in " + plans + ".")
                .contains("What was there before is kept in " + kept + ".");
        assertThat(text(plans, id)).isEqualTo("one");
        assertThat(text(kept, id)).isEqualTo("two");
    }

    @Test
    void nothingIsWrittenOverUnasked() throws IOException {
        Files.writeString(copy, "precious");
        Ran refused = Ran.of("backup", copy, "--store", plans);
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("There is a file " + copy + " already; it was left alone.");
        assertThat(copy).hasContent("precious");
        assertThat(Ran.of("backup", copy, "--store", plans, "--replace").status())
                .isZero();
        assertThat(text(copy, id)).isEqualTo("one");
    }

    @Test
    void thePagesMayGoOnWhileACopyIsMadeAndNotWhileOneIsPutBack() {
        try (Store pages = Store.open(plans)) {
            assertThat(Ran.of("backup", copy, "--store", plans).status()).isZero();
            Ran refused = Ran.of("restore", copy, "--store", plans);
            assertThat(refused.status()).isEqualTo(2);
            assertThat(refused.err()).contains("are open in another Tideover (process ");
            assertThat(pages.plan(id)).isPresent();
        }
    }

    @Test
    void whatCannotBeDoneIsTold() throws IOException {
        assertThat(Ran.of("backup", "--store", plans).status()).isEqualTo(2);
        Path none = folder.resolve("none.db");
        Ran nothing = Ran.of("backup", copy, "--store", none);
        assertThat(nothing.status()).isEqualTo(2);
        assertThat(nothing.err()).contains("There are no plans in " + none + " yet; nothing was copied.");
        assertThat(copy).doesNotExist();
        assertThat(none).doesNotExist();
        Ran missing = Ran.of("restore", none, "--store", plans);
        assertThat(missing.status()).isEqualTo(2);
        assertThat(missing.err()).contains("There is no file " + none + ".");
        Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear all, ".repeat(100));
        Ran wrong = Ran.of("restore", letter, "--store", plans);
        assertThat(wrong.status()).isEqualTo(2);
        assertThat(wrong.err()).contains("is no sound copy of Tideover's plans; nothing was changed.");
        assertThat(text(plans, id)).isEqualTo("one");
    }
}
