package tideover.app.files;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.part.Part;

/** Any bytes for a table of parts. */
@Tag("fuzz")
@Timeout(180)
class PartsCsvFuzzTest {
    /** Of every kind and form, few enough for quick tries. */
    static final Set<String> EVERY_FORM = Set.of(
            "pw-500",
            "pw-1000-used",
            "cs-600",
            "hb-100h",
            "dr-agm-100",
            "boat-75",
            "on-100",
            "tw-20p",
            "tw-i600s",
            "tw-c15");

    @DictionaryEntries({
        "from 4 at 20.00; from 10 at 18.50",
        "2x 120 V AC 60 Hz NEMA 5-15 450 W; 1x 12 V DC car socket 120 W",
        "1x 5 V DC USB-A 24 W 90 %",
        "M8 stud",
        "320 x 170 x 210",
        "# ",
        "\"",
        ",,,,",
        "1e999",
        "NaN",
        "unknown"
    })
    @MethodSource("sound")
    @FuzzTest(maxDuration = "1m")
    void givesPartsOrProblems(byte[] file) {
        Promise.of(() -> read("parts.csv", file));
    }

    static List<Part> read(String name, byte[] file) {
        Reading reading = new Reading();
        Beside beside = any -> new ByteArrayInputStream(file);
        List<Part> parts = PartsFile.TABLE.read(reading, beside, name, name, null, new HashMap<>());
        reading.throwIfWrong();
        return parts;
    }

    static Stream<byte[]> sound() throws IOException {
        return Stream.of(
                        Sample.PARTS,
                        Sample.PARTS.replace("\n", "\r\n"),
                        ExampleParts.joined(ExampleTest.folder(), EVERY_FORM::contains),
                        "\uFEFF# a remark\n" + Sample.PARTS)
                .map(text -> text.getBytes(StandardCharsets.UTF_8));
    }
}
