package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.load.Supply;
import tideover.engine.part.Charger;
import tideover.engine.part.Condition;
import tideover.engine.part.Engine;
import tideover.engine.part.Fuel;
import tideover.engine.part.Listing;
import tideover.engine.part.Outlet;
import tideover.engine.part.Surge;
import tideover.engine.why.Stated;

class EngineColumnsTest {
    private static final Map<String, String> ENGINE = Map.ofEntries(
            Map.entry("kind", "engine"),
            Map.entry("id", "eng"),
            Map.entry("name", "Invented engine"),
            Map.entry("price", "329"),
            Map.entry("currency", "USD"),
            Map.entry("priced_on", "2026-02-11"),
            Map.entry("condition", "new"),
            Map.entry("mass_kg", "13.5"),
            Map.entry("engine_w", "1000"),
            Map.entry("surge_va", "1300"),
            Map.entry("surge_va_s", "5"),
            Map.entry("fuel", "petrol"),
            Map.entry("no_load_l_h", "0.28"),
            Map.entry("half_load_l_h", "0.45"),
            Map.entry("full_load_l_h", "0.72"),
            Map.entry("tank_l", "2.6"),
            Map.entry("fuel_price_l", "1.05"),
            Map.entry("fuel_keeps_months", "8"),
            Map.entry("noise_dba_7m", "58"),
            Map.entry("bears_load_s", "45"),
            Map.entry("starts_itself", "yes"),
            Map.entry("service_h", "100"),
            Map.entry("service_price", "18.50"),
            Map.entry("outlets", "2x 120 V AC 60 Hz NEMA 5-15 1000 W"));

    private static final Map<String, String> VEHICLE = Map.ofEntries(
            Map.entry("kind", "vehicle"),
            Map.entry("id", "truck"),
            Map.entry("name", "Invented truck"),
            Map.entry("price", "0"),
            Map.entry("currency", "USD"),
            Map.entry("priced_on", "2026-02-11"),
            Map.entry("condition", "owned"),
            Map.entry("mass_kg", "1650"),
            Map.entry("engine_w", "240"),
            Map.entry("fuel", "diesel"),
            Map.entry("idle_l_h", "1.1"),
            Map.entry("tank_l", "40"),
            Map.entry("fuel_price_l", "1.2"),
            Map.entry("outlets", "1x 12 V DC car socket 120 W"));

    private static String row(Map<String, String> cells, String... changes) {
        Map<String, String> changed = new HashMap<>(cells);
        for (int i = 0; i < changes.length; i += 2) {
            changed.put(changes[i], changes[i + 1]);
        }
        return Sample.HEADER + Sample.row(changed);
    }

    /** One that every test may add to a parts file. */
    static String engineRow() {
        return Sample.row(ENGINE);
    }

    private static Listing listing(String id, String name, long cents, Condition condition, int atHand, double kg) {
        return new Listing(id, name, cents, "USD", LocalDate.of(2026, 2, 11), condition, atHand, kg, "parts.csv:2");
    }

    @Test
    void anEngineIsReadCellByCell() {
        assertThat(Sample.read(Sample.PLAN, row(ENGINE)).parts())
                .containsExactly(new Engine(
                        listing("eng", "Invented engine", 32_900, Condition.NEW, 1000, 13.5),
                        false,
                        1000,
                        new Surge(1300, 5),
                        List.of(new Outlet(Supply.ac(120, 60, "NEMA 5-15"), 2, 1000, 1)),
                        new Fuel(Fuel.Kind.PETROL, 2.6, 105, 8),
                        new Engine.Burn(0.28, 0.45, 0.72),
                        new Engine.Habits(58, 45, Stated.YES, 100, 1850)));
    }

    @Test
    void aVehicleIsReadAndNeverStartsItself() {
        assertThat(Sample.read(Sample.PLAN, row(VEHICLE)).parts())
                .containsExactly(new Engine(
                        listing("truck", "Invented truck", 0, Condition.OWNED, 1, 1650),
                        true,
                        240,
                        Surge.UNKNOWN,
                        List.of(new Outlet(Supply.dc(12, "car socket"), 1, 120, 1)),
                        new Fuel(Fuel.Kind.DIESEL, 40, 120, 12),
                        Engine.Burn.atIdle(1.1),
                        new Engine.Habits(Double.NaN, Double.NaN, Stated.NO, Double.NaN, Double.NaN)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "engine_w|0|2 engine_w: found \"0\", expected the watts it gives for hours",
                "surge_va|900|2 surge_va: found \"900\", expected no less than engine_w, or an empty cell.",
                "surge_va|''|2 surge_va_s: found \"5\", expected an empty cell without surge_va.",
                "fuel|petroll|2 fuel: found \"petroll\", expected what it burns: petrol, diesel, propane. Write petrol.",
                "half_load_l_h|0.2|2 half_load_l_h: found \"0.2\", expected no less than no_load_l_h.",
                "full_load_l_h|''|2 full_load_l_h: found an empty cell, expected the litres it burns in an hour",
                "engine_w|4000|2 surge_va: found \"1300\", expected no less than engine_w",
                "tank_l|-1|2 tank_l: found \"-1\", expected the litres in its tank",
                "idle_l_h|1|2 idle_l_h: found \"1\", expected an empty cell: this column is not for a part of kind engine",
                "starts_itself|often|2 starts_itself: found \"often\", expected whether it starts by itself",
                "outlets|1x 12 V DC car socket 120 W|2 outlets: found the outlet 12 V DC, car socket, expected alternating current only from an engine."
            })
    void aSlipIsTold(String column, String cell, String problem) {
        assertThat(Sample.problemsInParts(row(ENGINE, column, cell)))
                .anyMatch(told -> told.startsWith("parts.csv:" + problem));
    }

    /** 5000 W from .72 L of petrol an hour would be 78 % of its heat. */
    @Test
    void whatNoEngineCanDoIsRefused() {
        assertThat(Sample.problemsInParts(row(ENGINE, "engine_w", "5000", "surge_va", "", "surge_va_s", "")))
                .singleElement()
                .asString()
                .contains("full_load_l_h", "78 % of the heat of its fuel", "at most 50 %");
    }

    @Test
    void aVehicleHasNeitherSurgeNorMains() {
        assertThat(Sample.problemsInParts(row(VEHICLE, "surge_va", "500"))).hasSize(1);
        assertThat(Sample.problemsInParts(row(VEHICLE, "outlets", "1x 120 V AC 60 Hz NEMA 5-15 400 W")))
                .hasSize(1);
        assertThat(Sample.problemsInParts(row(VEHICLE, "no_load_l_h", "0.4"))).hasSize(1);
    }

    @Test
    void aChargerTellsWhatFeedsIt() {
        Map<String, String> charger = Map.ofEntries(
                Map.entry("kind", "charger"),
                Map.entry("id", "ch"),
                Map.entry("name", "Invented charger"),
                Map.entry("price", "58"),
                Map.entry("currency", "USD"),
                Map.entry("priced_on", "2026-02-11"),
                Map.entry("condition", "new"),
                Map.entry("mass_kg", "0.6"),
                Map.entry("charger_a", "8"),
                Map.entry("least_bus_v", "12"),
                Map.entry("most_bus_v", "12.8"),
                Map.entry("charger_efficiency_pct", "88"),
                Map.entry("fed_by", "12 V DC car socket"));
        List<Charger> read = new ArrayList<>();
        Sample.read(Sample.PLAN, row(charger)).parts().forEach(part -> read.add((Charger) part));
        assertThat(read).singleElement().satisfies(one -> {
            assertThat(one.fedBy()).isEqualTo(Supply.dc(12, "car socket"));
            assertThat(one.isDirect()).isTrue();
        });
        assertThat(Sample.problemsInParts(row(charger, "fed_by", "12 V")))
                .singleElement()
                .asString()
                .contains("2 fed_by: found \"12 V\"");
    }
}
