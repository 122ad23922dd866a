package tideover.engine.answer;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.part.RatedStore;
import tideover.engine.proof.Doubt;
import tideover.engine.rig.Rig;

/** How far the figures may be off that are not the loads': the sky's, the panels' and the rig's. Common practice, no source, where not told. */
final class GeneralDoubts {
    /** The generator's monthly sun is off by 1.3 % at most, its hours are livelier than measured ones: see the models page. */
    private static final double SKY_LEAST = 0.95;

    private static final double SKY_MOST = 1.03;

    private static final double LEAST_DIRT = 0.01;
    private static final double MOST_DIRT = 0.10;

    /** What a label's usable watt-hours are worth. */
    private static final double LABEL_LEAST = 0.85;

    private static final double LABEL_MOST = 1.03;

    private static final double STANDING_LEAST = 0.7;
    private static final double STANDING_MOST = 1.5;

    private GeneralDoubts() {}

    /** The plan's own doubts, then those of the sky and the rig. */
    static List<Doubt> with(Question question, Rig rig) {
        List<Doubt> doubts = new ArrayList<>(question.doubts());
        if (question.weather().canDrawAgain()) {
            doubts.add(new Doubt(
                    "weather: how much sun the generated years give",
                    Doubt.Kind.SUN,
                    "",
                    SKY_LEAST,
                    SKY_MOST,
                    "hourly records of the place, as an hourly file"));
        }
        double clean = 1 - question.mount().soiling();
        doubts.add(new Doubt(
                "panels: dirt",
                Doubt.Kind.SUN,
                "",
                Math.min(1, (1 - MOST_DIRT) / clean),
                Math.max(1, (1 - LEAST_DIRT) / clean),
                "a bright noon's current before and after washing"));
        doubts.add(store(rig));
        doubts.add(new Doubt(
                "inverter: what it draws itself",
                Doubt.Kind.STANDING,
                "",
                STANDING_LEAST,
                STANDING_MOST,
                "an ammeter at the battery with nothing plugged in"));
        return doubts;
    }

    private static Doubt store(Rig rig) {
        String what = "store: what its label is worth";
        String measure = "a full discharge through a meter";
        if (rig.store() instanceof RatedStore store) {
            // The proof already takes the low end.
            double likely = store.worth().likely() / store.worth().least();
            return new Doubt(what, Doubt.Kind.CAPACITY, "", 1, Math.max(1, likely), measure);
        }
        return new Doubt(what, Doubt.Kind.CAPACITY, "", LABEL_LEAST, LABEL_MOST, measure);
    }
}
