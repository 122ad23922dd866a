package tideover.app.store;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where a person's data are kept on this kind of machine. */
public final class DataFolder {
    private static final String FILE = "plans.db";

    private DataFolder() {}

    /**
     * The file of plans: under {@code TIDEOVER_HOME} where that is set, else where the system keeps such data (on Linux the XDG Base
     * Directory Specification).
     *
     * @param environment the process's variables
     * @param system      name of the operating system
     * @param home        the user's home folder
     */
    public static Path file(Map<String, String> environment, String system, String home) {
        String own = environment.getOrDefault("TIDEOVER_HOME", "");
        if (!own.isBlank()) {
            return Path.of(own, FILE);
        }
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            String local = environment.getOrDefault("LOCALAPPDATA", "");
            return local.isBlank()
                    ? Path.of(home, "AppData", "Local", "Tideover", FILE)
                    : Path.of(local, "Tideover", FILE);
        }
        if (name.startsWith("mac") || name.startsWith("darwin")) {
            return Path.of(home, "Library", "Application Support", "Tideover", FILE);
        }
        String data = environment.getOrDefault("XDG_DATA_HOME", "");
        // The specification has a relative path ignored.
        return Path.of(data).isAbsolute()
                ? Path.of(data, "tideover", FILE)
                : Path.of(home, ".local", "share", "tideover", FILE);
    }
}
