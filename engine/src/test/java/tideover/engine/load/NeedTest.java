package tideover.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.site.RoomKind;

/** Hours that a load may choose. */
class NeedTest {
    /** A day that begins at any minute: its 24 hours, counted round the clock, must not shrink to nothing by a rounding error. */
    @Test
    void wholeDayIsWholeWheneverItBegins() {
        for (int minute = 0; minute < 24 * 60; minute++) {
            double from = minute / 60.0;
            DayWindow day = new DayWindow(from, minute == 0 ? 24 : from);
            assertThat(day.lengthHours()).as("from %d min", minute).isEqualTo(24);
            Load load = new SteadyLoad(
                    "load", Invented.SOCKET, 10, true, new Need.HoursInWindow(24, day), RoomKind.INDOORS);
            assertThat(load.wantedWhPerDay()).as("from %d min", minute).isCloseTo(240, within(1e-9));
            assertThat(load.wantedW(3, 1, 12)).as("from %d min", minute).isCloseTo(10, within(1e-9));
        }
    }

    @Test
    void chosenHoursKeepTheirLengthAndStayInside() {
        Invented invented = new Invented(17);
        for (int i = 0; i < 5000; i++) {
            double from = invented.whole(0, 1439) / 60.0;
            double to = invented.whole(1, 1440) / 60.0;
            DayWindow window = new DayWindow(from, to);
            double hours = invented.between(0.01, 1) * window.lengthHours();
            DayWindow chosen = new Need.HoursInWindow(hours, window).nearest(invented.between(-12, 40));
            assertThat(chosen.lengthHours()).as("draw %d", i).isCloseTo(hours, within(1e-9));
            assertThat(window.overlapHours(chosen.fromHour(), hours))
                    .as("draw %d", i)
                    .isCloseTo(hours, within(1e-9));
        }
    }
}
