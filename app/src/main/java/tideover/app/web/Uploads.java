package tideover.app.web;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import tideover.app.store.Store;

/** What comes in as files and goes out as files; names never lead anywhere, and what is packed is bounded unpacked. */
final class Uploads {
    private static final int MOST_ENTRIES = 40;
    private static final int LONGEST_NAME = 80;

    /** Of a name as zipped; longer ones the store would refuse. */
    private static final String PART = "[A-Za-z0-9_][A-Za-z0-9._-]{0,79}";

    private Uploads() {}

    /** A file as a form brought it; the name as the browser gave it. */
    record Sent(String name, byte[] bytes) {}

    /** Whether a form brought a file with something in it. */
    static boolean came(Context request) {
        UploadedFile file = request.uploadedFile("file");
        return file != null && file.size() > 0;
    }

    static Sent sent(Context request) throws IOException {
        UploadedFile file = request.uploadedFile("file");
        if (file == null || file.size() == 0) {
            throw new BadRequestResponse("No file came with that.");
        }
        try (InputStream in = file.content()) {
            return new Sent(file.filename(), in.readAllBytes());
        }
    }

    /** A plain file name out of whatever a browser calls a file. */
    static String name(@Nullable String given, String otherwise) {
        String last =
                given == null ? "" : given.substring(Math.max(given.lastIndexOf('/'), given.lastIndexOf('\\')) + 1);
        String whole = last.replaceAll("[^A-Za-z0-9._-]+", "-");
        String end = whole.substring(Math.max(0, whole.length() - LONGEST_NAME));
        String plain = end.replaceAll("^[.-]+", "");
        return plain.isEmpty() || plain.equals(PlanReader.PLAN_FILE) ? otherwise : plain;
    }

    /** A plan with its files, as they lie in a folder. */
    record Packed(String plan, Map<String, byte[]> files) {}

    /**
     * Unpacks a plan that was packed here.
     *
     * @throws IllegalArgumentException in a whole sentence, where it is not that
     */
    static Packed unpacked(byte[] zip) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        long bytes = 0;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (entry.isDirectory()) {
                    // A folder with something packed into it would be unpacked without bound only to be passed over.
                    bytes += read(in, Store.MOST_BYTES_TOGETHER - bytes).length;
                    continue;
                }
                if (files.size() >= MOST_ENTRIES) {
                    throw new IllegalArgumentException("More than " + MOST_ENTRIES + " files in it.");
                }
                byte[] one = read(in, Store.MOST_BYTES_TOGETHER - bytes);
                bytes += one.length;
                files.put(pathIn(entry.getName()), one);
            }
        } catch (IOException e) {
            throw new IllegalArgumentException("It cannot be unpacked: " + e.getMessage());
        }
        byte[] plan = files.remove(PlanReader.PLAN_FILE);
        if (plan == null) {
            throw new IllegalArgumentException("There is no " + PlanReader.PLAN_FILE + " in it.");
        }
        return new Packed(new String(plan, StandardCharsets.UTF_8), files);
    }

    private static byte[] read(InputStream in, long most) throws IOException {
        byte[] bytes = in.readNBytes((int) Math.min(Integer.MAX_VALUE, Math.max(0, most) + 1));
        if (bytes.length > most) {
            throw new IllegalArgumentException("Unpacked it is larger than a plan's files may be.");
        }
        return bytes;
    }

    private static String pathIn(String name) {
        if (!name.matches(PART + "(/" + PART + ")?")) {
            throw new IllegalArgumentException("It holds a file whose name this program does not take.");
        }
        return name;
    }

    static byte[] packed(String plan, Map<String, byte[]> files) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            put(zip, PlanReader.PLAN_FILE, plan.getBytes(StandardCharsets.UTF_8));
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                put(zip, file.getKey(), file.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes);
        zip.closeEntry();
    }
}
