package tideover.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** NFPA 70 table 430.7(B), worked into amperes by hand. */
class LockedRotorPublishedTest {
    @Test
    void amperesOfSmallMotorsByTheirLetter() {
        amps("K", 1.0 / 4, 115, 17.4, 19.5);
        amps("L", 1.0 / 6, 115, 13.0, 14.5);
        amps("H", 1, 230, 27.4, 30.8);
        assertThat(LockedRotor.leastVa("L", 1.0 / 6)).isCloseTo(1500, within(5.0));
        assertThat(LockedRotor.mostVa("L", 1.0 / 6)).isCloseTo(1670, within(6.0));
    }

    private static void amps(String letter, double horsepower, double volts, double least, double most) {
        assertThat(LockedRotor.leastVa(letter, horsepower) / volts).isCloseTo(least, within(.05));
        assertThat(LockedRotor.mostVa(letter, horsepower) / volts).isCloseTo(most, within(.05));
    }

    @Test
    void rangesFollowEachOtherWithoutGapAndSkipThreeLetters() {
        String letters = "ABCDEFGHJKLMNPRSTUV";
        for (int i = 1; i < letters.length(); i++) {
            double before = LockedRotor.mostVa(letters.substring(i - 1, i), 1);
            double after = LockedRotor.leastVa(letters.substring(i, i + 1), 1);
            assertThat(after - before).as("%s", letters.charAt(i)).isCloseTo(10, within(1e-9));
        }
        for (String none : new String[] {"I", "O", "Q", "", "KK", "k"}) {
            assertThat(LockedRotor.isLetter(none)).as(none).isFalse();
        }
    }

    @Test
    void aFigureKnownToBeTooSmallIsLifted() {
        Start typed = new Start(400, .6, .5, true, "");
        assertThat(typed.va(120)).isEqualTo(Start.USUAL_TIMES * 120);
        assertThat(new Start(400, .6, .5, false, "").va(120)).isEqualTo(400);
        assertThat(new Start(900, .6, .5, true, "").va(120)).isEqualTo(900);
    }
}
