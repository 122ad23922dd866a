package tideover.app.files;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Place;
import tideover.engine.site.Weather;

/**
 * Hourly weather from a file, plain or gzipped, in one of two forms. The TMY3 form (Wilcox &amp; Marion 2008,
 * NREL/TP-581-43156): a line about the station, a line of column names, 8760 rows stamped with the END of their hour,
 * the months from different years. The plain form: comma-separated columns {@code time} (the START of the hour),
 * {@code ghi_w_m2}, {@code air_c} and perhaps {@code dhi_w_m2}, one or many whole calendar years, with lines such as
 * {@code # latitude_deg: 46.2} above. Both in local standard time. 29 February is dropped; gaps of up to
 * {@link HourlyGrid#LONGEST_FILLED_H} h are filled with a straight line, and said.
 */
public final class WeatherFile {
    private static final long MOST_BYTES = 64_000_000;
    private static final int MOST_PROBLEMS = 25;

    /** Past so many the file is read no further: nobody mends them one by one. */
    private static final int MOST_FLAWS = 10_000;

    /** A hundred years of hours and then some. */
    private static final int MOST_ROWS = 900_000;

    private static final int MOST_REMARKS = 1000;
    private static final double MISSING_MARK = -9900;
    private static final String TOO_LONG = "more than 64 MB unpacked";
    private static final String DAMAGED = "a damaged or cut-short file";
    private static final String UNITS = "Sun is in W/m2, air in degC.";

    private static final String TMY3_DATE = "Date (MM/DD/YYYY)";
    private static final String TMY3_TIME = "Time (HH:MM)";
    private static final String TMY3_GHI = "GHI (W/m^2)";
    private static final String TMY3_DHI = "DHI (W/m^2)";
    private static final String TMY3_AIR = "Dry-bulb (C)";
    private static final List<String> PLAIN_COLUMNS = List.of("time", "ghi_w_m2", "air_c", "dhi_w_m2");
    private static final List<String> PLACE_LINES =
            List.of("place", "latitude_deg", "longitude_deg", "elevation_m", "zone_h");

    private static final Range GHI_W_M2 = Range.from(-10, 1500);
    private static final Range AIR_C = Range.from(-80, 60);
    private static final Pattern MONTH_DAY_YEAR = Pattern.compile("([0-9]{1,2})/([0-9]{1,2})/([0-9]{4})");
    private static final Pattern HOUR = Pattern.compile("([0-9]{1,2}):([0-9]{2})");
    private static final Pattern ISO_HOUR =
            Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})[T ]([0-9]{2}):([0-9]{2})(?::00)?(.*)");

    /** Enough digits for any reading, and no form of number that only a computer would write. */
    private static final Pattern READING = Pattern.compile("[+-]?[0-9]{1,6}(?:\\.[0-9]{0,12})?|[+-]?\\.[0-9]{1,12}");

    private final Reading reading;
    private final String file;
    private final HourlyGrid grid = new HourlyGrid();
    private PlaceFigures place = PlaceFigures.NONE;
    private String form = "plain hourly file";

    /** Cells in a row, and where the four of interest stand; -1 for one that the file lacks. */
    private int width;

    private int timeAt = -1;
    private int ghiAt = -1;
    private int airAt = -1;
    private int dhiAt = -1;
    private boolean tmy3;

    private WeatherFile(Reading reading, String file) {
        this.reading = reading;
        this.file = file;
    }

    /**
     * Weather and where it was taken.
     *
     * @param lowestDegC lowest hour in the file
     * @param cautions   what was filled, dropped or looks odd
     */
    public record Content(Weather weather, Place place, double lowestDegC, List<String> cautions) {}

    /** Reads a file by itself; it must then say its own place. Throws {@code InputProblems} with all that is wrong. */
    public static Content read(Path file) {
        Reading reading = new Reading();
        String name = PartsFile.fileName(file);
        Content content = read(reading, Beside.alone(file), name, name, PlaceFigures.NONE);
        reading.throwIfWrong();
        if (content == null) {
            throw new IllegalStateException("a weather file without problems gave no weather");
        }
        return content;
    }

    /**
     * Reads a file on behalf of a plan.
     *
     * @param where what to blame where there is no such file, or no place for it
     * @param typed what the plan says of the place; goes before what the file says
     */
    static @Nullable Content read(Reading reading, Beside beside, String name, String where, PlaceFigures typed) {
        Reading ofFile = new Reading();
        WeatherFile weather = new WeatherFile(ofFile, name);
        String damage = null;
        try (InputStream in = beside.open(name)) {
            damage = weather.readRows(in);
        } catch (IOException e) {
            ofFile.problem(
                    where, FileText.cannotRead(name, e), "an hourly weather file", "Check the name and the folder.");
        }
        if (damage != null) {
            // what was read before the damage showed may be wrong too: say the one thing that counts
            reading.problem(name, damage, "an hourly weather file", "");
            return null;
        }
        Place place = ofFile.flaws() > 0 ? null : typed.over(weather.place).place(ofFile, where, name);
        Weather years = place == null ? null : weather.grid.weather(ofFile, name, place, weather.form);
        List<String> cautions = ofFile.cautions();
        reading.take(ofFile, MOST_PROBLEMS);
        if (place == null || years == null) {
            return null;
        }
        return new Content(years, place, weather.grid.lowestDegC(), cautions);
    }

    /** Reads to the end; returns what is wrong with the file as a whole, or null. */
    private @Nullable String readRows(InputStream raw) throws IOException {
        try (Reader text = withoutMark(new InputStreamReader(unpacked(raw), StandardCharsets.UTF_8));
                CsvReader<CsvRecord> records = CsvReader.builder()
                        .commentStrategy(CommentStrategy.READ)
                        .allowUnclosedQuote(false)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .ofCsvRecord(text)) {
            @Nullable CsvRecord first = null;
            boolean headed = false;
            int remarks = 0;
            int rows = 0;
            for (CsvRecord row : records) {
                if (rows++ == MOST_ROWS) {
                    tell(row, "more than " + MOST_ROWS + " lines", "at most 100 years of hours", "");
                    return null;
                }
                if (reading.flaws() >= MOST_FLAWS) {
                    return null;
                }
                if (row.isComment()) {
                    if (remarks++ < MOST_REMARKS) {
                        placeLine(row);
                    }
                } else if (headed) {
                    if (row.getFieldCount() != width) {
                        tell(
                                row,
                                "a row of " + row.getFieldCount() + " cells",
                                width + " cells, as the header has",
                                "");
                    } else if (tmy3) {
                        tmy3Row(row);
                    } else {
                        plainRow(row);
                    }
                } else if (row.getField(0).strip().equals(TMY3_DATE)) {
                    if (!tmy3Header(first, row)) {
                        return null;
                    }
                    headed = true;
                } else if (first == null
                        && row.getFields().stream().noneMatch(cell -> word(cell).equals("time"))) {
                    first = row;
                } else {
                    if (first != null) {
                        tell(first, Reading.quoted(String.join(",", first.getFields())), formExpected(), "");
                        return null;
                    }
                    if (!plainHeader(row)) {
                        return null;
                    }
                    headed = true;
                }
            }
            if (!headed) {
                reading.problem(file, first == null ? "an empty file" : "no header", formExpected(), "");
            }
            return null;
        } catch (CsvParseException | UncheckedIOException e) {
            Throwable cause = e.getCause();
            return cause instanceof TooLong
                    ? TOO_LONG
                    : cause instanceof IOException ? DAMAGED : "cells that cannot be told apart by their commas";
        } catch (TooLong e) {
            return TOO_LONG;
        } catch (ZipException | EOFException e) {
            return DAMAGED;
        }
    }

    private static String formExpected() {
        return "a TMY3 file, or columns time, ghi_w_m2, air_c and perhaps dhi_w_m2";
    }

    private static String word(String cell) {
        return cell.strip().replace("\uFEFF", "");
    }

    /** Plain bytes of a plain or gzipped file, told apart by its first two bytes, and never more than the bound. */
    private static InputStream unpacked(InputStream raw) throws IOException {
        BufferedInputStream in = new BufferedInputStream(raw);
        in.mark(2);
        boolean gzip = in.read() == 0x1f && in.read() == 0x8b;
        in.reset();
        return new Bounded(gzip ? new GZIPInputStream(in) : in);
    }

    /** Without the mark of UTF-8 before the first letter, which some programs write. */
    private static Reader withoutMark(Reader text) throws IOException {
        PushbackReader letters = new PushbackReader(text);
        int first = letters.read();
        if (first >= 0 && first != '\uFEFF') {
            letters.unread(first);
        }
        return letters;
    }

    private void placeLine(CsvRecord comment) {
        String line = comment.getField(0).strip();
        int colon = line.indexOf(':');
        if (colon < 0) {
            return;
        }
        String key = line.substring(0, colon).strip();
        String value = line.substring(colon + 1).strip();
        if (!PLACE_LINES.contains(key)) {
            Optional<String> near = Nearest.to(key, PLACE_LINES);
            near.ifPresent(right -> tell(comment, Reading.quoted(key), "\"" + right + "\"", "Write # " + right + ":"));
            return; // any other remark is the writer's own business
        }
        if (key.equals("place")) {
            if (!value.isEmpty()) {
                place = place.withName(Reading.printable(value, PlanFile.LONGEST_NAME));
            }
            return;
        }
        double number = READING.matcher(value).matches() ? Double.parseDouble(value) : Double.NaN;
        PlaceFigures next = place.with(key, number);
        if (next == null) {
            tell(comment, Reading.quoted(value), key + ", a number " + PlaceFigures.rangeOf(key), "");
        } else {
            place = next;
        }
    }

    private boolean plainHeader(CsvRecord header) {
        int before = reading.flaws();
        List<String> columns =
                header.getFields().stream().map(WeatherFile::word).toList();
        width = columns.size();
        for (String column : columns) {
            if (!PLAIN_COLUMNS.contains(column)) {
                Nearest.to(column, PLAIN_COLUMNS)
                        .ifPresent(near ->
                                tell(header, "the column " + Reading.quoted(column), "\"" + near + "\"", UNITS));
            } else if (columns.indexOf(column) != columns.lastIndexOf(column)) {
                tell(header, "the column \"" + column + "\" twice", "each column once", "");
                break;
            }
        }
        timeAt = columns.indexOf("time");
        ghiAt = columns.indexOf("ghi_w_m2");
        airAt = columns.indexOf("air_c");
        dhiAt = columns.indexOf("dhi_w_m2");
        if (reading.flaws() == before && (ghiAt < 0 || airAt < 0)) {
            tell(header, "no column \"" + (ghiAt < 0 ? "ghi_w_m2" : "air_c") + "\"", formExpected(), "");
        }
        return reading.flaws() == before || (ghiAt >= 0 && airAt >= 0);
    }

    private boolean tmy3Header(@Nullable CsvRecord station, CsvRecord header) {
        tmy3 = true;
        form = "TMY3 form";
        List<String> columns = header.getFields().stream().map(String::strip).toList();
        width = columns.size();
        timeAt = columns.indexOf(TMY3_TIME);
        ghiAt = columns.indexOf(TMY3_GHI);
        dhiAt = columns.indexOf(TMY3_DHI);
        airAt = columns.indexOf(TMY3_AIR);
        if (timeAt < 0 || ghiAt < 0 || airAt < 0) {
            tell(
                    header,
                    "a header that lacks a column",
                    "the columns " + String.join(", ", List.of(TMY3_TIME, TMY3_GHI, TMY3_AIR)),
                    "");
            return false;
        }
        if (station == null || station.getFieldCount() != 7) {
            reading.problem(
                    file + ":1",
                    "no line about the station",
                    "station number, name, state, time zone, latitude, longitude, elevation",
                    "");
            return false;
        }
        place = PlaceFigures.NONE.withName(Reading.printable(
                station.getField(1).strip() + " " + station.getField(2).strip(), PlanFile.LONGEST_NAME));
        List<String> keys = List.of("zone_h", "latitude_deg", "longitude_deg", "elevation_m");
        for (int i = 0; i < keys.size(); i++) {
            String cell = station.getField(3 + i).strip();
            PlaceFigures next =
                    READING.matcher(cell).matches() ? place.with(keys.get(i), Double.parseDouble(cell)) : null;
            if (next == null) {
                tell(
                        station,
                        Reading.quoted(cell),
                        keys.get(i) + ", a number " + PlaceFigures.rangeOf(keys.get(i)),
                        "");
            } else {
                place = next;
            }
        }
        return true;
    }

    private void tmy3Row(CsvRecord row) {
        Matcher date = MONTH_DAY_YEAR.matcher(row.getField(0).strip());
        Matcher time = HOUR.matcher(row.getField(timeAt).strip());
        // the stamp is the end of the hour: 01:00 is the first hour of the day, 24:00 the last
        int hour = time.matches() && time.group(2).equals("00") ? Integer.parseInt(time.group(1)) - 1 : -1;
        if (!date.matches() || hour < 0 || hour > 23) {
            tell(
                    row,
                    Reading.quoted(row.getField(0) + " " + row.getField(timeAt)),
                    "a date and an hour 01:00 to 24:00",
                    "");
            return;
        }
        // the months come from different years, which count as one
        put(row, 0, Integer.parseInt(date.group(1)), Integer.parseInt(date.group(2)), hour);
    }

    private void plainRow(CsvRecord row) {
        String typed = row.getField(timeAt).strip();
        Matcher time = ISO_HOUR.matcher(typed);
        String expected = "the start of an hour, such as 2019-12-31T23:00";
        if (!time.matches()) {
            tell(row, Reading.quoted(typed), expected, "");
        } else if (!time.group(6).isEmpty()) {
            tell(
                    row,
                    Reading.quoted(typed),
                    expected,
                    "Local standard time all through, with no zone written behind it.");
        } else if (!time.group(5).equals("00") || Integer.parseInt(time.group(4)) > 23) {
            tell(row, Reading.quoted(typed), expected, "Hourly means, stamped with the start of their hour.");
        } else {
            put(
                    row,
                    Integer.parseInt(time.group(1)),
                    Integer.parseInt(time.group(2)),
                    Integer.parseInt(time.group(3)),
                    Integer.parseInt(time.group(4)));
        }
    }

    private void put(CsvRecord row, int year, int month, int day, int hour) {
        double ghi = cell(row, ghiAt, "global irradiance", "W/m2", GHI_W_M2);
        double air = cell(row, airAt, "air temperature", "degC", AIR_C);
        double dhi = dhiAt < 0 ? Double.NaN : cell(row, dhiAt, "diffuse irradiance", "W/m2", GHI_W_M2);
        String trouble = grid.put(year, month, day, hour, row.getStartingLineNumber(), ghi, air, dhi);
        if (trouble != null) {
            tell(
                    row,
                    trouble,
                    "each hour once, in order, on a day of the calendar",
                    tmy3 ? "" : "Local standard time all year has no hour missing in spring nor doubled in autumn.");
        }
    }

    /** NaN for an empty cell, for the source's own mark of a missing value, and where something is wrong. */
    private double cell(CsvRecord row, int at, String what, String unit, Range range) {
        String typed = row.getField(at).strip();
        if (typed.isEmpty()) {
            return Double.NaN;
        }
        if (!READING.matcher(typed).matches()) {
            tell(row, Reading.quoted(typed), what + ", a number in " + unit, "");
            return Double.NaN;
        }
        double value = Double.parseDouble(typed);
        if (value == MISSING_MARK || value == -9999) {
            return Double.NaN;
        }
        if (!range.holds(value)) {
            tell(
                    row,
                    Reading.quoted(typed),
                    what + " " + range.words(unit),
                    "Leave the cell empty where a reading is bad.");
            return Double.NaN;
        }
        return value;
    }

    private void tell(CsvRecord row, String found, String expected, String suggestion) {
        reading.problem(file + ":" + row.getStartingLineNumber(), found, expected, suggestion);
    }

    /** More than we unpack. */
    private static final class TooLong extends IOException {
        private static final long serialVersionUID = 1;
    }

    /** Stops a small file that unpacks without end. */
    private static final class Bounded extends FilterInputStream {
        private long left = MOST_BYTES;

        Bounded(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int got = super.read(into, from, length);
            left -= Math.max(0, got);
            if (left < 0) {
                throw new TooLong();
            }
            return got;
        }
    }
}
