package tideover.app.cli;

/** Start of the program. */
public final class Tideover {
    private Tideover() {}

    public static void main(String[] args) {
        System.out.println("Tideover");
    }
}
