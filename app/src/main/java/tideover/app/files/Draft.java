package tideover.app.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import tideover.engine.site.Station;
import tideover.engine.site.Stations;

/** A new plan out of the answers to a few short questions: whole, readable, and ready to be mended line by line. */
public final class Draft {
    private static final int MOST_ALIKE = 9;
    private static final int LONGEST_NAME = 200;
    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    /** Of the invented parts that come with a new plan. */
    private static final String CURRENCY = "USD";

    private Draft() {}

    /**
     * What was answered, as typed.
     *
     * @param loads  how many of each load, by the id of its template
     * @param hours  such as "72 h" or "72"
     * @param months such as "dec"
     * @param money  such as "900 USD" or "900"; empty for no limit
     * @param room   where the battery would stand
     */
    public record Answers(
            String name,
            String station,
            Map<String, Integer> loads,
            String hours,
            List<String> months,
            String carried,
            String money,
            String room) {
        public static final Answers EMPTY = new Answers(
                "",
                "",
                Map.of("router", 1, "lamp", 1, "phone", 1),
                "24 h",
                List.of("dec", "jan", "feb"),
                "95 %",
                "",
                "indoors");

        public Answers {
            loads = Map.copyOf(loads);
            months = List.copyOf(months);
        }
    }

    /** What keeps the answers from making a plan, one sentence each; empty where nothing does. */
    public static List<String> problems(Answers answers, Stations stations) {
        List<String> problems = new ArrayList<>();
        if (answers.name().isBlank()) {
            problems.add("Give the plan a name.");
        } else if (answers.name().length() > LONGEST_NAME) {
            problems.add("Give the plan a shorter name: at most " + LONGEST_NAME + " letters.");
        }
        if (station(answers, stations) == null) {
            List<String> near = stations.closestNames(answers.station(), 3);
            problems.add("No weather station is called \"" + answers.station() + "\"."
                    + (near.isEmpty() ? "" : " Is it " + String.join(", or ", near) + "?"));
        }
        if (answers.loads().isEmpty()) {
            problems.add("Choose at least one thing that must stay on.");
        }
        if (answers.months().isEmpty()) {
            problems.add("Choose at least one month in which an outage may begin.");
        }
        if (!MONTHS.containsAll(answers.months())) {
            problems.add("Months are jan, feb, mar and so on.");
        }
        if (!answers.hours().matches("\\d{1,4}(\\.\\d+)? ?(h|d|hours|days)?")) {
            problems.add("How long the outage lasts: write it as 24 h or 3 d.");
        }
        if (!answers.carried().matches("\\d{1,3}(\\.\\d+)? ?%?")) {
            problems.add("How many outages of 100 it shall carry: write it as 95 %.");
        }
        if (!answers.money().isBlank() && !answers.money().matches("\\d{1,7}(\\.\\d{1,2})?( ?[A-Z]{3})?")) {
            problems.add("The most it may cost: write it as 900 USD, or leave it empty.");
        } else if (answers.money().matches(".*[A-Z]") && !answers.money().endsWith(CURRENCY)) {
            problems.add("The invented parts of a new plan are priced in " + CURRENCY
                    + ": write the most it may cost in " + CURRENCY
                    + " too, or leave it empty.");
        }
        return problems;
    }

    private static @org.jspecify.annotations.Nullable Station station(Answers answers, Stations stations) {
        List<Station> found = answers.station().isBlank() ? List.of() : stations.search(answers.station());
        return stations.byLabel(answers.station()).orElse(found.size() == 1 ? found.get(0) : null);
    }

    /**
     * The plan's text; the answers have no problems.
     *
     * @param parts files of parts, small ones last
     */
    public static String text(Answers answers, Stations stations, List<String> parts, String smallParts) {
        Station station = station(answers, stations);
        StringBuilder text = new StringBuilder();
        text.append(
                "# Made from a few answers. Every line can be mended; docs/plan-file.md tells what each may say.\n");
        text.append("plan: Plan\n");
        text.append("# Whose weather: the nearest station is not always the one most alike. Hills and coasts part"
                + " weathers.\n");
        text.append("place:\n  station: Station\n\n");
        text.append("# When it may begin, how long it lasts, and how many of 100 such outages are to be carried.\n");
        text.append("outage:\n");
        text.append("  months: [").append(String.join(", ", answers.months())).append("]\n");
        text.append("  lasts: ").append(withUnit(answers.hours(), "h")).append('\n');
        text.append("  carried: ").append(withUnit(answers.carried(), "%")).append("\n\n");
        text.append("# Where the battery stands: its cold and heat are reckoned with.\n");
        text.append("store room: ").append(answers.room()).append("\n\n");
        text.append(
                "# What must stay on. Watts are the usual ones: a label beats them, and a meter beats the label.\n");
        text.append("loads:\n");
        List<String> names = new ArrayList<>();
        boolean isHardWired = false;
        for (LoadTemplates.Template one : LoadTemplates.all()) {
            int count = Math.min(MOST_ALIKE, answers.loads().getOrDefault(one.id(), 0));
            isHardWired |= count > 0 && one.hardWired();
            for (int i = 0; i < count; i++) {
                String block = one.block(names::contains);
                names.add(block.substring("name: ".length(), block.indexOf('\n')));
                text.append("  - ")
                        .append(block.strip().replace("\n", "\n    "))
                        .append("\n\n");
            }
        }
        if (!answers.money().isBlank() || isHardWired) {
            text.append("# What it may cost. Joining a load on the wires of the house is work for an electrician:"
                            + " a guess to be asked.\n")
                    .append("money:\n");
            if (!answers.money().isBlank()) {
                text.append("  at most: ")
                        .append(withUnit(answers.money(), CURRENCY))
                        .append('\n');
            }
            if (isHardWired) {
                text.append("  hard-wired loads: ")
                        .append(LoadTemplates.JOINING)
                        .append('\n');
            }
            text.append('\n');
        }
        text.append("# Every part, maker's name and price in these files is invented. Put your own in their place.\n");
        StringJoiner files = new StringJoiner("\n  - ", "parts:\n  - ", "\n");
        parts.forEach(files::add);
        text.append(files).append("small parts: ").append(smallParts).append('\n');
        return PlanText.of(text.toString())
                .with("plan", answers.name())
                .with("place.station", station == null ? answers.station() : station.label())
                .text();
    }

    private static String withUnit(String typed, String unit) {
        return typed.matches("[0-9.]+") ? typed + " " + unit : typed;
    }
}
