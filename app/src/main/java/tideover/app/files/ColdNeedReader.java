package tideover.app.files;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Quantities.Measure;
import tideover.engine.cold.AgencyHours;
import tideover.engine.cold.BoxKind;
import tideover.engine.cold.Food;
import tideover.engine.load.Need;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.why.Basis;

/**
 * Reads what a cold box owes: frozen food a warmest temperature, fresh food few hours above one, medicine a band. The
 * food-safety agencies' figures may be tightened by a plan, never loosened.
 */
final class ColdNeedReader {
    /** A limit of 40 degF does not come out exactly. */
    private static final double ROUNDING_K = 1e-9;

    /** Cold but not frozen, as most makers ask of what is kept in a fridge; common practice, no source: its own maker's figures go first. */
    private static final Need.Band MEDICINE = new Need.Band(2, 8);

    /** What a need is written as. */
    private enum Form {
        FROZEN("below", "frozen, or {below: -12 degC}", "A freezer owes a warmest temperature of its frozen food."),
        FRESH(
                "above",
                "{above: 4.4 degC, at most: 4 h}",
                "Fresh food owes few hours above a temperature; medicine, told under contents, a band."),
        MEDICINE("between", "{between: 2 degC, and: 8 degC}", "Medicine owes a band: warmth and frost spoil it.");

        private final String key;
        private final String written;
        private final String why;

        Form(String key, String written, String why) {
            this.key = key;
            this.written = written;
            this.why = why;
        }
    }

    private final Reading reading;
    private final Field field;
    private final String name;

    ColdNeedReader(Reading reading, Field field, String name) {
        this.reading = reading;
        this.field = field;
        this.name = name;
    }

    /**
     * Null where anything in it is wrong.
     *
     * @param medicine whether medicine is kept
     * @param set      the field that says what it is set to; may be absent
     * @param setDegC  inside; NaN where that is wrong
     */
    @Nullable
    Need read(BoxKind kind, boolean medicine, Field set, double setDegC) {
        Form form = medicine ? Form.MEDICINE : kind.freezes() ? Form.FROZEN : Form.FRESH;
        int before = reading.flaws();
        Need need = field.isPresent() ? typed(form) : assumed(form);
        if (need == null || reading.flaws() > before) {
            return null;
        }
        checkSetting(need, set, setDegC);
        if (form == Form.MEDICINE && need instanceof Need.Band band && band.leastDegC() < 0 && !kind.freezes()) {
            field.caution("below 0 degC is taken, but frost spoils most medicine: ask its maker.");
        }
        if (field.isPresent()) {
            reading.note(name + ": need", need.words(), Basis.YOURS, field.source());
        }
        return reading.flaws() > before ? null : need;
    }

    private Need assumed(Form form) {
        return switch (form) {
            case FROZEN -> {
                Need need = new Need.Below(Food.LEAN_BEEF.freezingDegC());
                note(need, Basis.PUBLISHED, "food begins to thaw there, ASHRAE Handbook Refrigeration, lean beef");
                yield need;
            }
            case FRESH -> {
                Need need = new Need.HoursAbove(AgencyHours.LIMIT_DEG_C, AgencyHours.REFRIGERATOR_H);
                note(need, Basis.PUBLISHED, "40 degF and 4 h, USDA and FDA; older guidance says 2 h");
                yield need;
            }
            case MEDICINE -> {
                note(
                        MEDICINE,
                        Basis.COMMON_PRACTICE,
                        "usual of what is kept in a fridge; what its maker says goes first");
                yield MEDICINE;
            }
        };
    }

    private void note(Need need, Basis basis, String why) {
        reading.note(name + ": need", need.words(), basis, PlanFile.DEFAULT + ": " + why);
    }

    private @Nullable Need typed(Form form) {
        if (!field.isBlock()) {
            String typed = field.raw(form.written);
            if (form == Form.FROZEN && typed.equalsIgnoreCase("frozen")) {
                return new Need.Below(Food.LEAN_BEEF.freezingDegC());
            }
            if (!typed.isEmpty()) {
                field.problem(Reading.quoted(typed), form.written, form.why);
            }
            return null;
        }
        int before = reading.flaws();
        field.keys("below", "between", "and", "above", "at most");
        List<String> given = List.of("below", "between", "above").stream()
                .filter(key -> field.child(key).isPresent())
                .toList();
        if (given.isEmpty() && reading.flaws() > before) {
            return null;
        }
        if (given.size() != 1 || !given.get(0).equals(form.key)) {
            field.problem(
                    given.isEmpty() ? "none of below, between, above" : String.join(" and ", given),
                    form.written,
                    form.why);
            return null;
        }
        return switch (form) {
            case FROZEN -> below();
            case FRESH -> hoursAbove();
            case MEDICINE -> band();
        };
    }

    private @Nullable Need below() {
        Field limit = field.child("below");
        double degC = limit.quantity(Measure.TEMPERATURE, Range.from(-30, 60));
        double thawsDegC = Food.LEAN_BEEF.freezingDegC();
        if (degC > thawsDegC) {
            limit.problem(
                    Reading.quoted(limit.shown()),
                    "at most " + degC(thawsDegC) + ", where frozen food begins to thaw",
                    "");
        }
        return degC <= thawsDegC ? new Need.Below(degC) : null;
    }

    private @Nullable Need hoursAbove() {
        Field limit = field.child("above");
        double degC = limit.quantity(Measure.TEMPERATURE, Range.from(0, 60));
        Field most = field.child("at most");
        double hours = most.quantity(Measure.TIME, Range.from(0, 24 * 60));
        if (degC > AgencyHours.LIMIT_DEG_C + ROUNDING_K) {
            limit.problem(
                    Reading.quoted(limit.shown()),
                    "at most 40 degF (4.44 degC)",
                    "The food-safety agencies' limit is never raised.");
            return null;
        }
        if (hours > AgencyHours.REFRIGERATOR_H + ROUNDING_K) {
            most.problem(
                    Reading.quoted(most.shown()),
                    "at most " + Range.shown(AgencyHours.REFRIGERATOR_H, "h") + " in all",
                    "The food-safety agencies' hours are never lengthened; older guidance says 2 h.");
            return null;
        }
        return Double.isNaN(degC) || Double.isNaN(hours)
                ? null
                : new Need.HoursAbove(
                        Math.min(degC, AgencyHours.LIMIT_DEG_C), Math.min(hours, AgencyHours.REFRIGERATOR_H));
    }

    private @Nullable Need band() {
        Field least = field.child("between");
        Field most = field.child("and");
        double leastDegC = least.quantity(Measure.TEMPERATURE, Range.from(-40, 40));
        double mostDegC = most.quantity(Measure.TEMPERATURE, Range.from(-40, 40));
        if (Double.isNaN(leastDegC) || Double.isNaN(mostDegC)) {
            return null;
        }
        if (!(leastDegC < mostDegC)) {
            boolean turn = leastDegC > mostDegC;
            field.problem(
                    "a band from " + least.shown() + " to " + most.shown(),
                    "the lower temperature first, and some kelvins between",
                    turn ? "Write {between: " + most.shown() + ", and: " + least.shown() + "}." : "");
            return null;
        }
        return new Need.Band(leastDegC, mostDegC);
    }

    /** What a box is set to must keep what it owes. */
    private void checkSetting(Need need, Field set, double setDegC) {
        if (Double.isNaN(setDegC)) {
            return;
        }
        double leastDegC = need instanceof Need.Band band ? band.leastDegC() : Double.NEGATIVE_INFINITY;
        double mostDegC = need instanceof Need.Band band
                ? band.mostDegC()
                : need instanceof Need.Below below ? below.limitDegC() : ((Need.HoursAbove) need).limitDegC();
        if (!(setDegC > leastDegC && setDegC < mostDegC)) {
            String right = leastDegC > Double.NEGATIVE_INFINITY
                    ? "a setting between " + degC(leastDegC) + " and " + degC(mostDegC)
                    : "a setting colder than " + degC(mostDegC);
            if (set.isPresent()) {
                set.problem(Reading.quoted(set.shown()), right + ", to keep what the box owes", "");
            } else {
                field.problem(
                        "a need that its usual setting of " + degC(setDegC) + " does not keep",
                        right,
                        "Mend \"need:\", or add \"set to:\".");
            }
        }
    }

    private static String degC(double value) {
        return PlainNumber.of(value) + " degC";
    }
}
