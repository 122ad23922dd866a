package tideover.app.store;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;

/**
 * Keeps a second program off the same file: a lock on a small file beside it, which the system lets go of when the program ends,
 * however it ends. The small file tells which process holds it.
 */
final class Guarded implements AutoCloseable {
    /** Far behind what is written, for some systems let nobody read what is locked. */
    private static final long LOCKED_BYTE = 1L << 30;

    /**
     * What this process holds. Asked first, for on most Unix systems closing any handle of a file lets go of every lock that the
     * process has on it.
     */
    private static final Set<Path> HELD = new HashSet<>();

    private final Path beside;
    private final RandomAccessFile lock;

    private Guarded(Path beside, RandomAccessFile lock) {
        this.beside = beside;
        this.lock = lock;
    }

    /** @param file in a folder that is there */
    static Guarded take(Path file) {
        Path beside = real(file.resolveSibling(file.getFileName() + ".lock"));
        synchronized (HELD) {
            if (HELD.contains(beside)) {
                throw held(file, " (process " + ProcessHandle.current().pid() + ")");
            }
            Guarded guarded = new Guarded(beside, locked(file, beside));
            HELD.add(beside);
            return guarded;
        }
    }

    private static Path real(Path beside) {
        Path folder = beside.getParent();
        try {
            return folder == null ? beside : folder.toRealPath().resolve(beside.getFileName());
        } catch (IOException e) {
            return beside;
        }
    }

    private static RandomAccessFile locked(Path file, Path beside) {
        RandomAccessFile lock;
        try {
            lock = new RandomAccessFile(beside.toFile(), "rw");
        } catch (IOException e) {
            throw new StoreProblem(
                    "The folder " + file.getParent() + " for your plans may not be written to; nothing was changed.",
                    e);
        }
        boolean free;
        try {
            free = lock.getChannel().tryLock(LOCKED_BYTE, 1, false) != null;
        } catch (OverlappingFileLockException e) {
            free = false;
        } catch (IOException e) {
            // Some network disks know no locks; the database has its own.
            return lock;
        }
        if (!free) {
            close(lock);
            throw held(file, holder(beside));
        }
        try {
            lock.setLength(0);
            lock.writeBytes(String.valueOf(ProcessHandle.current().pid()));
        } catch (IOException e) {
            // On a full disk nobody learns the number; the lock holds all the same.
            return lock;
        }
        return lock;
    }

    private static String holder(Path beside) {
        try {
            String number = Files.readString(beside).strip();
            return number.matches("[0-9]{1,12}") ? " (process " + number + ")" : "";
        } catch (IOException e) {
            return "";
        }
    }

    private static StoreProblem held(Path file, String holder) {
        return new StoreProblem("Your plans in " + file + " are open in another Tideover" + holder
                + ". Use that one, or end it first.");
    }

    private static void close(RandomAccessFile file) {
        try {
            file.close();
        } catch (IOException e) {
            // Nothing is lost: it held a process's number.
        }
    }

    /** The small file stays: were it deleted, two programs could lock two files of that name. */
    @Override
    public void close() {
        synchronized (HELD) {
            close(lock);
            HELD.remove(beside);
        }
    }
}
