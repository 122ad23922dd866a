package tideover.engine.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;

/**
 * Does numbered pieces of work on so many threads. A piece may write only to places that belong to its number; then the
 * outcome cannot depend on how many threads there were or who finished first. Before every piece it is asked whether to stop.
 */
public final class Workers {
    private final int threads;
    private final BooleanSupplier stop;

    private Workers(int threads, BooleanSupplier stop) {
        this.threads = threads;
        this.stop = stop;
    }

    public static Workers of(int threads) {
        return of(threads, () -> false);
    }

    /** @param stop asked from any thread; once it says so, work ends with {@link Stopped} */
    public static Workers of(int threads, BooleanSupplier stop) {
        return new Workers(Require.within(1, 256, "threads", threads), stop);
    }

    private void askWhetherToStop() {
        if (stop.getAsBoolean()) {
            throw new Stopped();
        }
    }

    /**
     * Runs {@code work} for every number from 0 to {@code pieces - 1} and returns when all are done.
     *
     * @throws Stopped where it was asked to stop before that
     */
    public void forEach(int pieces, IntConsumer work) {
        if (threads == 1 || pieces < 2) {
            for (int i = 0; i < pieces; i++) {
                askWhetherToStop();
                work.accept(i);
            }
            return;
        }
        AtomicInteger next = new AtomicInteger();
        Runnable share = () -> {
            for (int i = next.getAndIncrement(); i < pieces; i = next.getAndIncrement()) {
                askWhetherToStop();
                work.accept(i);
            }
        };
        // The caller is one of the threads.
        int others = Math.min(threads, pieces) - 1;
        ExecutorService pool = Executors.newFixedThreadPool(others, task -> {
            Thread thread = new Thread(task, "worker");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int t = 0; t < others; t++) {
                running.add(pool.submit(share));
            }
            share.run();
            for (Future<?> one : running) {
                one.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while working", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
