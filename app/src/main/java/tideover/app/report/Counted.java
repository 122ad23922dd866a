package tideover.app.report;

import java.util.Locale;

/** A number with the thing it counts, such as "1 week" and "3 weeks". */
final class Counted {
    private Counted() {}

    static String of(long count, String thing) {
        return String.format(Locale.ROOT, "%,d %s%s", count, thing, count == 1 ? "" : "s");
    }
}
