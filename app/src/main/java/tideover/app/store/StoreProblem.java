package tideover.app.store;

public final class StoreProblem extends RuntimeException {
    private static final long serialVersionUID = 1;

    public StoreProblem(String s) {
        super(s);
    }
}
