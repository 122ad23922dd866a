package tideover.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DataFolderTest {
    private static Path file(String system, Map<String, String> environment) {
        return DataFolder.file(environment, system, "/home/someone");
    }

    @Test
    void whatIsSetCountsEverywhere() {
        for (String system : new String[] {"Linux", "Mac OS X", "Windows 11"}) {
            assertThat(file(system, Map.of("TIDEOVER_HOME", "/data", "XDG_DATA_HOME", "/x", "LOCALAPPDATA", "/l")))
                    .isEqualTo(Path.of("/data/plans.db"));
        }
    }

    @Test
    void elseTheSystemsOwnFolder() {
        assertThat(file("Linux", Map.of())).isEqualTo(Path.of("/home/someone/.local/share/tideover/plans.db"));
        assertThat(file("Linux", Map.of("XDG_DATA_HOME", "/x"))).isEqualTo(Path.of("/x/tideover/plans.db"));
        assertThat(file("Mac OS X", Map.of("XDG_DATA_HOME", "/x")))
                .isEqualTo(Path.of("/home/someone/Library/Application Support/Tideover/plans.db"));
        assertThat(file("Darwin", Map.of()))
                .isEqualTo(Path.of("/home/someone/Library/Application Support/Tideover/plans.db"));
        assertThat(file("Windows 11", Map.of("LOCALAPPDATA", "/l"))).isEqualTo(Path.of("/l/Tideover/plans.db"));
        assertThat(file("Windows 11", Map.of())).isEqualTo(Path.of("/home/someone/AppData/Local/Tideover/plans.db"));
    }

    /** XDG Base Directory Specification: all paths in these variables must be absolute; a relative one is to be ignored. */
    @Test
    void aRelativeDataFolderIsIgnored() {
        assertThat(file("Linux", Map.of("XDG_DATA_HOME", "x")))
                .isEqualTo(Path.of("/home/someone/.local/share/tideover/plans.db"));
    }
}
