package tideover.app.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/** Files that the program writes: whole or not at all. */
final class Output {
    private Output() {}

    /** Writes something to a writer. */
    interface Writing {
        void to(Writer writer) throws IOException;
    }

    /** A file that an option asks for; null where it does not. */
    record Asked(String option, @Nullable Path file) {}

    /**
     * Looks before a long run whether its files can be written at its end.
     *
     * @param inputs what the person handed in, which no output may take the place of
     */
    static void check(List<Path> inputs, Asked... outputs) {
        List<Problem> problems = new ArrayList<>();
        List<Path> taken = new ArrayList<>(inputs);
        for (Asked asked : outputs) {
            Path file = asked.file();
            if (file == null) {
                continue;
            }
            Path folder = file.toAbsolutePath().getParent();
            String found = file.toString();
            if (Files.isDirectory(file)) {
                problems.add(new Problem(asked.option(), found + ", a folder", "the name of a file", ""));
            } else if (folder == null || !Files.isDirectory(folder)) {
                problems.add(new Problem(
                        asked.option(), found, "a file in a folder that is there", "Make the folder first."));
            } else if (Files.exists(file) ? !Files.isWritable(file) : !Files.isWritable(folder)) {
                problems.add(new Problem(
                        asked.option(), found + ", which may not be written", "a file that may be written", ""));
            } else if (taken.stream().anyMatch(other -> same(other, file))) {
                problems.add(new Problem(
                        asked.option(),
                        found + ", which this run reads or writes already",
                        "a file of its own",
                        "Nothing was written over."));
            }
            taken.add(file);
        }
        if (!problems.isEmpty()) {
            throw new InputProblems(problems);
        }
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other)
                    ? Files.isRegularFile(one) && Files.isSameFile(one, other)
                    : one.toAbsolutePath()
                            .normalize()
                            .equals(other.toAbsolutePath().normalize());
        } catch (IOException e) {
            return false;
        }
    }

    static void text(Path file, String text) {
        write(file, writer -> writer.write(text));
    }

    /**
     * Into a file beside it first, then moved over it, so that a failure leaves the old one. What is no plain file, such
     * as a pipe or a device, cannot be moved over and is written straight; so is the file behind a link.
     */
    static void write(Path file, Writing writing) {
        try {
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                into(file, writing);
            } else {
                replace(Files.exists(file) ? file.toRealPath() : file.toAbsolutePath(), writing);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be written: " + reason(e) + ".", e);
        }
    }

    private static void replace(Path target, Writing writing) throws IOException {
        Path beside = target.resolveSibling(
                "." + target.getFileName() + ".part" + ProcessHandle.current().pid());
        try {
            into(beside, writing);
            Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static void into(Path file, Writing writing) throws IOException {
        try (BufferedWriter writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            writing.to(writer);
        }
    }

    private static String reason(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "its folder is not there";
        }
        if (e instanceof AccessDeniedException) {
            return "that is not allowed";
        }
        if (e instanceof FileSystemException known && known.getReason() != null) {
            return known.getReason();
        }
        return String.valueOf(e.getMessage());
    }
}
