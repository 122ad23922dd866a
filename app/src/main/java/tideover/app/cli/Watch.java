package tideover.app.cli;

import java.util.function.Consumer;
import tideover.engine.answer.Known;
import tideover.engine.answer.Progress;
import tideover.engine.quantity.Stopped;
import tideover.engine.search.Find;

/**
 * Keeps what is known while a question is worked on, and tells it when the process is asked to end (Ctrl-C). The telling comes
 * first and does not wait for the work; the work is told to stop, so that the processor is free. Should the telling
 * hang, for one because nobody reads what is written, the process ends without it.
 */
final class Watch implements Progress, AutoCloseable {
    private static final long MOST_MS = 900;

    private final Progress shown;
    private final Consumer<Known> tell;
    private final Thread atTheEnd = new Thread(this::end, "end");
    private volatile Known known = Known.NOTHING;
    private volatile boolean stop;

    private Watch(Progress shown, Consumer<Known> tell) {
        this.shown = shown;
        this.tell = tell;
    }

    /**
     * @param shown told the same
     * @param tell  takes what is known when the process has to end
     */
    static Watch over(Progress shown, Consumer<Known> tell) {
        Watch watch = new Watch(shown, tell);
        Runtime.getRuntime().addShutdownHook(watch.atTheEnd);
        return watch;
    }

    private void end() {
        stop = true;
        Thread telling = new Thread(() -> tell.accept(known), "telling");
        telling.setDaemon(true);
        telling.start();
        try {
            telling.join(MOST_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (telling.isAlive()) {
            Runtime.getRuntime().halt(Failures.STOPPED);
        }
    }

    @Override
    public synchronized void at(String stage, double share) {
        known = known.at(stage, share);
        if (!stop) {
            shown.at(stage, share);
        }
    }

    @Override
    public synchronized void found(Find find) {
        known = known.with(find);
        if (!stop) {
            shown.found(find);
        }
    }

    @Override
    public synchronized void judgedBelow(long cents) {
        known = known.judgedBelow(cents);
    }

    @Override
    public boolean stop() {
        return stop;
    }

    @Override
    public void close() {
        try {
            Runtime.getRuntime().removeShutdownHook(atTheEnd);
        } catch (IllegalStateException e) {
            // The process is ending already: what is known is being told, and nothing else may be.
            throw new Stopped();
        }
    }
}
