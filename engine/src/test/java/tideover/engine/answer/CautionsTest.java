package tideover.engine.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.load.Need;
import tideover.engine.load.SteadyLoad;
import tideover.engine.outage.Outage;
import tideover.engine.search.Grammar;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.site.WeatherSource;
import tideover.engine.wiring.Allowances;

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
    void coldBoxesBringTheAgenciesHours() {
        for (String name : List.of("Chest freezer", "fridge", "Refrigerator in the hall")) {
            assertThat(cautions(name))
                    .anyMatch(c -> c.contains("4 h")
                            && c.contains("48 h")
                            && c.contains("24 h")
                            && c.contains("thermometer in the warmest food"));
        }
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
                List.of(new SteadyLoad(loadName, Invented.MAINS, 50, true, new Need.AlwaysOn(), RoomKind.INDOORS)),
                new Outage(List.of(0), 24, 0.9, 0.85, 2, 1),
                OptionalLong.empty(),
                "USD",
                new Allowances(0, 0, 0),
                new Grammar(1, 1),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        return Cautions.of(question, null, weather);
    }
}
