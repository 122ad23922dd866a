package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tideover.engine.answer.Question;
import tideover.engine.load.DayWindow;
import tideover.engine.outage.Tending;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;

class TendingReaderTest {
    private static final String LOOK_AT = "look at:\n";

    private static String plan(String keys) {
        return Sample.PLAN.replace(LOOK_AT, LOOK_AT + keys);
    }

    private static List<MarginNote> notes(Question question) {
        return question.notes().stream()
                .filter(note -> note.name().contains("an engine") || note.name().startsWith("Fuel"))
                .toList();
    }

    @Test
    void hoursAndFuelAreTaken() {
        Question question = Sample.read(plan("  engine hours: [06:30-08:30, 22:00-01:00]\n  fuel stored: 5 gal\n"));
        Tending tending = question.outage().tending();
        assertThat(tending.engineHours()).containsExactly(new DayWindow(6.5, 8.5), new DayWindow(22, 1));
        assertThat(tending.storedL()).isBetween(18.92, 18.93);
        assertThat(notes(question)).hasSize(2).allMatch(note -> note.basis() == Basis.YOURS);
    }

    @Test
    void whatIsNotToldIsAGuessAndSaidWhereAnEngineIsInTheParts() {
        assertThat(notes(Sample.read(Sample.PLAN))).isEmpty();
        Question question = Sample.read(Sample.PLAN, Sample.PARTS + EngineColumnsTest.engineRow());
        assertThat(question.outage().tending()).isEqualTo(Tending.USUAL);
        assertThat(notes(question)).extracting(MarginNote::value).containsExactly("07:00-09:00, 18:00-21:00", "20 L");
        assertThat(notes(question)).allMatch(note -> note.basis() == Basis.GUESS);
    }

    @Test
    void slipsAreTold() {
        assertThat(Sample.problemsIn(plan("  engine hours: [07:00-09:00, 08:00-10:00]\n")))
                .singleElement()
                .asString()
                .contains("look at.engine hours[2]", "stretches that do not overlap");
        assertThat(Sample.problemsIn(plan("  fuel stored: 20 kg\n")))
                .singleElement()
                .asString()
                .contains("look at.fuel stored: found \"20 kg\", expected a volume");
    }
}
