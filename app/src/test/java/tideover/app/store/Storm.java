package tideover.app.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** A storm of edits without end on two plans, each by a thread of its own; prints each revision once it has been kept. */
final class Storm {
    private Storm() {}

    /** What an edit does is told by plan and revision alone, so that anybody can say what a revision must hold. */
    enum Kind {
        TEXT,
        FILE,
        LESS,
        BACK
    }

    static Kind kind(long id, long revision) {
        int dice = new Random(id * 1_000_003 + revision).nextInt(10);
        return dice < 5 ? Kind.TEXT : dice < 7 ? Kind.FILE : dice < 8 ? Kind.LESS : Kind.BACK;
    }

    static String text(long id, long revision) {
        int lines = new Random(id * 7919 + revision).nextInt(400);
        return "plan: number " + id + "\n" + ("revision: " + revision + "\n").repeat(1 + lines);
    }

    static String fileName(long id, long revision) {
        return "parts/" + new Random(id + revision * 31).nextInt(4) + ".csv";
    }

    static byte[] bytes(long id, long revision) {
        byte[] bytes = new byte[new Random(id * 104_729 + revision).nextInt(60_000)];
        new Random(revision).nextBytes(bytes);
        return bytes;
    }

    /** What a plan must hold, kept by other means than the store's. */
    static final class Expected {
        private record Earlier(long revision, String text) {}

        private final long id;
        private long revision = 1;
        private String text;
        private final Map<String, byte[]> files = new TreeMap<>();
        private final Deque<Earlier> earlier = new ArrayDeque<>();

        Expected(long id) {
            this.id = id;
            this.text = Storm.text(id, 1);
        }

        long revision() {
            return revision;
        }

        /** One edit further. */
        void step() {
            switch (kind(id, revision)) {
                case TEXT -> write();
                case FILE -> files.put(fileName(id, revision), bytes(id, revision));
                case LESS -> files.remove(fileName(id, revision));
                case BACK -> {
                    if (earlier.isEmpty()) {
                        write();
                    } else {
                        text = earlier.removeLast().text();
                    }
                }
            }
            revision++;
        }

        private void write() {
            earlier.addLast(new Earlier(revision, text));
            earlier.removeIf(one -> one.revision() <= revision - 200);
            text = Storm.text(id, revision + 1);
        }

        boolean is(StoredPlan plan) {
            return plan.revision() == revision
                    && plan.text().equals(text)
                    && plan.files().keySet().equals(files.keySet())
                    && files.entrySet().stream()
                            .allMatch(one ->
                                    Arrays.equals(one.getValue(), plan.files().get(one.getKey())));
        }
    }

    /** @param args the file of plans, which holds plans 1 and 2 */
    public static void main(String[] args) {
        Store store = Store.open(Path.of(args[0]));
        for (long id = 1; id <= 2; id++) {
            long plan = id;
            new Thread(() -> rage(store, plan)).start();
        }
    }

    private static void rage(Store store, long id) {
        long revision = store.plan(id).orElseThrow().revision();
        while (true) {
            switch (kind(id, revision)) {
                case TEXT -> write(store, id, revision);
                case FILE -> store.putFile(id, fileName(id, revision), bytes(id, revision));
                case LESS -> store.removeFile(id, fileName(id, revision));
                case BACK -> {
                    if (!store.undo(id)) {
                        write(store, id, revision);
                    }
                }
            }
            revision++;
            byte[] line = (id + " " + revision + "\n").getBytes(StandardCharsets.US_ASCII);
            synchronized (Storm.class) {
                System.out.write(line, 0, line.length);
                System.out.flush();
            }
        }
    }

    private static void write(Store store, long id, long revision) {
        store.replace(id, revision, "Plan " + id, text(id, revision + 1));
    }
}
