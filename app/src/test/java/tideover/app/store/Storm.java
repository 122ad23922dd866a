package tideover.app.store;

import java.nio.file.Path;
import java.util.Map;

/** A program of its own that changes a plan as fast as it can and says each change that is kept. */
public final class Storm {
    private Storm() {}

    public static void main(String[] args) {
        int most = Integer.parseInt(args[1]);
        try (Store store = Store.open(Path.of(args[0]))) {
            long id = store.plans().isEmpty()
                    ? store.add("storm", "change 0", Map.of())
                    : store.plans().get(0).id();
            for (int turn = 0; turn < most; turn++) {
                StoredPlan plan = store.plan(id).orElseThrow();
                int number = Integer.parseInt(plan.text().substring("change ".length())) + 1;
                store.replace(id, plan.revision(), "storm", "change " + number);
                System.out.println("kept " + number);
                System.out.flush();
            }
        }
    }
}
