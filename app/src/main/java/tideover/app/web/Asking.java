package tideover.app.web;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Advisor;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Glimpse;
import tideover.engine.answer.Options;
import tideover.engine.answer.Progress;
import tideover.engine.answer.Question;
import tideover.engine.answer.Skies;
import tideover.engine.quantity.Stopped;
import tideover.engine.rig.Rig;
import tideover.engine.search.Find;

/**
 * Works out the answers that sheets wait for: one at a time, since one answer keeps all processors busy; what was asked last comes
 * first. A question about a plan ends the work on an older one about the same plan, and holds up work on another; so an answer
 * never comes after a newer one.
 */
final class Asking implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(Asking.class.getName());

    private final Options options;
    private final Skies skies = new Skies();
    private final Map<String, Standing> standings = new HashMap<>();
    private final Deque<Job> waiting = new ArrayDeque<>();
    private @Nullable Job running;
    private boolean closed;
    private final Thread worker = new Thread(this::work, "answers");

    Asking(Options options) {
        this.options = options;
        worker.setDaemon(true);
        worker.start();
    }

    /** One question; what is asked of it gives the answer. */
    private static final class Job {
        final String about;
        final long revision;
        final Function<Progress, Answer> ask;
        volatile boolean stop;
        /** Stopped for another's sake only, and to be taken up again. */
        volatile boolean again;

        Job(String about, long revision, Function<Progress, Answer> ask) {
            this.about = about;
            this.revision = revision;
            this.ask = ask;
        }
    }

    /** The least that will do. */
    void size(String about, long revision, Question question) {
        put(new Job(about, revision, told -> Advisor.size(question, options, skies, told)));
    }

    /** The same, waited for; asked anew only where nobody has asked before. */
    Answer wait(String about, long revision, Question question) {
        synchronized (this) {
            Standing standing = standing(about);
            if (standing.revision() != revision) {
                size(about, revision, question);
            }
            while (true) {
                Standing now = standing(about);
                if (now.isFresh() && now.answer() != null) {
                    return now.answer();
                }
                if (!now.trouble().isEmpty() || closed) {
                    throw new IllegalStateException(now.trouble());
                }
                try {
                    wait();
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                    throw new Stopped();
                }
            }
        }
    }

    /** One rig. */
    void prove(String about, long revision, Question question, Rig rig) {
        put(new Job(about, revision, told -> Advisor.prove(question, rig, options, skies, told)));
    }

    /** What can be told of a rig at once. */
    Glimpse glimpse(Question question, Rig rig) {
        return Advisor.glimpse(question, rig, options, skies);
    }

    Options options() {
        return options;
    }

    private synchronized void put(Job job) {
        waiting.removeIf(other -> other.about.equals(job.about));
        if (running != null) {
            running.again = !running.about.equals(job.about);
            running.stop = true;
        }
        standings.put(job.about, standing(job.about).asked(job.revision));
        waiting.addFirst(job);
        notifyAll();
    }

    /** The plan cannot be read: what is being worked on is of no use any more. */
    synchronized void unread(String about, long revision) {
        waiting.removeIf(other -> other.about.equals(about));
        if (running != null && running.about.equals(about)) {
            running.again = false;
            running.stop = true;
        }
        standings.put(about, standing(about).unread(revision));
    }

    synchronized Standing standing(String about) {
        return standings.getOrDefault(about, Standing.NONE);
    }

    /** Everything about a plan is forgotten, every rig of it. */
    synchronized void forget(long plan) {
        String start = plan + "|";
        waiting.removeIf(job -> job.about.startsWith(start));
        if (running != null && running.about.startsWith(start)) {
            running.again = false;
            running.stop = true;
        }
        standings.keySet().removeIf(about -> about.startsWith(start));
        notifyAll();
    }

    /** Everything about all plans is. */
    synchronized void forgetAll() {
        waiting.clear();
        if (running != null) {
            running.again = false;
            running.stop = true;
        }
        standings.clear();
        notifyAll();
    }

    private void work() {
        while (true) {
            Job job = next();
            if (job == null) {
                return;
            }
            try {
                Answer answer = job.ask.apply(new Told(job));
                tell(job, standing -> standing.done(answer));
            } catch (Stopped stopped) {
                putBack(job);
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
                LOG.log(Level.SEVERE, "an answer failed", e);
                tell(job, standing -> standing.failed("The program failed at this plan. That is our fault: " + e));
            }
            if (isIdle()) {
                // What the search needed goes back to the machine while nobody asks: the pages may stay open for days.
                System.gc();
            }
        }
    }

    private synchronized @Nullable Job next() {
        running = null;
        while (waiting.isEmpty() && !closed) {
            try {
                wait();
            } catch (InterruptedException e) {
                return null;
            }
        }
        if (closed) {
            return null;
        }
        running = waiting.removeFirst();
        running.stop = false;
        return running;
    }

    private synchronized boolean isIdle() {
        return waiting.isEmpty();
    }

    private synchronized void putBack(Job job) {
        boolean newer = waiting.stream().anyMatch(other -> other.about.equals(job.about));
        if (job.again && !newer) {
            waiting.addLast(job);
        }
    }

    /** Only while nobody has asked anew. */
    private synchronized void tell(Job job, Function<Standing, Standing> change) {
        Standing now = standing(job.about);
        if (now.revision() == job.revision && now.working()) {
            standings.put(job.about, change.apply(now));
            notifyAll();
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
        if (running != null) {
            running.stop = true;
        }
        waiting.clear();
        notifyAll();
    }

    /** Keeps the standing up to date. */
    private final class Told implements Progress {
        private final Job job;

        Told(Job job) {
            this.job = job;
        }

        @Override
        public void at(String stage, double share) {
            tell(job, standing -> standing.known(standing.known().at(stage, share)));
        }

        @Override
        public void found(Find find) {
            tell(job, standing -> standing.known(standing.known().with(find)));
        }

        @Override
        public void judgedBelow(long cents) {
            tell(job, standing -> standing.known(standing.known().judgedBelow(cents)));
        }

        @Override
        public boolean stop() {
            return job.stop;
        }
    }
}
