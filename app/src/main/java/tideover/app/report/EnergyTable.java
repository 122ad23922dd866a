package tideover.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tideover.engine.proof.Ledger;

/** Where the energy of the mean outage comes from and goes, each with a bar on one scale; both sides add up to the same. */
final class EnergyTable {
    private static final double WIDTH = 200;
    private static final double HEIGHT = 12;

    private record Entry(String name, double wh, String style) {}

    private final List<Entry> comes = new ArrayList<>();
    private final List<Entry> goes = new ArrayList<>();

    private EnergyTable(Ledger sum, double count) {
        comes.add(new Entry("The panels could give", sum.inWh() / count, "barIn"));
        ifAny(comes, "From an engine, the returned grid or a battery brought", sum.helpInWh() / count, "barIn");
        double takenWh = (sum.startWh() - sum.endWh()) / count;
        goes.add(new Entry("Served, essential loads", sum.servedEssentialWh() / count, "barServed"));
        goes.add(new Entry("Served, nice to have", sum.servedNiceWh() / count, "barServed"));
        goes.add(new Entry("Inverter's standing draw", sum.standingWh() / count, "barLost"));
        goes.add(new Entry("Lost in the inverter", sum.inverterLossWh() / count, "barLost"));
        goes.add(new Entry("Lost in outlet converters", sum.outletLossWh() / count, "barLost"));
        goes.add(new Entry("Lost in the charge controller", sum.controllerLossWh() / count, "barLost"));
        ifAny(goes, "Drawn by the battery's heater", sum.heaterWh() / count, "barLost");
        ifAny(goes, "Lost in the battery with time", sum.selfDischargeWh() / count, "barLost");
        goes.add(new Entry("Lost charging the store", sum.chargeLossWh() / count, "barLost"));
        goes.add(new Entry("Lost discharging it", sum.dischargeLossWh() / count, "barLost"));
        goes.add(new Entry("Cut off by the controller's current", sum.controllerLimitWh() / count, "barLost"));
        goes.add(new Entry("Cut off by the store's charging current", sum.chargeLimitWh() / count, "barLost"));
        goes.add(new Entry("No room in the store", sum.noRoomWh() / count, "barLost"));
        (takenWh >= 0 ? comes : goes)
                .add(new Entry(
                        takenWh >= 0 ? "Taken from the store" : "Left in the store above its start",
                        Math.abs(takenWh),
                        "barIn"));
    }

    /** A row that only some rigs have. */
    private static void ifAny(List<Entry> side, String name, double wh, String style) {
        if (wh > 0) {
            side.add(new Entry(name, wh, style));
        }
    }

    static Table of(Ledger sum, int outages) {
        return new EnergyTable(sum, outages).table();
    }

    /** What was wanted and not given, of the mean outage. */
    static String wanting(Ledger sum, int outages) {
        return String.format(
                Locale.ROOT,
                "Wanted and not given: %s Wh of essential loads; of what is nice to have, %s Wh were wanted and %s Wh given.%s",
                figure(sum.unservedEssentialWh() / outages),
                figure(sum.wantedNiceWh() / outages),
                figure(sum.servedNiceWh() / outages),
                sum.gridServedWh() > 0
                        ? " While it was back, the grid fed essential loads with "
                                + figure(sum.gridServedWh() / outages) + " Wh, which are not in the table."
                        : "");
    }

    private Table table() {
        Table.Builder table = Table.titled("Energy of the mean outage")
                .words("where")
                .figures("Wh per outage")
                .drawing("as a bar");
        double most = 1;
        for (Entry entry : comes) {
            most = Math.max(most, entry.wh());
        }
        for (Entry entry : goes) {
            most = Math.max(most, entry.wh());
        }
        rows(table, "Comes in", comes, most);
        rows(table, "Goes to", goes, most);
        return table.done();
    }

    private static void rows(Table.Builder table, String side, List<Entry> entries, double most) {
        double total = 0;
        for (Entry entry : entries) {
            total += entry.wh();
        }
        table.styled("side", side, figure(total), "");
        for (Entry entry : entries) {
            table.row(entry.name(), figure(entry.wh()), bar(entry, most));
        }
    }

    private static String bar(Entry entry, double most) {
        Svg svg = Svg.silent(WIDTH, HEIGHT);
        double width = Math.max(0, entry.wh()) / most * WIDTH;
        if (width > 0) {
            svg.rect(entry.style(), 0.5, 1.5, Math.max(0.5, width - 1), HEIGHT - 3);
        }
        return svg.done();
    }

    /** Whole watt-hours; what is there but less than half of one is not called nothing. */
    private static String figure(double wh) {
        return wh > 0 && wh < 0.5 ? "<1" : String.format(Locale.ROOT, "%,.0f", wh == 0 ? 0.0 : wh);
    }
}
