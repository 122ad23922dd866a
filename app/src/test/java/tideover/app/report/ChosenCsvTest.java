package tideover.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.app.files.PartsFile;

/** What a person typed is harmless to who opens the table in a spreadsheet, and the same to who reads it as parts. */
class ChosenCsvTest {
    private static final String HEADER =
            "kind,id,name,price,currency,priced_on,condition,mass_kg,panel_w,open_circuit_v,power_pct_per_k,voltage_pct_per_k,noct_c\n";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "=HYPERLINK(\"http://x\",\"y\")",
                "+1",
                "-1+1",
                "@SUM(A1)",
                "  =1",
                "\u00A0=1",
                "\uFF1D1",
                "\uFF0B1",
                "\uFF20x",
                "\u200E=1",
                "\uFEFF=1",
                "\"=1\"",
                "a;=1",
                "a,=1",
                "a\",=1,\"",
                "-",
                "-0.36",
                "plain",
                "a \"quoted\" one, with all"
            })
    void aNameIsNoFormulaAndReadsBack(String name, @TempDir Path folder) throws IOException {
        String cell = ChosenCsv.cell(name);
        Path file = Files.writeString(
                folder.resolve("parts.csv"),
                HEADER + "panel,p-1," + cell + ",74,USD,2026-02-11,used,6.3,100,22.4,-0.36,-0.28,45\n");

        assertThat(PartsFile.read(file).parts())
                .hasSize(1)
                .allMatch(part -> part.listing().name().equals(tidied(name)));
        try (CsvReader<CsvRecord> shown = CsvReader.builder().ofCsvRecord(cell)) {
            CsvRecord row = shown.iterator().next();
            assertThat(row.getFieldCount()).isEqualTo(1);
            assertThat(row.getField(0))
                    .satisfiesAnyOf(
                            text -> assertThat(text).matches("-[0-9.]+"),
                            text -> assertThat(text).doesNotMatch("[\\s\\p{C}]*[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20].*"));
        }
    }

    /** As readers of parts take a typed name. */
    private static String tidied(String name) {
        return name.replace('\u00A0', ' ').strip();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"\t=1", "\r=1", "\n=1", "=1\u2028", "\u2028=1", "a\n=1", "a\r\n@x", "=1\u0085x", "\u0001=1"})
    void noBreakOfLinesBringsAFormulaIn(String text) {
        assertThat(ChosenCsv.cell(text).replaceFirst("^\"", ""))
                .doesNotMatch("(?s)[=+@].*")
                .doesNotContainPattern("[\\p{Cntrl}\u0085\u2028\u2029]");
        assertThat(ChosenCsv.remark(text)).doesNotContainPattern("[\\p{Cntrl}\u0085\u2028\u2029]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a,=1", "a, =1", "a;@x", "a,\"=1\"", "a,,;-1", "a|=1", "a,\u00A0=1", "a,\uFF1D1"})
    void noCellOfARemarkIsAFormula(String text) {
        assertThat(ChosenCsv.remark(text)).startsWith("a ").doesNotContainPattern("[,;|]");
    }
}
