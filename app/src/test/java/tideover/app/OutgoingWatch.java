package tideover.app;

import java.io.FileDescriptor;
import java.net.InetAddress;
import java.security.Permission;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Around every test class of this module: whoever tries to reach another machine is refused, and the class fails.
 *
 * <p>It sees each try to connect by socket or channel, each datagram sent and each name looked up in this JVM, whether it would have succeeded or not,
 * and also if the caller swallows the refusal. It sits in Java's own check before such calls, which Java 17 has and newer ones take away: from 18 on it
 * must be allowed on the command line, from 24 on it is gone. There nothing is watched, {@code OutgoingWatchTest} is left out and says so, and what
 * stays is the architecture test's rule that no class of ours uses what opens connections.
 *
 * <p>What it cannot see: native code, other processes (the browser has a rule of its own in {@code Chrome}), the time before the first test
 * class, and who among threads at work at the same time it was that tried: a late one is charged to the class that is then running. After the last
 * class a try is refused but told to nobody.
 */
public final class OutgoingWatch implements BeforeAllCallback, AfterAllCallback {
    private static final List<String> SEEN = new ArrayList<>();

    private static boolean asked;
    private static boolean watching;

    @Override
    public void beforeAll(ExtensionContext context) {
        start();
    }

    @Override
    public void afterAll(ExtensionContext context) {
        nothingSeen();
    }

    static void nothingSeen() {
        List<String> seen = take();
        if (!seen.isEmpty()) {
            throw new AssertionError("tried to reach another machine:\n" + String.join("\n", seen));
        }
    }

    static synchronized boolean watching() {
        return watching;
    }

    /** What was seen since the last time, which is then forgotten. */
    static List<String> take() {
        synchronized (SEEN) {
            List<String> seen = List.copyOf(SEEN);
            SEEN.clear();
            return seen;
        }
    }

    @SuppressWarnings("removal") // There is no other place before every connection: see above.
    private static synchronized void start() {
        if (asked) {
            return;
        }
        asked = true;
        try {
            System.setSecurityManager(new Witness());
            watching = true;
        } catch (UnsupportedOperationException e) {
            System.err.println("Outgoing connections are not watched: this Java does not allow it.");
        }
    }

    private static boolean here(String host) {
        return host.equals("localhost")
                || host.startsWith("127.")
                || host.equals("::1")
                || host.equals("0:0:0:0:0:0:0:1");
    }

    private static void note(String host, int port) {
        if (here(host)) {
            return;
        }
        String what = port == -1 ? "looked up " + host : "to " + host + " port " + port;
        String from = Arrays.stream(new Throwable().getStackTrace())
                .filter(frame -> !frame.getClassName().startsWith("java.")
                        && !frame.getClassName().startsWith("sun.")
                        && !frame.getClassName().startsWith(OutgoingWatch.class.getName() + "$"))
                .skip(1)
                .limit(4)
                .map(StackTraceElement::toString)
                .toList()
                .toString();
        synchronized (SEEN) {
            SEEN.add(what + " by " + from);
        }
        throw new SecurityException("tests reach no other machine: " + what);
    }

    /** Allows everything else, and as quickly as can be. */
    @SuppressWarnings("removal")
    private static final class Witness extends SecurityManager {
        @Override
        public void checkConnect(String host, int port) {
            note(host, port);
        }

        @Override
        public void checkConnect(String host, int port, Object context) {
            note(host, port);
        }

        @Override
        public void checkMulticast(InetAddress group) {
            note(group.getHostAddress(), 0);
        }

        @Override
        public void checkPermission(Permission permission) {}

        @Override
        public void checkPermission(Permission permission, Object context) {}

        @Override
        public void checkRead(String file) {}

        @Override
        public void checkRead(String file, Object context) {}

        @Override
        public void checkRead(FileDescriptor file) {}

        @Override
        public void checkWrite(String file) {}

        @Override
        public void checkWrite(FileDescriptor file) {}

        @Override
        public void checkDelete(String file) {}

        @Override
        public void checkPropertyAccess(String key) {}

        @Override
        public void checkPackageAccess(String name) {}
    }
}
