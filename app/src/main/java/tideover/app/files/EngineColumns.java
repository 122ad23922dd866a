package tideover.app.files;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.part.Engine;
import tideover.engine.part.Fuel;
import tideover.engine.part.Listing;
import tideover.engine.part.Outlet;
import tideover.engine.part.Surge;
import tideover.engine.why.Stated;

/** A fuel engine with its generator, or a vehicle that idles; the surge stands in the inverter's columns. */
final class EngineColumns {
    private static final String IDLE = "idle_l_h";
    private static final List<String> BURN = List.of("no_load_l_h", "half_load_l_h", "full_load_l_h");
    static final List<String> OWN = List.of(
            "engine_w",
            "fuel",
            "no_load_l_h",
            "half_load_l_h",
            "full_load_l_h",
            IDLE,
            "tank_l",
            "fuel_price_l",
            "fuel_keeps_months",
            "noise_dba_7m",
            "bears_load_s",
            "starts_itself",
            "service_h",
            "service_price");

    private static final Range LITRES_H = Range.above(0, 100).likely(0.05, 10);
    private static final double MOST_EFFICIENT = 0.50;
    private static final double LIKELY_EFFICIENT = 0.35;
    private static final double LEAST_SOCKET_BUS_V = 12;
    private static final double MOST_SOCKET_BUS_V = 24;
    private static final double W_PER_KW = 1000;

    private EngineColumns() {}

    static @Nullable Engine read(Row row, Listing listing, boolean vehicle) {
        int before = row.flaws();
        double watts = row.number(
                "engine_w",
                vehicle ? "the watts that its sockets can have at idle" : "the watts it gives for hours",
                "W",
                Range.above(0, 100_000).likely(vehicle ? 50 : 300, vehicle ? 1500 : 12_000));
        Surge surge = vehicle ? Surge.UNKNOWN : surge(row, watts);
        Fuel fuel = fuel(row);
        Engine.Burn burn = vehicle ? idle(row) : burn(row);
        if (fuel != null && burn != null && !vehicle) {
            tellImpossible(row, watts, fuel, burn);
        }
        Engine.Habits habits = habits(row, vehicle);
        List<Outlet> outlets = outlets(row, vehicle);
        return row.flaws() > before || fuel == null || burn == null
                ? null
                : new Engine(listing, vehicle, watts, surge, outlets, fuel, burn, habits);
    }

    private static Surge surge(Row row, double watts) {
        double va = row.numberIfAny(
                "surge_va",
                "what it gives for a moment",
                "VA",
                Range.above(0, 300_000).likely(300, 20_000));
        double seconds = row.numberIfAny(
                "surge_va_s", "for how long", "s", Range.above(0, 3600).likely(0.1, 60));
        if (va < watts) {
            row.problem(
                    "surge_va", Reading.quoted(row.cell("surge_va")), "no less than engine_w, or an empty cell", "");
        }
        if (Double.isNaN(va) && row.has("surge_va_s") && !row.has("surge_va")) {
            row.problem("surge_va_s", Reading.quoted(row.cell("surge_va_s")), "an empty cell without surge_va", "");
        }
        boolean sound = (Double.isNaN(va) || va >= watts) && !(Double.isNaN(va) && !Double.isNaN(seconds));
        return sound ? new Surge(va, seconds) : Surge.UNKNOWN;
    }

    private static @Nullable Fuel fuel(Row row) {
        int before = row.flaws();
        Fuel.Kind kind = row.choice("fuel", "what it burns", List.of(Fuel.Kind.values()), Fuel.Kind::words);
        double tankL = row.number(
                "tank_l",
                "the litres in its tank that may be burnt",
                "L",
                Range.above(0, 1000).likely(0.5, 150));
        double price = row.number(
                "fuel_price_l",
                "the price of a litre in the row's currency",
                "",
                Range.from(0, 1000).likely(0.2, 5));
        double months = row.numberIfAny(
                "fuel_keeps_months",
                "how long the fuel keeps in store",
                "months",
                Range.above(0, 600).likely(1, 60));
        if (row.flaws() > before || kind == null) {
            return null;
        }
        return new Fuel(kind, tankL, 100 * price, Double.isNaN(months) ? kind.usuallyKeepsMonths() : months);
    }

    private static Engine.@Nullable Burn burn(Row row) {
        int before = row.flaws();
        double[] litres = new double[BURN.size()];
        for (int i = 0; i < litres.length; i++) {
            litres[i] = row.number(BURN.get(i), "the litres it burns in an hour", "L/h", LITRES_H);
            if (i > 0 && litres[i] < litres[i - 1]) {
                row.problem(
                        BURN.get(i),
                        Reading.quoted(row.cell(BURN.get(i))),
                        "no less than " + BURN.get(i - 1),
                        "An engine burns more the more it gives.");
            }
        }
        return row.flaws() > before ? null : new Engine.Burn(litres[0], litres[1], litres[2]);
    }

    private static Engine.@Nullable Burn idle(Row row) {
        int before = row.flaws();
        double litres =
                row.number(IDLE, "the litres it burns in an hour at idle, its alternator at work", "L/h", LITRES_H);
        return row.flaws() > before ? null : Engine.Burn.atIdle(litres);
    }

    /** No small engine turns half of its fuel's heat into electricity. */
    private static void tellImpossible(Row row, double watts, Fuel fuel, Engine.Burn burn) {
        double heatKw = burn.fullLPerH() * fuel.kind().kwhPerL();
        double share = watts / W_PER_KW / heatKw;
        String words = String.format(
                Locale.ROOT,
                "%.0f %% of the heat of its fuel as electricity at full load",
                Math.min(9999, 100 * share));
        if (share > MOST_EFFICIENT) {
            row.problem(
                    "full_load_l_h",
                    Reading.quoted(row.cell("full_load_l_h")) + ", which is " + words,
                    String.format(Locale.ROOT, "at most %.0f %%", 100 * MOST_EFFICIENT),
                    "Are these gallons or litres, and of the same load?");
        } else if (share > LIKELY_EFFICIENT) {
            row.caution("full_load_l_h", words + " is taken, but is unlikely.");
        }
    }

    private static Engine.Habits habits(Row row, boolean vehicle) {
        double noise = row.numberIfAny(
                "noise_dba_7m", "its noise at 7 m", "dBA", Range.from(20, 130).likely(45, 85));
        double seconds = row.numberIfAny(
                "bears_load_s",
                "the time until it bears load",
                "s",
                Range.from(0, 3600).likely(2, 300));
        Stated itself =
                vehicle ? Stated.NO : row.stated("starts_itself", "whether it starts by itself when the grid fails");
        double hours = row.numberIfAny(
                "service_h",
                "the hours of running from one service to the next",
                "h",
                Range.above(0, 10_000).likely(20, 1000));
        double price = row.numberIfAny(
                "service_price",
                "the price of a service in the row's currency",
                "",
                Range.from(0, 10_000).likely(0, 500));
        return new Engine.Habits(noise, seconds, itself, hours, 100 * price);
    }

    private static List<Outlet> outlets(Row row, boolean vehicle) {
        List<Outlet> outlets = vehicle
                ? OutletsText.of(row, "vehicle", false, true, LEAST_SOCKET_BUS_V, MOST_SOCKET_BUS_V)
                : OutletsText.of(row, "engine", true, true, Double.NaN, Double.NaN);
        for (Outlet outlet : outlets) {
            if (!vehicle && !outlet.supply().isAc()) {
                row.problem(
                        "outlets",
                        "the outlet " + outlet.supply().words(),
                        "alternating current only from an engine",
                        "Its socket for charging a car battery is not looked at.");
            }
        }
        return outlets;
    }
}
