package tideover.app.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import tideover.engine.outage.Outage;
import tideover.engine.proof.StartTable;
import tideover.engine.quantity.ModelYear;

/** Outages carried by the month and the hour of day in which they begin. */
final class StartsTable {
    private static final int BLOCK_HOURS = 3;

    private StartsTable() {}

    /** Carried per hundred for blocks of hours; what stays below the target is in brackets. */
    static Table brief(StartTable starts, Outage outage) {
        Table.Builder table = Table.titled("Carried, of 100 outages that begin in these hours")
                .words("month");
        for (int from = 0; from < 24; from += BLOCK_HOURS) {
            table.figures(String.format(Locale.ROOT, "%02d-%02d", from, from + BLOCK_HOURS));
        }
        for (int month = 0; month < 12; month++) {
            String[] cells = new String[24 / BLOCK_HOURS + 1];
            cells[0] = ModelYear.monthName(month);
            for (int block = 0; block < 24 / BLOCK_HOURS; block++) {
                cells[block + 1] = cell(starts, month, block * BLOCK_HOURS, outage.targetShare());
            }
            table.styled(outage.months().contains(month) ? "asked" : "", cells);
        }
        return table.done();
    }

    private static String cell(StartTable starts, int month, int from, double target) {
        int walked = 0;
        int carried = 0;
        for (int hour = from; hour < from + BLOCK_HOURS; hour++) {
            walked += starts.walked(month, hour);
            carried += starts.carried(month, hour);
        }
        if (walked == 0) {
            return "none";
        }
        double share = (double) carried / walked;
        String figure = String.format(Locale.ROOT, "%.0f", Math.floor(100 * share + 1e-9));
        return share < target ? "(" + figure + ")" : figure;
    }

    /** Every count, as carried of walked where the hours of a month differ. */
    static Table full(StartTable starts) {
        Table.Builder table = Table.titled("Outages carried, by month and start hour")
                .words("month")
                .figures("walked each hour");
        for (int hour = 0; hour < 24; hour++) {
            table.figures(String.format(Locale.ROOT, "%02d", hour));
        }
        for (int month = 0; month < 12; month++) {
            int m = month;
            List<Integer> walked = IntStream.range(0, 24)
                    .mapToObj(hour -> starts.walked(m, hour))
                    .distinct()
                    .toList();
            String[] cells = new String[26];
            cells[0] = ModelYear.monthName(month);
            cells[1] = walked.size() == 1 ? String.valueOf(walked.get(0)) : "differs";
            for (int hour = 0; hour < 24; hour++) {
                cells[hour + 2] =
                        starts.carried(month, hour) + (walked.size() == 1 ? "" : "/" + starts.walked(month, hour));
            }
            table.row(cells);
        }
        return table.done();
    }
}
