package tideover.engine.proof;

/** Outages walked and carried, by the month and the hour of day in which they began. */
public final class StartTable {
    private final int[][] walked = new int[12][24];
    private final int[][] carried = new int[12][24];

    StartTable() {}

    void count(int month, int hourOfDay, boolean wasCarried) {
        walked[month][hourOfDay]++;
        carried[month][hourOfDay] += wasCarried ? 1 : 0;
    }

    public int walked(int month, int hourOfDay) {
        return walked[month][hourOfDay];
    }

    public int carried(int month, int hourOfDay) {
        return carried[month][hourOfDay];
    }

    /** True where every outage that began in the month was carried. */
    public boolean monthWithoutFailure(int month) {
        for (int hour = 0; hour < 24; hour++) {
            if (carried[month][hour] < walked[month][hour]) {
                return false;
            }
        }
        return true;
    }
}
