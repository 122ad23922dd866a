package tideover.app.web;

import java.io.ByteArrayInputStream;
import java.nio.file.NoSuchFileException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Beside;
import tideover.app.files.PlanFile;
import tideover.app.store.StoredPlan;
import tideover.engine.answer.Question;
import tideover.engine.site.Stations;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/** Reads kept plans; remembers the last few, since a sheet asks for the same plan many times between two edits. */
final class PlanReader {
    static final String PLAN_FILE = "plan.yaml";

    private static final int MOST = 8;

    private final Stations stations;
    private final Map<Key, Read> known = new LinkedHashMap<>(MOST, 0.75f, true);

    PlanReader(Stations stations) {
        this.stations = stations;
    }

    private record Key(long id, long revision) {}

    /**
     * A plan as it was read.
     *
     * @param plan     null where something in it is wrong
     * @param problems empty where nothing is
     */
    record Read(PlanFile.@Nullable Plan plan, List<Problem> problems) {
        Read {
            problems = List.copyOf(problems);
        }

        @Nullable
        Question question() {
            return plan == null ? null : plan.question();
        }
    }

    Read read(StoredPlan stored) {
        Key key = new Key(stored.id(), stored.revision());
        synchronized (known) {
            Read before = known.get(key);
            if (before != null) {
                return before;
            }
        }
        Read read = readAnew(stored);
        synchronized (known) {
            known.put(key, read);
            if (known.size() > MOST) {
                known.remove(known.keySet().iterator().next());
            }
        }
        return read;
    }

    /**
     * What would be wrong with a plan that is not wrong now, if a file came with it and its text named that file; in whole
     * sentences, empty where nothing would be.
     */
    List<String> newTroubles(StoredPlan plan, String text, String file, byte[] bytes) {
        Map<String, byte[]> files = new LinkedHashMap<>(plan.files());
        files.put(file, bytes);
        List<String> before =
                read(plan).problems().stream().map(Problem::sentence).toList();
        return readAnew(new StoredPlan(plan.id(), text, plan.revision(), plan.changed(), files)).problems().stream()
                .map(Problem::sentence)
                .filter(sentence -> !before.contains(sentence))
                .toList();
    }

    void forgetAll() {
        synchronized (known) {
            known.clear();
        }
    }

    private Read readAnew(StoredPlan stored) {
        try {
            return new Read(PlanFile.open(PLAN_FILE, stored.text(), beside(stored.files()), stations), List.of());
        } catch (InputProblems e) {
            return new Read(null, e.problems());
        }
    }

    /** The plan's own files and nothing else: no name leads out of the store. */
    static Beside beside(Map<String, byte[]> files) {
        return name -> {
            byte[] bytes = files.get(name);
            if (bytes == null) {
                throw new NoSuchFileException(name, null, "not among the files kept with this plan");
            }
            return new ByteArrayInputStream(bytes);
        };
    }
}
