package tideover.app.store;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;

/**
 * Keeps a second program off the same file: a lock on a small file beside it, which the system lets go of when the program ends,
 * however it ends.
 */
final class Guarded implements AutoCloseable {
    private final RandomAccessFile lock;

    private Guarded(RandomAccessFile lock) {
        this.lock = lock;
    }

    static Guarded take(Path file) {
        Path beside = file.resolveSibling(file.getFileName() + ".lock");
        RandomAccessFile lock;
        try {
            lock = new RandomAccessFile(beside.toFile(), "rw");
        } catch (IOException e) {
            throw new StoreProblem(
                    "The folder " + file.getParent() + " may not be written to here; nothing was changed.", e);
        }
        try {
            if (lock.getChannel().tryLock() == null) {
                lock.close();
                throw held(file);
            }
        } catch (java.nio.channels.OverlappingFileLockException e) {
            close(lock);
            throw held(file);
        } catch (IOException e) {
            // Some network disks know no locks; the database has its own.
            return new Guarded(lock);
        }
        return new Guarded(lock);
    }

    private static StoreProblem held(Path file) {
        return new StoreProblem(
                "Your plans in " + file + " are open in another Tideover. Use that one, or end it first.");
    }

    private static void close(RandomAccessFile file) {
        try {
            file.close();
        } catch (IOException e) {
            // Nothing was written to it.
        }
    }

    @Override
    public void close() {
        close(lock);
    }
}
