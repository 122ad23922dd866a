package tideover.app.store;

/** A plan was changed by somebody else since the state that a change was made for; nothing was written. */
public final class StaleEdit extends RuntimeException {
    private static final long serialVersionUID = 1;

    StaleEdit(long base, long newest) {
        super("made for revision " + base + ", the newest is " + newest);
    }
}
