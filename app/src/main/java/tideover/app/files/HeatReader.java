package tideover.app.files;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.app.files.Quantities.Measure;
import tideover.engine.load.HeatLoad;
import tideover.engine.load.Load;
import tideover.engine.load.Nature;
import tideover.engine.load.Need;
import tideover.engine.load.Supply;
import tideover.engine.quantity.PlainNumber;
import tideover.engine.site.RoomKind;
import tideover.engine.why.Basis;

/** Reads what lets a home's heat out, a circulator or a blower, and the home. */
final class HeatReader {
    static final List<String> KEYS = List.of(
            "name",
            "runs",
            "like",
            "draws",
            "from",
            "standby",
            "home",
            "need",
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
    private static final Range DRAW_W = Range.above(0, 20_000).likely(20, 1500);
    private static final String NEED_EXPECTED = "a temperature to stay above, such as {above: 12 degC}";

    /** Of a boiler's or furnace's controls; common practice, no source. */
    private static final double USUAL_STANDBY_W = 5;

    /** As slowly as rooms indoors are taken to follow the weather; common practice, no source. */
    private static final double USUAL_TAU_H = 48;

    private static final double LEAST_TAU_H = 1;
    private static final double MOST_TAU_H = 500;
    private static final double LEAST_LIFT_K = 5;
    private static final double MOST_LIFT_K = 100;

    /** Swing of a home's thermostat; common practice, no source. */
    private static final double BAND_K = 1;

    private final Reading reading;
    private final Field block;
    private final LoadReader common;
    private final String name;

    HeatReader(Reading reading, Field block, LoadReader common, String name) {
        this.reading = reading;
        this.block = block;
        this.common = common;
        this.name = name;
    }

    /** Null where anything in it is wrong. */
    @Nullable
    Load read() {
        double runningW = common.draws(name, DRAW_W);
        double standbyW = standbyW(runningW);
        HeatLoad.Home home = home(block.child("home"));
        Need.Above limit = limit(block.child("need"), home);
        Supply supply = common.supply(name);
        common.alwaysEssential();
        RoomKind room = common.room(name);
        Nature nature = common.nature(name, supply, runningW);
        if (common.isFlawed() || home == null || limit == null || supply == null || nature == null) {
            return null;
        }
        return new HeatLoad(name, supply, runningW, standbyW, home, limit, room, nature);
    }

    private double standbyW(double runningW) {
        Field field = block.child("standby");
        if (!field.isPresent()) {
            double watts = Math.min(USUAL_STANDBY_W, runningW);
            reading.note(name + ": standby", Range.shown(watts, "W"), Basis.GUESS, PlanFile.DEFAULT);
            return watts;
        }
        double watts = field.quantity(Measure.POWER, Range.from(0, 20_000).likely(0, 50));
        field.note(name + ": standby", Basis.YOURS);
        if (watts > runningW) {
            field.problem(Reading.quoted(field.shown()), "no more than it draws, " + Range.shown(runningW, "W"), "");
        }
        return watts;
    }

    private HeatLoad.@Nullable Home home(Field field) {
        int before = reading.flaws();
        field.keys("set to", "just holds at", "cools with");
        Field set = field.child("set to");
        double setDegC = set.quantity(Measure.TEMPERATURE, Range.from(5, 30).likely(15, 24));
        set.note(name + ": home is set to", Basis.YOURS);
        Field coldest = field.child("just holds at");
        double coldestDegC =
                coldest.quantity(Measure.TEMPERATURE, Range.from(-80, 25).likely(-45, 5));
        coldest.note(name + ": heat just holds at", Basis.YOURS);
        Field tau = field.child("cools with");
        Span tauHours = Span.of(USUAL_TAU_H);
        if (tau.isPresent()) {
            tauHours =
                    tau.span(Measure.TIME, Range.from(LEAST_TAU_H, MOST_TAU_H).likely(10, 200));
            tau.note(name + ": home cools with", Basis.YOURS);
        } else {
            reading.note(
                    name + ": home cools with", Range.shown(USUAL_TAU_H, "h"), Basis.COMMON_PRACTICE, PlanFile.DEFAULT);
        }
        if (reading.flaws() > before) {
            return null;
        }
        double liftK = setDegC - coldestDegC - HeatLoad.Home.GAIN_K;
        if (!(liftK >= LEAST_LIFT_K && liftK <= MOST_LIFT_K)) {
            coldest.problem(
                    Reading.quoted(coldest.shown()),
                    "an outdoor temperature from "
                            + degC(setDegC - HeatLoad.Home.GAIN_K - MOST_LIFT_K) + " to "
                            + degC(setDegC - HeatLoad.Home.GAIN_K - LEAST_LIFT_K),
                    "It is the coldest day on which the heat, never stopping, just keeps the home at " + degC(setDegC)
                            + ".");
            return null;
        }
        reading.note(
                name + ": home is warmed by",
                PlainNumber.of(liftK) + " K at most",
                Basis.YOURS,
                "what it is set to, less the day on which the heat just holds, less "
                        + Range.shown(HeatLoad.Home.GAIN_K, "K") + " of people, sun and cooking");
        common.middle(name, "cools with", tauHours, Measure.TIME, tau);
        reading.spread(leak(tauHours, liftK));
        return new HeatLoad.Home(liftK, tauHours.middle(), setDegC, BAND_K);
    }

    /** A home that lets out so many times the heat cools so much sooner and is held so much less warm. */
    private Spread leak(Span tauHours, double liftK) {
        double middle = tauHours.middle();
        Spread spread = tauHours.isRange()
                ? new Spread(
                        name,
                        Spread.Figure.WALLS,
                        middle / tauHours.most(),
                        middle / tauHours.least(),
                        Spread.Known.GUESS)
                : Spread.of(name, Spread.Figure.WALLS, tauHours, Spread.Known.GUESS);
        return spread.within(
                Math.max(liftK / MOST_LIFT_K, middle / MOST_TAU_H),
                Math.min(liftK / LEAST_LIFT_K, middle / LEAST_TAU_H));
    }

    private Need.@Nullable Above limit(Field field, HeatLoad.@Nullable Home home) {
        if (field.isText()) {
            field.problem(Reading.quoted(field.shown()), NEED_EXPECTED, "");
            return null;
        }
        field.keys("above");
        Field above = field.child("above");
        double degC = above.quantity(Measure.TEMPERATURE, Range.from(-5, 25).likely(5, 20));
        if (Double.isNaN(degC)) {
            return null;
        }
        if (home != null && !(degC < home.setDegC() - home.bandK() / 2)) {
            above.problem(
                    Reading.quoted(above.shown()),
                    "below " + degC(home.setDegC() - home.bandK() / 2) + ", where the thermostat switches the heat on",
                    "");
            return null;
        }
        reading.note(name + ": need", "never below " + above.shown(), Basis.YOURS, above.source());
        return new Need.Above(degC);
    }

    private static String degC(double value) {
        return PlainNumber.of(value) + " degC";
    }
}
