package tideover.app.store;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.CopyOption;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;

/** Copies of the file of plans, and putting one back. Everything is written whole beside its place first, and then moved there. */
final class Copies {
    /** What the database keeps beside its file; of no use, and harmful, beside another. */
    private static final List<String> COMPANIONS = List.of("-wal", "-shm", "-journal");

    private Copies() {}

    /**
     * Writes all that a connection sees into a new file.
     *
     * @param file that the connection has open
     * @param over whether an older file of that name may be replaced
     */
    static void write(Handle handle, Path file, Path to, boolean over, int newestVersion) {
        Path whole = to.toAbsolutePath().normalize();
        if (isOrBelongsTo(whole, file)) {
            throw new StoreProblem("The copy needs a name of its own: " + whole
                    + " is where your plans are kept now. Nothing was changed.");
        }
        if (Files.isDirectory(whole)) {
            throw new StoreProblem(whole + " is a folder; name a file in it.");
        }
        if (!over && Files.exists(whole)) {
            throw already(whole);
        }
        if (COMPANIONS.stream().anyMatch(suffix -> Files.exists(beside(whole, suffix)))) {
            // A log that lies there would be taken for the new file's own.
            throw new StoreProblem(
                    whole + " is in use by some program; take another name for the copy. Nothing was written.");
        }
        try {
            Path half = half(whole);
            try {
                vacuum(handle, half);
                check(half, newestVersion);
                CopyOption[] how = over
                        ? new CopyOption[] {StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE}
                        : new CopyOption[0];
                Files.move(half, whole, how);
            } finally {
                Files.deleteIfExists(half);
            }
        } catch (FileAlreadyExistsException e) {
            throw already(whole);
        } catch (IOException e) {
            throw new StoreProblem("The copy " + whole + " cannot be written: " + Troubles.reason(e) + ".", e);
        } catch (JdbiException e) {
            throw Troubles.ofCopy(e, file, whole);
        }
    }

    private static StoreProblem already(Path whole) {
        return new StoreProblem("There is a file " + whole + " already; it was left alone.");
    }

    /** The same for a file that this process does not have open; another may. */
    static void write(Path file, Path to, boolean over, int newestVersion) {
        Path whole = file.toAbsolutePath();
        if (!Files.isRegularFile(whole)) {
            throw new StoreProblem("There are no plans in " + whole + " yet; nothing was copied.");
        }
        try (Handle handle = reading(whole)) {
            refuseStrange(handle, whole, newestVersion);
            write(handle, whole, to, over, newestVersion);
        } catch (JdbiException e) {
            throw Troubles.told(e, whole);
        }
    }

    /**
     * Puts a copy in the place of a file that nobody has open.
     *
     * @return where the file lies now that was there before
     */
    static Optional<Path> putBack(Path copy, Path file, int newestVersion) {
        Path from = copy.toAbsolutePath().normalize();
        Path whole = file.toAbsolutePath().normalize();
        if (isOrBelongsTo(from, whole)) {
            throw new StoreProblem(from + " is where your plans are kept now; name a copy of it.");
        }
        if (!Files.isRegularFile(from)) {
            throw new StoreProblem("There is no file " + from + ".");
        }
        // Before anything is made or locked: this refuses most that goes wrong.
        check(from, newestVersion);
        Store.makeFolder(whole);
        try (Guarded guarded = Guarded.take(whole)) {
            Path half = half(whole);
            try {
                fromHandedIn(from, half);
                check(half, newestVersion);
                Optional<Path> kept = keep(whole);
                settle(whole);
                for (String suffix : COMPANIONS) {
                    Files.deleteIfExists(beside(whole, suffix));
                }
                Files.move(half, whole, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
                return kept;
            } finally {
                Files.deleteIfExists(half);
            }
        } catch (IOException e) {
            throw new StoreProblem("The copy cannot be put back: " + Troubles.reason(e) + ". Nothing was lost.", e);
        }
    }

    /** Not a plain copy of the file: what lies in a log beside it belongs to it. */
    private static void fromHandedIn(Path from, Path half) throws IOException {
        try (Handle handle = reading(from)) {
            vacuum(handle, half);
        } catch (JdbiException e) {
            throw Troubles.ofHandedIn(e, from);
        }
    }

    /** A second file with all that belongs to it, under a name that is free. */
    private static Optional<Path> keep(Path whole) throws IOException {
        if (!Files.exists(whole) && COMPANIONS.stream().noneMatch(suffix -> Files.exists(beside(whole, suffix)))) {
            return Optional.empty();
        }
        Path kept = free(whole, "-replaced-");
        for (String suffix : List.of("", "-wal", "-journal")) {
            if (Files.exists(beside(whole, suffix))) {
                Path second = beside(kept, suffix);
                Files.copy(beside(whole, suffix), second);
                toDisk(second);
            }
        }
        return Optional.of(kept);
    }

    /** The log into its file, so that a crash before the new file is in place leaves a whole old one. */
    private static void settle(Path whole) {
        try (Handle old = Jdbi.create(() -> new SQLiteConfig().createConnection("jdbc:sqlite:" + whole))
                .open()) {
            old.execute("pragma wal_checkpoint(truncate)");
        } catch (JdbiException e) {
            // It may be a damaged file that is replaced; it is kept as it is.
            return;
        }
    }

    /** A name beside the file that nothing has yet, such as "plans-replaced-1.db". */
    static Path free(Path file, String what) {
        for (int number = 1; ; number++) {
            Path name = named(file, what + number);
            if (!Files.exists(name) && COMPANIONS.stream().noneMatch(suffix -> Files.exists(beside(name, suffix)))) {
                return name;
            }
        }
    }

    /** The file's name with words before its ending. */
    static Path named(Path file, String what) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return file.resolveSibling(dot > 0 ? name.substring(0, dot) + what + name.substring(dot) : name + what);
    }

    private static void vacuum(Handle handle, Path into) throws IOException {
        handle.execute("vacuum into ?", into.toString());
        toDisk(into);
    }

    /** An empty file that only its owner reads. */
    private static Path half(Path whole) throws IOException {
        return Files.createTempFile(whole.getParent(), whole.getFileName() + ".", ".part");
    }

    private static void toDisk(Path file) throws IOException {
        try (RandomAccessFile written = new RandomAccessFile(file.toFile(), "rw")) {
            written.getFD().sync();
        }
    }

    private static Path beside(Path file, String suffix) {
        return file.resolveSibling(file.getFileName() + suffix);
    }

    private static boolean isOrBelongsTo(Path one, Path file) {
        return List.of("", "-wal", "-shm", "-journal", ".lock").stream()
                .anyMatch(suffix -> same(one, beside(file, suffix)));
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other)
                    ? Files.isSameFile(one, other)
                    : one.toAbsolutePath()
                            .normalize()
                            .equals(other.toAbsolutePath().normalize());
        } catch (IOException e) {
            return false;
        }
    }

    private static Handle reading(Path file) {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        config.setBusyTimeout(3000);
        return Jdbi.create(() -> config.createConnection("jdbc:sqlite:" + file)).open();
    }

    /** Refuses what is not a sound file of ours; changes nothing in it. */
    static void check(Path copy, int newestVersion) {
        try (Handle handle = reading(copy)) {
            refuseStrange(handle, copy, newestVersion);
            String sound = handle.createQuery("pragma integrity_check(1)")
                    .mapTo(String.class)
                    .one();
            if (!sound.equals("ok")) {
                throw Troubles.notSound(copy, null);
            }
        } catch (JdbiException e) {
            throw Troubles.ofHandedIn(e, copy);
        }
    }

    private static void refuseStrange(Handle handle, Path file, int newestVersion) {
        if (Store.pragma(handle, "application_id") != Store.APPLICATION_ID) {
            throw Troubles.notSound(file, null);
        }
        if (Store.pragma(handle, "user_version") > newestVersion) {
            throw Troubles.newer(file);
        }
    }
}
