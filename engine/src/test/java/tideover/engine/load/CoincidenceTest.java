package tideover.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.site.RoomKind;

class CoincidenceTest {
    private static final Supply MAINS = Supply.ac(230, 50, "CEE 7/4");

    @Test
    void loadsThatNeverMeetDoNotAdd() {
        List<Load> loads = List.of(timed(100, 6, 8), timed(70, 8, 9), steady(5));
        assertThat(Coincidence.peakW(loads, Load::runningW)).isEqualTo(105);
    }

    /** Ten minutes of overlap are enough, though a quarter-hour mean would hide them. */
    @Test
    void aShortMeetingCounts() {
        List<Load> loads = List.of(timed(100, 6, 8), timed(70, 7 + 50 / 60.0, 9));
        assertThat(Coincidence.peakW(loads, Load::runningW)).isEqualTo(170);
    }

    @Test
    void windowsPastMidnightMeetTheMorning() {
        List<Load> loads = List.of(timed(100, 22, 6), timed(70, 5, 7));
        assertThat(Coincidence.peakW(loads, Load::runningW)).isEqualTo(170);
    }

    @Test
    void freeHoursMayMeetAnythingInTheirWindow() {
        Load free = new SteadyLoad(
                "free", MAINS, 60, true, new Need.HoursInWindow(1, new DayWindow(8, 20)), RoomKind.INDOORS);
        assertThat(Coincidence.peakW(List.of(free, timed(100, 19, 21)), Load::runningW))
                .isEqualTo(160);
    }

    @Test
    void windowOverlapIsInHours() {
        DayWindow night = new DayWindow(22.5, 6);
        assertThat(night.lengthHours()).isEqualTo(7.5);
        assertThat(night.overlapHours(22.25, 0.5)).isCloseTo(0.25, within(1e-12));
        assertThat(night.overlapHours(5.75, 0.5)).isCloseTo(0.25, within(1e-12));
        assertThat(night.overlapHours(12, 1)).isZero();
        assertThat(DayWindow.ALL_DAY.overlapHours(23.5, 0.5)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void energyOfADayIsItsHours() {
        assertThat(timed(100, 22, 6).wantedWhPerDay()).isEqualTo(800);
        assertThat(steady(5).wantedWhPerDay()).isEqualTo(120);
        assertThat(timed(100, 6, 8).wantedW(7.75, 0.5, 12)).isEqualTo(50);
    }

    @Test
    void freeHoursGoNearestToNoon() {
        assertThat(planned(3, 8, 20, 12)).isEqualTo(new DayWindow(10.5, 13.5));
        assertThat(planned(3, 8, 20, 13.25)).isEqualTo(new DayWindow(11.75, 14.75));
        assertThat(planned(3, 11, 20, 12)).as("the window's beginning").isEqualTo(new DayWindow(11, 14));
        assertThat(planned(3, 8, 12.5, 12)).as("the window's end").isEqualTo(new DayWindow(9.5, 12.5));
        assertThat(planned(2, 18, 23, 12)).as("an evening").isEqualTo(new DayWindow(18, 20));
        assertThat(planned(2, 4, 9, 12)).as("a morning").isEqualTo(new DayWindow(7, 9));
        assertThat(planned(2, 17, 3, 12)).as("a night").isEqualTo(new DayWindow(17, 19));
        assertThat(planned(2, 22, 8, 12)).as("a night nearer to the next noon").isEqualTo(new DayWindow(6, 8));
        assertThat(planned(2, 23, 13, 12).lengthHours()).isEqualTo(2);
    }

    private static DayWindow planned(double hours, double from, double to, double noonHour) {
        Load load = new SteadyLoad(
                "free", MAINS, 60, true, new Need.HoursInWindow(hours, new DayWindow(from, to)), RoomKind.INDOORS);
        return load.onHours(noonHour).get(0);
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> steady(-5)).hasMessageContaining("runningW is -5.0 W");
        assertThatThrownBy(() -> steady(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new Need.HoursInWindow(13, new DayWindow(8, 20)))
                .hasMessageContaining("13.0 h");
        assertThatThrownBy(() -> new TimedLoad(
                        "twice", MAINS, 5, true, List.of(new DayWindow(8, 12), new DayWindow(11, 13)), RoomKind.SHED))
                .hasMessageContaining("overlap");
    }

    private static Load steady(double watts) {
        return new SteadyLoad("steady", MAINS, watts, true, new Need.AlwaysOn(), RoomKind.INDOORS);
    }

    private static Load timed(double watts, double from, double to) {
        return new TimedLoad("timed", MAINS, watts, true, List.of(new DayWindow(from, to)), RoomKind.INDOORS);
    }
}
