package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.part.Cooler;
import tideover.engine.part.Jug;
import tideover.engine.part.Part;
import tideover.engine.part.StandIn;

class AidColumnsTest {
    private static final String HEAD =
            "kind,id,name,price,currency,priced_on,condition,mass_kg,for_load,ice_kg,holds_l,walls_w_per_k,ice_days,lasts_h\n";
    private static final String LISTED = ",Invented,1.00,USD,2026-02-11,new,1,";

    private static List<Part> parts(String rows) {
        return Sample.read(Sample.PLAN, HEAD + rows).parts();
    }

    @Test
    void eachKindReads() {
        List<Part> parts = parts("jug,j" + LISTED + "chest freezer,5.2,,,,\n"
                + "cooler,c" + LISTED + "refrigerator,9,45,0.4,,\n"
                + "cooler,d" + LISTED + "refrigerator,10,45,,3,\n"
                + "cooler,e" + LISTED + "refrigerator,9,50,,,\n"
                + "stand-in,s" + LISTED + "Lamps,,,,,96\n");
        assertThat(parts.get(0)).isInstanceOfSatisfying(Jug.class, jug -> {
            assertThat(jug.iceKg()).isEqualTo(5.2);
            assertThat(jug.forLoad()).isEqualTo("chest freezer");
        });
        assertThat(((Cooler) parts.get(1)).wallWPerK()).isEqualTo(0.4);
        assertThat(((Cooler) parts.get(2)).wallWPerK()).isCloseTo(0.4002, within(5e-5));
        assertThat(((Cooler) parts.get(3)).wallWPerK()).isEqualTo(0.6);
        assertThat(((StandIn) parts.get(4)).lastsHours()).isEqualTo(96);
    }

    @Test
    void whatIsWrongIsToldAtOnce() {
        List<String> problems = Sample.problemsInParts(HEAD + "jug,j" + LISTED + ",-1,,,,\n"
                + "cooler,c" + LISTED + "refrigerator,9,45,0.4,3,\n"
                + "stand-in,s" + LISTED + "Lamps,2,,,,96\n");
        assertThat(problems)
                .anyMatch(problem -> problem.startsWith("parts.csv:2 for_load: found an empty cell"))
                .anyMatch(problem -> problem.startsWith("parts.csv:2 ice_kg: found \"-1\""))
                .anyMatch(problem -> problem.startsWith("parts.csv:3 ice_days: found \"3\" beside walls_w_per_k"))
                .anyMatch(problem -> problem.startsWith("parts.csv:4 ice_kg: found \"2\", expected an empty cell"));
    }

    @Test
    void whatFindsNoLoadIsToldAndTooManySetsRefused() {
        assertThat(Sample.read(Sample.PLAN, HEAD + "stand-in,s" + LISTED + "Lmaps,,,,,96\n")
                        .cautions())
                .anyMatch(caution -> caution.startsWith("Invented (parts.csv:2) is not looked at"));
        String freezer = Kept.plan(Kept.FREEZER);
        StringBuilder rows = new StringBuilder(HEAD);
        for (int i = 0; i < 9; i++) {
            rows.append("jug,j").append(i).append(LISTED).append("Freezer,0.3,,,,\n");
        }
        assertThat(Sample.problemsOf(() -> Sample.read(freezer, rows.toString())))
                .singleElement()
                .asString()
                .contains("37 ways to combine jugs, coolers and stand-ins, expected at most 32");
    }

    @Test
    void worthIsOfThePlansCurrency() {
        String freezer = Kept.plan(Kept.FREEZER + "    worth: 180 EUR\n");
        assertThat(Sample.problemsIn(freezer))
                .anyMatch(problem ->
                        problem.contains("worth: found \"180 EUR\", expected one currency in the whole plan"));
    }
}
