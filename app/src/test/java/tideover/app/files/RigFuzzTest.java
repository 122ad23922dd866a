package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.part.Part;

/** Any text for a rig, as a file and as its id. */
@Tag("fuzz")
@Timeout(180)
class RigFuzzTest {
    private static final List<Part> PARTS = Sample.read(Sample.PLAN).parts();

    @DictionaryEntries({"2xpanel-100+box-1", "batt-50", "count: 1", "- {id: box-1}", "999x"})
    @MethodSource("sound")
    @FuzzTest(maxDuration = "1m")
    void givesARigOrProblems(byte[] file) {
        String text = new String(file, StandardCharsets.UTF_8);
        Promise.of(() -> RigFile.read("rig.yaml", text, PARTS))
                .ifPresent(rig -> assertThat(rig.chosen()).isNotEmpty());
        Promise.of(() -> RigFile.ofId(text, PARTS))
                .flatMap(rig -> rig)
                .ifPresent(chosen -> assertThat(chosen).isNotEmpty());
    }

    static Stream<byte[]> sound() {
        return Stream.of(
                        "rig: Ours\nparts:\n  - {id: box-1}\n  - {id: panel-100, count: 2}\n",
                        "rig: [Ours]\nparts: box-1\n",
                        "2xpanel-100+box-1")
                .map(text -> text.getBytes(StandardCharsets.UTF_8));
    }
}
