package tideover.engine.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.cold.BoxKind;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Outage;
import tideover.engine.search.Grammar;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.site.WeatherSource;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;

/** The cautions that must stand beside an answer. */
class CautionsTest {
    @Test
    void wiringHealthAndBatteriesAreAlwaysMinded() {
        assertThat(cautions("Lamp"))
                .anyMatch(c -> c.contains("listed transfer device"))
                .anyMatch(c -> c.contains("second plan that does not use this rig"))
                .noneMatch(c -> c.contains("Not judged is the start"))
                .anyMatch(c -> c.contains("cannot be switched off"))
                .noneMatch(c -> c.contains("thermometer in the warmest food"));
    }

    /** The agencies' door-shut hours: USDA FSIS and FDA, refrigerator 4 h, freezer full 48 h, half full 24 h. */
    @Test
    void namesOfColdBoxesBringTheAgenciesHoursAndTheWayToJudgeThem() {
        for (String name : List.of("Chest freezer", "fridge", "Refrigerator in the hall")) {
            assertThat(cautions(name))
                    .anyMatch(c -> c.contains("4 h")
                            && c.contains("48 h")
                            && c.contains("24 h")
                            && c.contains("thermometer in the warmest food")
                            && c.startsWith(name + ": food is not judged there, only power"));
        }
    }

    /** Where food is followed it is not said that it were not; the agencies' hours of each box stand there. */
    @Test
    void boxesThatAreFollowedBringTheirOwnHours() {
        ColdLoad fridge = new Invented(4).coldLoad("Kitchen", Invented.MAINS, RoomKind.INDOORS, BoxKind.REFRIGERATOR);
        assertThat(cautions(fridge))
                .contains(
                        "With the door shut a refrigerator is safe for 4 h without power, a full freezer for 48 h, a half-full"
                                + " one for 24 h (USDA, FDA, CDC). Here: Kitchen 4 h. What was reckoned may shorten these hours, never"
                                + " lengthen them: past that only a thermometer in the warmest food, or ice crystals in it, count. What"
                                + " thawed and froze again is not counted as kept.")
                .noneMatch(c -> c.contains("not judged there"))
                .anyMatch(c -> c.contains("Not judged is the start of Kitchen"));
    }

    @Test
    void ofMedicineTheMakerAndThePharmacistAreAsked() {
        ColdLoad fridge =
                new Invented(4).coldLoad("Insulin", Invented.MAINS, RoomKind.INDOORS, BoxKind.MEDICINE_FRIDGE);
        assertThat(cautions(fridge))
                .anyMatch(c -> c.startsWith("Insulin: the maker's band comes first. Freezing spoils")
                        && c.contains("pharmacist"))
                .noneMatch(c -> c.contains("4 h"));
    }

    /** A name that speaks of a motor, and no start told: the start is not judged, and the answer says so. */
    @Test
    void aMotorWithoutItsStartIsMinded() {
        for (String name : List.of("Sump pump", "Chest freezer", "Ceiling fan")) {
            assertThat(cautions(name)).anyMatch(c -> c.contains("Not judged is the start of " + name));
        }
    }

    @Test
    void aFreezingRoomAndFewYearsAreSaid() {
        assertThat(cautions("Lamp"))
                .anyMatch(c -> c.contains("falls to -"))
                .anyMatch(c -> c.contains("Only 2 years of weather"));
    }

    private static List<String> cautions(String loadName) {
        return cautions(new SteadyLoad(loadName, Invented.MAINS, 50, true, new Need.AlwaysOn(), RoomKind.INDOORS));
    }

    private static List<String> cautions(Load load) {
        Weather weather = new Invented(5).weather(2);
        Question question = new Question(
                "test",
                "",
                Invented.PLACE,
                new WeatherSource.Imported(weather),
                -20,
                Invented.MOUNT,
                false,
                RoomKind.SHED,
                false,
                List.of(load),
                new Outage(List.of(0), 24, 0.9, 0.85, 2, 1),
                OptionalLong.empty(),
                "USD",
                new Allowances(0, 0, 0),
                new Grammar(1, 1),
                List.of(),
                List.of(),
                Laying.ASSUMED,
                List.of(),
                List.of(),
                List.of());
        return Cautions.of(question, null, weather, List.of());
    }
}
