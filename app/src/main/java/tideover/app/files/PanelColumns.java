package tideover.app.files;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Listing;
import tideover.engine.part.Panel;

/** A solar panel by its data sheet. */
final class PanelColumns {
    static final List<String> ALL =
            List.of("panel_w", "open_circuit_v", "power_pct_per_k", "voltage_pct_per_k", "noct_c");

    private PanelColumns() {}

    static @Nullable Panel read(Row row, Listing listing) {
        int before = row.flaws();
        double ratedW =
                row.number("panel_w", "rated watts", "W", Range.above(0, 2000).likely(5, 700));
        double openCircuitV = row.number(
                "open_circuit_v",
                "volts with nothing connected",
                "V",
                Range.above(0, 300).likely(5, 80));
        double powerPct = row.number(
                "power_pct_per_k",
                "change of power per kelvin",
                "%/K",
                Range.from(-2, 0).likely(-0.6, -0.2));
        double voltPct = row.number(
                "voltage_pct_per_k",
                "change of open-circuit volts per kelvin",
                "%/K",
                Range.from(-2, 0).likely(-0.5, -0.2));
        double noctDegC = row.number(
                "noct_c",
                "cell temperature in its standard sun",
                "degC",
                Range.from(20, 90).likely(38, 55));
        if (row.flaws() > before) {
            return null;
        }
        return new Panel(listing, ratedW, openCircuitV, powerPct / 100, voltPct / 100, noctDegC);
    }
}
