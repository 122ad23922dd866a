package tideover.app.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteException;

/** Faults of the database and the disk, as sentences for people. */
final class Troubles {
    private Troubles() {}

    /** What went wrong with the file of plans; anything but the database's own faults as it is. */
    static RuntimeException told(RuntimeException e, Path file) {
        String words = switch (sort(e)) {
            case "FULL" ->
                "The disk is full: this change was not kept, all earlier ones were." + " Make room and try again.";
            case "READONLY", "CANTOPEN", "PERM", "AUTH" ->
                "The file " + file + " may not be written to; nothing was changed.";
            case "BUSY", "LOCKED" ->
                "The file " + file + " is held by another program; nothing was changed. Close that one and try again.";
            case "NOTADB", "CORRUPT" ->
                "The file " + file
                        + " cannot be read as plans of Tideover. It was left as it is: put back a copy with"
                        + " 'tideover restore', or move it away.";
            case "IOERR" -> "The disk failed under " + file + ": this change was not kept.";
            case "TOOBIG" -> "That is too large to be kept; nothing was changed.";
            default -> "";
        };
        return words.isEmpty() ? e : new StoreProblem(words, e);
    }

    private static String unreadable(Path file) {
        return "The file " + file + " cannot be read as plans of Tideover. It was left as it is: put back a copy with"
                + " 'tideover restore', or move it away.";
    }

    static StoreProblem unreadable(Path file, @Nullable Throwable cause) {
        return new StoreProblem(unreadable(file), cause);
    }

    /** What went wrong while a copy was written. */
    static RuntimeException ofCopy(RuntimeException e, Path file, Path copy) {
        return switch (sort(e)) {
            case "FULL" ->
                new StoreProblem(
                        "The disk is full: the copy " + copy + " was not written; your plans are as they were.", e);
            case "IOERR" ->
                new StoreProblem("The disk failed while " + copy + " was written; your plans are as they were.", e);
            default -> told(e, file);
        };
    }

    /** What went wrong with a file that somebody handed in as a copy. */
    static RuntimeException ofHandedIn(RuntimeException e, Path copy) {
        return switch (sort(e)) {
            case "NOTADB", "CORRUPT" -> notSound(copy, e);
            case "READONLY", "CANTOPEN", "PERM", "AUTH" ->
                new StoreProblem(
                        "The file " + copy
                                + " cannot be opened where it lies; copy it into a folder of your own and try"
                                + " again. Nothing was changed.",
                        e);
            default -> told(e, copy);
        };
    }

    static StoreProblem notSound(Path copy, @Nullable Throwable cause) {
        return new StoreProblem(
                "The file " + copy + " is no sound copy of Tideover's plans; nothing was changed.", cause);
    }

    static StoreProblem newer(Path file) {
        return new StoreProblem(
                "The file " + file + " was written by a newer Tideover; use that one. Nothing was changed.");
    }

    /** Why the disk refused, without the path, which the sentence has already. */
    static String reason(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "its folder is not there";
        }
        if (e instanceof AccessDeniedException) {
            return "that is not allowed";
        }
        if (e instanceof FileSystemException known && known.getReason() != null) {
            return known.getReason().toLowerCase(Locale.ROOT);
        }
        return e.getClass().getSimpleName();
    }

    /** SQLite's name for it without what makes it finer, such as READONLY for SQLITE_READONLY_DIRECTORY; else empty. */
    private static String sort(Throwable e) {
        for (Throwable at = e; at != null; at = at.getCause()) {
            if (at instanceof SQLiteException sqlite) {
                return sqlite.getResultCode().name().split("_")[1];
            }
        }
        return "";
    }
}
