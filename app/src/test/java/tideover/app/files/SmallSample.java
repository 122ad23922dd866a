package tideover.app.files;

import java.util.List;
import java.util.Map;
import tideover.engine.answer.Question;

/** A small sound file of small parts, one of each kind, to be bent in tests; the {@link Sample} plan that names it. */
final class SmallSample {
    static final String NAME = "small-parts.csv";

    static final String PLAN = Sample.PLAN
                    .lines()
                    .filter(line -> !line.contains("small parts:"))
                    .reduce("", (plan, line) -> plan + line + "\n")
            + "small parts: " + NAME + "\n";

    static final String HEADER = String.join(",", SmallPartsFile.COLUMNS) + "\n";

    static final String CABLE = row("cable", "cable-10", "size", "10 AWG", "metal", "copper", "insulation_c", "105");
    static final String REEL = row("cable", "reel-10", "size", "10 AWG", "insulation_c", "90", "pack", "7.5");
    static final String CORD = row(
            "cord",
            "cord-10",
            "size",
            "10 AWG",
            "length_m",
            "15",
            "rated_a",
            "15",
            "volts",
            "120",
            "plug",
            "NEMA 5-15");
    static final String FUSE = row(
            "fuse",
            "blade-15",
            "format",
            "blade",
            "rated_a",
            "15",
            "dc_v",
            "32",
            "interrupting_a",
            "1000",
            "pack",
            "5");
    static final String HOLDER = row("fuse holder", "blade-holder", "format", "blade", "rated_a", "30");
    static final String BREAKER =
            row("breaker", "dc-30", "rated_a", "30", "dc_v", "60", "interrupting_a", "5000", "polarised", "yes");
    static final String SWITCH = row("switch", "main", "rated_a", "200", "dc_v", "48");
    static final String LUG = row("lug", "lug-10", "size", "10 AWG", "pack", "10");
    static final String LEAD = row(
            "panel lead",
            "lead-5",
            "connector",
            "Invented plug",
            "size",
            "10 AWG",
            "insulation_c",
            "90",
            "length_m",
            "5",
            "rated_a",
            "30");
    static final String BRANCH = row("panel branch", "fork", "connector", "Invented plug", "rated_a", "30");
    static final String BUSBAR = row("busbar", "bar-150", "rated_a", "150");
    static final String FITTING = row("fitting", "shrink", "use", "heat shrink", "pack", "20");
    static final String TOOL = row("tool", "meter", "job", "multimeter");

    /** In the order of the fields above: the cable in line 2, the tool in line 14. */
    static final String FILE = HEADER + CABLE + REEL + CORD + FUSE + HOLDER + BREAKER + SWITCH + LUG + LEAD + BRANCH
            + BUSBAR + FITTING + TOOL;

    private SmallSample() {}

    /** @param columnsAndCells what stands beside the listing */
    private static String row(String kind, String id, String... columnsAndCells) {
        List<String> given = List.of(columnsAndCells);
        String listing = kind + "," + id + ",Invented " + kind + ",2.50,USD,2026-02-03,new,0.1";
        StringBuilder row = new StringBuilder(listing);
        for (String column :
                SmallPartsFile.COLUMNS.subList(PartsFile.LISTING_COLUMNS.size(), SmallPartsFile.COLUMNS.size())) {
            int at = given.indexOf(column);
            row.append(',').append(at < 0 ? "" : given.get(at + 1));
        }
        return row + "\n";
    }

    /** A row with one cell put otherwise. */
    static String bent(String row, String column, String cell) {
        return Sample.bent(SmallPartsFile.COLUMNS, row, column, cell);
    }

    static Question read(String file) {
        return read(PLAN, file);
    }

    static Question read(String plan, String file) {
        return PlanFile.read(
                "plan.yaml", plan, Beside.texts(Map.of("parts.csv", Sample.PARTS, NAME, file)), ExampleTest.STATIONS);
    }

    static List<String> problemsIn(String file) {
        return Sample.problemsOf(() -> read(file));
    }
}
