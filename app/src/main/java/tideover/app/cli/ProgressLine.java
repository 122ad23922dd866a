package tideover.app.cli;

import java.io.PrintWriter;
import tideover.engine.answer.Progress;

/** One line on the terminal that says what is being done and how far it is; nothing where there is no terminal. */
final class ProgressLine implements Progress, AutoCloseable {
    private static final int BAR = 30;

    private final PrintWriter err;
    private final boolean shown;
    private String last = "";

    ProgressLine(PrintWriter err, boolean shown) {
        this.err = err;
        this.shown = shown;
    }

    /** The launcher sees the terminal and says so: from inside the Java process it cannot be told reliably. */
    static boolean onTerminal() {
        return "1".equals(System.getenv("TIDEOVER_TERMINAL"));
    }

    @Override
    public void at(String stage, double share) {
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
    public void close() {
        if (!last.isEmpty()) {
            err.print("\r" + " ".repeat(last.length()) + "\r");
            err.flush();
        }
    }
}
