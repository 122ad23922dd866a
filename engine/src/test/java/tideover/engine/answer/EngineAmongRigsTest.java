package tideover.engine.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tideover.engine.Invented;
import tideover.engine.part.Charger;
import tideover.engine.part.Part;
import tideover.engine.proof.Prover;
import tideover.engine.quantity.Workers;
import tideover.engine.rig.Rig;
import tideover.engine.search.Grammar;
import tideover.engine.search.Priced;
import tideover.engine.site.Room;
import tideover.engine.site.RoomKind;
import tideover.engine.site.Weather;
import tideover.engine.site.WeatherSource;
import tideover.engine.wiring.Allowances;
import tideover.engine.wiring.Laying;

/** Engines of a rig's own among plain rigs: those are bounded and walked, these screened; the cheapest is found all the same. */
class EngineAmongRigsTest {
    private static final Options OPTIONS = new Options(1, 1, 1, 4, 2);

    /** Small stores, a charger and a cheap engine, dear panels. */
    private static Question question(Invented invented, Weather weather) {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            double usableWh = invented.between(100, 2500);
            parts.add(invented.battery("B" + i, usableWh, (long) (usableWh * invented.between(0.2, 0.5)) * 100));
        }
        parts.add(Invented.panel("P", invented.between(40, 220), invented.whole(60, 250) * 100L));
        parts.add(invented.inverter("I", invented.between(0, 12), 9_000));
        parts.add(invented.controller("C", invented.between(6, 30), 4_000));
        parts.add(new Charger(Invented.listing("M", 3_000, 1), invented.whole(4, 20), 12, 14.6, 0.88, Set.of()));
        parts.add(invented.engine("E", invented.whole(50, 250) * 100L));
        return new Question(
                "test",
                "",
                Invented.PLACE,
                new WeatherSource.Imported(weather),
                -12,
                Invented.MOUNT,
                false,
                RoomKind.SHED,
                false,
                invented.loads(true, true),
                invented.outage(1),
                OptionalLong.empty(),
                "USD",
                new Allowances(0, 0, 0),
                new Grammar(1, 1),
                parts,
                List.of(),
                Laying.ASSUMED,
                List.of(),
                List.of(),
                List.of());
    }

    @Test
    void theCheapestIsThatOfTheDumbSearch() {
        int withEngine = 0;
        for (long seed = 441; seed < 449; seed++) {
            Invented invented = new Invented(seed);
            Weather weather = invented.weather(1);
            Question question = question(invented, weather);
            String cheapest = dumb(question, weather);
            ProvenRig found = Advisor.size(question, OPTIONS, Progress.SILENT).rig();
            assertThat(found == null ? "none" : found.rig().id())
                    .as("winner, seed %d", seed)
                    .isEqualTo(cheapest);
            withEngine += cheapest.contains("+E") ? 1 : 0;
        }
        assertThat(withEngine).isBetween(1, 7);
    }

    /** Walks every rig that keeps the rules, cheapest first, until one meets the target. */
    private static String dumb(Question question, Weather weather) {
        Prover prover = new Prover(
                weather,
                Invented.plane(weather),
                Room.degC(RoomKind.SHED, weather),
                Invented.PLACE.meanSolarNoonHour(),
                4,
                1,
                Workers.of(2));
        for (Priced one : Advisor.candidates(question).kept()) {
            Rig rig = one.rig();
            if (prover.share(rig, question.loads(), question.outage()).share()
                    >= question.outage().targetShare()) {
                return rig.id();
            }
        }
        return "none";
    }
}
