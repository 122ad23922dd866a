package tideover.app.report;

import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import tideover.engine.proof.Trace;
import tideover.engine.proof.TraceStep;
import tideover.engine.quantity.ModelYear;

/** One walked outage as CSV: a row a step, flows, losses and the store, so that anybody can add it up. */
public final class TraceCsv {
    private static final String HEADER = "outage_hour,weather_year,month,day,hour,air_c,panels_out,panels_could_give_w,"
            + "controller_gives_w,controller_loss_w,controller_current_limit_w,store_charge_limit_w,no_room_in_store_w,"
            + "essential_served_w,essential_unserved_w,nice_to_have_served_w,inverter_loss_w,outlet_loss_w,"
            + "inverter_standing_w,charge_loss_w,discharge_loss_w,stored_wh";

    private TraceCsv() {}

    public static void write(Trace trace, Writer out) throws IOException {
        out.write(HEADER + "\n");
        for (TraceStep step : trace.steps()) {
            int day = step.weatherHour() / 24 % ModelYear.DAYS;
            int month = ModelYear.monthOfDay(day);
            out.write(String.format(
                    Locale.ROOT,
                    "%.4f,%d,%d,%d,%d,%.2f,%s,%.6f,%.6f,%.6f,%.6f,%.6f,%.6f,%.6f,%.6f,%.6f,%.6f,%.6f,%.6f,%.6f,%.6f,%.6f\n",
                    step.hour(),
                    step.weatherHour() / ModelYear.HOURS + 1,
                    month + 1,
                    day - ModelYear.firstDay(month) + 1,
                    step.weatherHour() % 24,
                    step.airDegC(),
                    step.panelsOut() ? "yes" : "no",
                    step.arrayW(),
                    step.onBusW(),
                    step.controllerLossW(),
                    step.controllerLimitW(),
                    step.chargeLimitW(),
                    step.noRoomW(),
                    step.essentialServedW(),
                    step.essentialUnservedW(),
                    step.niceServedW(),
                    step.inverterLossW(),
                    step.outletLossW(),
                    step.standingW(),
                    step.chargeLossW(),
                    step.dischargeLossW(),
                    step.storedWh()));
        }
    }
}
