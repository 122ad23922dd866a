package tideover.engine.answer;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tideover.app.files.PlanFile;
import tideover.app.files.StationTable;
import tideover.engine.part.Battery;
import tideover.engine.part.Listing;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;

/** The demo's question, which travels in the program's jar, and the same over shorter and longer lists of parts. */
public final class DemoShelf {
    private static final String FOLDER = "/tideover/demo/";

    private DemoShelf() {}

    /** @param routerW what its router draws: another figure makes another question of it */
    public static Question question(double routerW) {
        try (InputStream plan = open("plan.yaml")) {
            String text = new String(plan.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("draws: 7 W", "draws: " + routerW + " W");
            return PlanFile.read("plan.yaml", text, DemoShelf::open, StationTable.load());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String name) throws IOException {
        InputStream found = StationTable.class.getResourceAsStream(FOLDER + name);
        if (found == null) {
            throw new NoSuchFileException(name);
        }
        return found;
    }

    /**
     * A list of so many parts: of each kind its share, spread evenly over the demo's; where more are asked for than there are,
     * batteries and panels are repeated under other names at a few cents more each time.
     */
    static List<Part> parts(List<Part> demo, int count) {
        Map<String, List<Part>> byKind = new HashMap<>();
        demo.forEach(part ->
                byKind.computeIfAbsent(part.kind(), kind -> new ArrayList<>()).add(part));
        List<Part> chosen = new ArrayList<>();
        for (Part part : demo) {
            List<Part> alike = byKind.getOrDefault(part.kind(), List.of());
            int place = alike.indexOf(part);
            double share = Math.min(1, (double) count / demo.size());
            if ((int) Math.ceil((place + 1) * share) > (int) Math.ceil(place * share)) {
                chosen.add(part);
            }
        }
        for (int turn = 1; chosen.size() < count; turn++) {
            for (Part part : demo) {
                if (chosen.size() == count) {
                    break;
                }
                if (part instanceof Battery battery) {
                    chosen.add(new Battery(
                            again(part.listing(), turn),
                            battery.store(),
                            battery.mostInParallel(),
                            battery.mostInSeries(),
                            battery.casing()));
                } else if (part instanceof Panel panel) {
                    chosen.add(new Panel(again(part.listing(), turn), panel.sheet(), panel.noctDegC(), panel.tail()));
                }
            }
        }
        return chosen;
    }

    private static Listing again(Listing listing, int turn) {
        return new Listing(
                listing.id() + "-again" + turn,
                listing.name(),
                listing.priceCents() + 7L * turn,
                listing.currency(),
                listing.pricedOn(),
                listing.condition(),
                listing.atHand(),
                listing.massKg(),
                listing.source());
    }
}
