package tideover.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.load.Usual;
import tideover.engine.load.UsualLoads;
import tools.jackson.databind.JsonNode;

/** Looking up what household loads usually draw. */
class LoadsTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"sump 1/3", "SUMP 1/3 hp", "1/3 pump", "sump pump, 1/3 hp"})
    void aLoadIsFoundByItsWords(String text) {
        Ran ran = Ran.of((Object[]) ("loads " + text).split(" "));

        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .contains("\nsump pump, 1/3 hp                                   332     538     745    3730\n")
                .contains("Traits: power factor 0.65; needs a sine wave.")
                .contains("    Ask: Is it on a plug?")
                .contains("430.248")
                .contains("1 of " + UsualLoads.all().size() + " usual loads.");
    }

    @Test
    void withoutWordsAllAreListedWithinTheWidth() {
        Ran ran = Ran.of("loads");

        assertThat(ran.status()).isZero();
        for (Usual usual : UsualLoads.all()) {
            assertThat(ran.out()).contains("\n" + usual.word() + " ");
        }
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 96);
    }

    @Test
    void theSameAsOneDocument() {
        JsonNode all = Ran.of("loads", "--format", "json").json().path("usual_loads");

        assertThat(all.size()).isEqualTo(UsualLoads.all().size());
        for (int i = 0; i < all.size(); i++) {
            Usual usual = UsualLoads.all().get(i);
            assertThat(all.path(i).path("word").asString()).isEqualTo(usual.word());
            assertThat(all.path(i).path("most_w").asDouble()).isEqualTo(usual.mostW());
            assertThat(all.path(i).path("start").isNull()).isEqualTo(usual.start() == null);
            assertThat(all.path(i).path("ask").size()).isEqualTo(usual.ask().size());
        }
    }

    /** The pump hangs on the house's wires: the rig that serves it pays for that, in every form of the answer. */
    @Test
    void theJoiningOfAHardWiredLoadIsALineOfThePrice() throws IOException {
        Path plan = Ran.household(folder, "draws: 4 W\n", "draws: 4 W\n    hard-wired: yes\n");
        Files.writeString(plan, Files.readString(plan).replace("money:\n", "money:\n  hard-wired loads: 123.45 USD\n"));
        Path page = folder.resolve("answer.html");
        Ran text = Ran.quick("size", plan, "--report", page);
        JsonNode rig = Ran.quick("size", plan, "--format", "json").json().path("rig");
        JsonNode price = rig.path("price");

        assertThat(price.path("hard_wired_loads_allowance_cents").asLong()).isEqualTo(123_45);
        assertThat(price.path("total_cents").asLong())
                .isEqualTo(price.path("parts_cents").asLong()
                        + price.path("small_parts_cents").asLong()
                        + price.path("tools_cents").asLong()
                        + 123_45);
        assertThat(text.out())
                .containsPattern("hard-wired loads: listed inlet, electrician +123\\.45 USD")
                .contains("Aquarium pump is hard-wired: only through a listed transfer device or inlet");
        assertThat(Files.readString(page))
                .containsPattern("hard-wired loads: listed inlet, electrician[^/]*</td>(?s:.*?)123\\.45 USD");
    }

    @Test
    void whatNobodyKnowsIsRefusedWithTheWordsThereAre() {
        Ran ran = Ran.of("loads", "chandelier");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("TEXT: found 'chandelier'", "words of a usual load", "router; lamp; phone");
    }
}
