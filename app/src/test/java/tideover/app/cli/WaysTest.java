package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A plan whose least answer is no battery: frozen jugs, a lantern and a thermometer. */
class WaysTest {
    @TempDir
    private static Path folder;

    private static Ran json;
    private static JsonNode answer;

    @BeforeAll
    static void askOnce() {
        json = Ran.quick("size", plan("jugs.yaml"), "--format", "json");
        answer = json.json();
    }

    private static Path plan(String name) {
        return Ran.examples().resolve(name);
    }

    private static JsonNode way(String kind) {
        for (JsonNode way : answer.path("ways")) {
            if (way.path("way").asString().equals(kind)) {
                return way;
            }
        }
        throw new AssertionError("no way " + kind);
    }

    /** Four jugs of 2.50, a lantern of 18.00 and a thermometer of 11.00. */
    @Test
    void theLeastThatWillDoIsNoBattery() {
        assertThat(json.status()).isZero();
        assertThat(answer.path("meets_target").asBoolean()).isTrue();
        assertThat(answer.path("answer").asString())
                .startsWith(
                        "The least that will do costs 39.00 USD: 4 x Tessaly jug of 5.5 L, frozen, Ondulan lantern with spare"
                                + " cells, no battery (11.00 of it for what belongs to it, thermometers above all).")
                .contains("The cheapest rig that does so too costs 358.00 USD.");
        JsonNode cold = way("cold_alone");
        assertThat(cold.path("meets_target").asBoolean()).isTrue();
        assertThat(cold.path("parts_cents").asInt()).isEqualTo(4 * 250 + 1800);
        assertThat(cold.path("small_parts_cents").asInt()).isEqualTo(1100);
        assertThat(cold.path("total_cents").asInt()).isEqualTo(3900);
        assertThat(cold.path("mass_kg").asDouble()).isEqualTo(4 * 5.6 + 0.6);
        assertThat(cold.path("price_cents_per_kwh").isNull()).isTrue();
    }

    /** With nothing the freezer, a third full, ends with the agencies' 15 h: all of its worth is lost. */
    @Test
    void nothingIsShownWithWhatItLoses() {
        JsonNode nothing = way("nothing");
        assertThat(nothing.path("meets_target").asBoolean()).isFalse();
        assertThat(nothing.path("share").asDouble()).isZero();
        assertThat(nothing.path("expected_loss_cents").asDouble()).isEqualTo(26_000);
        double share = way("cold_alone").path("share").asDouble();
        assertThat(way("cold_alone").path("expected_loss_cents").asDouble())
                .isCloseTo((1 - share) * 26_000, org.assertj.core.api.Assertions.within(0.01));
    }

    @Test
    void everyWayTellsTheSameFigures() {
        assertThat(answer.path("ways").size()).isGreaterThanOrEqualTo(3);
        for (JsonNode way : answer.path("ways")) {
            assertThat(way.propertyNames())
                    .contains(
                            "price_cents_per_kwh",
                            "standby_cents_per_year",
                            "mass_kg",
                            "fuel_l",
                            "noise_dba",
                            "fumes",
                            "without_power_s",
                            "somebody_must");
        }
        JsonNode box = way("ready_box");
        assertThat(box.path("price_cents_per_kwh").asDouble())
                .isCloseTo(box.path("total_cents").asDouble() / 0.48, org.assertj.core.api.Assertions.within(0.001));
        assertThat(box.path("without_power_s").asDouble()).isEqualTo(300);
    }

    @Test
    void textAndPageSayTheSame() throws IOException {
        Path page = folder.resolve("jugs.html");
        Ran text = Ran.quick("size", plan("jugs.yaml"), "--report", page);
        assertThat(text.status()).isZero();
        assertThat(text.out()).contains("Every way side by side").contains("The least that will do costs 39.00 USD");
        assertThat(Files.readString(page))
                .contains("Every way side by side")
                .contains("The least that will do costs 39.00 USD")
                .contains("Meets the target");
    }

    /** The plan's place and parts with one other load. */
    private static Ran withOnly(String name, String load) throws IOException {
        Path home = Files.createDirectory(folder.resolve(name));
        for (String file : List.of("jugs-parts.csv", "small-parts.csv")) {
            Files.copy(plan(file), home.resolve(file));
        }
        String plan = Files.readString(plan("jugs.yaml"));
        String changed =
                plan.substring(0, plan.indexOf("  - name: Freezer")) + load + plan.substring(plan.indexOf("money:"));
        return Ran.quick("size", Files.writeString(home.resolve("plan.yaml"), changed), "--format", "json");
    }

    /** A cooler with its own ice has no plug: nothing need be bought but a thermometer. */
    @Test
    void aCoolerOfThePlanNeedsNothing() throws IOException {
        Ran ran = withOnly("cooler", """
                  - name: Camp cooler
                    runs: cold box
                    box: cooler
                    holds: 50 L
                    contents: {food: 8 kg, ice: 10 kg}

                """);
        assertThat(ran.status()).isZero();
        assertThat(ran.json().path("answer").asString())
                .startsWith(
                        "The least that will do costs 11.00 USD: nothing to plug into, doors shut, and a thermometer");
    }

    /** Its door shut a refrigerator ends with the agencies' 4 h; its food in a cooler with ice does not. */
    @Test
    void aRefrigeratorsFoodMovesIntoACooler() throws IOException {
        Ran ran = withOnly("fridge", """
                  - name: Kitchen fridge
                    runs: cold box
                    box: refrigerator
                    holds: 140 L
                    supply: 120 V AC 60 Hz, NEMA 5-15
                    contents: {food: 9 kg}

                """);
        assertThat(ran.status()).isZero();
        assertThat(ran.json().path("answer").asString())
                .startsWith("The least that will do costs 50.00 USD: Tessaly cooler of 45 L, no battery");
        JsonNode ways = ran.json().path("ways");
        JsonNode nothing = ways.get(ways.size() - 1);
        assertThat(nothing.path("way").asString()).isEqualTo("nothing");
        assertThat(nothing.path("share").asDouble()).isZero();
        assertThat(ran.json().path("cautions").toString()).contains("The agencies tell no hours for a cooler");
    }

    /** Where no rig is within the budget the jugs still are the answer. */
    @Test
    void jugsAnswerAlsoWhereNoRigDoes() throws IOException {
        for (String name : List.of("jugs-parts.csv", "small-parts.csv")) {
            Files.copy(plan(name), folder.resolve(name));
        }
        Path poor = Files.writeString(
                folder.resolve("poor.yaml"),
                Files.readString(plan("jugs.yaml")).replace("at most: 900 USD", "at most: 60 USD"));
        Ran ran = Ran.quick("size", poor, "--format", "json");
        assertThat(ran.status()).isZero();
        assertThat(ran.json().path("rig").isNull()).isTrue();
        assertThat(ran.json().path("answer").asString()).startsWith("The least that will do costs 39.00 USD");

        Path poorer = Files.writeString(
                folder.resolve("poorer.yaml"),
                Files.readString(plan("jugs.yaml")).replace("at most: 900 USD", "at most: 30 USD"));
        Ran none = Ran.quick("size", poorer, "--format", "json");
        assertThat(none.status()).isEqualTo(3);
        assertThat(none.json().path("answer").asString()).contains("food worth 260.00 USD spoils in the mean outage");
    }
}
