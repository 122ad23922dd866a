package tideover.engine.quantity;

/** Work was asked to stop and did, before it was done. What was found so far has been told on the way. */
public final class Stopped extends RuntimeException {
    private static final long serialVersionUID = 1;

    public Stopped() {
        super("stopped before it was done", null, false, false);
    }
}
