package tideover.app.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tideover.engine.quantity.Series;
import tideover.engine.site.MonthlyClimate;
import tideover.engine.site.Place;
import tideover.engine.site.Station;
import tideover.engine.site.Stations;

/**
 * The climate figures of some thousand stations that come with the program. Where they are from and what each column
 * holds is told in {@code stations-README.txt} beside them; both tables have the same stations in the same order.
 *
 * <p>Every start of the program reads them, so the text is walked once, byte by byte, without a string per cell.
 */
public final class StationTable {
    static final String CITATION = "Wilcox & Marion 2008, NREL/TP-581-43156";
    private static final String MAIN = "/tideover/us-stations.csv";
    private static final String TEMPERATURE = "/tideover/us-stations-temperature.csv";
    private static final int MONTHS = 12;
    private static final int SEASONS = 4;
    private static final double THOUSANDTHS = 1000;

    private StationTable() {}

    /** The table, ready to look things up in. */
    public static Stations load() {
        return new Stations(rows());
    }

    /** All stations, in the table's order (by state, then name). */
    static List<Station> rows() {
        Cells main = new Cells(bytes(MAIN));
        Cells temperature = new Cells(bytes(TEMPERATURE));
        main.skipLine();
        temperature.skipLine();
        List<Station> stations = new ArrayList<>(1100);
        while (main.hasMore()) {
            stations.add(station(main, temperature));
        }
        return stations;
    }

    private static Station station(Cells main, Cells temperature) {
        String id = main.text();
        String name = main.text();
        String state = main.text();
        double latDeg = main.number();
        double lonDeg = main.number();
        double elevM = main.number();
        double zoneH = main.number();
        Place place = new Place(name, latDeg, lonDeg, elevM, zoneH);

        Series ghiKwhM2Day = main.series(MONTHS, 1);
        Series clearness = main.series(MONTHS, THOUSANDTHS);
        Series clearnessSd = main.series(MONTHS, THOUSANDTHS);
        Series lowDegC = main.series(MONTHS, 1);
        Series highDegC = main.series(MONTHS, 1);
        Series meanDegC = main.series(MONTHS, 1);
        main.skip(1); // annual mean, which the months give again
        double clearnessLag1 = main.number() / THOUSANDTHS;
        double lowestDegC = main.number();
        main.skip(4); // coldest month's minimum, wind, the two dark spells: no model here uses them
        List<Boolean> modelled = cloudCoverMonths(main.text());

        if (!temperature.text().equals(id)) {
            throw new IllegalStateException("station tables differ at " + id);
        }
        Series anomalySdDegC = temperature.series(MONTHS, 1);
        double anomalyLag1 = temperature.number() / THOUSANDTHS;
        Series anomalyWithSun = temperature.series(SEASONS, THOUSANDTHS);
        Series rangePerScoreDegC = temperature.series(SEASONS, 1);

        String source = "typical-year figures of " + name + " " + state + " (" + CITATION + ")";
        MonthlyClimate climate = new MonthlyClimate(
                ghiKwhM2Day,
                clearness,
                clearnessSd,
                clearnessLag1,
                modelled,
                lowDegC,
                highDegC,
                meanDegC,
                anomalySdDegC,
                anomalyLag1,
                anomalyWithSun,
                rangePerScoreDegC,
                lowestDegC,
                source);
        return new Station(id, state, place, climate);
    }

    /** From such as {@code m111111222111}: 1 marks a month whose sun was modelled from cloud cover. */
    private static List<Boolean> cloudCoverMonths(String digits) {
        Boolean[] modelled = new Boolean[MONTHS];
        for (int month = 0; month < MONTHS; month++) {
            modelled[month] = digits.charAt(1 + month) == '1';
        }
        return Arrays.asList(modelled);
    }

    private static byte[] bytes(String resource) {
        try (InputStream in = StationTable.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the program is incomplete: " + resource + " is missing");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A walk over the cells of a plain ASCII table without quotes. */
    private static final class Cells {
        private final byte[] bytes;
        private int at;

        Cells(byte[] bytes) {
            this.bytes = bytes;
        }

        boolean hasMore() {
            return at < bytes.length;
        }

        void skipLine() {
            while (at < bytes.length && bytes[at] != '\n') {
                at++;
            }
            at++;
        }

        void skip(int cells) {
            for (int i = 0; i < cells; i++) {
                text();
            }
        }

        String text() {
            int from = at;
            while (!atEnd()) {
                at++;
            }
            return new String(bytes, from, step() - from, StandardCharsets.US_ASCII);
        }

        /**
         * Digits, at most one point, perhaps a minus; the zero before the point is left out. NaN for an empty cell.
         * Whole number over a power of ten: one rounding, so the same double as any other reading of the text.
         */
        double number() {
            boolean negative = !atEnd() && bytes[at] == '-';
            if (negative) {
                at++;
            }
            long digits = 0;
            long scale = 1;
            boolean afterPoint = false;
            boolean empty = true;
            for (; !atEnd(); at++) {
                byte b = bytes[at];
                if (b == '.' && !afterPoint) {
                    afterPoint = true;
                } else if (b >= '0' && b <= '9') {
                    digits = digits * 10 + (b - '0');
                    scale = afterPoint ? scale * 10 : scale;
                    empty = false;
                } else {
                    throw new IllegalStateException("station table: no number at byte " + at);
                }
            }
            step();
            if (empty) {
                return Double.NaN;
            }
            double size = (double) digits / scale;
            return negative ? -size : size;
        }

        Series series(int count, double divisor) {
            double[] values = new double[count];
            for (int i = 0; i < count; i++) {
                values[i] = number() / divisor;
            }
            return Series.owning(values);
        }

        private boolean atEnd() {
            return at >= bytes.length || bytes[at] == ',' || bytes[at] == '\n' || bytes[at] == '\r';
        }

        /** Moves over the comma or line end; returns where the cell ended. */
        private int step() {
            int end = at;
            if (at < bytes.length && bytes[at] == '\r') {
                at++;
            }
            at++;
            return end;
        }
    }
}
