package tideover.app.files;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Quantities.Measure;
import tideover.engine.load.Start;
import tideover.engine.load.Usual;
import tideover.engine.load.UsualLoads;

/**
 * What a plan leaves out of a load and {@code like:} fills from the usual loads, each figure with its note and range. What the
 * owner wrote always wins. Without {@code like:} it gives the plain case.
 */
final class LikeReader {
    static final String HARD_WIRED = "hard-wired";
    static final String SENSES_FLAME = "senses flame";
    private static final String EXPECTED = "a usual load, as \"tideover loads\" lists them";
    private static final int MOST_OFFERED = 6;

    private final Reading reading;
    private final Field block;
    private final Field like;
    private final String name;
    private final @Nullable Usual usual;

    /** Reads {@code like:} of one load. */
    LikeReader(Reading reading, Field block, String name) {
        this.reading = reading;
        this.block = block;
        this.like = block.child("like");
        this.name = name;
        this.usual = like.isPresent() ? find() : null;
    }

    private @Nullable Usual find() {
        String typed = like.text(EXPECTED, PlanFile.LONGEST_NAME);
        Usual found = typed.isEmpty() ? null : UsualLoads.of(typed).orElse(null);
        if (found == null && !typed.isEmpty()) {
            like.problem(Reading.quoted(typed), EXPECTED, suggestion(typed));
        }
        return found;
    }

    private static String suggestion(String typed) {
        List<String> near = UsualLoads.search(typed).stream().map(Usual::word).toList();
        if (!near.isEmpty() && near.size() <= MOST_OFFERED) {
            return near.size() == 1 ? "Write " + near.get(0) + "." : "Write one of: " + String.join("; ", near) + ".";
        }
        return Nearest.to(typed, UsualLoads.words())
                .map(word -> "Write " + word + ".")
                .orElse("");
    }

    /** Something stands under {@code like:}, right or wrong. */
    boolean isPresent() {
        return like.isPresent();
    }

    /** Watts while it runs: the plan's own, else those of the usual load; NaN where wrong. */
    Span draws(Field draws, Range range) {
        if (draws.isPresent() || !like.isPresent()) {
            Span own = draws.span(Measure.POWER, range);
            double ownW = own.middle();
            if (usual != null && (ownW < usual.leastW() || ownW > usual.mostW())) {
                draws.caution(
                        draws.shown() + " is taken, but is unusual of a " + usual.word() + ", " + span(usual) + ".");
            }
            return own;
        }
        Field from = block.child("from");
        if (from.isPresent()) {
            from.problem("where a figure is from, without the figure", "\"draws:\" beside it", "");
        }
        if (usual == null) {
            return Span.of(Double.NaN);
        }
        double reckonedW = usual.reckonedW();
        String shown = Range.shown(reckonedW, "W");
        reading.note(name + ": draws", shown, usual.basis(), source(usual, ", which draws " + span(usual)));
        reading.spread(new Spread(
                name, Spread.Figure.DRAWS, usual.leastW() / reckonedW, usual.mostW() / reckonedW, Spread.Known.GUESS));
        reading.caution(name + ": " + shown + " is " + (usual.medical() ? "the most" : "the usual figure") + " of a "
                + usual.word() + "; such loads draw " + span(usual) + ". " + usual.measure());
        return Span.of(reckonedW);
    }

    /** Of the usual load; 1 without one. */
    double powerFactor(boolean isAc) {
        if (usual == null || !isAc) {
            return 1;
        }
        note("power factor", Range.shown(usual.powerFactor(), ""));
        return usual.powerFactor();
    }

    /** Whether there is a power factor to be had from it. */
    boolean tellsPowerFactor() {
        return usual != null;
    }

    boolean needsSine(boolean isAc) {
        return isAc && usual != null && noted(usual.needsSine(), "wave it needs", "sine");
    }

    boolean hardWired(boolean isAc) {
        return isAc && usual != null && noted(usual.hardWired(), HARD_WIRED, "yes");
    }

    boolean sensesFlame(boolean isAc) {
        return isAc && usual != null && noted(usual.sensesFlame(), SENSES_FLAME, "may be");
    }

    /** Of the usual load; null where nothing spins up, and where it is of the wrong kind of current, which is told. */
    @Nullable
    Start start(boolean isAc, double runningVa) {
        if (usual == null || usual.start() == null) {
            return null;
        }
        if (usual.ac() && !isAc) {
            like.problem(
                    "a motor for alternating current, on direct current",
                    "AC under \"supply:\", or a load of its own",
                    "Write draws and start instead of like.");
            return null;
        }
        Start start = Double.isNaN(runningVa) ? null : usual.start(runningVa);
        if (start != null) {
            note(
                    "start",
                    String.format(
                            Locale.ROOT,
                            "%.0f VA for %s, power factor %s",
                            start.va(runningVa),
                            Range.shown(start.seconds(), "s"),
                            Range.shown(start.powerFactor(), "")));
        }
        return start;
    }

    /** What is to be asked of such a load, less what the plan answers. */
    void ask() {
        if (usual == null) {
            return;
        }
        for (String sentence : usual.ask()) {
            boolean answered = List.of(HARD_WIRED, SENSES_FLAME).stream()
                    .anyMatch(key ->
                            sentence.contains(key + ": ") && block.child(key).isPresent());
            if (!answered) {
                reading.caution(name + ": " + sentence);
            }
        }
    }

    private boolean noted(boolean trait, String what, String value) {
        if (trait) {
            note(what, value);
        }
        return trait;
    }

    private void note(String what, String value) {
        if (usual != null) {
            reading.note(name + ": " + what, value, usual.basis(), source(usual, ""));
        }
    }

    private String source(Usual usual, String range) {
        return like.source() + ", like " + usual.word() + range + ": " + usual.source();
    }

    private static String span(Usual usual) {
        return String.format(Locale.ROOT, "%.0f to %.0f W", usual.leastW(), usual.mostW());
    }
}
