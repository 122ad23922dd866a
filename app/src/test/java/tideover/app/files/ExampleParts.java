package tideover.app.files;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The example's files of parts put into one, for tests that damage a file or want a few parts of it only. */
public final class ExampleParts {
    private static final Pattern LIST = Pattern.compile("(?m)^parts:\\n((?: +- parts/[a-z-]+\\.csv.*\\n)+)");

    private ExampleParts() {}

    /** A file of those parts whose ids are wanted, with the columns that they use. */
    public static String joined(Path examples, Predicate<String> wanted) throws IOException {
        List<Map<String, String>> rows = new ArrayList<>();
        Set<String> columns = new LinkedHashSet<>();
        for (String name : names(Files.readString(examples.resolve("plan.yaml")))) {
            for (NamedCsvRecord row : CsvReader.builder()
                    .commentStrategy(CommentStrategy.SKIP)
                    .ofNamedCsvRecord(Files.readString(examples.resolve(name)))) {
                if (wanted.test(row.getField("id"))) {
                    rows.add(row.getFieldsAsMap());
                    columns.addAll(row.getHeader());
                }
            }
        }
        StringWriter out = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(out)) {
            csv.writeRecord(columns);
            for (Map<String, String> row : rows) {
                csv.writeRecord(columns.stream()
                        .map(column -> row.getOrDefault(column, ""))
                        .toList());
            }
        }
        return out.toString().replace("\r\n", "\n");
    }

    /** The example plan with one file of parts. */
    public static String planOfOneFile(String plan) {
        return list(plan).replaceFirst("parts: parts.csv\n");
    }

    /** The files that the example plan names. */
    public static List<String> names(String plan) {
        return list(plan)
                .group(1)
                .lines()
                .map(line -> line.replaceFirst(" *- ", "").replaceFirst(" *#.*", ""))
                .toList();
    }

    private static Matcher list(String plan) {
        Matcher list = LIST.matcher(plan);
        if (!list.find()) {
            throw new IllegalArgumentException("the example plan names no files of parts");
        }
        return list;
    }
}
