package tideover.app.store;

import java.util.Map;
import org.jspecify.annotations.Nullable;

public record StoredPlan(
        long id, String text, long revision, @Nullable String chosenRig, Map<String, byte[]> files, String changed) {
    public String keptWords() {
        return "kept, " + changed;
    }
}
