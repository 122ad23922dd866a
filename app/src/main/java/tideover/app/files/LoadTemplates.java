package tideover.app.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import tideover.engine.load.Usual;
import tideover.engine.load.UsualLoads;

/**
 * Loads that can be put on a plan by a word, as blocks of its own text: the usual loads, with the hours in which most people use
 * them, and cold boxes. What a block says is a beginning, to be mended by label and meter; its watts come from the usual load.
 */
public final class LoadTemplates {
    private static final String MAINS = "120 V AC 60 Hz, NEMA 5-15";

    /** What joining a hard-wired load to a rig may cost: a guess to be mended; common practice, no source. */
    public static final String JOINING = "350 USD";

    private LoadTemplates() {}

    /** Use, where it is not always on; common practice, no source. */
    private static final Map<String, String> USE = Map.ofEntries(
            Map.entry("sleep-therapy device, no heat", "hours: [22:00-06:00]"),
            Map.entry("sleep-therapy device, heated humidifier and tube", "hours: [22:00-06:00]"),
            Map.entry("heated blanket", "hours: [21:00-23:00]"),
            Map.entry("heated mattress pad", "hours: [21:00-23:00]"),
            Map.entry("lamp", "hours: [17:00-23:00]"),
            Map.entry("television", "hours: [19:00-21:00]"),
            Map.entry("rice cooker", "hours: [17:30-18:00]"),
            Map.entry("kettle", "need: {hours: 10 min, between: 07:00, and: 19:00}"),
            Map.entry("microwave oven", "need: {hours: 15 min, between: 07:00, and: 19:00}"),
            Map.entry("laptop", "need: {hours: 3 h, between: 08:00, and: 20:00}"),
            Map.entry("phone", "need: {hours: 90 min, between: 08:00, and: 20:00}"),
            Map.entry("power tool charger", "need: {hours: 1 h, between: 09:00, and: 16:00}"));

    /** Always on is too much for these, and when they run nobody knows beforehand; a stretch of the day stands in. */
    private static final String NOW_AND_THEN = "need: {hours: 2 h, between: 07:00, and: 21:00}";

    private static final List<Template> COLD = List.of(
            new Template(
                    "chest-freezer", "Chest freezer", false, false, cold("chest freezer", "200 L", "{full: 60 %}")),
            new Template(
                    "upright-freezer",
                    "Upright freezer",
                    false,
                    false,
                    cold("upright freezer", "200 L", "{full: 60 %}")),
            new Template(
                    "refrigerator",
                    "Refrigerator with freezer part",
                    false,
                    false,
                    cold("refrigerator", "400 L", "{full: 40 %}") + "freezer part: 90 L\n"),
            new Template(
                    "medicine-fridge",
                    "Medicine fridge",
                    true,
                    false,
                    cold("medicine fridge", "40 L", "{medicine: 2 kg}")
                            + "need: {between: 2 degC, and: 8 degC}\n"
                            + "medical: {can be without: 0 s}\n"));

    /**
     * One load to choose.
     *
     * @param medical   whether somebody's health may hang on it
     * @param hardWired whether it hangs on the wires of the house, so that joining it costs something
     * @param yaml      the block, but for its name
     */
    public record Template(String id, String name, boolean medical, boolean hardWired, String yaml) {
        /** The block under a name that the plan does not have yet. */
        public String block(Predicate<String> taken) {
            String free = name;
            for (int number = 2; taken.test(free); number++) {
                free = name + " " + number;
            }
            return "name: " + free + "\n" + yaml;
        }
    }

    public static List<Template> all() {
        List<Template> all = new ArrayList<>(COLD);
        for (Usual usual : UsualLoads.all()) {
            String name =
                    Character.toUpperCase(usual.word().charAt(0)) + usual.word().substring(1);
            all.add(new Template(
                    usual.word().replaceAll("[^a-z0-9]+", "-"),
                    name.replace(",", ""),
                    usual.medical(),
                    usual.hardWired(),
                    block(usual)));
        }
        return all;
    }

    private static String block(Usual usual) {
        String use = USE.getOrDefault(usual.word(), isByTurns(usual) ? NOW_AND_THEN : "need: always on");
        String supply = usual.ac() ? MAINS : usual.word().equals("phone") ? "5 V DC, USB-A" : "12 V DC, car socket";
        return "like: " + usual.word() + "\n"
                + "runs: " + (use.startsWith("hours") ? "at set hours" : "steady") + "\n"
                + "supply: " + supply + "\n"
                + "essential: yes\n"
                + use + "\n"
                + (usual.medical() ? "medical: {can be without: 0 s}\n" : "");
    }

    private static boolean isByTurns(Usual usual) {
        return usual.word().contains("pump")
                || usual.word().equals("fan")
                || usual.word().equals("radio");
    }

    private static String cold(String box, String holds, String contents) {
        return "runs: cold box\nbox: " + box + "\nholds: " + holds + "\nsupply: " + MAINS + "\ncontents: " + contents
                + "\n";
    }
}
