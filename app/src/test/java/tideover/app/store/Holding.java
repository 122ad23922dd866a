package tideover.app.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;

/** A program that has a file of plans open until it is ended. */
final class Holding {
    private Holding() {}

    /** @param args how, {@code pages} as Tideover does or {@code writing} as any other program may; and the file */
    public static void main(String[] args) throws IOException, SQLException {
        Path file = Path.of(args[1]);
        if (args[0].equals("pages")) {
            try (Store store = Store.open(file)) {
                System.out.println("open with " + store.plans().size());
                System.in.read();
            } catch (StoreProblem e) {
                System.out.println(e.getMessage());
            }
            return;
        }
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            other.createStatement().execute("begin immediate");
            System.out.println("open");
            System.in.read();
        }
    }
}
