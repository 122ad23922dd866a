package tideover.engine.site;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import tideover.engine.quantity.Series;

/** Reads the test table of twenty spread stations (twenty-stations.md tells what it holds and from where). */
final class TwentyStations {
    private static final List<String> SEASONS = List.of("djf", "mam", "jja", "son");

    private TwentyStations() {}

    static List<Station> all() {
        return read(TwentyStations.class.getResourceAsStream("twenty-stations.csv"));
    }

    static List<Station> read(java.io.InputStream table) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(table, StandardCharsets.US_ASCII))) {
            String[] columns = in.readLine().split(",");
            List<Station> stations = new ArrayList<>();
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] cells = line.split(",", -1);
                Map<String, String> row = new HashMap<>();
                for (int i = 0; i < columns.length; i++) {
                    row.put(columns[i], cells[i]);
                }
                stations.add(station(row));
            }
            return stations;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Station named(String start) {
        return all().stream()
                .filter(s -> s.label().startsWith(start))
                .findFirst()
                .orElseThrow();
    }

    private static Station station(Map<String, String> row) {
        Place place = new Place(
                text(row, "name"),
                number(row, "lat_deg"),
                number(row, "lon_deg"),
                number(row, "elev_m"),
                number(row, "tz_h"));
        String models = text(row, "ghi_model_by_month");
        MonthlyClimate climate = new MonthlyClimate(
                monthly(row, "ghi_%02d_kwh_m2_day", 1),
                monthly(row, "kt_%02d_x1000", 1000),
                monthly(row, "kt_sd_%02d_x1000", 1000),
                number(row, "kt_lag1_x1000") / 1000,
                IntStream.range(0, 12)
                        .mapToObj(m -> models.charAt(m + 1) == '1')
                        .toList(),
                monthly(row, "tmin_%02d_c", 1),
                monthly(row, "tmax_%02d_c", 1),
                monthly(row, "tmean_%02d_c", 1),
                monthly(row, "t_sd_%02d_c", 1),
                number(row, "t_lag1_x1000") / 1000,
                seasonal(row, "t_kt_%s_x1000", 1000),
                seasonal(row, "range_kt_%s_c", 1),
                number(row, "t_lowest_c"),
                "typical-year figures");
        return new Station(text(row, "station_id"), text(row, "state"), place, climate);
    }

    private static Series monthly(Map<String, String> row, String column, double parts) {
        return Series.of(IntStream.rangeClosed(1, 12)
                .mapToDouble(m -> number(row, String.format(column, m)) / parts)
                .toArray());
    }

    private static Series seasonal(Map<String, String> row, String column, double parts) {
        return Series.of(SEASONS.stream()
                .mapToDouble(s -> number(row, String.format(column, s)) / parts)
                .toArray());
    }

    private static double number(Map<String, String> row, String column) {
        String cell = text(row, column);
        return cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
    }

    private static String text(Map<String, String> row, String column) {
        return Objects.requireNonNull(row.get(column), column);
    }
}
