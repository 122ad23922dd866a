package tideover.engine.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What stands in a row in what, and how much is left. */
class DimensionsTest {
    private static final Dimensions BATTERY = new Dimensions(330, 172, 215);

    @Test
    void oneStandsEitherWayRound() {
        assertThat(new Dimensions(330, 172, 215).spareMm(BATTERY, 1)).isZero();
        assertThat(new Dimensions(172, 330, 215).spareMm(BATTERY, 1)).isZero();
        assertThat(new Dimensions(340, 180, 220).spareMm(BATTERY, 1)).isEqualTo(5);
    }

    @Test
    void heightStaysUp() {
        assertThat(new Dimensions(330, 215, 172).spareMm(BATTERY, 1)).isEqualTo(-43);
    }

    /** Side by side or one behind another, along either side of the room. */
    @Test
    void severalStandInOneRow() {
        assertThat(new Dimensions(330, 344, 215).spareMm(BATTERY, 2)).isZero();
        assertThat(new Dimensions(344, 330, 215).spareMm(BATTERY, 2)).isZero();
        assertThat(new Dimensions(660, 172, 215).spareMm(BATTERY, 2)).isZero();
        assertThat(new Dimensions(172, 660, 215).spareMm(BATTERY, 2)).isZero();
        assertThat(new Dimensions(330, 343, 215).spareMm(BATTERY, 2)).isEqualTo(-1);
    }

    /** Four would stand two by two; the row does not see that, and the javadoc says so. */
    @Test
    void twoRowsAreNotLookedFor() {
        assertThat(new Dimensions(660, 344, 215).spareMm(BATTERY, 4)).isNegative();
    }
}
