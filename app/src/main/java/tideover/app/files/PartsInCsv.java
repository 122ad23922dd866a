package tideover.app.files;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;

/** A table of comma-separated values with a header, one part a row. */
final class PartsInCsv {
    private PartsInCsv() {}

    /** False where nothing of it can be taken; then that is told. */
    static boolean read(Reading reading, String name, String text, PartsTable.Form form, PartsTable.Taker taker) {
        PartsHeader header = null;
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .allowUnclosedQuote(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .trimWhitespacesAroundQuotes(true)
                .ofCsvRecord(text)) {
            for (CsvRecord record : records) {
                if (record.getFields().stream().allMatch(String::isBlank)) {
                    continue;
                }
                if (header == null) {
                    header = PartsHeader.read(reading, name, record, form);
                    if (header == null) {
                        return false;
                    }
                } else if (!taker.take(header.row(reading, name, record), isWhole(reading, name, record, header))) {
                    return true;
                }
            }
        } catch (CsvParseException e) {
            reading.problem(
                    name,
                    "cells that cannot be told apart (" + reason(e) + ")",
                    "comma-separated values",
                    "Look for a quote (\") that is opened and not closed.");
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a text in memory has no such fault
        }
        return true;
    }

    private static boolean isWhole(Reading reading, String name, CsvRecord record, PartsHeader header) {
        if (record.getFieldCount() == header.width()) {
            return true;
        }
        reading.problem(
                name + ":" + record.getStartingLineNumber(),
                "a row of " + record.getFieldCount() + " cells",
                header.width() + " cells, as the header has",
                "A text with a comma inside needs quotes around it.");
        return false;
    }

    /** The parser's own words, which tell the line. */
    private static String reason(CsvParseException e) {
        Throwable cause = e.getCause();
        String words = cause == null || cause.getMessage() == null ? e.getMessage() : cause.getMessage();
        return words == null ? "no reason given" : words.replaceAll("[\\p{Cntrl}]", " ");
    }
}
