package tideover.app.cli;

import java.io.PrintWriter;
import tideover.app.report.KnownWords;
import tideover.engine.answer.Progress;
import tideover.engine.search.Find;

/**
 * One line on the terminal that says what is being done and how far it is, and above it a line for everything found on the way;
 * nothing where there is no terminal.
 */
final class ProgressLine implements Progress, AutoCloseable {
    private static final int BAR = 30;

    private final PrintWriter err;
    private final boolean shown;
    private final String currency;
    private String last = "";

    /** @param currency of the prices of what is found */
    ProgressLine(PrintWriter err, boolean shown, String currency) {
        this.err = err;
        this.shown = shown;
        this.currency = currency;
    }

    /** The launcher sees the terminal and says so: from inside the Java process it cannot be told reliably. */
    static boolean onTerminal() {
        return "1".equals(System.getenv("TIDEOVER_TERMINAL"));
    }

    @Override
    public synchronized void at(String stage, double share) {
        if (!shown) {
            return;
        }
        int filled = (int) Math.round(BAR * Math.max(0, Math.min(1, share)));
        String line = String.format("%-12s %s%s", stage, "=".repeat(filled), ".".repeat(BAR - filled));
        if (!line.equals(last)) {
            err.print("\r" + line);
            err.flush();
            last = line;
        }
    }

    @Override
    public synchronized void found(Find find) {
        if (shown) {
            wipe();
            err.println(KnownWords.found(find, currency));
            err.print(last);
            err.flush();
        }
    }

    private void wipe() {
        err.print("\r" + " ".repeat(last.length()) + "\r");
    }

    @Override
    public synchronized void close() {
        if (!last.isEmpty()) {
            wipe();
            err.flush();
        }
    }
}
