package tideover.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rest volts, cold, ice and charging of lead batteries against published tables; iron phosphate limits beside them. */
class LeadAcidPublishedTest {
    private static final List<Chemistry> LEAD = List.of(Chemistry.FLOODED_LEAD, Chemistry.GEL_LEAD, Chemistry.AGM_LEAD);

    /** A battery maker's support page: 12 V at rest, 26.7 degC; gravity. */
    @ParameterizedTest
    @CsvSource({
        "1.00, 12.65, 1.265",
        ".75, 12.45, 1.225",
        ".50, 12.24, 1.190",
        ".25, 12.06, 1.155",
        "0, 11.89, 1.120",
    })
    void makersTable(double fill, double volts12, double gravity) {
        for (Chemistry chemistry : LEAD) {
            assertThat(6 * chemistry.traits().openVByFill().at(fill)).isCloseTo(volts12, within(1e-9));
        }
        assertThat(FreezingPoint.gravity(fill)).isCloseTo(gravity, within(1e-12));
    }

    /** A trade magazine's table lies up to .09 V higher below three quarters: 10 to 12 % of charge between the two. */
    @Test
    void tablesDisagreeByATenthOfTheCharge() {
        assertThat(RestVoltage.fill(RestVoltage.MAKER, 12.15) - RestVoltage.fill(RestVoltage.MAGAZINE, 12.15))
                .isBetween(.10, .13);
        RestVoltage.Reading reading = RestVoltage.fill(12.15, RestVoltage.TABLE_DEG_C);
        assertThat(reading.least()).isCloseTo(.25, within(1e-9));
        // The third page's 25 % at 11.95 V and 100 % at 12.60 V: straight between them.
        assertThat(reading.most()).isCloseTo(.25 + .75 * .20 / .65, within(1e-9));
    }

    /** Third page: 100 %, 25 %, empty at 12.60, 11.95, 11.85 V. Every table's own point is inside what a reading tells. */
    @ParameterizedTest
    @CsvSource({"12.60, 1", "11.95, .25", "11.85, 0", "12.66, 1", "12.45, .75", "12.30, .50", "12.15, .25", "12.24, .50"
    })
    void everyTableIsInsideTheRange(double volts12, double fill) {
        RestVoltage.Reading reading = RestVoltage.fill(volts12, RestVoltage.TABLE_DEG_C);
        assertThat(fill).isBetween(reading.least() - 1e-9, reading.most() + 1e-9);
    }

    /** Two pages: .024 V for each 10 degF (5.6 K) from 80 degF on a 12 V battery. In the cold it only lowers the low end. */
    @Test
    void coldWidensTheReadingDownward() {
        assertThat(RestVoltage.VOLTS_PER_K * 10 / 1.8).isCloseTo(.024, within(1e-12));
        RestVoltage.Reading warm = RestVoltage.fill(12.45, RestVoltage.TABLE_DEG_C);
        RestVoltage.Reading cold = RestVoltage.fill(12.45, RestVoltage.TABLE_DEG_C - 10 / 1.8);
        assertThat(cold.most()).isEqualTo(warm.most());
        assertThat(cold.least())
                .isCloseTo(
                        RestVoltage.fill(12.45 - .024, RestVoltage.TABLE_DEG_C).least(), within(1e-9));
    }

    /** Freezing of sulphuric acid by gravity (from memory). */
    @ParameterizedTest
    @CsvSource({"1.265, -57", "1.200, -27", "1.150, -15", "1.120, -11", "1.100, -7"})
    void acidFreezes(double gravity, double degC) {
        assertThat(FreezingPoint.degCOfGravity(gravity)).isCloseTo(degC, within(1e-9));
    }

    /** A maker's page gives -59.4 to -23.3 degC instead; ours is the warmer, so the more careful, at every charge. */
    @ParameterizedTest
    @CsvSource({"1, -59.4", ".75, -48.3", ".50, -36.7", ".25, -26.7", "0, -23.3"})
    void freezesNoColderThanTheMakersPage(double fill, double makersDegC) {
        assertThat(FreezingPoint.degC(fill)).isGreaterThan(makersDegC);
    }

    @Test
    void freezingTurnedRound() {
        for (double fill = .02; fill < 1; fill += .02) {
            assertThat(FreezingPoint.fillThatFreezesAt(FreezingPoint.degC(fill)))
                    .isCloseTo(fill, within(1e-9));
        }
        assertThat(FreezingPoint.fillThatFreezesAt(0)).isZero();
        assertThat(FreezingPoint.fillThatFreezesAt(-10.9)).isZero();
        assertThat(FreezingPoint.fillThatFreezesAt(-70)).isEqualTo(1);
    }

    /** IEEE 485, table 1, size multipliers (values from memory). */
    @ParameterizedTest
    @CsvSource({
        "-3.9, 1.52",
        "-1.1, 1.43",
        "1.7, 1.35",
        "4.4, 1.30",
        "7.2, 1.25",
        "10, 1.19",
        "12.8, 1.15",
        "15.6, 1.11",
        "18.3, 1.08",
        "21.1, 1.04",
        "25, 1.00",
    })
    void sizeMultipliers(double degC, double multiplier) {
        for (Chemistry chemistry : LEAD) {
            assertThat(1 / chemistry.traits().usableByDegC().at(degC)).isCloseTo(multiplier, within(.005));
        }
    }

    /** The same table's .96 at 29.4 degC is not taken: warmth ages a battery, it does not sell a bigger one. */
    @Test
    void warmthGivesNothing() {
        assertThat(Chemistry.AGM_LEAD.traits().usableByDegC().at(29.4)).isEqualTo(1);
    }

    /** Below the table each kelvin costs no less than the dearest in it. */
    @Test
    void belowTheTableTheSteepestSlopeGoesOn() {
        var usable = Chemistry.AGM_LEAD.traits().usableByDegC();
        double[] table = {-3.9, -1.1, 1.7, 4.4, 7.2, 10, 12.8, 15.6, 18.3, 21.1, 25};
        double steepest = 0;
        for (int i = 1; i < table.length; i++) {
            steepest = Math.max(steepest, (usable.at(table[i]) - usable.at(table[i - 1])) / (table[i] - table[i - 1]));
        }
        assertThat((usable.at(-10) - usable.at(-30)) / 20).isCloseTo(steepest, within(1e-4));
        assertThat(usable.at(-40)).isBetween(.1, .2);
    }

    /** Absorption 14.4 to 14.8 V, float 13.5 to 13.8 V at 25 degC, -18 to -30 mV/K on 12 V (from memory); gel lower. */
    @Test
    void chargingVolts() {
        for (Chemistry chemistry : LEAD) {
            CellTraits traits = chemistry.traits();
            assertThat(6 * traits.absorbV()).isBetween(chemistry == Chemistry.GEL_LEAD ? 14.1 : 14.4, 14.8);
            assertThat(6 * traits.floatV()).isBetween(13.5, 13.8);
            assertThat(6000 * (traits.absorbV(10) - traits.absorbV(9))).isBetween(-30.0, -18.0);
            assertThat(traits.absorbV(25)).isEqualTo(traits.absorbV());
        }
    }

    /**
     * Stevens &amp; Corey 1996 (figures from memory): of the charge put in, 91 % is kept from empty to .84, 55 % from .79 to .84,
     * less than half above; above 95 % at low charge. A full battery can still be reached.
     */
    @Test
    void chargeEfficiencyOfFlooded() {
        assertThat(kept(Chemistry.FLOODED_LEAD, 0, .84)).isCloseTo(.91, within(.005));
        assertThat(kept(Chemistry.FLOODED_LEAD, .79, .84)).isCloseTo(.55, within(.005));
        assertThat(kept(Chemistry.FLOODED_LEAD, .84, 1)).isBetween(.40, .50);
        assertThat(kept(Chemistry.FLOODED_LEAD, 0, .5)).isGreaterThan(.95);
    }

    /** Makers of sealed batteries ask for 1.05 to 1.15 times the charge drawn (from memory). */
    @Test
    void chargeFactorOfSealed() {
        for (Chemistry sealed : List.of(Chemistry.GEL_LEAD, Chemistry.AGM_LEAD)) {
            assertThat(1 / kept(sealed, 0, 1)).isBetween(1.05, 1.15);
            assertThat(1 / kept(sealed, .5, 1)).isBetween(1.05, 1.15);
        }
    }

    /** Charge kept over charge put in between two states of charge. */
    private static double kept(Chemistry chemistry, double from, double to) {
        int slices = 100_000;
        double put = 0;
        for (int i = 0; i < slices; i++) {
            put += 1 / chemistry.traits().chargeEffByFill().at(from + (to - from) * (i + .5) / slices);
        }
        return slices / put;
    }

    /** Iron phosphate: charging 0 to 45 degC, discharging -20 to 60, 2.5 to 3.65 V, 3.2 nominal (from memory but the 0). */
    @Test
    void ironPhosphateLimits() {
        CellTraits iron = Chemistry.IRON_PHOSPHATE.traits();
        assertThat(iron.chargeShareByDegC().at(0)).isZero();
        assertThat(iron.chargeShareByDegC().at(-5)).isZero();
        assertThat(iron.chargeShareByDegC().at(45)).isEqualTo(1);
        assertThat(iron.chargeShareByDegC().at(46)).isZero();
        assertThat(iron.dischargeShareByDegC().at(-20)).isEqualTo(1);
        assertThat(iron.dischargeShareByDegC().at(-21)).isZero();
        assertThat(iron.dischargeShareByDegC().at(60)).isEqualTo(1);
        assertThat(iron.dischargeShareByDegC().at(61)).isZero();
        assertThat(4 * iron.cutOffV()).isEqualTo(10.0);
        assertThat(4 * iron.absorbV()).isEqualTo(14.6);
        assertThat(4 * iron.cellV()).isEqualTo(12.8);
    }
}
