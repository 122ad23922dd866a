package tideover.app.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.jspecify.annotations.Nullable;

/** Small files of text that people write: at most a megabyte of UTF-8. Whatever else it is, one problem says so. */
final class FileText {
    static final int MOST_BYTES = 1_000_000;

    private FileText() {}

    /**
     * The text, or null where it cannot be had; then the problem stands in {@code reading}.
     *
     * @param where    file, or file and line of the plan that names it
     * @param expected what the file should be, such as "a plan"
     */
    static @Nullable String read(Reading reading, Beside beside, String name, String where, String expected) {
        byte[] bytes;
        try (InputStream in = beside.open(name)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        } catch (IOException e) {
            reading.problem(where, cannotRead(name, e), expected, "Check the name and the folder.");
            return null;
        }
        return decode(reading, bytes, name, expected);
    }

    static @Nullable String decode(Reading reading, byte[] bytes, String name, String expected) {
        if (bytes.length > MOST_BYTES) {
            reading.problem(name, "a file of more than 1 MB", expected + " of at most 1 MB", "");
            return null;
        }
        for (byte b : bytes) {
            if (b == 0) {
                reading.problem(
                        name, "a binary file", expected + " as plain text", "Save it as plain text, encoded UTF-8.");
                return null;
            }
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            reading.problem(
                    name, "text that is not UTF-8", expected + " as plain text", "Save it again, encoded UTF-8.");
            return null;
        }
        if (text.startsWith("\uFEFF")) {
            text = text.substring(1);
        }
        if (text.isBlank()) {
            reading.problem(name, "an empty file", expected, "");
            return null;
        }
        return text;
    }

    static String cannotRead(String name, IOException e) {
        if (e instanceof NoSuchFileException) {
            return "no file " + Reading.quoted(name);
        }
        if (e instanceof AccessDeniedException) {
            return "file " + Reading.quoted(name) + ", which may not be read";
        }
        if (e instanceof FileSystemException known && known.getReason() != null) {
            return Reading.quoted(name) + ", which is " + known.getReason();
        }
        return "file " + Reading.quoted(name) + ", which cannot be read";
    }
}
