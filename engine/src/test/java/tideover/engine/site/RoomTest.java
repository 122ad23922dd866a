package tideover.engine.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tideover.engine.quantity.ModelYear;
import tideover.engine.quantity.Series;

class RoomTest {
    private static final int STEP_HOUR = 4000;

    /** One year at one temperature, then at another from {@link #STEP_HOUR} on. */
    private static Weather step(double before, double after) {
        double[] degC = new double[ModelYear.HOURS];
        for (int hour = 0; hour < degC.length; hour++) {
            degC[hour] = hour < STEP_HOUR ? before : after;
        }
        Series dark = Series.owning(new double[ModelYear.HOURS]);
        return new Weather(1, dark, dark, Series.owning(degC), "made up");
    }

    @Test
    void outdoorsIsTheAir() {
        Weather weather = step(5, -5);
        assertThat(Room.degC(RoomKind.OUTDOORS, weather)).isSameAs(weather.airDegC());
    }

    /** After one time constant 1 - 1/e of the step is done: the closed answer of a first-order lag. */
    @Test
    void aStepIsFollowedByTheClosedAnswer() {
        Series garage = Room.degC(RoomKind.GARAGE, step(20, 0));
        assertThat(garage.at(STEP_HOUR - 1)).isCloseTo(20 + Room.GARAGE_GAIN_K, within(1e-6));
        int oneLag = (int) Room.GARAGE_LAG_H;
        assertThat(garage.at(STEP_HOUR - 1 + oneLag)).isCloseTo(Room.GARAGE_GAIN_K + 20 / Math.E, within(1e-6));
        assertThat(garage.at(ModelYear.HOURS - 1)).isCloseTo(Room.GARAGE_GAIN_K, within(1e-6));
    }

    @Test
    void indoorsStopsAtTheFloorOthersDoNot() {
        Weather cold = step(-10, -30);
        assertThat(Room.degC(RoomKind.INDOORS, cold).at(8000)).isEqualTo(Room.HOME_FLOOR_DEG_C);
        assertThat(Room.degC(RoomKind.GARAGE, cold).at(8000)).isCloseTo(-30 + Room.GARAGE_GAIN_K, within(1e-6));
        assertThat(Room.degC(RoomKind.SHED, cold).at(8000)).isCloseTo(-30 + Room.SHED_GAIN_K, within(1e-6));
    }

    @Test
    void heavierRoomsSwingLess() {
        Station station = TwentyStations.named("Phoenix");
        Weather weather = WeatherGenerator.generate(station.place(), station.climate(), 3, 1);
        double outdoors = swing(weather.airDegC());
        double shed = swing(Room.degC(RoomKind.SHED, weather));
        double garage = swing(Room.degC(RoomKind.GARAGE, weather));
        double indoors = swing(Room.degC(RoomKind.INDOORS, weather));
        assertThat(shed).isLessThan(outdoors);
        assertThat(garage).isLessThan(shed);
        assertThat(indoors).isLessThan(garage);
    }

    private static double swing(Series degC) {
        double sum = 0;
        for (int hour = 1; hour < degC.length(); hour++) {
            sum += Math.abs(degC.at(hour) - degC.at(hour - 1));
        }
        return sum;
    }
}
