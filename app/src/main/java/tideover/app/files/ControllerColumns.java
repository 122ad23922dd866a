package tideover.app.files;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.battery.Chemistry;
import tideover.engine.electronics.Tracking;
import tideover.engine.part.ControllerRating;
import tideover.engine.why.Stated;

/** A solar charge controller, by itself or in a box. */
final class ControllerColumns {
    static final List<String> ALL = List.of(
            "max_output_a",
            "max_input_v",
            "least_bus_v",
            "most_bus_v",
            "controller_efficiency_pct",
            "tracking",
            "start_v",
            "max_input_a",
            "starts_without_battery",
            "charges",
            "sun_plug");

    /** A pulse-width controller loses next to nothing itself; less is most likely the panels' loss, which is reckoned apart. */
    private static final double LEAST_LIKELY_PWM_PCT = 90;

    private ControllerColumns() {}

    /** @param ownBusV volts of the battery inside, for which the bus columns may stay empty; NaN where there is none */
    static @Nullable ControllerRating read(Row row, double ownBusV) {
        int before = row.flaws();
        double maxOutputA = row.number(
                "max_output_a",
                "the most current out",
                "A",
                Range.above(0, 1000).likely(1, 150));
        double maxInputV = row.number(
                "max_input_v",
                "panel volts above which it is damaged",
                "V",
                Range.above(0, 2000).likely(15, 600));
        double leastBusV = busV(row, "least_bus_v", "the lowest battery volts it serves", ownBusV);
        double mostBusV = busV(row, "most_bus_v", "the highest battery volts it serves", ownBusV);
        double efficiencyPct = row.number("controller_efficiency_pct", "out per in", "%", PartsFile.EFFICIENCY_PCT);
        tellOrder(row, leastBusV, mostBusV);
        Tracking tracking = tracking(row);
        if (tracking == Tracking.AT_STORE_VOLTS && efficiencyPct < LEAST_LIKELY_PWM_PCT) {
            row.caution(
                    "controller_efficiency_pct",
                    Range.shown(efficiencyPct, "%")
                            + " is taken, but with tracking pwm it is of what the panels give at the battery's volts, usually 97 %"
                            + " to 100 %: their loss would be counted twice.");
        }
        double startV = row.numberIfAny(
                "start_v",
                "panel volts above the battery's that it needs to begin",
                "V",
                Range.from(0, 200).likely(0, 12));
        double maxInputA = row.numberIfAny(
                "max_input_a",
                "short-circuit current that its panels may have",
                "A",
                Range.above(0, 1000).likely(2, 150));
        Stated withoutBattery = row.stated("starts_without_battery", "whether it runs while the battery is gone");
        Set<Chemistry> charges = ChemistryText.several(row, "charges");
        String plug = row.has("sun_plug")
                ? row.text(
                        "sun_plug",
                        "what its panel input takes: " + ControllerRating.PanelInput.BARE_ENDS
                                + " or the make of a panel's plug",
                        PanelColumns.LONGEST_PLUG)
                : "";
        if (row.flaws() > before) {
            return null;
        }
        return new ControllerRating(
                maxOutputA,
                maxInputV,
                leastBusV,
                mostBusV,
                efficiencyPct / 100,
                tracking,
                new ControllerRating.PanelInput(startV, maxInputA, withoutBattery, plug),
                charges);
    }

    static double busV(Row row, String column, String what, double ownBusV) {
        return Double.isNaN(ownBusV) || row.has(column) ? row.number(column, what, "V", PartsFile.VOLTS) : ownBusV;
    }

    static void tellOrder(Row row, double leastBusV, double mostBusV) {
        if (mostBusV < leastBusV) {
            row.problem("most_bus_v", Range.shown(mostBusV, "V"), "at least " + Range.shown(leastBusV, "V"), "");
        }
    }

    private static Tracking tracking(Row row) {
        String word =
                row.has("tracking") ? row.choice("tracking", "how it holds the panels", List.of("mppt", "pwm")) : null;
        return word == null ? Tracking.UNKNOWN : word.equals("mppt") ? Tracking.BEST_POINT : Tracking.AT_STORE_VOLTS;
    }
}
