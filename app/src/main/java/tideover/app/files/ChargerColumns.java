package tideover.app.files;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.battery.Chemistry;
import tideover.engine.load.Supply;
import tideover.engine.part.Charger;
import tideover.engine.part.Listing;

/** A charger of its own; the volts it serves and the chemistries stand in the controller's columns. */
final class ChargerColumns {
    static final List<String> OWN = List.of("charger_a", "charger_efficiency_pct", "fed_by");

    private ChargerColumns() {}

    static @Nullable Charger read(Row row, Listing listing) {
        int before = row.flaws();
        double amps = row.number(
                "charger_a",
                "the most current it gives",
                "A",
                Range.above(0, 1000).likely(0.5, 150));
        double leastBusV = row.number("least_bus_v", "the lowest battery volts it serves", "V", PartsFile.VOLTS);
        double mostBusV = row.number("most_bus_v", "the highest battery volts it serves", "V", PartsFile.VOLTS);
        ControllerColumns.tellOrder(row, leastBusV, mostBusV);
        double efficiencyPct = row.number("charger_efficiency_pct", "out per in", "%", PartsFile.EFFICIENCY_PCT);
        Set<Chemistry> charges = ChemistryText.several(row, "charges");
        Supply fedBy = fedBy(row);
        return row.flaws() > before
                ? null
                : new Charger(listing, amps, leastBusV, mostBusV, efficiencyPct / 100, charges, fedBy);
    }

    private static @Nullable Supply fedBy(Row row) {
        String typed = row.cell("fed_by");
        if (typed.isEmpty()) {
            return null;
        }
        Supply supply = SupplyText.read(typed);
        if (supply == null) {
            row.problem("fed_by", Reading.quoted(typed), SupplyText.EXPECTED, SupplyText.suggestion(typed));
        }
        return supply;
    }
}
