package tideover.app.files;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Quantities.Measure;
import tideover.engine.load.DayWindow;
import tideover.engine.outage.Help;
import tideover.engine.outage.Outage;
import tideover.engine.outage.Rolling;
import tideover.engine.outage.Storm;
import tideover.engine.quantity.ModelYear;
import tideover.engine.why.Basis;

/** Reads the power cut: when it may come, how long it lasts, what must be carried, and what comes to help meanwhile. */
final class OutageReader {
    private static final int MOST_HOURS = 60 * 24;
    private static final int MOST_HELPS = 20;
    private static final String ALL_MONTHS = "all";
    private static final String MONTHS_EXPECTED = "months, such as [nov, dec, jan], or all";
    private static final List<String> FULL_NAMES = List.of(
            "january",
            "february",
            "march",
            "april",
            "may",
            "june",
            "july",
            "august",
            "september",
            "october",
            "november",
            "december");

    private final Reading reading;

    OutageReader(Reading reading) {
        this.reading = reading;
    }

    /**
     * The outage, or null where anything in it is wrong.
     *
     * @param outAfter of the panels
     * @param helpList may be absent
     */
    @Nullable
    Outage read(Field block, Field outAfter, Field helpList) {
        int before = reading.flaws();
        block.keys("months", "lasts", "carried", "charge at start", "keep back", "rolling", "storm");
        List<Integer> months = months(block.child("months"));
        Field lasts = block.child("lasts");
        int hours = lasts.wholeHours(Range.from(1, MOST_HOURS).likely(4, 14 * 24));
        lasts.note("Outage lasts", Basis.YOURS);
        Field carried = block.child("carried");
        double target = carried.share(Range.above(0, 100).likely(50, 99.5));
        carried.note("Share of outages to carry", Basis.YOURS);
        double charge = PlanFile.shareOr(
                reading,
                block.child("charge at start"),
                "Charge when the grid fails",
                Range.above(0, 100).likely(30, 100),
                85,
                Basis.GUESS);
        double keepBack = PlanFile.shareOr(
                reading,
                block.child("keep back"),
                "Charge kept back from what is nice to have",
                Range.from(0, 100),
                100,
                Basis.GUESS);
        Rolling rolling = rolling(block.child("rolling"), hours);
        Storm storm = storm(block.child("storm"), hours);
        int panelsOut = 3;
        if (outAfter.isPresent()) {
            panelsOut = outAfter.wholeHours(Range.from(0, MOST_HOURS).likely(0, 24));
            outAfter.note("Panels are out after", Basis.YOURS);
        } else {
            reading.note("Panels are out after", "3 h", Basis.GUESS, PlanFile.DEFAULT);
        }
        List<Help> help = help(helpList, hours);
        if (reading.flaws() > before) {
            return null;
        }
        if (panelsOut >= hours) {
            outAfter.caution("the panels are out only after the outage is over; they never help.");
        }
        return new Outage(months, hours, target, charge, panelsOut, keepBack, rolling, help, storm);
    }

    private @Nullable Rolling rolling(Field field, int lastsHours) {
        if (!field.isPresent()) {
            return null;
        }
        int before = reading.flaws();
        field.keys("off", "on");
        int off = field.child("off").wholeHours(Range.from(1, MOST_HOURS).likely(1, 48));
        int on = field.child("on").wholeHours(Range.from(1, MOST_HOURS).likely(1, 48));
        if (reading.flaws() > before) {
            return null;
        }
        if (off >= lastsHours) {
            field.caution("the grid comes back only after the outage is over; it never helps.");
        }
        reading.note("Grid comes and goes", off + " h without, " + on + " h with", Basis.YOURS, field.source());
        return new Rolling(off, on);
    }

    private @Nullable Storm storm(Field field, int lastsHours) {
        if (!field.isPresent()) {
            return null;
        }
        int before = reading.flaws();
        field.keys("panels stowed until", "snow cleared after", "forecast");
        int stowed = stormHours(field.child("panels stowed until"), "Storm: panels are stowed until");
        int cleared = stormHours(field.child("snow cleared after"), "Storm: snow is cleared after");
        Field known = field.child("forecast");
        boolean forecast = false;
        if (known.isPresent()) {
            forecast = known.yesOrNo("whether a storm is known a day ahead");
            known.note("Storm is known a day ahead", Basis.YOURS);
        } else {
            reading.note("Storm is known a day ahead", "no", Basis.GUESS, PlanFile.DEFAULT);
        }
        if (reading.flaws() > before) {
            return null;
        }
        int out = Math.max(stowed, cleared);
        if (out >= lastsHours) {
            field.caution("in a storm the panels are out only after the outage is over; they never help then.");
        }
        return new Storm(out, forecast);
    }

    private int stormHours(Field field, String name) {
        if (!field.isPresent()) {
            reading.note(name, "no longer than without a storm", Basis.GUESS, PlanFile.DEFAULT);
            return 0;
        }
        int hours = field.wholeHours(Range.from(0, MOST_HOURS).likely(0, 96));
        field.note(name, Basis.YOURS);
        return hours;
    }

    private List<Help> help(Field list, int lastsHours) {
        if (!list.isPresent()) {
            return List.of();
        }
        List<Help> help = new ArrayList<>();
        List<Field> items = list.items("a list of help, each an engine or a battery that is brought");
        if (items.size() > MOST_HELPS) {
            list.problem(items.size() + " kinds of help", "at most " + MOST_HELPS, "");
            return help;
        }
        Field engine = null;
        for (Field item : items) {
            int before = reading.flaws();
            item.keys("engine", "battery");
            boolean isEngine = item.child("engine").isPresent();
            boolean isBattery = item.child("battery").isPresent();
            if (isEngine == isBattery) {
                if (isEngine || reading.flaws() == before) {
                    item.problem(
                            isEngine ? "engine and battery" : "neither of them", "exactly one of engine, battery", "");
                }
                continue;
            }
            Help one = isEngine ? engine(item.child("engine")) : battery(item.child("battery"), lastsHours);
            if (isEngine && engine != null) {
                item.problem(
                        "a second engine",
                        "one engine with all its hours",
                        "The first stands in line " + engine.line() + ".");
            }
            engine = isEngine && engine == null ? item : engine;
            if (one != null) {
                help.add(one);
            }
        }
        return help;
    }

    private @Nullable Help engine(Field block) {
        int before = reading.flaws();
        block.keys("hours", "gives");
        List<DayWindow> windows = LoadReader.windows(block.child("hours"));
        Field gives = block.child("gives");
        double watts = gives.quantity(Measure.POWER, Range.above(0, 100_000).likely(200, 8000));
        if (reading.flaws() > before) {
            return null;
        }
        gives.note("Engine gives", Basis.YOURS);
        reading.note(
                "Engine runs",
                LoadReader.words(windows),
                Basis.YOURS,
                block.child("hours").source());
        return new Help.Engine(windows, watts);
    }

    private @Nullable Help battery(Field block, int lastsHours) {
        int before = reading.flaws();
        block.keys("after", "brings", "at most");
        Field after = block.child("after");
        int afterHours = after.wholeHours(Range.from(0, MOST_HOURS));
        Field brings = block.child("brings");
        double wh = brings.quantity(Measure.ENERGY, Range.above(0, 1_000_000).likely(20, 5000));
        Field most = block.child("at most");
        double mostW = most.quantity(Measure.POWER, Range.above(0, 100_000).likely(5, 3000));
        if (reading.flaws() > before) {
            return null;
        }
        if (afterHours >= lastsHours) {
            after.caution("the battery is brought only after the outage is over; it never helps.");
        }
        after.note("Battery is brought after", Basis.YOURS);
        brings.note("Battery that is brought gives", Basis.YOURS);
        most.note("Battery that is brought gives at most", Basis.YOURS);
        return new Help.Handover(afterHours, wh, mostW);
    }

    private List<Integer> months(Field field) {
        List<Field> items = field.items(MONTHS_EXPECTED);
        Set<Integer> months = new HashSet<>();
        for (Field item : items) {
            String typed = item.raw(MONTHS_EXPECTED).toLowerCase(Locale.ROOT);
            if (typed.equals(ALL_MONTHS) && items.size() == 1) {
                for (int month = 0; month < 12; month++) {
                    months.add(month);
                }
                continue;
            }
            int month = month(typed);
            if (month < 0) {
                if (!typed.isEmpty()) {
                    List<String> names = ModelYear.monthNames();
                    item.problem(
                            Reading.quoted(typed),
                            "a month: " + String.join(", ", names),
                            Nearest.to(typed, names)
                                    .map(near -> "Write " + near + ".")
                                    .orElse(""));
                }
            } else if (!months.add(month)) {
                item.problem(Reading.quoted(typed) + " a second time", "each month once", "");
            }
        }
        List<Integer> rising = months.stream().sorted().toList();
        if (!rising.isEmpty()) {
            String shown = rising.size() == 12
                    ? ALL_MONTHS
                    : String.join(
                            ", ", rising.stream().map(ModelYear::monthName).toList());
            reading.note("Months an outage may start in", shown, Basis.YOURS, field.source());
        }
        return rising;
    }

    /** From "nov", "Nov" or "november"; -1 where it is none. */
    private static int month(String typed) {
        int month = FULL_NAMES.indexOf(typed);
        return month >= 0 ? month : ModelYear.monthNames().indexOf(typed);
    }
}
