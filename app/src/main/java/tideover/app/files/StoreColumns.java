package tideover.app.files;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Listing;
import tideover.engine.part.PlainStore;
import tideover.engine.part.Store;

/**
 * The store of a battery or a box: plain, which is usable energy and two efficiencies, or rated, which is what a data
 * sheet says of a battery.
 */
final class StoreColumns {
    static final List<String> PLAIN = List.of("usable_wh", "charge_efficiency_pct", "discharge_efficiency_pct");
    static final List<String> SHARED = List.of("nominal_v", "max_charge_a", "max_discharge_a");
    static final Range AMPS = Range.above(0, 10_000);

    private StoreColumns() {}

    static @Nullable Store read(Row row, Listing listing) {
        int before = row.flaws();
        String plain = row.firstOf(PLAIN).orElse(null);
        String rated = row.firstOf(RatedColumns.ALL).orElse(null);
        if (plain != null && rated != null) {
            row.problem(
                    plain,
                    Reading.quoted(row.cell(plain)) + " beside " + rated,
                    "either usable_wh with its two efficiencies, or chemistry and rated_ah with what goes with them",
                    "Empty the cells of the one that you do not mean.");
            PLAIN.forEach(row::cell);
        }
        if (plain == null && rated == null) {
            row.tellEmpty("usable_wh", "usable_wh with its two efficiencies, or chemistry and rated_ah");
        }
        RatedColumns sheet = rated == null ? null : new RatedColumns(row, listing);
        PlainFigures label = plain != null && rated == null ? PlainFigures.read(row) : null;
        double nominalV = row.number("nominal_v", "its volts", "V", PartsFile.VOLTS);
        double maxChargeA = row.number("max_charge_a", "the most current into it", "A", AMPS.likely(0.2, 500));
        double maxDischargeA = row.number("max_discharge_a", "the most current out of it", "A", AMPS.likely(0.5, 1000));
        if (sheet != null) {
            sheet.check(nominalV, maxDischargeA);
        }
        if (row.flaws() > before) {
            return null;
        }
        if (sheet != null) {
            return sheet.store(nominalV, maxChargeA, maxDischargeA);
        }
        return label == null
                ? null
                : new PlainStore(
                        label.usableWh,
                        label.chargePct / 100,
                        label.dischargePct / 100,
                        nominalV,
                        maxChargeA,
                        maxDischargeA);
    }

    private record PlainFigures(double usableWh, double chargePct, double dischargePct) {
        static PlainFigures read(Row row) {
            return new PlainFigures(
                    row.number(
                            "usable_wh",
                            "what it stores between empty and full",
                            "Wh",
                            Range.above(0, 10_000_000).likely(20, 20_000)),
                    row.number("charge_efficiency_pct", "stored per delivered", "%", PartsFile.EFFICIENCY_PCT),
                    row.number("discharge_efficiency_pct", "given per taken out", "%", PartsFile.EFFICIENCY_PCT));
        }
    }
}
