package tideover.engine.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.proof.PlaneWeather;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.site.Weather;
import tideover.engine.why.Basis;
import tideover.engine.why.MarginNote;

/** The margin notes of an answer: the plan's own, then what the program adds. */
final class Notes {
    private Notes() {}

    static List<MarginNote> of(Question question, Options options, Weather weather, PlaneWeather plane) {
        List<MarginNote> notes = new ArrayList<>(question.notes());
        notes.add(new MarginNote(
                "weather",
                weather.years() + " years, " + weather.origin(),
                question.weather().canDrawAgain() ? Basis.GUESS : Basis.YOURS,
                question.weather().words()));
        notes.add(new MarginNote(
                "seed",
                options.seed() + (question.weather().canDrawAgain() ? ", confirmed on " + options.confirmSeed() : ""),
                Basis.GUESS,
                "program option"));
        notes.add(new MarginNote(
                "simulation step",
                PlainNumber.of(60.0 / options.stepsPerHour()) + " min",
                Basis.GUESS,
                "program option; the store's events fall at their instant inside a step"));
        notes.add(new MarginNote(
                "hours with snow on the panels",
                String.format(Locale.ROOT, "%.1f %%", 100.0 * plane.coveredHours() / weather.hours()),
                Basis.COMMON_PRACTICE,
                question.snow() ? "snow rule of the models page" : "snow is taken to be swept or absent"));
        return notes;
    }
}
