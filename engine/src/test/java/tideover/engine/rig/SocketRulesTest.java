package tideover.engine.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static tideover.engine.rig.RigKit.verdict;

import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.DayWindow;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.load.Supply;
import tideover.engine.load.TimedLoad;
import tideover.engine.part.ChargeController;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Outlet;
import tideover.engine.part.SocketBoard;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Finding;
import tideover.engine.why.Verdict;

/** A car socket carries 8 A for hours, 96 W at 12 V. */
class SocketRulesTest {
    private static final String RULE = "car-socket-hours";

    private static Rig rig(Supply supply, int count, double wattsEach) {
        return RigKit.rig(
                RigKit.agm(),
                new ChargeController(
                        Invented.listing("C", 100, 1),
                        new ControllerRating(20, 100, 12, 24, .95),
                        List.of(new Outlet(supply, count, count * wattsEach, 1))));
    }

    private static Rig sockets(int count) {
        return rig(Invented.SOCKET, count, 96);
    }

    private static Load load(double watts, boolean essential, Need need) {
        return new SteadyLoad("load", Invented.SOCKET, watts, essential, need, RoomKind.INDOORS);
    }

    private static Load always(double watts, boolean essential) {
        return load(watts, essential, new Need.AlwaysOn());
    }

    private static Rig board(Supply supply, double efficiency) {
        return RigKit.rig(
                RigKit.agm(),
                new SocketBoard(Invented.listing("S", 100, 1), List.of(new Outlet(supply, 2, 180, efficiency))));
    }

    @Test
    void aSocketWithoutAConverterWantsABatteryOfItsVolts() {
        assertThat(verdict(board(Invented.SOCKET, 1), "socket-volts")).contains(Verdict.PASS);
        Supply other = Supply.dc(24, "car socket");
        assertThat(verdict(board(other, 1), "socket-volts")).contains(Verdict.FAIL);
        assertThat(verdict(board(other, .93), "socket-volts")).contains(Verdict.PASS);
    }

    @Test
    void oneLoadStaysWithinWhatASocketCarries() {
        assertThat(verdict(sockets(2), RULE, always(96, true))).contains(Verdict.PASS);
        assertThat(verdict(sockets(2), RULE, always(97, true))).contains(Verdict.FAIL);
    }

    /** Three loads of 64 W on two sockets are 96 W each at best. */
    @Test
    void allTogetherAreSpreadOverTheSockets() {
        assertThat(verdict(sockets(2), RULE, always(64, true), always(64, true), always(64, true)))
                .contains(Verdict.PASS);
        assertThat(verdict(sockets(2), RULE, always(64, true), always(64, true), always(65, true)))
                .contains(Verdict.FAIL);
    }

    @Test
    void niceToHaveIsACaution() {
        assertThat(verdict(sockets(1), RULE, always(50, true), always(46, false)))
                .contains(Verdict.PASS);
        assertThat(verdict(sockets(1), RULE, always(50, true), always(47, false)))
                .contains(Verdict.CAUTION);
        assertThat(verdict(sockets(1), RULE, always(97, false))).contains(Verdict.CAUTION);
    }

    /** Less than an hour a day is a matter of minutes. */
    @Test
    void onlyWhatRunsForHoursCounts() {
        DayWindow day = new DayWindow(8, 20);
        assertThat(verdict(sockets(1), RULE, load(120, true, new Need.HoursInWindow(.9, day))))
                .isEmpty();
        assertThat(verdict(sockets(1), RULE, load(120, true, new Need.HoursInWindow(1, day))))
                .contains(Verdict.FAIL);
        Load timed =
                new TimedLoad("kettle", Invented.SOCKET, 120, true, List.of(new DayWindow(8, 8.75)), RoomKind.INDOORS);
        assertThat(verdict(sockets(1), RULE, timed)).isEmpty();
    }

    @Test
    void aSocketStatedForMoreIsACaution() {
        Rig bold = rig(Invented.SOCKET, 2, 120);
        assertThat(verdict(bold, RULE, always(20, true))).contains(Verdict.CAUTION);
        assertThat(RigKit.findings(bold, RULE, always(20, true)))
                .extracting(Finding::sentence)
                .last()
                .isEqualTo(
                        "Each socket 12 V DC, car socket is stated for 120 W, 10.0 A: for hours draw no more than 8 A,"
                                + " 96 W, from it.");
        assertThat(verdict(bold, RULE)).as("nothing plugged in").isEmpty();
    }

    @Test
    void otherPlugsAreNotCarSockets() {
        Supply post = Supply.dc(12, "screw terminals");
        Load load = new SteadyLoad("load", post, 150, true, new Need.AlwaysOn(), RoomKind.INDOORS);
        assertThat(verdict(rig(post, 1, 200), RULE, load)).isEmpty();
        Supply lighter = Supply.dc(12, "Cigarette lighter");
        Load there = new SteadyLoad("load", lighter, 150, true, new Need.AlwaysOn(), RoomKind.INDOORS);
        assertThat(verdict(rig(lighter, 1, 200), RULE, there)).contains(Verdict.FAIL);
    }
}
