package tideover.app.files;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Quantities.Measure;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.PitLoad;
import tideover.engine.load.Supply;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Basis;

/** Reads a sump pump, its pit and the water that comes in. */
final class PitReader {
    static final List<String> KEYS = List.of(
            "name",
            "runs",
            "like",
            "draws",
            "from",
            "pumps",
            "pit",
            "inflow",
            "supply",
            "essential",
            "room",
            "power factor",
            "start",
            "wave",
            "attended",
            LikeReader.HARD_WIRED,
            LikeReader.SENSES_FLAME,
            "medical");
    private static final Range DRAW_W = Range.above(0, 20_000).likely(50, 2000);
    private static final Range LITRES = Range.above(0, 1_000_000).likely(2, 1000);
    private static final Range METRES = Range.above(0, 20).likely(0.03, 2);
    private static final Range FLOW_L_PER_H = Range.above(0, 1_000_000).likely(500, 30_000);
    private static final Range INFLOW_L_PER_H = Range.from(0, 1_000_000).likely(0, 10_000);
    private static final double LITRES_PER_M3 = 1000;

    private final Reading reading;
    private final Field block;
    private final LoadReader common;
    private final String name;

    PitReader(Reading reading, Field block, LoadReader common, String name) {
        this.reading = reading;
        this.block = block;
        this.common = common;
        this.name = name;
    }

    /** Null where anything in it is wrong. */
    @Nullable
    Load read() {
        double runningW = common.draws(name, DRAW_W);
        Field pumps = block.child("pumps");
        double pumpedLPerH = pumps.quantity(Measure.FLOW, FLOW_L_PER_H);
        pumps.note(name + ": pumps", Basis.YOURS);
        PitLoad.Pit pit = pit(block.child("pit"));
        PitLoad.Inflow inflow = inflow(block.child("inflow"), pumpedLPerH);
        Supply supply = common.supply(name);
        common.alwaysEssential();
        RoomKind room = common.room(name);
        Nature nature = common.nature(name, supply, runningW);
        if (common.isFlawed() || pit == null || inflow == null || supply == null || nature == null) {
            return null;
        }
        return new PitLoad(name, supply, runningW, pit, inflow, pumpedLPerH, room, nature);
    }

    /** In litres, or in heights where it is told how wide it is. */
    private PitLoad.@Nullable Pit pit(Field field) {
        int before = reading.flaws();
        field.keys("across", "runs at", "brim");
        Field across = field.child("across");
        Field runsAt = field.child("runs at");
        Field brim = field.child("brim");
        double onL;
        double brimL;
        if (across.isPresent()) {
            double metres = across.quantity(Measure.LENGTH, METRES);
            double litresPerMetre = Math.PI / 4 * metres * metres * LITRES_PER_M3;
            onL = runsAt.quantity(Measure.LENGTH, METRES) * litresPerMetre;
            brimL = brim.quantity(Measure.LENGTH, METRES) * litresPerMetre;
            across.note(name + ": pit is across", Basis.YOURS);
        } else {
            onL = runsAt.quantity(Measure.VOLUME, LITRES);
            brimL = brim.quantity(Measure.VOLUME, LITRES);
        }
        runsAt.note(name + ": float switches on at", Basis.YOURS);
        brim.note(name + ": pit runs over at", Basis.YOURS);
        if (reading.flaws() > before) {
            return null;
        }
        if (!(brimL > onL)) {
            brim.problem(
                    Reading.quoted(brim.shown()),
                    "more than the " + runsAt.shown() + " at which the float switches on",
                    "Both count from where the float switches off.");
            return null;
        }
        return new PitLoad.Pit(onL, brimL);
    }

    private PitLoad.@Nullable Inflow inflow(Field field, double pumpedLPerH) {
        int before = reading.flaws();
        field.keys("usual", "storm peak", "peak after", "ebbs within");
        Field usualField = field.child("usual");
        Span usual = usualField.span(Measure.FLOW, INFLOW_L_PER_H);
        usualField.note(name + ": usual inflow", Basis.YOURS);
        Field peakField = field.child("storm peak");
        Field afterField = field.child("peak after");
        Field ebbField = field.child("ebbs within");
        Span peak = usual;
        double peakHour = 0;
        double ebbHours = 1;
        if (peakField.isPresent()) {
            peak = peakField.span(Measure.FLOW, INFLOW_L_PER_H);
            peakField.note(name + ": inflow at a storm's peak", Basis.YOURS);
            peakHour = afterField.quantity(Measure.TIME, Range.from(0, 24 * 60).likely(0, 72));
            afterField.note(name + ": storm's peak after", Basis.YOURS);
            ebbHours = ebbField.quantity(Measure.TIME, Range.above(0, 24 * 60).likely(1, 240));
            ebbField.note(name + ": storm's water ebbs within", Basis.YOURS);
        } else {
            for (Field alone : List.of(afterField, ebbField)) {
                if (alone.isPresent()) {
                    alone.problem(
                            Reading.quoted(alone.shown()) + " without a storm's peak", "\"storm peak:\" beside it", "");
                }
            }
            reading.note(name + ": inflow at a storm's peak", "as usual", Basis.GUESS, PlanFile.DEFAULT);
        }
        if (reading.flaws() > before) {
            return null;
        }
        if (usual.most() >= pumpedLPerH) {
            usualField.problem(
                    Reading.quoted(usualField.shown()),
                    "less than the pump lifts, " + lPerH(pumpedLPerH),
                    "Such a pit runs over with power as without.");
            return null;
        }
        if (peak.middle() < usual.middle()) {
            peakField.problem(Reading.quoted(peakField.shown()), "no less than usual, " + lPerH(usual.middle()), "");
            return null;
        }
        if (peak.middle() >= pumpedLPerH) {
            peakField.caution(peakField.shown() + " is more than the pump lifts, " + lPerH(pumpedLPerH)
                    + ": while it lasts the pit fills with power as without.");
        }
        spread(usual, peak, usualField);
        common.middle(name, "inflow at a storm's peak", peakField.isPresent() ? peak : usual, Measure.FLOW, peakField);
        return new PitLoad.Inflow(usual.middle(), peak.middle(), peakHour, ebbHours);
    }

    /** Both inflows are off together; the wider range counts. */
    private void spread(Span usual, Span peak, Field field) {
        boolean wider =
                peak.isRange() && (!usual.isRange() || peak.most() / peak.middle() > usual.most() / usual.middle());
        reading.spread(Spread.of(name, Spread.Figure.INFLOW, wider ? peak : usual, Spread.Known.GUESS));
        common.middle(name, "usual inflow", usual, Measure.FLOW, field);
    }

    private static String lPerH(double value) {
        return PlainNumber.of(value) + " L/h";
    }
}
