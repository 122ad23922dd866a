package tideover.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Meets a full disk and one that may not be written to; is started where a mount is seen by nobody else. */
final class SmallDisk {
    private SmallDisk() {}

    /** @param args a folder to mount a small disk on */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path disk = Path.of(args[0]);
        run("mount", "-t", "tmpfs", "-o", "size=2m", "tmpfs", disk.toString());
        full(disk);
        unwritable(disk);
        unwritableFile(disk);
        System.out.println("all as it should be");
    }

    private static void full(Path disk) throws IOException {
        Path file = disk.resolve("plans.db");
        Path ballast = Files.write(disk.resolve("ballast"), new byte[400_000]);
        long id;
        long kept;
        try (Store store = Store.open(file)) {
            id = store.add("Cabin", "one", Map.of());
            for (kept = 0; ; kept++) {
                String name = "file" + kept;
                Throwable full = catchThrowable(() -> store.putFile(id, name, new byte[70_000]));
                if (full != null) {
                    System.out.println("change: " + full.getMessage());
                    assertThat(full).isInstanceOf(StoreProblem.class).hasMessageContaining("The disk is full");
                    break;
                }
            }
            assertThat(kept).as("some were kept before").isGreaterThan(3);
            assertThat(store.plan(id).orElseThrow().files()).hasSize((int) kept);
            assertThat(store.plan(id).orElseThrow().revision()).isEqualTo(1 + kept);

            Throwable copy = catchThrowable(() -> store.backup(disk.resolve("copy.db"), false));
            System.out.println("copy: " + copy.getMessage());
            assertThat(copy).isInstanceOf(StoreProblem.class).hasMessageContaining("was not written");
            assertThat(names(disk)).allMatch(name -> !name.contains("copy") && !name.contains("part"));

            Files.delete(ballast);
            assertThat(store.replace(id, 1 + kept, "Cabin", "two")).isEqualTo(2 + kept);
        }
        try (Store store = Store.open(file)) {
            StoredPlan plan = store.plan(id).orElseThrow();
            assertThat(plan.text()).isEqualTo("two");
            assertThat(plan.files()).hasSize((int) kept);
            assertSound(store);
        }
    }

    private static void unwritable(Path disk) throws IOException, InterruptedException {
        Path file = disk.resolve("plans.db");
        byte[] before = Files.readAllBytes(file);
        run("mount", "-o", "remount,ro", disk.toString());
        for (Path one : List.of(file, disk.resolve("deeper").resolve("plans.db"))) {
            Throwable refused = catchThrowable(() -> Store.open(one).close());
            System.out.println("folder: " + refused.getMessage());
            assertThat(refused).isInstanceOf(StoreProblem.class);
        }
        assertThatThrownBy(() -> Store.open(file).close()).hasMessageContaining("may not be written to");
        run("mount", "-o", "remount,rw", disk.toString());
        assertThat(file).hasBinaryContent(before);
        try (Store store = Store.open(file)) {
            assertThat(store.plans()).hasSize(1);
        }
    }

    private static void unwritableFile(Path disk) throws IOException, InterruptedException {
        Path file = disk.resolve("plans.db");
        byte[] before = Files.readAllBytes(file);
        run("mount", "--bind", file.toString(), file.toString());
        run("mount", "-o", "remount,bind,ro", file.toString());
        Throwable refused = catchThrowable(() -> Store.open(file).close());
        System.out.println("file: " + refused.getMessage());
        assertThat(refused).isInstanceOf(StoreProblem.class).hasMessageContaining("may not be written to");
        run("umount", file.toString());
        assertThat(file).hasBinaryContent(before);
        try (Store store = Store.open(file)) {
            assertThat(store.plans()).hasSize(1);
            assertSound(store);
        }
    }

    private static void assertSound(Store store) {
        assertThat(store.handle()
                        .createQuery("pragma integrity_check")
                        .mapTo(String.class)
                        .one())
                .isEqualTo("ok");
    }

    private static List<String> names(Path folder) throws IOException {
        try (var all = Files.list(folder)) {
            return all.map(path -> String.valueOf(path.getFileName())).toList();
        }
    }

    private static void run(String... command) throws IOException, InterruptedException {
        assertThat(new ProcessBuilder(command).inheritIO().start().waitFor())
                .as(String.join(" ", command))
                .isZero();
    }
}
