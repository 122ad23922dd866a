package tideover.app.store;

import java.util.*;

public final class Store implements AutoCloseable {
    public static final long MOST_BYTES_TOGETHER = 32_000_000;
    private final Map<Long, StoredPlan> plans = new TreeMap<>();
    private final Map<Long, String> names = new HashMap<>();
    private final Map<String, String> settings = new HashMap<>();
    private final Set<Long> gone = new HashSet<>();
    private long next = 1;
    private final Map<Long, Deque<String>> past = new HashMap<>();

    public static Store open(java.nio.file.Path f) {
        return new Store();
    }

    private static String now() {
        return java.time.LocalTime.now().withNano(0).toString();
    }

    public synchronized List<PlanLine> plans() {
        return lines(false);
    }

    public synchronized List<PlanLine> deleted() {
        return lines(true);
    }

    private List<PlanLine> lines(boolean del) {
        List<PlanLine> l = new ArrayList<>();
        plans.forEach((i, p) -> {
            if (gone.contains(i) == del) l.add(new PlanLine(i, names.get(i), p.changed(), p.revision()));
        });
        return l;
    }

    public synchronized Optional<StoredPlan> plan(long id) {
        return gone.contains(id) ? Optional.empty() : Optional.ofNullable(plans.get(id));
    }

    public synchronized long add(String name, String text, Map<String, byte[]> files) {
        long id = next++;
        plans.put(id, new StoredPlan(id, text, 1, null, new LinkedHashMap<>(files), now()));
        names.put(id, name);
        return id;
    }

    public synchronized long replace(long id, long base, String name, String text) {
        StoredPlan p = plans.get(id);
        if (p.revision() != base) throw new StaleEdit();
        past.computeIfAbsent(id, k -> new ArrayDeque<>()).push(p.text());
        plans.put(id, new StoredPlan(id, text, base + 1, null, p.files(), now()));
        names.put(id, name);
        return base + 1;
    }

    public synchronized void undo(long id) {
        StoredPlan p = plans.get(id);
        Deque<String> d = past.get(id);
        if (d != null && !d.isEmpty()) {
            plans.put(id, new StoredPlan(id, d.pop(), p.revision() + 1, null, p.files(), now()));
        }
    }

    public synchronized void putFile(long id, String name, byte[] b) {
        StoredPlan p = plans.get(id);
        Map<String, byte[]> f = new LinkedHashMap<>(p.files());
        f.put(name, b);
        plans.put(id, new StoredPlan(id, p.text(), p.revision() + 1, null, f, now()));
    }

    public synchronized void removeFile(long id, String name) {
        StoredPlan p = plans.get(id);
        Map<String, byte[]> f = new LinkedHashMap<>(p.files());
        f.remove(name);
        plans.put(id, new StoredPlan(id, p.text(), p.revision() + 1, null, f, now()));
    }

    public synchronized long copy(long id, String name, String text) {
        return add(name, text, plans.get(id).files());
    }

    public synchronized void delete(long id) {
        gone.add(id);
    }

    public synchronized void restore(long id) {
        gone.remove(id);
    }

    public synchronized Optional<String> setting(String k) {
        return Optional.ofNullable(settings.get(k));
    }

    public synchronized void set(String k, String v) {
        settings.put(k, v);
    }

    @Override
    public void close() {}
}
