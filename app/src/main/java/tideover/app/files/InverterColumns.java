package tideover.app.files;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.engine.electronics.InverterLoss;
import tideover.engine.electronics.Wave;
import tideover.engine.part.InverterRating;
import tideover.engine.part.Surge;

/** An inverter, by itself or in a box. */
final class InverterColumns {
    static final List<String> ALL = List.of(
            "rated_w",
            "inverter_efficiency_pct",
            "standing_w",
            "inverter_input_v",
            "efficiency_half_pct",
            "efficiency_full_pct",
            "surge_va",
            "surge_va_s",
            "off_below_v",
            "on_again_v",
            "off_above_v",
            "wave",
            "sleeps_below_w",
            "wakes_by_itself",
            "restarts_after_flat",
            "transfer_s");
    private static final Pattern THOUSANDTHS = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,6})?) ?(?:ms|msec)");
    private static final List<String> CURVE = List.of("efficiency_half_pct", "efficiency_full_pct");

    /** A fitted curve that misses a stated efficiency by more than this is worth a word. */
    private static final double MISSED = 0.005;

    private final Row row;
    private final double ratedW;
    private final double efficiencyPct;
    private final double standingW;
    private final double inputV;
    private final boolean hasCurve;
    private final double halfPct;
    private final double fullPct;

    private InverterColumns(Row row, double ownBusV) {
        this.row = row;
        hasCurve = row.hasAny(CURVE);
        ratedW = row.number(
                "rated_w",
                "the watts it gives for hours",
                "W",
                Range.above(0, 100_000).likely(20, 8000));
        efficiencyPct = hasCurve
                ? Double.NaN
                : row.number("inverter_efficiency_pct", "AC out per DC in", "%", PartsFile.EFFICIENCY_PCT);
        standingW = row.number(
                "standing_w",
                "what it draws with nothing plugged in",
                "W",
                Range.from(0, 1000).likely(0.1, 60));
        inputV = ControllerColumns.busV(row, "inverter_input_v", "the DC volts it wants", ownBusV);
        halfPct = row.numberWith(
                hasCurve, "efficiency_half_pct", "AC out per DC in at half its rating", "%", PartsFile.EFFICIENCY_PCT);
        fullPct = row.numberWith(
                hasCurve, "efficiency_full_pct", "AC out per DC in at its rating", "%", PartsFile.EFFICIENCY_PCT);
        if (hasCurve && row.has("inverter_efficiency_pct")) {
            row.problem(
                    "inverter_efficiency_pct",
                    Reading.quoted(row.cell("inverter_efficiency_pct")),
                    "an empty cell beside efficiency_half_pct and efficiency_full_pct",
                    "");
        }
    }

    /** @param ownBusV volts of the battery inside, for which the input's column may stay empty; NaN where there is none */
    static @Nullable InverterRating read(Row row, double ownBusV) {
        int before = row.flaws();
        InverterColumns columns = new InverterColumns(row, ownBusV);
        columns.checkCurve();
        Surge surge = columns.surge();
        InverterRating.Window window = columns.window();
        Wave wave = columns.wave();
        InverterRating.Habits habits = columns.habits();
        if (row.flaws() > before || surge == null || window == null) {
            return null;
        }
        return new InverterRating(columns.ratedW, columns.loss(), columns.inputV, surge, window, wave, habits);
    }

    private InverterLoss loss() {
        return hasCurve
                ? InverterLoss.through(ratedW, standingW, 0.5, halfPct / 100, fullPct / 100)
                : InverterLoss.constant(efficiencyPct / 100, standingW);
    }

    /** Holds the two efficiencies against the standing draw, which is within them, and against each other. */
    private void checkCurve() {
        boolean half = roomForStanding("efficiency_half_pct", halfPct, 0.5);
        boolean full = roomForStanding("efficiency_full_pct", fullPct, 1);
        if (!half || !full) {
            return;
        }
        InverterLoss loss = loss();
        double off = Math.max(
                Math.abs(loss.efficiency(ratedW / 2) - halfPct / 100),
                Math.abs(loss.efficiency(ratedW) - fullPct / 100));
        if (off > MISSED) {
            row.caution(
                    "efficiency_half_pct",
                    "no losses that only grow go through " + Range.shown(halfPct, "%") + " at half load, "
                            + Range.shown(fullPct, "%") + " at full and " + Range.shown(standingW, "W")
                            + " standing draw; a curve that loses more stands in.");
        }
    }

    private boolean roomForStanding(String column, double pct, double share) {
        double mostPct = 100 * share * ratedW / (share * ratedW + standingW);
        if (pct > mostPct) {
            row.problem(
                    column,
                    Range.shown(pct, "%"),
                    "at most " + Range.shown(Math.floor(10 * mostPct) / 10, "%")
                            + ", for the standing draw is within it",
                    "");
        }
        return pct <= mostPct;
    }

    private @Nullable Surge surge() {
        double va = row.numberWith(
                row.has("surge_va_s"),
                "surge_va",
                "the volt-amperes it gives for a moment",
                "VA",
                Range.above(0, 1_000_000));
        double seconds = row.numberIfAny(
                "surge_va_s",
                "how long it gives those",
                "s",
                Range.above(0, 3600).likely(0.01, 60));
        if (va < ratedW) {
            row.problem(
                    "surge_va", Range.shown(va, "VA"), "at least the " + Range.shown(ratedW, "W") + " of rated_w", "");
            return null;
        }
        if (va > 3 * ratedW) {
            row.caution(
                    "surge_va",
                    Range.shown(va, "VA") + " is taken, but is unlikely for one of " + Range.shown(ratedW, "W")
                            + " (most give up to twice their rating).");
        }
        return row.has("surge_va") && Double.isNaN(va) ? null : new Surge(va, seconds);
    }

    private InverterRating.@Nullable Window window() {
        int before = row.flaws();
        double offBelowV =
                row.numberIfAny("off_below_v", "volts below which it switches off", "V", Range.above(0, 1000));
        double onAgainV = row.numberIfAny("on_again_v", "volts at which it comes back", "V", Range.above(0, 1000));
        double offAboveV = row.numberIfAny(
                "off_above_v", "volts above which it switches off or is damaged", "V", Range.above(0, 1000));
        if (offBelowV >= inputV) {
            row.problem(
                    "off_below_v",
                    Range.shown(offBelowV, "V"),
                    "less than the " + Range.shown(inputV, "V") + " it wants",
                    "");
        }
        if (offAboveV <= inputV) {
            row.problem(
                    "off_above_v",
                    Range.shown(offAboveV, "V"),
                    "more than the " + Range.shown(inputV, "V") + " it wants",
                    "");
        }
        if (onAgainV < offBelowV) {
            row.problem(
                    "on_again_v",
                    Range.shown(onAgainV, "V"),
                    "at least " + Range.shown(offBelowV, "V") + ", where it switches off",
                    "");
        }
        if (onAgainV > offAboveV) {
            row.problem(
                    "on_again_v",
                    Range.shown(onAgainV, "V"),
                    "at most " + Range.shown(offAboveV, "V") + ", where it switches off again",
                    "");
        }
        if (row.flaws() > before) {
            return null;
        }
        unlikely("off_below_v", offBelowV, 0.75, 0.98);
        unlikely("on_again_v", onAgainV, 0.9, 1.15);
        unlikely("off_above_v", offAboveV, 1.1, 1.5);
        return new InverterRating.Window(offBelowV, onAgainV, offAboveV);
    }

    /** Volts of common inverters lie within shares of the nominal ones. Common practice, no source. */
    private void unlikely(String column, double volts, double leastShare, double mostShare) {
        if (volts < leastShare * inputV || volts > mostShare * inputV) {
            row.caution(
                    column,
                    Range.shown(volts, "V") + " is taken, but is unlikely for one that wants "
                            + Range.shown(inputV, "V") + ".");
        }
    }

    private Wave wave() {
        String word = row.has("wave") ? row.choice("wave", "the form of its volts", List.of("sine", "modified")) : null;
        return word == null ? Wave.UNKNOWN : word.equals("sine") ? Wave.SINE : Wave.MODIFIED;
    }

    private InverterRating.Habits habits() {
        double sleepsBelowW = row.numberIfAny(
                "sleeps_below_w",
                "watts below which it puts itself to sleep",
                "W",
                Range.from(0, 10_000).likely(0, 60));
        if (sleepsBelowW >= ratedW) {
            row.problem(
                    "sleeps_below_w",
                    Range.shown(sleepsBelowW, "W"),
                    "less than the " + Range.shown(ratedW, "W") + " of rated_w",
                    "");
        }
        return new InverterRating.Habits(
                sleepsBelowW,
                row.stated("wakes_by_itself", "whether a load that asks again wakes it"),
                row.stated("restarts_after_flat", "whether it comes back after the battery ran flat"),
                transferSeconds());
    }

    /** Makers tell it in thousandths; copied with that unit, the number alone would be a thousand times too long. */
    private double transferSeconds() {
        String what =
                "seconds for which its outlets are without power when the grid fails while it passes that through";
        Range range = Range.from(0, 3600).likely(0, 2);
        Matcher thousandths = THOUSANDTHS.matcher(row.cell("transfer_s"));
        if (thousandths.matches()) {
            double seconds = Double.parseDouble(thousandths.group(1)) / 1000;
            row.problem(
                    "transfer_s",
                    Reading.quoted(row.cell("transfer_s")),
                    what + ", " + range.words("s"),
                    "Write it in seconds, " + Range.shown(seconds, "") + ".");
            return Double.NaN;
        }
        return row.numberIfAny("transfer_s", what, "s", range);
    }
}
