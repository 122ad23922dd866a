package tideover.app.store;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A plan as it is kept.
 *
 * @param text     of the plan file
 * @param revision grows by one with every change
 * @param changed  local time of the last change, such as "2026-11-26 15:02:11"
 * @param files    that the plan names, by the names in it
 */
public record StoredPlan(long id, String text, long revision, String changed, Map<String, byte[]> files) {
    public StoredPlan {
        files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
    }
}
