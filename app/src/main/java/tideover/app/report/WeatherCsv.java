package tideover.app.report;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.Locale;
import tideover.engine.answer.WeatherSheet;
import tideover.engine.quantity.ModelYear;
import tideover.engine.site.Place;
import tideover.engine.site.RoomKind;

/** Hourly weather, plane and panel as CSV. Hours are labelled by their start, local standard time. */
public final class WeatherCsv {
    private WeatherCsv() {}

    public static void write(WeatherSheet sheet, Place place, Writer out) throws IOException {
        PrintWriter printer = new PrintWriter(out);
        print(sheet, place, printer);
        if (printer.checkError()) {
            throw new IOException("the file cannot take it all");
        }
    }

    public static void print(WeatherSheet sheet, Place place, PrintWriter out) {
        out.printf(
                Locale.ROOT,
                "# %s, %.3f deg north, %.3f deg east, %.0f m, UTC%+.1f h; %s%n",
                ChosenCsv.remark(place.name()),
                place.latDeg(),
                place.lonDeg(),
                place.elevM(),
                place.zoneH(),
                ChosenCsv.remark(sheet.weather().origin()));
        out.print("year,month,day,hour,ghi_w_m2,dhi_w_m2,air_c,plane_w_m2,cell_c,panel_w");
        for (RoomKind room : RoomKind.values()) {
            out.print("," + room.words() + "_c");
        }
        out.print("\n");
        for (int hour = 0; hour < sheet.weather().hours(); hour++) {
            int day = hour / 24 % ModelYear.DAYS;
            int month = ModelYear.monthOfDay(day);
            out.printf(
                    Locale.ROOT,
                    "%d,%d,%d,%d,%.1f,%.1f,%.2f,%.1f,%.2f,%.2f",
                    hour / ModelYear.HOURS + 1,
                    month + 1,
                    day - ModelYear.firstDay(month) + 1,
                    hour % 24,
                    sheet.weather().ghiWm2().at(hour),
                    sheet.weather().diffuseWm2().at(hour),
                    sheet.weather().airDegC().at(hour),
                    sheet.plane().planeWm2().at(hour),
                    sheet.cellDegC().at(hour),
                    sheet.panelW().at(hour));
            for (RoomKind room : RoomKind.values()) {
                out.printf(
                        Locale.ROOT,
                        ",%.2f",
                        sheet.roomsDegC().get(room.ordinal()).at(hour));
            }
            out.print("\n");
        }
    }
}
