package tideover.app.files;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;

/** Where the files that a plan names are looked for: in the plan's own folder, or among texts handed over with it. */
public interface Beside {
    /** Opens a file by the name in the plan. An {@link IOException} says why it cannot be read. */
    InputStream open(String name) throws IOException;

    /**
     * Names are paths, taken from this folder on. None leads out of it, be it by {@code ..}, by a whole path or by a link: a plan
     * may come from anybody, and must not choose what is read of its reader's files.
     */
    static Beside folder(Path folder) {
        return name -> {
            Path file;
            try {
                file = folder.resolve(name);
            } catch (InvalidPathException e) {
                throw new NoSuchFileException(name, null, "not a file name");
            }
            boolean inside = file.normalize().startsWith(folder.normalize());
            if (!inside || (Files.exists(file) && !file.toRealPath().startsWith(folder.toRealPath()))) {
                throw new FileSystemException(name, null, "outside the plan's folder");
            }
            return open(file, name);
        };
    }

    /** One file that a person named, wherever it lies. */
    static Beside alone(Path file) {
        return name -> open(file, name);
    }

    private static InputStream open(Path file, String name) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            // a folder, or something that might never end, such as a pipe
            throw new FileSystemException(name, null, "not a plain file");
        }
        return Files.newInputStream(file);
    }

    /** Names are the keys of this map. */
    static Beside texts(Map<String, String> texts) {
        return name -> {
            String text = texts.get(name);
            if (text == null) {
                throw new NoSuchFileException(name);
            }
            return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
        };
    }
}
