package tideover.app.files;

import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Quantities.Measure;
import tideover.engine.load.LockedRotor;
import tideover.engine.load.Nature;
import tideover.engine.load.Start;
import tideover.engine.load.Supply;
import tideover.engine.why.Basis;

/** Reads how a load behaves beside its watts: power factor, what its motor takes to start, the wave it needs, who is by. */
final class NatureReader {
    private static final Range POWER_FACTOR = Range.from(0.1, 1).likely(0.4, 1);
    private static final List<String> WAYS = List.of("va", "watts", "plug meter", "horsepower");
    private static final String WAYS_EXPECTED =
            "exactly one of va, watts (a label's), plug meter, or horsepower with code";
    private static final Pattern HORSEPOWER = Pattern.compile(
            "(?:([0-9]{1,2}) +)?([0-9]{1,3})/([0-9]{1,3})|([0-9]{1,3}(?:\\.[0-9]{1,4})?|\\.[0-9]{1,4})");
    private static final String HORSEPOWER_EXPECTED = "horsepower, such as 1/4 or 0.5";
    private static final double MOST_HORSEPOWER = 50;

    /** Starts of small motors lie within these multiples of their running volt-amperes. From memory. */
    private static final double LEAST_TIMES = 2;

    private static final double MOST_TIMES = 12;

    private final Reading reading;
    private final Field block;
    private final String name;
    private final boolean isAc;
    private final double runningW;
    private final LikeReader like;

    /**
     * @param runningW what it draws; NaN where that is wrong
     * @param like     what fills the gaps
     */
    NatureReader(Reading reading, Field block, String name, @Nullable Supply supply, double runningW, LikeReader like) {
        this.reading = reading;
        this.block = block;
        this.name = name;
        this.isAc = supply == null || supply.isAc();
        this.runningW = runningW;
        this.like = like;
    }

    /** Null where anything in it is wrong. */
    @Nullable
    Nature read() {
        int before = reading.flaws();
        Field factor = block.child("power factor");
        double powerFactor = factor.isPresent() ? powerFactor(factor) : like.powerFactor(isAc);
        if (factor.isPresent()) {
            factor.note(name + ": power factor", Basis.YOURS);
        }
        Field wave = block.child("wave");
        boolean needsSine = wave.isPresent()
                ? wave.choice("the wave it needs", List.of("sine", "any"), word -> word)
                        .equals("sine")
                : like.needsSine(isAc);
        if (wave.isPresent()) {
            wave.note(name + ": wave it needs", Basis.YOURS);
        }
        if (needsSine && !isAc) {
            wave.problem("a wave for direct current", "no wave", "");
        }
        Field by = block.child("attended");
        boolean attended =
                by.isPresent() && by.yesOrNo("whether somebody is by who sees that it stopped and starts it again");
        if (by.isPresent()) {
            by.note(name + ": somebody is by", Basis.YOURS);
        }
        Field startField = block.child("start");
        Start start = startField.isPresent()
                ? start(startField, runningW / powerFactor)
                : like.start(isAc, runningW / powerFactor);
        if (start != null && isAc && !factor.isPresent() && !like.tellsPowerFactor()) {
            reading.note(name + ": power factor", "1", Basis.GUESS, PlanFile.DEFAULT);
            startField.caution("no \"power factor:\" beside it, so it is taken as 1; motors run at about 0.5 to 0.8,"
                    + " and then take more volt-amperes than the watts say.");
        }
        boolean hardWired = houseTrait(
                LikeReader.HARD_WIRED,
                "whether it hangs on the wires of the house, without a plug",
                () -> like.hardWired(isAc));
        boolean sensesFlame = houseTrait(
                LikeReader.SENSES_FLAME,
                "whether it proves its flame by a current to ground",
                () -> like.sensesFlame(isAc));
        like.ask();
        return reading.flaws() > before
                ? null
                : new Nature(powerFactor, start, needsSine, attended).wired(hardWired, sensesFlame);
    }

    /** Of what a circuit of the house feeds; direct current has none. */
    private boolean houseTrait(String key, String what, BooleanSupplier usual) {
        Field field = block.child(key);
        if (!field.isPresent()) {
            return usual.getAsBoolean();
        }
        field.note(name + ": " + key, Basis.YOURS);
        boolean yes = field.yesOrNo(what);
        if (yes && !isAc) {
            field.problem("yes for direct current", "no: only circuits of the house are meant", "");
        }
        return yes;
    }

    private double powerFactor(Field field) {
        if (!isAc) {
            field.problem("a power factor for direct current", "no power factor", "");
        }
        return field.bareNumber("a power factor", "", POWER_FACTOR);
    }

    private @Nullable Start start(Field start, double runningVa) {
        int before = reading.flaws();
        start.keys("va", "watts", "plug meter", "horsepower", "code", "lasts", "power factor", "alone");
        List<String> given =
                WAYS.stream().filter(way -> start.child(way).isPresent()).toList();
        double powerFactor = isAc ? Start.USUAL_POWER_FACTOR : 1;
        Field factor = start.child("power factor");
        if (factor.isPresent()) {
            powerFactor = powerFactor(factor);
            factor.note(name + ": power factor of its start", Basis.YOURS);
        }
        double seconds = seconds(start.child("lasts"));
        Field aloneField = start.child("alone");
        String alone = aloneField.isPresent()
                ? aloneField.text("by what it is kept from starting with another motor, in a few words", 200)
                : "";
        Field code = start.child("code");
        if (code.isPresent() && !given.contains("horsepower")) {
            code.problem("a code letter without horsepower", "both, from the motor's plate", "");
        }
        if (given.size() != 1) {
            if (!given.isEmpty() || reading.flaws() == before && start.isBlock()) {
                start.problem(given.isEmpty() ? "none of them" : String.join(" and ", given), WAYS_EXPECTED, "");
            }
            return null;
        }
        Field figure = start.child(given.get(0));
        double typedVa = switch (given.get(0)) {
            case "va" -> figure.quantity(Measure.APPARENT_POWER, Range.above(0, 500_000));
            case "horsepower" -> lockedRotorVa(figure, code);
            default -> figure.quantity(Measure.POWER, Range.above(0, 500_000)) / powerFactor;
        };
        boolean lowerBound = given.get(0).equals("watts") || given.get(0).equals("plug meter");
        if (reading.flaws() > before) {
            return null;
        }
        double leastVa = lowerBound ? runningW / powerFactor : runningVa;
        if (typedVa < leastVa * (1 - 1e-9)) {
            figure.problem(
                    Reading.quoted(figure.shown()),
                    "no less than it takes when running, " + (lowerBound ? Range.shown(runningW, "W") : va(runningVa)),
                    "");
            return null;
        }
        Start read = new Start(typedVa, powerFactor, seconds, lowerBound, alone.replace('\n', ' '));
        notes(figure, given.get(0), factor, start.child("lasts"), read, runningVa);
        if (!alone.isEmpty()) {
            aloneField.note(name + ": never starts with another motor", Basis.YOURS);
        }
        return read;
    }

    private double seconds(Field lasts) {
        if (!lasts.isPresent()) {
            return Start.USUAL_SECONDS;
        }
        double seconds = lasts.quantity(Measure.MOMENT, Range.above(0, 60).likely(0.05, 5));
        lasts.note(name + ": starts within", Basis.YOURS);
        return seconds;
    }

    /** The high end of the code letter's range. */
    private double lockedRotorVa(Field figure, Field code) {
        String typed = figure.raw(HORSEPOWER_EXPECTED);
        double horsepower = horsepower(typed);
        boolean sound = horsepower > 0 && horsepower <= MOST_HORSEPOWER;
        if (!sound && !typed.isEmpty()) {
            figure.problem(
                    Reading.quoted(typed),
                    HORSEPOWER_EXPECTED + ", above 0 and at most " + Range.shown(MOST_HORSEPOWER, ""),
                    "");
        }
        if (!isAc) {
            figure.problem("horsepower and code for direct current", "va, watts or plug meter", "");
        }
        String letter = code.raw("the code letter on the motor's plate, A to V").toUpperCase(Locale.ROOT);
        if (!letter.isEmpty() && !LockedRotor.isLetter(letter)) {
            code.problem(Reading.quoted(letter), "the code letter on the motor's plate, A to V without I, O and Q", "");
            return Double.NaN;
        }
        return sound && !letter.isEmpty() ? LockedRotor.mostVa(letter, horsepower) : Double.NaN;
    }

    /** From 1/4, 1 1/2, 0.5 and the like, with or without "hp"; NaN where it is none. */
    private static double horsepower(String typed) {
        Matcher match = HORSEPOWER.matcher(typed.replaceFirst("(?i) *(hp|horsepower)$", ""));
        if (!match.matches()) {
            return Double.NaN;
        }
        if (match.group(4) != null) {
            return Double.parseDouble(match.group(4));
        }
        double whole = match.group(1) == null ? 0 : Double.parseDouble(match.group(1));
        return whole + Double.parseDouble(match.group(2)) / Double.parseDouble(match.group(3));
    }

    private void notes(Field figure, String way, Field factor, Field lasts, Start start, double runningVa) {
        Basis basis = switch (way) {
            case "watts" -> Basis.MAKER;
            case "plug meter" -> Basis.MEASURED;
            case "horsepower" -> Basis.PUBLISHED;
            default -> Basis.YOURS;
        };
        figure.note(name + ": " + words(way), basis);
        if (!factor.isPresent()) {
            assumed("power factor of its start", Range.shown(start.powerFactor(), ""));
        }
        if (!lasts.isPresent()) {
            assumed("starts within", Range.shown(start.seconds(), "s"));
        }
        double reckonedVa = start.va(runningVa);
        if (start.lowerBound()) {
            reading.note(
                    name + ": start reckoned with",
                    va(reckonedVa),
                    Basis.GUESS,
                    "such watts are a lower bound; at least " + Range.shown(Start.USUAL_TIMES, "")
                            + " times the running volt-amperes");
        } else if (way.equals("horsepower")) {
            reading.note(
                    name + ": start reckoned with",
                    va(reckonedVa),
                    Basis.PUBLISHED,
                    "high end of the code letter's range, NFPA 70 table 430.7(B); check the edition in force");
        }
        if (reckonedVa > MOST_TIMES * runningVa) {
            figure.caution(va(reckonedVa) + " to start is taken, but is unlikely beside " + va(runningVa)
                    + " running (most start with 5 to 8 times as much).");
        } else if (reckonedVa < LEAST_TIMES * runningVa) {
            figure.caution(
                    va(reckonedVa) + " to start is taken, but only motors of variable speed start so softly beside "
                            + va(runningVa) + " running.");
        }
    }

    private void assumed(String what, String value) {
        reading.note(name + ": " + what, value, Basis.GUESS, PlanFile.DEFAULT);
    }

    private static String words(String way) {
        return switch (way) {
            case "va" -> "volt-amperes to start";
            case "watts" -> "watts to start, at least";
            case "plug meter" -> "watts to start that a plug meter saw, at least";
            default -> "horsepower of its motor";
        };
    }

    private static String va(double va) {
        return String.format(Locale.ROOT, "%.0f VA", va);
    }
}
