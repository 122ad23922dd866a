package tideover.engine.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.quantity.Units;

/** Walls and duty from what a box uses, worked out by hand. */
class ColdBoxPublishedTest {
    private static final double CHEST_L = Units.litres(7);
    private static final List<Contents> BEEF = List.of(Contents.of(Food.LEAN_BEEF, 50));

    /** 198 kWh a year is 22.6 W; times 1.3 over 50 K of 90 degF against 0 degF: .5877 W/K. */
    @Test
    void wallsOfASmallChest() {
        double insideDegC = LabelStandard.insideDegC(BoxKind.CHEST_FREEZER);
        double roomDegC = Units.degC(90);
        assertThat(roomDegC - insideDegC).isCloseTo(50, within(1e-9));
        // 1.3 is printed with two digits: half of the last one is 4 %
        assertThat(Compressor.movedPerW(roomDegC, insideDegC)).isCloseTo(1.3, within(.005));
        double walls = ColdBox.wallWPerK(198, roomDegC, insideDegC, null);
        assertThat(walls).isCloseTo(.5877, within(.5877 * .005 / 1.3));
        assertThat(walls / Compressor.movedPerW(roomDegC, insideDegC) * 1.3).isCloseTo(.5877, within(1e-4));
    }

    /** The label's kilowatt-hours are those of the test room: no factor. */
    @Test
    void theLabelIsWhatTheBoxUses() {
        ColdBox chest = ColdBox.ofLabel(BoxKind.CHEST_FREEZER, CHEST_L, 198, null, null, BEEF);
        ColdBox upright = ColdBox.ofLabel(BoxKind.UPRIGHT_FREEZER, CHEST_L, 198, null, null, BEEF);
        assertThat(chest.wallWPerK()).isCloseTo(.5877, within(.5877 * .005 / 1.3));
        assertThat(upright.wallWPerK()).isEqualTo(chest.wallWPerK());
    }

    /** 10 CFR 430 subpart B, appendix B (from memory) would make a chest's label 0.7 of what was measured, an upright's 0.85. */
    @Test
    void doubtOnTheLabelIsTheHouseholdShare() {
        assertThat(LabelStandard.wallsMostTimes(BoxKind.CHEST_FREEZER)).isCloseTo(1 / .7, within(1e-12));
        assertThat(LabelStandard.wallsMostTimes(BoxKind.UPRIGHT_FREEZER)).isCloseTo(1 / .85, within(1e-12));
        assertThat(LabelStandard.wallsMostTimes(BoxKind.REFRIGERATOR)).isEqualTo(1.3);
    }

    /** 120 W that use 1 kWh a day run .3472 of the time. */
    @Test
    void dutyOfAMeteredBox() {
        ColdBox box = ColdBox.ofMeter(BoxKind.CHEST_FREEZER, CHEST_L, 1, 22, new Compressor(120, 22), null, BEEF);
        assertThat(box.dutyAt(22)).isCloseTo(.3472, within(5e-5));
    }
}
