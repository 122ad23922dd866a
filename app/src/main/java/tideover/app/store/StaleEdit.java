package tideover.app.store;

public final class StaleEdit extends RuntimeException {
    private static final long serialVersionUID = 1;
}
