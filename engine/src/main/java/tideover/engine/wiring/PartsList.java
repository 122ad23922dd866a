package tideover.engine.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tideover.engine.part.Condition;
import tideover.engine.part.Fuse;
import tideover.engine.part.SmallPart;
import tideover.engine.part.Tool;

/**
 * Everything beside the main parts, to the last lug, in whole packs and metres.
 *
 * @param lines   small parts, then tools, each in the order of need
 * @param missing what is needed and not in the household's list, by what it is for
 */
public record PartsList(List<Line> lines, Map<String, Integer> missing) {
    static final PartsList NONE = new PartsList(List.of(), Map.of());

    /** So that a rounding error does not buy another metre. */
    private static final double ROUNDING = 1e-9;

    private static final int SPARE_FUSES = 1;

    public PartsList {
        lines = List.copyOf(lines);
        missing = java.util.Collections.unmodifiableMap(new TreeMap<>(missing));
    }

    /**
     * One small part or tool.
     *
     * @param needed pieces, or metres of cable
     * @param bought how often its price is paid, or taken from the shelf; more than needed where more cost less
     */
    public record Line(SmallPart part, double needed, int bought) {
        static Line of(SmallPart part, double needed) {
            return new Line(part, needed, part.listing().boughtFor(packs(part, needed)));
        }

        private static int packs(SmallPart part, double needed) {
            return (int) Math.ceil(needed / part.perPrice() - ROUNDING);
        }

        /** Without shipping or tax. */
        public long cents() {
            return part.listing().goodsCents(bought);
        }

        /** Whether more is bought than what is needed fills, because that costs less. */
        public boolean boughtMore() {
            return bought > packs(part, needed);
        }

        public boolean isTool() {
            return part instanceof Tool;
        }

        public boolean owned() {
            return part.listing().condition() == Condition.OWNED;
        }
    }

    /** What all runs of a circuit take, and what belongs to them. */
    static PartsList of(Circuit circuit, Fixings.Needs fixings) {
        Map<SmallPart, Double> needs = new LinkedHashMap<>();
        for (WiredRun wired : circuit.runs()) {
            wired.needs().forEach((part, pieces) -> needs.merge(part, pieces, Double::sum));
        }
        List<Line> lines = new ArrayList<>();
        needs.forEach((part, pieces) -> {
            if (pieces > 0) {
                lines.add(Line.of(part, pieces + spares(part, pieces)));
            }
        });
        lines.addAll(fixings.lines());
        return new PartsList(lines, fixings.missing());
    }

    /** Without a circuit. */
    static PartsList of(Fixings.Needs fixings) {
        return new PartsList(fixings.lines(), fixings.missing());
    }

    /** One fuse is kept beside those of each kind that are used, where one can be had. Common practice, no source. */
    static double spares(SmallPart part, double used) {
        double left = part.listing().atHand() * part.perPrice() - used;
        return part instanceof Fuse ? Math.max(0, Math.min(SPARE_FUSES, left)) : 0;
    }

    /** What must be bought of this list where another has been bought: of each line what the whole packs of that one leave over. */
    public PartsList beyond(PartsList before) {
        Map<String, Double> there = new TreeMap<>();
        for (Line line : before.lines) {
            there.merge(
                    line.part().listing().id(),
                    (double) line.bought() * line.part().perPrice(),
                    Double::sum);
        }
        List<Line> more = new ArrayList<>();
        for (Line line : lines) {
            double left = there.getOrDefault(line.part().listing().id(), 0.0);
            double needed = line.needed() - left;
            there.put(line.part().listing().id(), Math.max(0, -needed));
            if (needed > ROUNDING) {
                more.add(Line.of(line.part(), needed));
            }
        }
        return new PartsList(more, missing);
    }

    public long smallPartsCents() {
        return cents(false);
    }

    public long toolsCents() {
        return cents(true);
    }

    private long cents(boolean tools) {
        long cents = 0;
        for (Line line : lines) {
            cents += line.isTool() == tools ? line.cents() : 0;
        }
        return cents;
    }
}
