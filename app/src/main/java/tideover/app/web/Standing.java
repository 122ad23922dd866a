package tideover.app.web;

import org.jspecify.annotations.Nullable;
import tideover.engine.answer.Answer;
import tideover.engine.answer.Known;

/**
 * How far the answer to a plan is.
 *
 * @param revision  of the plan that is being worked on or was
 * @param working   whether more is to come
 * @param known     so far, of this revision
 * @param answer    the newest that there is, perhaps to an older revision; null before the first
 * @param answered  the revision that it answers; 0 before the first
 * @param trouble   what went wrong in the program; empty where nothing did
 */
record Standing(
        long revision,
        boolean working,
        Known known,
        @Nullable Answer answer,
        long answered,
        String trouble) {
    static final Standing NONE = new Standing(0, false, Known.NOTHING, null, 0, "");

    boolean isFresh() {
        return answer != null && answered == revision;
    }

    Standing asked(long newRevision) {
        return new Standing(newRevision, true, Known.NOTHING, answer, answered, "");
    }

    Standing known(Known more) {
        return new Standing(revision, working, more, answer, answered, trouble);
    }

    Standing done(Answer found) {
        return new Standing(revision, false, known, found, revision, "");
    }

    Standing failed(String why) {
        return new Standing(revision, false, known, answer, answered, why);
    }

    /** The plan cannot be read as it stands: nothing is worked on. */
    Standing unread(long newRevision) {
        return new Standing(newRevision, false, Known.NOTHING, answer, answered, "");
    }
}
