package tideover.app.files;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.part.SmallPart;

/** Any bytes for a table of small parts. */
@Tag("fuzz")
@Timeout(180)
class SmallPartsFuzzTest {
    @DictionaryEntries({"1/0 AWG", "6 mm2", "#10", "10 gauge", "heat shrink", "multimeter", "screws", "\"", "1e999"})
    @MethodSource("sound")
    @FuzzTest(maxDuration = "1m")
    void givesPartsOrProblems(byte[] file) {
        Promise.of(() -> read(file));
    }

    private static List<SmallPart> read(byte[] file) {
        Reading reading = new Reading();
        Beside beside = any -> new ByteArrayInputStream(file);
        List<SmallPart> parts =
                SmallPartsFile.TABLE.read(reading, beside, SmallSample.NAME, SmallSample.NAME, null, new HashMap<>());
        SmallPartsFile.tellFusesWithoutHolder(reading, parts);
        reading.throwIfWrong();
        return parts;
    }

    static Stream<byte[]> sound() {
        return Stream.of(SmallSample.FILE).map(text -> text.getBytes(StandardCharsets.UTF_8));
    }
}
