package tideover.app.files;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Quantities.Measure;
import tideover.engine.load.Medical;
import tideover.engine.why.Basis;

/**
 * Reads what is arranged around a load that somebody's health hangs on. Nothing of it is taken for granted: what the plan leaves
 * out counts as not arranged, with a caution.
 */
final class MedicalReader {
    private static final double MOST_SECONDS = 86400 * 60.0;
    private static final int LONGEST = 200;

    private final Reading reading;
    private final Field block;
    private final String name;
    private final List<String> missing = new ArrayList<>();

    MedicalReader(Reading reading, Field block, String name) {
        this.reading = reading;
        this.block = block;
        this.name = name;
    }

    /** Null where anything in it is wrong. */
    @Nullable
    Medical read() {
        int before = reading.flaws();
        block.keys("can be without", "alarm", "who acts", "able", "second plan");
        Field without = block.child("can be without");
        double seconds = 0;
        if (isThere(without, "can be without", "0 s")) {
            seconds = without.quantity(Measure.BRIDGE, Range.from(0, MOST_SECONDS));
        }
        String alarm = words("alarm", "what tells that it has stopped, in a few words");
        String whoActs = words("who acts", "who does something then, in a few words");
        Field ableField = block.child("able");
        boolean able = isThere(ableField, "able", "no")
                && ableField.yesOrNo("whether that person is always there and able to act");
        String secondPlan = words("second plan", "what is done that does not use this rig, in a few words");
        if (reading.flaws() > before) {
            return null;
        }
        if (!missing.isEmpty()) {
            block.caution("somebody's health hangs on it, and the plan does not say: " + String.join(", ", missing)
                    + ". What is not said counts as not arranged. Settle it with the care team and the device's maker before"
                    + " relying on any rig.");
        }
        return new Medical(seconds, alarm, whoActs, able, secondPlan);
    }

    private String words(String key, String expected) {
        Field field = block.child(key);
        return isThere(field, key, "none") ? field.text(expected, LONGEST).replace('\n', ' ') : "";
    }

    private boolean isThere(Field field, String key, String counted) {
        if (field.isPresent()) {
            field.note(name + ": medical, " + key, Basis.YOURS);
            return true;
        }
        missing.add(key);
        reading.note(name + ": medical, " + key, counted, Basis.GUESS, "not said in the plan");
        return false;
    }
}
