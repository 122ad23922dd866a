package tideover.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.battery.Chemistry;
import tideover.engine.electronics.InverterLoss;
import tideover.engine.electronics.Tracking;
import tideover.engine.electronics.Wave;
import tideover.engine.part.Battery;
import tideover.engine.part.ChargeController;
import tideover.engine.part.Charger;
import tideover.engine.part.ControllerRating;
import tideover.engine.part.Inverter;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Panel;
import tideover.engine.part.Part;
import tideover.engine.part.PlainStore;
import tideover.engine.part.RatedStore;
import tideover.engine.part.ReadyBox;
import tideover.engine.part.Surge;
import tideover.engine.why.Stated;

/** Rows that hold more than a plain label: data sheets of batteries, controllers, inverters, chargers and panels. */
class RatedPartsTest {
    private static final String BATTERY = row(
            "battery",
            "new",
            Map.ofEntries(
                    Map.entry("chemistry", "agm"),
                    Map.entry("rated_ah", "100"),
                    Map.entry("rated_hours", "20"),
                    Map.entry("fast_ah", "85"),
                    Map.entry("fast_hours", "5"),
                    Map.entry("nominal_v", "12"),
                    Map.entry("max_charge_a", "20"),
                    Map.entry("max_discharge_a", "80"),
                    Map.entry("inner_mohm", "5"),
                    Map.entry("surge_a", "400"),
                    Map.entry("surge_a_s", "5"),
                    Map.entry("cut_off_v", "10.5"),
                    Map.entry("cold_lock_out", "no"),
                    Map.entry("heater_w", "30"),
                    Map.entry("heater_holds_c", "5"),
                    Map.entry("depth_pct", "60"),
                    Map.entry("maker_standing", "known"),
                    Map.entry("most_in_parallel", "4"),
                    Map.entry("most_in_series", "2")));
    private static final String IRON = row(
            "battery",
            "used",
            Map.of(
                    "chemistry", "Iron Phosphate",
                    "rated_ah", "100",
                    "nominal_v", "12.8",
                    "max_charge_a", "50",
                    "max_discharge_a", "100"));
    private static final String CONTROLLER = row(
            "controller",
            "new",
            Map.of(
                    "max_output_a", "30",
                    "max_input_v", "100",
                    "least_bus_v", "12",
                    "most_bus_v", "25.6",
                    "controller_efficiency_pct", "97",
                    "tracking", "mppt",
                    "start_v", "5",
                    "max_input_a", "30",
                    "starts_without_battery", "yes",
                    "charges", "flooded; AGM; iron phosphate"));
    private static final String INVERTER = row(
            "inverter",
            "new",
            Map.ofEntries(
                    Map.entry("rated_w", "1200"),
                    Map.entry("standing_w", "9"),
                    Map.entry("inverter_input_v", "12"),
                    Map.entry("efficiency_half_pct", "93"),
                    Map.entry("efficiency_full_pct", "89"),
                    Map.entry("surge_va", "2400"),
                    Map.entry("surge_va_s", "5"),
                    Map.entry("off_below_v", "10.5"),
                    Map.entry("on_again_v", "12.3"),
                    Map.entry("off_above_v", "15.5"),
                    Map.entry("wave", "sine"),
                    Map.entry("sleeps_below_w", "6"),
                    Map.entry("wakes_by_itself", "no"),
                    Map.entry("restarts_after_flat", "yes"),
                    Map.entry("transfer_s", "0.02"),
                    Map.entry("outlets", "2x 120 V AC 60 Hz NEMA 5-15 1200 W")));
    private static final String CHARGER = row(
            "charger",
            "new",
            Map.of(
                    "charger_a", "15",
                    "least_bus_v", "12",
                    "most_bus_v", "12.8",
                    "charger_efficiency_pct", "87",
                    "charges", "gel;agm"));
    private static final String PANEL = row(
            "panel",
            "new",
            Map.of(
                    "panel_w", "100",
                    "open_circuit_v", "22.4",
                    "power_pct_per_k", "-0.36",
                    "voltage_pct_per_k", "-0.28",
                    "noct_c", "45",
                    "short_circuit_a", "5.81",
                    "best_v", "18.4",
                    "cells", "36",
                    "current_pct_per_k", "0.05"));

    private static String row(String kind, String condition, Map<String, String> cells) {
        Map<String, String> all = new HashMap<>(Map.of(
                "kind", kind,
                "id", "part-1",
                "name", "Invented part",
                "price", "99",
                "currency", "USD",
                "priced_on", "2026-02-11",
                "condition", condition,
                "mass_kg", "20"));
        all.putAll(cells);
        return Sample.row(all);
    }

    private static Part read(String row) {
        return Sample.read(Sample.PLAN, Sample.HEADER + row).parts().get(0);
    }

    private static RatedStore store(String row) {
        return (RatedStore) ((Battery) read(row)).store();
    }

    private static List<String> cautions(String row) {
        return Sample.read(Sample.PLAN, Sample.HEADER + row).cautions().stream()
                .filter(caution -> caution.startsWith("parts.csv"))
                .toList();
    }

    @Test
    void aBatteryByItsDataSheet() {
        Battery battery = (Battery) read(BATTERY);

        assertThat(battery.store())
                .isEqualTo(new RatedStore(
                        Chemistry.AGM_LEAD,
                        new RatedStore.Capacity(100, 20, 85, 5),
                        12,
                        0.005,
                        20,
                        80,
                        new RatedStore.Guard(new Surge(400, 5), 10.5, Stated.NO),
                        new RatedStore.Heater(30, 5),
                        0.6,
                        new RatedStore.Worth(0.95, 1),
                        20));
        assertThat(battery.mostInParallel()).isEqualTo(4);
        assertThat(battery.mostInSeries()).isEqualTo(2);
        assertThat(cautions(BATTERY)).isEmpty();
    }

    @Test
    void whatADataSheetDoesNotSayStaysUnknown() {
        Battery battery = (Battery) read(IRON);

        assertThat(battery.store())
                .isEqualTo(new RatedStore(
                        Chemistry.IRON_PHOSPHATE,
                        RatedStore.Capacity.of(100, 20),
                        12.8,
                        Double.NaN,
                        50,
                        100,
                        RatedStore.Guard.UNKNOWN,
                        RatedStore.Heater.NONE,
                        Chemistry.IRON_PHOSPHATE.traits().depthUsual(),
                        new RatedStore.Worth(0.6, 0.8),
                        20));
        assertThat(battery.mostInParallel()).isEqualTo(1);
        assertThat(battery.mostInSeries()).isEqualTo(1);
        assertThat(cautions(IRON)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "flooded, FLOODED_LEAD",
        "gel, GEL_LEAD",
        "agm, AGM_LEAD",
        "iron phosphate, IRON_PHOSPHATE",
        "other lithium, OTHER_LITHIUM"
    })
    void everyChemistryHasAWord(String word, Chemistry chemistry) {
        assertThat(store(Sample.bent(IRON, "chemistry", word)).chemistry()).isEqualTo(chemistry);
        assertThat(ChemistryText.words()).hasSize(Chemistry.values().length);
    }

    @ParameterizedTest
    @CsvSource({
        "agm, new, known, '', .95, 1",
        "agm, new, unknown, '', .80, .95",
        "agm, new, '', '', .80, .95",
        "agm, used, known, '', .50, .75",
        "iron phosphate, used, '', '', .60, .80",
        "iron phosphate, owned, '', '', .60, .80",
        "flooded, used, '', 71, .6887, .71",
        "agm, new, known, 104, 1.0088, 1.04"
    })
    void theWorthOfALabel(
            String chemistry, String condition, String standing, String measured, double least, double likely) {
        String row = Sample.bent(Sample.bent(IRON, "chemistry", chemistry), "condition", condition);
        row = Sample.bent(Sample.bent(row, "maker_standing", standing), "measured_pct", measured);
        RatedStore.Worth worth = store(condition.equals("owned") ? Sample.bent(row, "price", "0") : row)
                .worth();

        assertThat(worth.least()).isCloseTo(least, offset(1e-12));
        assertThat(worth.likely()).isCloseTo(likely, offset(1e-12));
    }

    @Test
    void aBoxMayHoldARatedStoreAndAMainsCharger() {
        String row = Sample.BOX;
        for (String column : StoreColumns.PLAIN) {
            row = Sample.bent(row, column, "");
        }
        row = Sample.bent(Sample.bent(row, "chemistry", "iron phosphate"), "rated_ah", "40");
        ReadyBox box = (ReadyBox) read(Sample.bent(row, "mains_charge_w", "150"));

        assertThat(((RatedStore) box.store()).capacity().ratedAh()).isEqualTo(40);
        assertThat(((RatedStore) box.store()).unitKg()).isEqualTo(4.2);
        assertThat(box.mainsChargeW()).isEqualTo(150);
        assertThat(((ReadyBox) read(row)).mainsChargeW()).isZero();
    }

    @Test
    void aBatteryWithAPlainLabelMayStandInARowToo() {
        Battery battery = (Battery) read(Sample.bent(Sample.BATTERY, "most_in_series", "4"));

        assertThat(battery.mostInSeries()).isEqualTo(4);
    }

    @Test
    void aControllerByItsDataSheet() {
        assertThat(((ChargeController) read(CONTROLLER)).rating())
                .isEqualTo(new ControllerRating(
                        30,
                        100,
                        12,
                        25.6,
                        0.97,
                        Tracking.BEST_POINT,
                        new ControllerRating.PanelInput(5, 30, Stated.YES),
                        Set.of(Chemistry.FLOODED_LEAD, Chemistry.AGM_LEAD, Chemistry.IRON_PHOSPHATE)));
        assertThat(((ChargeController) read(Sample.bent(CONTROLLER, "tracking", "pwm"))).rating())
                .extracting(ControllerRating::tracking)
                .isEqualTo(Tracking.AT_STORE_VOLTS);
        assertThat(cautions(CONTROLLER)).isEmpty();
    }

    @Test
    void whatTheCablesOfPanelsEndIn() {
        Panel panel = (Panel) read(Sample.bent(Sample.bent(PANEL, "connector", "Invented plug"), "most_fuse_a", "15"));
        ChargeController bare = (ChargeController) read(Sample.bent(CONTROLLER, "sun_plug", "screws"));
        ReadyBox box = (ReadyBox) read(Sample.bent(Sample.BOX, "sun_plug", "Invented plug"));

        assertThat(panel.tail()).isEqualTo(new Panel.Tail("Invented plug", 15));
        assertThat(((Panel) read(PANEL)).tail()).isEqualTo(Panel.Tail.UNKNOWN);
        assertThat(bare.rating().input().plug()).isEqualTo(ControllerRating.PanelInput.BARE_ENDS);
        assertThat(box.controller()).extracting(rating -> rating.input().plug()).isEqualTo("Invented plug");
        assertThat(((ChargeController) read(CONTROLLER)).rating().input().plug())
                .isEmpty();
        assertThat(cautions(Sample.bent(PANEL, "most_fuse_a", "5")))
                .singleElement()
                .asString()
                .contains("most_fuse_a: 5 A is taken, but is unlikely for a panel that gives 5.81 A");
    }

    @Test
    void anInverterByItsDataSheet() {
        InverterRating rating = ((Inverter) read(INVERTER)).rating();

        assertThat(rating)
                .isEqualTo(new InverterRating(
                        1200,
                        InverterLoss.through(1200, 9, 0.5, 0.93, 0.89),
                        12,
                        new Surge(2400, 5),
                        new InverterRating.Window(10.5, 12.3, 15.5),
                        Wave.SINE,
                        new InverterRating.Habits(6, Stated.NO, Stated.YES, 0.02)));
        assertThat(rating.loss().efficiency(600)).isCloseTo(0.93, offset(1e-9));
        assertThat(rating.loss().efficiency(1200)).isCloseTo(0.89, offset(1e-9));
        assertThat(((Inverter) read(Sample.bent(INVERTER, "wave", "modified")))
                        .rating()
                        .wave())
                .isEqualTo(Wave.MODIFIED);
        assertThat(cautions(INVERTER)).isEmpty();
    }

    @Test
    void aCharger() {
        Charger charger = (Charger) read(CHARGER);

        assertThat(charger)
                .isEqualTo(new Charger(
                        charger.listing(), 15, 12, 12.8, 0.87, Set.of(Chemistry.GEL_LEAD, Chemistry.AGM_LEAD)));
        assertThat(cautions(CHARGER)).isEmpty();
    }

    @Test
    void aPanelByItsDataSheet() {
        Panel panel = (Panel) read(PANEL);

        assertThat(panel.sheet().assumed()).isEmpty();
        assertThat(panel.sheet().shortCircuitA()).isEqualTo(5.81);
        assertThat(panel.sheet().bestV()).isEqualTo(18.4);
        assertThat(panel.sheet().cells()).isEqualTo(36);
        assertThat(panel.sheet().currentPerK()).isCloseTo(0.0005, offset(1e-12));
        assertThat(cautions(PANEL)).isEmpty();
    }

    static Stream<Arguments> slips() {
        return Stream.of(
                // the store
                slip(
                        BATTERY,
                        "chemistry",
                        "",
                        "chemistry: found an empty cell, expected what it is made of: flooded, gel, agm, iron phosphate, other lithium."),
                slip(
                        BATTERY,
                        "chemistry",
                        "lead",
                        "chemistry: found \"lead\", expected what it is made of: flooded, gel, agm, iron phosphate, other lithium."),
                slip(
                        BATTERY,
                        "chemistry",
                        "ironphosphate",
                        "chemistry: found \"ironphosphate\", expected what it is made of: flooded, gel, agm, iron phosphate, other lithium. Write iron phosphate."),
                slip(
                        BATTERY,
                        "rated_ah",
                        "",
                        "rated_ah: found an empty cell, expected the charge on its label, above 0 Ah and at most 100000 Ah."),
                slip(
                        BATTERY,
                        "rated_ah",
                        "0",
                        "rated_ah: found \"0\", expected the charge on its label, above 0 Ah and at most 100000 Ah."),
                slip(
                        BATTERY,
                        "rated_hours",
                        "-20",
                        "rated_hours: found \"-20\", expected the hours of that rating, above 0 h and at most 240 h."),
                slip(
                        BATTERY,
                        "fast_ah",
                        "",
                        "fast_ah: found an empty cell, expected the charge when emptied faster, above 0 Ah and at most 100000 Ah."),
                slip(BATTERY, "fast_ah", "120", "fast_ah: found 120 Ah, expected at most the 100 Ah of rated_ah."),
                slip(
                        BATTERY,
                        "fast_ah",
                        "20",
                        "fast_ah: found 20 Ah in 5 h, expected more current than 100 Ah in 20 h."),
                slip(
                        BATTERY,
                        "fast_hours",
                        "",
                        "fast_hours: found an empty cell, expected the hours of that faster rating, above 0 h and at most 240 h."),
                slip(
                        BATTERY,
                        "fast_hours",
                        "20",
                        "fast_hours: found 20 h, expected fewer than the 20 h of the other rating."),
                slip(
                        BATTERY,
                        "inner_mohm",
                        "0",
                        "inner_mohm: found \"0\", expected its inner resistance, above 0 mohm and at most 10000 mohm."),
                slip(
                        BATTERY,
                        "surge_a",
                        "",
                        "surge_a: found an empty cell, expected the current it gives for a moment, above 0 A and at most 10000 A."),
                slip(BATTERY, "surge_a", "70", "surge_a: found 70 A, expected at least the 80 A of max_discharge_a."),
                slip(
                        BATTERY,
                        "surge_a_s",
                        "0",
                        "surge_a_s: found \"0\", expected how long it gives that, above 0 s and at most 3600 s."),
                slip(BATTERY, "cut_off_v", "12", "cut_off_v: found 12 V, expected less than the 12 V of nominal_v."),
                slip(
                        BATTERY,
                        "cold_lock_out",
                        "maybe",
                        "cold_lock_out: found \"maybe\", expected whether it keeps charge out below freezing: yes, no, unknown."),
                slip(
                        BATTERY,
                        "heater_w",
                        "",
                        "heater_w: found an empty cell, expected the watts of its heater, above 0 W and at most 5000 W."),
                slip(
                        BATTERY,
                        "heater_holds_c",
                        "",
                        "heater_holds_c: found an empty cell, expected the temperature its heater holds, from -20 degC to 30 degC."),
                slip(
                        BATTERY,
                        "heater_holds_c",
                        "50",
                        "heater_holds_c: found \"50\", expected the temperature its heater holds, from -20 degC to 30 degC."),
                slip(
                        BATTERY,
                        "depth_pct",
                        "0.5",
                        "depth_pct: found \"0.5\", expected the share of it you are willing to use, from 5 % to 100 %. Write 50 for 50 %."),
                slip(
                        BATTERY,
                        "depth_pct",
                        "110",
                        "depth_pct: found \"110\", expected the share of it you are willing to use, from 5 % to 100 %."),
                slip(
                        BATTERY,
                        "measured_pct",
                        "150",
                        "measured_pct: found \"150\", expected the share of its label found by a full discharge, from 5 % to 120 %."),
                slip(
                        BATTERY,
                        "maker_standing",
                        "good",
                        "maker_standing: found \"good\", expected whether its maker's labels are known to hold: known, unknown."),
                slip(
                        BATTERY,
                        "most_in_series",
                        "0",
                        "most_in_series: found \"0\", expected how many may be in a row, a whole number from 1 to 100."),
                slip(
                        BATTERY,
                        "mass_kg",
                        "0",
                        "mass_kg: found 0 kg, expected the mass of a rated battery, which decides how fast it takes the room's temperature."),
                slip(
                        BATTERY,
                        "nominal_v",
                        "0.5",
                        "cut_off_v: found 10.5 V, expected less than the 0.5 V of nominal_v.",
                        "nominal_v: found 0.5 V, expected at least about the 2 V of one cell, AGM lead-acid."),
                slip(
                        BATTERY,
                        "usable_wh",
                        "600",
                        "usable_wh: found \"600\" beside chemistry, expected either usable_wh with its two efficiencies, or chemistry and rated_ah with what goes with them. Empty the cells of the one that you do not mean."),
                slip(
                        BATTERY,
                        "discharge_efficiency_pct",
                        "9",
                        "discharge_efficiency_pct: found \"9\" beside chemistry, expected either usable_wh with its two efficiencies, or chemistry and rated_ah with what goes with them. Empty the cells of the one that you do not mean."),
                slip(
                        BATTERY,
                        "charges",
                        "agm",
                        "charges: found \"agm\", expected an empty cell: this column is not for a part of kind battery."),
                slip(
                        BATTERY,
                        "mains_charge_w",
                        "100",
                        "mains_charge_w: found \"100\", expected an empty cell: this column is not for a part of kind battery."),
                slip(
                        Sample.BOX,
                        "mains_charge_w",
                        "0",
                        "mains_charge_w: found \"0\", expected watts into its battery from the mains, above 0 W and at most 100000 W."),
                slip(
                        Sample.BOX,
                        "most_in_series",
                        "2",
                        "most_in_series: found \"2\", expected an empty cell: this column is not for a part of kind box."),
                // the controller
                slip(
                        CONTROLLER,
                        "tracking",
                        "mptt",
                        "tracking: found \"mptt\", expected how it holds the panels: mppt, pwm. Write mppt."),
                slip(
                        CONTROLLER,
                        "start_v",
                        "-1",
                        "start_v: found \"-1\", expected panel volts above the battery's that it needs to begin, from 0 V to 200 V."),
                slip(
                        CONTROLLER,
                        "max_input_a",
                        "0",
                        "max_input_a: found \"0\", expected short-circuit current that its panels may have, above 0 A and at most 1000 A."),
                slip(
                        CONTROLLER,
                        "starts_without_battery",
                        "y",
                        "starts_without_battery: found \"y\", expected whether it runs while the battery is gone: yes, no, unknown."),
                slip(
                        CONTROLLER,
                        "charges",
                        "agm; tin",
                        "charges: found \"tin\", expected chemistries it can charge, such as agm; iron phosphate, of: flooded, gel, agm, iron phosphate, other lithium."),
                slip(
                        CONTROLLER,
                        "charges",
                        "agm; floded",
                        "charges: found \"floded\", expected chemistries it can charge, such as agm; iron phosphate, of: flooded, gel, agm, iron phosphate, other lithium. Write flooded."),
                slip(
                        CONTROLLER,
                        "charges",
                        "\"agm, gel\"",
                        "charges: found \"agm, gel\", expected chemistries it can charge, such as agm; iron phosphate, of: flooded, gel, agm, iron phosphate, other lithium. Put semicolons between them."),
                slip(
                        CONTROLLER,
                        "charges",
                        "gel; gel",
                        "charges: found \"gel\" a second time, expected each chemistry once."),
                // the inverter
                slip(
                        INVERTER,
                        "efficiency_half_pct",
                        "",
                        "efficiency_half_pct: found an empty cell, expected AC out per DC in at half its rating, from 10 % to 100 %."),
                slip(
                        INVERTER,
                        "efficiency_full_pct",
                        "",
                        "efficiency_full_pct: found an empty cell, expected AC out per DC in at its rating, from 10 % to 100 %."),
                slip(
                        INVERTER,
                        "efficiency_full_pct",
                        "0.89",
                        "efficiency_full_pct: found \"0.89\", expected AC out per DC in at its rating, from 10 % to 100 %. Write 89 for 89 %."),
                slip(
                        INVERTER,
                        "efficiency_half_pct",
                        "99",
                        "efficiency_half_pct: found 99 %, expected at most 98.5 %, for the standing draw is within it."),
                slip(
                        INVERTER,
                        "inverter_efficiency_pct",
                        "90",
                        "inverter_efficiency_pct: found \"90\", expected an empty cell beside efficiency_half_pct and efficiency_full_pct."),
                slip(
                        INVERTER,
                        "standing_w",
                        "",
                        "standing_w: found an empty cell, expected what it draws with nothing plugged in, from 0 W to 1000 W."),
                slip(INVERTER, "surge_va", "1000", "surge_va: found 1000 VA, expected at least the 1200 W of rated_w."),
                slip(
                        INVERTER,
                        "surge_va",
                        "",
                        "surge_va: found an empty cell, expected the volt-amperes it gives for a moment, above 0 VA and at most 1000000 VA."),
                slip(
                        INVERTER,
                        "surge_va_s",
                        "x",
                        "surge_va_s: found \"x\", expected how long it gives those, above 0 s and at most 3600 s."),
                slip(INVERTER, "off_below_v", "12", "off_below_v: found 12 V, expected less than the 12 V it wants."),
                slip(
                        INVERTER,
                        "on_again_v",
                        "10",
                        "on_again_v: found 10 V, expected at least 10.5 V, where it switches off."),
                slip(
                        INVERTER,
                        "on_again_v",
                        "16",
                        "on_again_v: found 16 V, expected at most 15.5 V, where it switches off again."),
                slip(
                        INVERTER,
                        "off_above_v",
                        "11",
                        "off_above_v: found 11 V, expected more than the 12 V it wants.",
                        "on_again_v: found 12.3 V, expected at most 11 V, where it switches off again."),
                slip(
                        INVERTER,
                        "wave",
                        "square",
                        "wave: found \"square\", expected the form of its volts: sine, modified."),
                slip(
                        INVERTER,
                        "sleeps_below_w",
                        "1200",
                        "sleeps_below_w: found 1200 W, expected less than the 1200 W of rated_w."),
                slip(
                        INVERTER,
                        "sleeps_below_w",
                        "-1",
                        "sleeps_below_w: found \"-1\", expected watts below which it puts itself to sleep, from 0 W to 10000 W."),
                slip(
                        INVERTER,
                        "wakes_by_itself",
                        "often",
                        "wakes_by_itself: found \"often\", expected whether a load that asks again wakes it: yes, no, unknown."),
                slip(
                        INVERTER,
                        "restarts_after_flat",
                        "1",
                        "restarts_after_flat: found \"1\", expected whether it comes back after the battery ran flat: yes, no, unknown."),
                slip(
                        INVERTER,
                        "transfer_s",
                        "20 ms",
                        "transfer_s: found \"20 ms\", expected seconds for which its outlets are without power when the grid"
                                + " fails while it passes that through, from 0 s to 3600 s. Write it in seconds, 0.02."),
                // the charger
                slip(
                        CHARGER,
                        "charger_a",
                        "",
                        "charger_a: found an empty cell, expected the most current it gives, above 0 A and at most 1000 A."),
                slip(CHARGER, "least_bus_v", "24", "most_bus_v: found 12.8 V, expected at least 24 V."),
                slip(
                        CHARGER,
                        "charger_efficiency_pct",
                        "5",
                        "charger_efficiency_pct: found \"5\", expected out per in, from 10 % to 100 %."),
                slip(
                        CHARGER,
                        "max_output_a",
                        "5",
                        "max_output_a: found \"5\", expected an empty cell: this column is not for a part of kind charger."),
                // the panel
                slip(
                        PANEL,
                        "best_v",
                        "22.4",
                        "best_v: found 22.4 V, expected between 11.2 V and 22.4 V, half of open_circuit_v and the whole."),
                slip(
                        PANEL,
                        "best_v",
                        "11",
                        "best_v: found 11 V, expected between 11.2 V and 22.4 V, half of open_circuit_v and the whole."),
                slip(
                        PANEL,
                        "short_circuit_a",
                        "5.4",
                        "short_circuit_a: found 5.4 A, expected between 5.435 A and 10.87 A, what its watts and volts allow."),
                slip(
                        PANEL,
                        "short_circuit_a",
                        "11",
                        "short_circuit_a: found 11 A, expected between 5.435 A and 10.87 A, what its watts and volts allow."),
                slip(
                        Sample.bent(PANEL, "best_v", ""),
                        "short_circuit_a",
                        "4.4",
                        "short_circuit_a: found 4.4 A, expected between 4.464 A and 10.63 A, what its watts and volts allow."),
                slip(
                        PANEL,
                        "cells",
                        "0",
                        "cells: found \"0\", expected cells in series, a whole number from 1 to 1000."),
                slip(
                        PANEL,
                        "cells",
                        "360",
                        "cells: found 360 for 22.4 V, expected about one for each 0.6 V to 0.7 V. Count those in series: a panel of half cells has half as many as it shows."),
                slip(
                        PANEL,
                        "current_pct_per_k",
                        "5",
                        "current_pct_per_k: found \"5\", expected change of short-circuit current per kelvin, from -0.5 %/K to 0.5 %/K."));
    }

    private static Arguments slip(String row, String column, String cell, String... problems) {
        return arguments(column, cell, row, List.of(problems));
    }

    @ParameterizedTest(name = "{0} = {1}")
    @MethodSource("slips")
    void isTold(String column, String cell, String row, List<String> problems) {
        assertThat(Sample.problemsInParts(Sample.HEADER + Sample.bent(row, column, cell)))
                .containsExactlyElementsOf(
                        problems.stream().map(told -> "parts.csv:2 " + told).toList());
    }

    static Stream<Arguments> unlikely() {
        return Stream.of(
                slip(
                        IRON,
                        "rated_ah",
                        "5000",
                        "rated_ah: 5000 Ah is taken, but is unlikely (most lie within 1 Ah to 2000 Ah)."),
                slip(
                        IRON,
                        "rated_hours",
                        "0.5",
                        "rated_hours: 0.5 h is taken, but is unlikely (most lie within 1 h to 100 h)."),
                slip(
                        IRON,
                        "nominal_v",
                        "12",
                        "nominal_v: 12 V is taken as 4 cells, 12.8 V for lithium iron phosphate."),
                slip(
                        BATTERY,
                        "inner_mohm",
                        "50",
                        "inner_mohm: 50 mohm is taken, but is unlikely for AGM lead-acid of that size (most are near 4.98 mohm)."),
                slip(
                        BATTERY,
                        "surge_a_s",
                        "600",
                        "surge_a_s: 600 s is taken, but is unlikely (most lie within 0.05 s to 60 s)."),
                slip(BATTERY, "cut_off_v", "6", "cut_off_v: 6 V is taken, but is unlikely to spare a battery of 12 V."),
                slip(
                        BATTERY,
                        "heater_w",
                        "900",
                        "heater_w: 900 W is taken, but is unlikely (most lie within 3 W to 300 W)."),
                slip(
                        BATTERY,
                        "heater_holds_c",
                        "25",
                        "heater_holds_c: 25 degC is taken, but is unlikely (most lie within 0 degC to 15 degC)."),
                slip(
                        BATTERY,
                        "depth_pct",
                        "90",
                        "depth_pct: 90 % is taken, but lead drawn so deep does not live long (most plan with half)."),
                slip(
                        BATTERY,
                        "depth_pct",
                        "10",
                        "depth_pct: 10 % is taken, but is unlikely (most lie within 20 % to 100 %)."),
                slip(
                        BATTERY,
                        "measured_pct",
                        "115",
                        "measured_pct: 115 % is taken, but is unlikely (most lie within 30 % to 110 %)."),
                slip(
                        Sample.bent(BATTERY, "fast_hours", "0.1"),
                        "fast_ah",
                        "0.6",
                        "fast_ah: 0.6 Ah in 0.1 h is taken, but hardly goes with 100 Ah in 20 h."),
                slip(
                        Sample.BOX,
                        "mains_charge_w",
                        "5",
                        "mains_charge_w: 5 W is taken, but is unlikely (most lie within 10 W to 3000 W)."),
                slip(
                        Sample.bent(CONTROLLER, "tracking", "pwm"),
                        "controller_efficiency_pct",
                        "75",
                        "controller_efficiency_pct: 75 % is taken, but with tracking pwm it is of what the panels give at the battery's volts, usually 97 % to 100 %: their loss would be counted twice."),
                slip(
                        CONTROLLER,
                        "start_v",
                        "40",
                        "start_v: 40 V is taken, but is unlikely (most lie within 0 V to 12 V)."),
                slip(
                        CONTROLLER,
                        "max_input_a",
                        "400",
                        "max_input_a: 400 A is taken, but is unlikely (most lie within 2 A to 150 A)."),
                slip(
                        INVERTER,
                        "efficiency_half_pct",
                        "80",
                        "efficiency_half_pct: no losses that only grow go through 80 % at half load, 89 % at full and 9 W standing draw; a curve that loses more stands in."),
                slip(
                        INVERTER,
                        "surge_va",
                        "9000",
                        "surge_va: 9000 VA is taken, but is unlikely for one of 1200 W (most give up to twice their rating)."),
                slip(
                        INVERTER,
                        "surge_va_s",
                        "900",
                        "surge_va_s: 900 s is taken, but is unlikely (most lie within 0.01 s to 60 s)."),
                slip(
                        INVERTER,
                        "off_below_v",
                        "6",
                        "off_below_v: 6 V is taken, but is unlikely for one that wants 12 V."),
                slip(
                        INVERTER,
                        "on_again_v",
                        "15",
                        "on_again_v: 15 V is taken, but is unlikely for one that wants 12 V."),
                slip(
                        INVERTER,
                        "off_above_v",
                        "30",
                        "off_above_v: 30 V is taken, but is unlikely for one that wants 12 V."),
                slip(
                        INVERTER,
                        "sleeps_below_w",
                        "100",
                        "sleeps_below_w: 100 W is taken, but is unlikely (most lie within 0 W to 60 W)."),
                slip(
                        INVERTER,
                        "transfer_s",
                        "20",
                        "transfer_s: 20 s is taken, but is unlikely (most lie within 0 s to 2 s)."),
                slip(
                        CHARGER,
                        "charger_a",
                        "400",
                        "charger_a: 400 A is taken, but is unlikely (most lie within 0.5 A to 150 A)."),
                slip(
                        CHARGER,
                        "charger_efficiency_pct",
                        "40",
                        "charger_efficiency_pct: 40 % is taken, but is unlikely (most lie within 60 % to 100 %)."),
                slip(
                        PANEL,
                        "best_v",
                        "20.5",
                        "best_v: 20.5 V is taken, but is unlikely beside 22.4 V with nothing connected."),
                slip(
                        PANEL,
                        "short_circuit_a",
                        "8",
                        "short_circuit_a: 8 A is taken, but is unlikely for 100 W at such volts."),
                slip(
                        PANEL,
                        "cells",
                        "72",
                        "cells: 72 is taken, but is unlikely for 22.4 V. Count those in series: a panel of half cells has half as many as it shows."),
                slip(
                        PANEL,
                        "current_pct_per_k",
                        "-0.1",
                        "current_pct_per_k: -0.1 %/K is taken, but is unlikely (most lie within 0 %/K to 0.1 %/K)."));
    }

    @ParameterizedTest(name = "{0} = {1}")
    @MethodSource("unlikely")
    void isTakenWithACaution(String column, String cell, String row, List<String> cautions) {
        assertThat(cautions(Sample.bent(row, column, cell)))
                .containsExactlyElementsOf(
                        cautions.stream().map(told -> "parts.csv:2 " + told).toList());
    }

    @Test
    void aStoreOfNeitherKind() {
        String row = Sample.BATTERY;
        for (String column : StoreColumns.PLAIN) {
            row = Sample.bent(row, column, "");
        }

        assertThat(Sample.problemsInParts(Sample.HEADER + row))
                .containsExactly(
                        "parts.csv:2 usable_wh: found an empty cell, expected usable_wh with its two efficiencies, or"
                                + " chemistry and rated_ah.");
    }

    /** The mass is not complained of when it is the row's listing that cannot be read. */
    @Test
    void aWrongListingDoesNotHideWhatIsWrongInTheStore() {
        String row = Sample.bent(Sample.bent(BATTERY, "price", "x"), "rated_ah", "-1");

        assertThat(Sample.problemsInParts(Sample.HEADER + row))
                .containsExactly(
                        "parts.csv:2 price: found \"x\", expected an amount in plain digits, such as 249.50.",
                        "parts.csv:2 rated_ah: found \"-1\", expected the charge on its label, above 0 Ah and at most 100000 Ah.");
    }

    /** A file without any of these columns reads as it always did. */
    @Test
    void oldFilesNeedNoNewColumn() {
        String old = "kind,id,name,price,currency,priced_on,condition,mass_kg,usable_wh,charge_efficiency_pct,"
                + "discharge_efficiency_pct,nominal_v,max_charge_a,max_discharge_a\n"
                + "battery,a,An old row,1,USD,2026-01-01,new,5.9,600,98,97,12.8,25,50\n";
        Part part = Sample.read(Sample.PLAN, old).parts().get(0);

        assertThat(part).isEqualTo(new Battery(part.listing(), new PlainStore(600, 0.98, 0.97, 12.8, 25, 50), 1, 1));
    }
}
