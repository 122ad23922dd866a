package tideover.app.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tideover.app.files.PlanText;
import tideover.app.store.Store;
import tideover.app.store.StoredPlan;

/** The invented demo scenario, which travels inside the jar: its plan, and its parts for new plans. */
final class Examples {
    private static final String FOLDER = "/tideover/demo/";

    private final String text;
    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private final List<String> parts = new ArrayList<>();
    private final String smallParts;

    Examples() {
        text = new String(bytes(PlanReader.PLAN_FILE), StandardCharsets.UTF_8);
        PlanText plan = PlanText.of(text);
        for (int number = 1; number <= plan.count("parts"); number++) {
            parts.add(plan.get("parts[" + number + "]").orElseThrow());
        }
        smallParts = plan.get("small parts").orElseThrow();
        parts.forEach(name -> files.put(name, bytes(name)));
        files.put(smallParts, bytes(smallParts));
    }

    private static byte[] bytes(String name) {
        try (InputStream in = Examples.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("not in the jar: " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Files of parts, small ones too, by their names. */
    Map<String, byte[]> files() {
        return files;
    }

    /** Names of the files of main parts. */
    List<String> parts() {
        return parts;
    }

    String smallParts() {
        return smallParts;
    }

    /** The demo plan as it is kept, or as it travels in the jar where nobody keeps it unchanged. */
    StoredPlan kept(Store store) {
        return store.plans().stream()
                .map(line -> store.plan(line.id()).orElseThrow())
                .filter(plan -> plan.text().equals(text))
                .findFirst()
                .orElseGet(() -> new StoredPlan(0, text, 1, "", files));
    }

    /** Puts the demo plan among the others. */
    long add(Store store) {
        return store.add(PlanText.of(text).get("plan").orElseThrow(), text, files);
    }
}
