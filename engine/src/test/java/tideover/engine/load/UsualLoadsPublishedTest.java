package tideover.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.site.RoomKind;

/** Usual loads against tables of the trade and what users' meters showed. */
class UsualLoadsPublishedTest {
    private static Usual usual(String word) {
        return UsualLoads.of(word).orElseThrow();
    }

    /** NFPA 70 table 430.248, 115 V, from memory. */
    @ParameterizedTest
    @CsvSource({"6, 4.4", "4, 5.8", "3, 7.2", "2, 9.8", "1, 16"})
    void fullLoadAmperes(int part, double amperes) {
        assertThat(UsualLoads.fullLoadA(1.0 / part)).isEqualTo(amperes);
    }

    @Test
    void fullLoadAmperesBetweenHalfAndOne() {
        assertThat(UsualLoads.fullLoadA(0.75)).isEqualTo(13.8);
        assertThat(UsualLoads.fullLoadA(0.6)).isNaN();
    }

    /** The same table: at 230 V 4.9, 6.9 and 8.0 A for 1/2, 3/4 and 1 hp; from memory. */
    @ParameterizedTest
    @CsvSource({"'well pump, 1/2 hp', 4.9", "'well pump, 3/4 hp', 6.9", "'well pump, 1 hp', 8.0"})
    void aWellPumpTakesItsTableAmperes(String word, double amperesAt230V) {
        assertThat(usual(word).usualVa()).isCloseTo(230 * amperesAt230V, within(0.05 * 230));
    }

    @ParameterizedTest
    @CsvSource({"'sump pump, 1/4 hp', 5.8", "'sump pump, 1/3 hp', 7.2", "'sump pump, 1/2 hp', 9.8"})
    void aSumpPumpTakesItsTableAmperes(String word, double amperesAt115V) {
        assertThat(usual(word).usualVa()).isCloseTo(115 * amperesAt115V, within(0.05 * 115));
    }

    /** Code K at 1/4 hp, L at 1/6 hp, H at 1 hp, NFPA 70 table 430.7(B), worked into amperes by hand. */
    @Test
    void lockedRotorAmperes() {
        assertThat(LockedRotor.leastVa("K", 1.0 / 4) / 115).isCloseTo(17.4, within(.05));
        assertThat(LockedRotor.mostVa("K", 1.0 / 4) / 115).isCloseTo(19.5, within(.05));
        assertThat(LockedRotor.leastVa("L", 1.0 / 6) / 115).isCloseTo(13.0, within(.05));
        assertThat(LockedRotor.mostVa("L", 1.0 / 6) / 115).isCloseTo(14.5, within(.05));
        assertThat(LockedRotor.leastVa("H", 1) / 230).isCloseTo(27.4, within(.05));
        assertThat(LockedRotor.mostVa("H", 1) / 230).isCloseTo(30.8, within(.05));
    }

    /**
     * The most locked-rotor amperes that NEMA MG 1 allows small single-phase motors of design N at 115 V: 26, 31, 45 A for 1/4,
     * 1/3, 1/2 hp; from memory. The high end of the letter lies just above.
     */
    @ParameterizedTest
    @CsvSource({"'sump pump, 1/4 hp', 26", "'sump pump, 1/3 hp', 31", "'sump pump, 1/2 hp', 45"})
    void startsOfSumpPumpsHoldTheStandardsLimit(String word, double lockedA) {
        Start start = Objects.requireNonNull(usual(word).start());
        assertThat(start.typedVa() / 115).isBetween(lockedA, 1.1 * lockedA);
    }

    /** General sources 15 to 60 W; users' meters 25 W on AC, 3 to 8 Ah a night of 8 h at 12 V. */
    @Test
    void sleepTherapyWithoutHeatSpansTenfold() {
        Usual device = usual("sleep-therapy device, no heat");
        assertThat(device.leastW()).isBetween(0.9 * 3 * 12 / 8, 1.2 * 3 * 12 / 8);
        assertThat(device.usualW()).isEqualTo(25);
        assertThat(device.mostW()).isEqualTo(60);
        assertThat(device.mostW() / device.leastW()).isGreaterThanOrEqualTo(10);
        assertThat(device.measure()).startsWith("Ask for a meter reading");
    }

    /** General sources 60 to 110 W; measured 34 W as a mean, 15 to 90 W by turns, 76 W at the highest setting. */
    @Test
    void sleepTherapyWithHeat() {
        Usual device = usual("sleep-therapy device, heated humidifier and tube");
        assertThat(device.leastW()).isEqualTo(15);
        assertThat(device.usualW()).isBetween(34.0, 76.0);
        assertThat(device.mostW()).isEqualTo(110);
        assertThat(device.measure()).startsWith("Ask for a meter reading");
    }

    /** 8 h at 10 W and at 60 W from 12 V: 6.67 and 40.0 Ah, worked by hand. */
    @Test
    void aNightInAmpereHours() {
        assertThat(nightAh(10)).isCloseTo(6.67, within(.005));
        assertThat(nightAh(60)).isCloseTo(40.0, within(.05));
        assertThat(nightAh(usual("sleep-therapy device, no heat").mostW())).isCloseTo(40.0, within(.05));
    }

    private static double nightAh(double watts) {
        Load device = new SteadyLoad(
                "device",
                Supply.dc(12, "car socket"),
                watts,
                true,
                new Need.HoursInWindow(8, new DayWindow(22, 6)),
                RoomKind.INDOORS);
        return device.wantedWhPerDay() / device.supply().volts();
    }
}
