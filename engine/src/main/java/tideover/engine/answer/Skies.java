package tideover.engine.answer;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import tideover.engine.site.Place;
import tideover.engine.site.RoomKind;
import tideover.engine.site.WeatherSource;
import tideover.engine.sun.PanelMount;

/**
 * Weather drawn before, with what it puts on the panels, for whoever asks about the same place again with another load or part. Keeps
 * the few used last. Never changes a figure.
 */
public final class Skies {
    private static final int MOST = 4;

    private final Map<Key, Advisor.Sky> known = new LinkedHashMap<>(MOST, 0.75f, true);

    /** All that a sky hangs on. */
    record Key(
            WeatherSource source,
            Place place,
            PanelMount mount,
            boolean snow,
            RoomKind storeRoom,
            long seed,
            int years) {}

    Advisor.Sky sky(Key key, Supplier<Advisor.Sky> draw) {
        synchronized (known) {
            Advisor.Sky sky = known.get(key);
            if (sky != null) {
                return sky;
            }
        }
        Advisor.Sky drawn = draw.get();
        synchronized (known) {
            known.put(key, drawn);
            if (known.size() > MOST) {
                known.remove(known.keySet().iterator().next());
            }
        }
        return drawn;
    }
}
