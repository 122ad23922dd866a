package tideover.app.report;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import tideover.engine.load.ColdLoad;
import tideover.engine.load.Load;
import tideover.engine.load.PitLoad;
import tideover.engine.proof.Trace;
import tideover.engine.proof.TraceStep;
import tideover.engine.quantity.ModelYear;

/**
 * One walked outage as CSV: a row a step, flows, losses and the store, so that anybody can add it up. What each column
 * holds is told in docs/trace-file.md.
 */
public final class TraceCsv {
    private static final List<Column> COLUMNS = List.of(
            new Column("outage_hour", step -> fixed(4, step.hour())),
            new Column("weather_year", step -> String.valueOf(step.weatherHour() / ModelYear.HOURS + 1)),
            new Column("month", step -> String.valueOf(ModelYear.monthOfDay(day(step)) + 1)),
            new Column(
                    "day", step -> String.valueOf(day(step) - ModelYear.firstDay(ModelYear.monthOfDay(day(step))) + 1)),
            new Column("hour", step -> String.valueOf(step.weatherHour() % 24)),
            new Column("air_c", step -> fixed(2, step.airDegC())),
            new Column("battery_c", step -> fixed(2, step.batteryDegC())),
            new Column("panels_out", step -> step.panelsOut() ? "yes" : "no"),
            figure("panels_could_give_w", TraceStep::arrayW),
            figure("controller_gives_w", TraceStep::onBusW),
            figure("help_w", TraceStep::helpW),
            figure("controller_loss_w", TraceStep::controllerLossW),
            figure("controller_current_limit_w", TraceStep::controllerLimitW),
            figure("store_charge_limit_w", TraceStep::chargeLimitW),
            figure("no_room_in_store_w", TraceStep::noRoomW),
            figure("essential_served_w", TraceStep::essentialServedW),
            figure("essential_unserved_w", TraceStep::essentialUnservedW),
            figure("nice_to_have_served_w", TraceStep::niceServedW),
            figure("inverter_loss_w", TraceStep::inverterLossW),
            figure("outlet_loss_w", TraceStep::outletLossW),
            figure("inverter_standing_w", TraceStep::standingW),
            figure("heater_w", TraceStep::heaterW),
            figure("self_discharge_w", TraceStep::selfW),
            figure("charge_loss_w", TraceStep::chargeLossW),
            figure("discharge_loss_w", TraceStep::dischargeLossW),
            figure("stored_wh", TraceStep::storedWh));

    private TraceCsv() {}

    /** A column: its name, and what stands in it. */
    private record Column(String name, Function<TraceStep, String> cell) {}

    private static Column figure(String name, ToDoubleFunction<TraceStep> figure) {
        return new Column(name, step -> fixed(6, figure.applyAsDouble(step)));
    }

    /** Names of the columns that every trace has, in their order. */
    public static List<String> columns() {
        return COLUMNS.stream().map(Column::name).toList();
    }

    /**
     * Columns of what switches itself, after all others: its name in small letters, then what is kept, the air around it where
     * there is some, watts at its plug, hours of the step without power, and whether its need was kept so far.
     */
    static List<String> columns(Trace trace) {
        List<String> names = new ArrayList<>(columns());
        kept(trace).forEach(column -> names.add(column.name()));
        return names;
    }

    private static List<Column> kept(Trace trace) {
        List<Column> columns = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (int i = 0; i < trace.kept().size(); i++) {
            int number = i;
            Load load = trace.kept().get(number);
            String plain = plain(load.name());
            String name = plain.isEmpty() ? "kept" : plain;
            for (int next = 2; !taken.add(name); next++) {
                name = (plain.isEmpty() ? "kept" : plain) + "_" + next;
            }
            columns.add(new Column(
                    name + (load instanceof PitLoad ? "_l" : "_c"),
                    step -> fixed(3, step.kept().get(number).kept())));
            if (load instanceof ColdLoad) {
                columns.add(new Column(
                        name + "_air_c",
                        step -> fixed(3, step.kept().get(number).airDegC())));
            }
            columns.add(figure(name + "_w", step -> step.kept().get(number).plugW()));
            columns.add(new Column(
                    name + "_without_power_h",
                    step -> fixed(4, step.kept().get(number).darkH())));
            columns.add(
                    new Column(name + "_kept", step -> step.kept().get(number).whole() ? "yes" : "no"));
        }
        return columns;
    }

    /** Letters a to z, digits and low lines: what a person typed cannot break a row, nor be taken for a formula. */
    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_").replaceAll("^_|_$", "");
    }

    public static void write(Trace trace, Writer out) throws IOException {
        List<Column> all = new ArrayList<>(COLUMNS);
        all.addAll(kept(trace));
        out.write(String.join(",", columns(trace)) + "\n");
        for (TraceStep step : trace.steps()) {
            out.write(String.join(
                            ",",
                            all.stream()
                                    .map(column -> column.cell().apply(step))
                                    .toList())
                    + "\n");
        }
    }

    private static int day(TraceStep step) {
        return step.weatherHour() / 24 % ModelYear.DAYS;
    }

    private static String fixed(int decimals, double value) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
