package tideover.app.files;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Listing;
import tideover.engine.part.Panel;
import tideover.engine.sun.PanelSheet;

/** A solar panel by its data sheet. */
final class PanelColumns {
    static final List<String> ALL = List.of(
            "panel_w",
            "open_circuit_v",
            "power_pct_per_k",
            "voltage_pct_per_k",
            "noct_c",
            "short_circuit_a",
            "best_v",
            "cells",
            "current_pct_per_k",
            "connector",
            "most_fuse_a");

    static final int LONGEST_PLUG = 40;

    /** Best volts over open-circuit volts, watts over open-circuit volts times short-circuit amps, volts of a cell: silicon's. */
    private static final Range BEST_SHARE = Range.above(0.5, 1).likely(0.75, 0.88);

    private static final Range FILL = Range.above(0.42, 1).likely(0.6, 0.86);
    private static final Range CELL_V = Range.from(0.2, 3).likely(0.48, 0.8);

    private static final String HALF_CELLS =
            "Count those in series: a panel of half cells has half as many as it shows.";

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
        double shortCircuitA = row.numberIfAny(
                "short_circuit_a",
                "amps with its ends joined",
                "A",
                Range.above(0, 1000).likely(0.2, 25));
        double bestV = row.numberIfAny("best_v", "volts at which it gives most", "V", Range.above(0, 300));
        int cells = row.has("cells") ? row.count("cells", "cells in series", 1, 1000) : 0;
        double currentPct = row.numberIfAny(
                "current_pct_per_k",
                "change of short-circuit current per kelvin",
                "%/K",
                Range.from(-0.5, 0.5).likely(0, 0.1));
        String connector = row.has("connector") ? row.text("connector", "the make of its plugs", LONGEST_PLUG) : "";
        double mostFuseA = row.numberIfAny(
                "most_fuse_a",
                "the largest fuse in series with it",
                "A",
                Range.above(0, 1000).likely(5, 40));
        if (row.flaws() == before) {
            check(row, ratedW, openCircuitV, shortCircuitA, bestV, cells);
            checkFuse(row, mostFuseA, Double.isNaN(shortCircuitA) ? ratedW / openCircuitV : shortCircuitA);
        }
        if (row.flaws() > before) {
            return null;
        }
        PanelSheet sheet = PanelSheet.of(
                ratedW, openCircuitV, shortCircuitA, bestV, cells, currentPct / 100, voltPct / 100, powerPct / 100);
        return new Panel(listing, sheet, noctDegC, new Panel.Tail(connector, mostFuseA));
    }

    /** Holds the figures that may be left out against those that may not. */
    private static void check(
            Row row, double ratedW, double openCircuitV, double shortCircuitA, double bestV, int cells) {
        double bestShare = Double.isNaN(bestV) ? Double.NaN : bestV / openCircuitV;
        if (bestShare <= BEST_SHARE.least() || bestShare >= BEST_SHARE.most()) {
            row.problem(
                    "best_v",
                    Range.shown(bestV, "V"),
                    between(
                            BEST_SHARE.least() * openCircuitV,
                            openCircuitV,
                            "V",
                            "half of open_circuit_v and the whole"),
                    "");
            return;
        }
        if (bestShare < BEST_SHARE.likelyLeast() || bestShare > BEST_SHARE.likelyMost()) {
            row.caution(
                    "best_v",
                    Range.shown(bestV, "V") + " is taken, but is unlikely beside " + Range.shown(openCircuitV, "V")
                            + " with nothing connected.");
        }
        double fill = ratedW / (openCircuitV * shortCircuitA);
        double leastA = Double.isNaN(bestV) ? ratedW / openCircuitV : ratedW / bestV;
        double mostA = Double.isNaN(bestV) ? leastA / FILL.least() : 2 * leastA;
        if (shortCircuitA <= leastA || shortCircuitA >= mostA) {
            row.problem(
                    "short_circuit_a",
                    Range.shown(shortCircuitA, "A"),
                    between(leastA, mostA, "A", "what its watts and volts allow"),
                    "");
        } else if (fill < FILL.likelyLeast() || fill > FILL.likelyMost()) {
            row.caution(
                    "short_circuit_a",
                    Range.shown(shortCircuitA, "A") + " is taken, but is unlikely for " + Range.shown(ratedW, "W")
                            + " at such volts.");
        }
        if (cells > 0 && !CELL_V.holds(openCircuitV / cells)) {
            row.problem(
                    "cells",
                    cells + " for " + Range.shown(openCircuitV, "V"),
                    "about one for each 0.6 V to 0.7 V",
                    HALF_CELLS);
        } else if (cells > 0 && !CELL_V.likely(openCircuitV / cells)) {
            row.caution(
                    "cells",
                    cells + " is taken, but is unlikely for " + Range.shown(openCircuitV, "V") + ". " + HALF_CELLS);
        }
    }

    /** Makers name a fuse that the panel's own sun cannot blow. */
    private static void checkFuse(Row row, double mostFuseA, double ownA) {
        if (mostFuseA < ownA) {
            row.caution(
                    "most_fuse_a",
                    Range.shown(mostFuseA, "A") + " is taken, but is unlikely for a panel that gives "
                            + Range.shown(rounded(ownA), "A") + " by itself.");
        }
    }

    private static String between(double least, double most, String unit, String what) {
        return "between " + Range.shown(rounded(least), unit) + " and " + Range.shown(rounded(most), unit) + ", "
                + what;
    }

    /** To four digits. */
    private static double rounded(double value) {
        return BigDecimal.valueOf(value).round(new MathContext(4)).doubleValue();
    }
}
