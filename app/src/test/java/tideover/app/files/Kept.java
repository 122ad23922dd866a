package tideover.app.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tideover.engine.answer.Question;
import tideover.engine.load.Load;

/** Sound entries of what keeps a temperature or a level, to be bent in tests. Each begins in line 13 of the plan. */
final class Kept {
    static final String CONTENTS = "contents: {food: 60 kg}";
    static final String FREEZER = """
              - name: Freezer
                runs: cold box
                box: chest freezer
                holds: 200 L
                supply: 120 V AC 60 Hz, NEMA 5-15
                contents: {food: 60 kg}
            """;
    static final String REFRIGERATOR = """
              - name: Kitchen
                runs: cold box
                box: refrigerator
                holds: 400 L
                supply: 120 V AC 60 Hz, NEMA 5-15
                contents: {full: 40 %}
            """;
    static final String MEDICINE = """
              - name: Insulin
                runs: cold box
                box: medicine fridge
                holds: 40 L
                supply: 12 V DC, car socket
                contents: {medicine: 1 kg}
            """;
    static final String COOLER = """
              - name: Cooler
                runs: cold box
                box: cooler
                holds: 50 L
                contents: {food: 5 kg, ice: 10 kg}
            """;
    static final String PIT = "pit: {runs at: 30 L, brim: 90 L}";
    static final String INFLOW = "inflow: {usual: 20 L/h, storm peak: 900 L/h, peak after: 8 h, ebbs within: 30 h}";
    static final String PUMP = """
              - name: Sump
                runs: sump pump
                draws: 400 W
                supply: 120 V AC 60 Hz, NEMA 5-15
                pumps: 6000 L/h
                pit: {runs at: 30 L, brim: 90 L}
                inflow: {usual: 20 L/h, storm peak: 900 L/h, peak after: 8 h, ebbs within: 30 h}
            """;
    static final String HOME = "home: {set to: 19 degC, just holds at: -26 degC, cools with: 40 h}";
    static final String ABOVE = "need: {above: 12 degC}";
    static final String BOILER = """
              - name: Boiler
                runs: heating
                draws: 80 W
                standby: 4 W
                supply: 120 V AC 60 Hz, NEMA 5-15
                home: {set to: 19 degC, just holds at: -26 degC, cools with: 40 h}
                need: {above: 12 degC}
            """;

    private static final int LOADS_AT = Sample.PLAN.indexOf("  - name: Scanner");
    private static final int AFTER_LOADS_AT = Sample.PLAN.indexOf("money:");

    private Kept() {}

    /** The sample plan with these loads in the place of its own. */
    static String plan(String loads) {
        return Sample.PLAN.substring(0, LOADS_AT) + loads + Sample.PLAN.substring(AFTER_LOADS_AT);
    }

    static Question read(String load) {
        return Sample.read(plan(load));
    }

    static Load only(String load) {
        return read(load).loads().get(0);
    }

    static List<String> problems(String load) {
        return Sample.problemsIn(plan(load));
    }

    /** Of a load with one place put otherwise. */
    static List<String> problems(String load, String from, String to) {
        if (!load.contains(from)) {
            throw new IllegalArgumentException("the entry does not hold: " + from);
        }
        return problems(load.replace(from, to));
    }

    static List<Spread> spreads(String load) {
        Reading reading = new Reading();
        PlanFile.read(
                reading,
                "plan.yaml",
                plan(load),
                Beside.texts(Map.of("parts.csv", Sample.PARTS)),
                ExampleTest.STATIONS);
        return new ArrayList<>(reading.spreads());
    }
}
