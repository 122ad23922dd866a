package tideover.engine.answer;

import java.util.Arrays;
import java.util.List;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.quantity.Series;
import tideover.engine.site.Room;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.sun.PanelPower;

/**
 * Everything between the sky and the panel, hour by hour, open to audit.
 *
 * @param weather      irradiance on the horizontal and outdoor air
 * @param plane        what reaches the cells
 * @param cellDegC     cell temperature
 * @param panelW       watts of a panel of {@code ratedW}
 * @param roomsDegC    temperature of each {@link RoomKind}, in their order
 */
public record WeatherSheet(
        Weather weather, PlaneWeather plane, Series cellDegC, Series panelW, double ratedW, List<Series> roomsDegC) {
    public WeatherSheet {
        roomsDegC = List.copyOf(roomsDegC);
    }

    /** What most crystalline panels' data sheets say: cell temperature and power coefficient. Common practice, no source. */
    private static final double USUAL_NOCT_DEG_C = 45;

    private static final double USUAL_POWER_PER_K = -0.004;

    static WeatherSheet of(Weather weather, PlaneWeather plane, double ratedW) {
        double[] cell = new double[weather.hours()];
        double[] watts = new double[weather.hours()];
        for (int hour = 0; hour < weather.hours(); hour++) {
            double onPlaneWm2 = plane.planeWm2().at(hour);
            cell[hour] = PanelPower.cellDegC(weather.airDegC().at(hour), onPlaneWm2, USUAL_NOCT_DEG_C);
            watts[hour] = ratedW * PanelPower.wattsPerRatedWatt(onPlaneWm2, cell[hour], USUAL_POWER_PER_K);
        }
        List<Series> rooms = Arrays.stream(RoomKind.values())
                .map(kind -> Room.degC(kind, weather))
                .toList();
        return new WeatherSheet(weather, plane, Series.owning(cell), Series.owning(watts), ratedW, rooms);
    }
}
