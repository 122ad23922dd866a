package tideover.app.files;

import java.util.List;
import java.util.Map;
import tideover.engine.answer.Question;
import tideover.engine.why.InputProblems;
import tideover.engine.why.Problem;

/** A small sound plan with its parts, to be bent in tests. */
final class Sample {
    static final String PLAN = """
            plan: Test house
            place:
              station: Astoria Regional Airport OR
              coldest on record: -14 degC
            outage:
              months: [nov, dec, jan]
              lasts: 72 h
              carried: 95 %
            panels:
              tilt: 60 deg
            store room: garage
            loads:
              - name: Scanner
                runs: steady
                draws: 3 W
                supply: 12 V DC, car socket
                essential: yes
                need: always on
              - name: Lamps
                runs: at set hours
                draws: 8 W
                supply: 120 V AC 60 Hz, NEMA 5-15
                essential: no
                hours: [17:00-23:00]
            money:
              at most: 900 USD
              small parts: {ready box: 0 USD, enclosure: 35 USD, separate parts: 90 USD}
            look at:
              most panels: 3
              most batteries: 2
            parts: parts.csv
            """;

    static final String HEADER = String.join(",", PartsFile.COLUMNS) + "\n";

    static final String BOX = row(Map.ofEntries(
            Map.entry("kind", "box"),
            Map.entry("id", "box-1"),
            Map.entry("name", "Invented box"),
            Map.entry("price", "199.50"),
            Map.entry("currency", "USD"),
            Map.entry("priced_on", "2026-02-11"),
            Map.entry("condition", "new"),
            Map.entry("mass_kg", "4.2"),
            Map.entry("usable_wh", "500"),
            Map.entry("charge_efficiency_pct", "97"),
            Map.entry("discharge_efficiency_pct", "96"),
            Map.entry("nominal_v", "12.8"),
            Map.entry("max_charge_a", "14"),
            Map.entry("max_discharge_a", "45"),
            Map.entry("max_output_a", "12"),
            Map.entry("max_input_v", "30"),
            Map.entry("controller_efficiency_pct", "93"),
            Map.entry("rated_w", "450"),
            Map.entry("inverter_efficiency_pct", "88"),
            Map.entry("standing_w", "7.5"),
            Map.entry("outlets", "2x 120 V AC 60 Hz NEMA 5-15 450 W; 1x 12 V DC car socket 120 W")));

    static final String PANEL = row(Map.ofEntries(
            Map.entry("kind", "panel"),
            Map.entry("id", "panel-100"),
            Map.entry("name", "Invented panel"),
            Map.entry("price", "74"),
            Map.entry("currency", "USD"),
            Map.entry("priced_on", "2026-02-11"),
            Map.entry("condition", "used"),
            Map.entry("mass_kg", "6.3"),
            Map.entry("at_hand", "6"),
            Map.entry("panel_w", "100"),
            Map.entry("open_circuit_v", "22.4"),
            Map.entry("power_pct_per_k", "-0.36"),
            Map.entry("voltage_pct_per_k", "-0.28"),
            Map.entry("noct_c", "45")));

    static final String BATTERY = row(Map.ofEntries(
            Map.entry("kind", "battery"),
            Map.entry("id", "batt-50"),
            Map.entry("name", "Invented battery"),
            Map.entry("price", "0"),
            Map.entry("currency", "USD"),
            Map.entry("priced_on", "2026-02-11"),
            Map.entry("condition", "owned"),
            Map.entry("mass_kg", "5.9"),
            Map.entry("usable_wh", "600"),
            Map.entry("charge_efficiency_pct", "98"),
            Map.entry("discharge_efficiency_pct", "97"),
            Map.entry("nominal_v", "12.8"),
            Map.entry("max_charge_a", "25"),
            Map.entry("max_discharge_a", "50"),
            Map.entry("most_in_parallel", "4")));

    static final String PARTS = HEADER + BOX + PANEL + BATTERY;

    private Sample() {}

    static String row(Map<String, String> cells) {
        StringBuilder row = new StringBuilder();
        for (String column : PartsFile.COLUMNS) {
            String cell = cells.getOrDefault(column, "");
            row.append(row.isEmpty() ? "" : ",").append(cell);
        }
        return row + "\n";
    }

    /** A row with one cell put otherwise. */
    static String bent(String row, String column, String cell) {
        return bent(PartsFile.COLUMNS, row, column, cell);
    }

    static String bent(List<String> columns, String row, String column, String cell) {
        String[] cells = row.strip().split(",", -1);
        cells[columns.indexOf(column)] = cell;
        return String.join(",", cells) + "\n";
    }

    static Question read(String plan) {
        return read(plan, PARTS);
    }

    static Question read(String plan, String parts) {
        return PlanFile.read(
                "plan.yaml",
                plan,
                Beside.texts(Map.of("parts.csv", parts, SmallSample.NAME, SmallSample.FILE)),
                ExampleTest.STATIONS);
    }

    /** The sentences of everything wrong with a plan whose text is changed in one place. */
    static List<String> problemsWith(String from, String to) {
        if (!PLAN.contains(from)) {
            throw new IllegalArgumentException("the sample plan does not hold: " + from);
        }
        return problemsIn(PLAN.replace(from, to));
    }

    static List<String> problemsIn(String plan) {
        return problemsOf(() -> read(plan, PARTS));
    }

    static List<String> problemsInParts(String parts) {
        return problemsOf(() -> read(PLAN, parts));
    }

    static List<String> problemsOf(Runnable reading) {
        try {
            reading.run();
        } catch (InputProblems e) {
            return e.problems().stream().map(Problem::sentence).toList();
        }
        return List.of();
    }
}
