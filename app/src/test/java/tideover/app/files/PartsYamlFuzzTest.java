package tideover.app.files;

import com.code_intelligence.jazzer.junit.DictionaryEntries;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.provider.MethodSource;

/** Any bytes for a list of parts. */
@Tag("fuzz")
@Timeout(180)
class PartsYamlFuzzTest {
    @DictionaryEntries({
        "- kind: ",
        "  outlets:    - 2x 12 V DC car socket 120 W",
        "  prices: [from 2 at 70.00, from 4 at 65.25 USD]",
        " lb",
        " kW",
        " %/K",
        "{a: [b]}",
        "1e999",
        "NaN"
    })
    @MethodSource("sound")
    @FuzzTest(maxDuration = "1m")
    void givesPartsOrProblems(byte[] file) {
        Promise.of(() -> PartsCsvFuzzTest.read("parts.yaml", file));
    }

    static Stream<byte[]> sound() throws IOException {
        String shelf = Files.readString(ExampleTest.folder().resolve("orchard-shelf.yaml"));
        String list = """
                - kind: panel
                  id: own-60
                  name: Invented panel
                  price: 74.50 USD
                  priced_on: 2026-02-11
                  condition: new
                  mass_kg: 13 lb
                  panel_w: 0.1 kW
                  open_circuit_v: 22.4
                  power_pct_per_k: -0.36 %/K
                  voltage_pct_per_k: -0.28
                  noct_c: 45
                  seller: Tarnwhistle
                  prices: [from 2 at 70.00, from 4 at 65.25 USD]
                """;
        return Stream.of(shelf, list).map(text -> text.getBytes(StandardCharsets.UTF_8));
    }
}
