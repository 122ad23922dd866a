package tideover.engine.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.cold.LabelStandard.Rule;
import tideover.engine.quantity.Units;

/** How long boxes keep with the power off, against the agencies' hours and against sums done by hand. */
class FoodWithoutPowerPublishedTest {
    private static final double ROOM_DEG_C = 22;
    private static final double CHEST_L = Units.litres(7);
    private static final double FREEZER_DEG_C = -18;

    private static ColdBox chest(double kg) {
        double kWh = LabelStandard.CLASS_10.kWhPerYear(Rule.OF_2014, CHEST_L, 0);
        return ColdBox.ofLabel(
                BoxKind.CHEST_FREEZER, CHEST_L, kWh, null, null, List.of(Contents.of(Food.LEAN_BEEF, kg)));
    }

    /** Hours until the first lump reaches a temperature, or until it is all melted where NaN. */
    private static double hours(ColdBox box, double fromDegC, double toDegC, double stepS) {
        DumbColdBox walked = new DumbColdBox(box, fromDegC, fromDegC, stepS);
        long steps = 0;
        while (Double.isNaN(toDegC) ? walked.meltedShare(0) < 1 : walked.foodDegC() < toDegC) {
            walked.step(ROOM_DEG_C, false);
            steps++;
        }
        return steps * stepS / 3600;
    }

    /** One that holds no heat itself and gives all to its contents at once. */
    private static ColdBox lumped(BoxKind kind, double wallWPerK, Food food, double kg) {
        return new ColdBox(
                kind,
                200,
                wallWPerK,
                .1,
                kind.usualDegC(),
                kind.usualDegC(),
                4,
                null,
                null,
                0,
                List.of(new Contents(food, kg, 1000)));
    }

    /**
     * USDA FSIS, FDA, CDC: a full freezer keeps 48 h, a half-full one 24 h, door shut; taken as where thawing begins. Full is
     * half a kilogram a litre, a chest of 7 ft3 by the energy rule, room of 22 degC.
     */
    @ParameterizedTest
    @CsvSource({"1, 48, 8", "0.5, 24, 4"})
    void freezersBeginToThawAboutWhenTheAgenciesSay(double fill, double agencyH, double slackH) {
        ColdBox box = chest(fill * Contents.FULL_KG_PER_L * CHEST_L);
        assertThat(box.fill()).isCloseTo(fill, within(1e-12));
        assertThat(AgencyHours.of(box)).isEqualTo(agencyH);
        assertThat(hours(box, FREEZER_DEG_C, Food.LEAN_BEEF.freezingDegC(), 2)).isCloseTo(agencyH, within(slackH));
    }

    /** By hand: 50 kg of lean beef behind .5877 W/K from -18 to -1.7 degC in 25.9 h, and 238.9 h more to melt it. */
    @Test
    void halfAFreezerAsOneLump() {
        ColdBox box = lumped(BoxKind.CHEST_FREEZER, .5877, Food.LEAN_BEEF, 50);
        double toThaw = hours(box, FREEZER_DEG_C, Food.LEAN_BEEF.freezingDegC(), .2);
        assertThat(toThaw).isCloseTo(25.9, within(.13));
        // the table's 240 kJ/kg is rounded from 103 Btu/lb, 239.6
        double toMelt = hours(box, FREEZER_DEG_C, Double.NaN, .2) - toThaw;
        assertThat(toMelt).isCloseTo(238.9, within(238.9 * .5 / 240 + .13));
    }

    /** By hand: 20 kg at 3 degC with 30 W coming in pass 40 degF after about an hour. */
    @Test
    void theRefrigeratorsFourHoursAreARuleAndNoForecast() {
        double walls = 30 / (ROOM_DEG_C - 3);
        ColdBox lumped = lumped(BoxKind.REFRIGERATOR, walls, Food.WATER, 20);
        assertThat(hours(lumped, 3, AgencyHours.LIMIT_DEG_C, .2)).isCloseTo(1.1, within(.1));
    }

    /** Nothing in the model knows of four hours: they come out otherwise for every wall and every load. */
    @ParameterizedTest
    @CsvSource({"0.5, 40", "1, 20", "1, 10", "2, 20", "3, 10"})
    void aRefrigeratorsHoursFollowItsWalls(double times, double kg) {
        ColdBox box =
                ColdBox.ofWalls(BoxKind.REFRIGERATOR, 400, 30.0 / 19, null, null, List.of(Contents.of(Food.WATER, kg)));
        double once = hours(box, 3, AgencyHours.LIMIT_DEG_C, 2);
        double changed = hours(box.withWallsTimes(times), 3, AgencyHours.LIMIT_DEG_C, 2);
        assertThat(changed / once).isBetween(Math.min(1, .8 / times), Math.max(1, 1.2 / times));
    }
}
