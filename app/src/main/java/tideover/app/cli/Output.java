package tideover.app.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Files that the program writes: whole or not at all. */
final class Output {
    private Output() {}

    /** Writes something to a writer. */
    interface Writing {
        void to(Writer writer) throws IOException;
    }

    static void text(Path file, String text) {
        write(file, writer -> writer.write(text));
    }

    /** Into a file beside it first, then moved over it, so that a failure leaves the old one. */
    static void write(Path file, Writing writing) {
        Path target = file.toAbsolutePath();
        Path beside = target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            try (BufferedWriter writer = Files.newBufferedWriter(
                    beside, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                writing.to(writer);
            }
            Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(
                    file + " cannot be written: " + e.getClass().getSimpleName() + " " + e.getMessage() + ".", e);
        } finally {
            beside.toFile().delete();
        }
    }
}
