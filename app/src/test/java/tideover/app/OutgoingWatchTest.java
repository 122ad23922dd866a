package tideover.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.nio.channels.AsynchronousSocketChannel;
import java.nio.channels.SocketChannel;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** That nothing was seen means something: what is planted is seen. Address and name belong to nobody (RFC 5737, RFC 2606). */
class OutgoingWatchTest {
    private static final String ADDRESS = "192.0.2.1";
    private static final String NAME = "planted.invalid";

    @BeforeEach
    void onlyWhereItWatches() {
        assumeTrue(OutgoingWatch.watching(), "this Java lets nobody watch its connections; Java 17 does");
        assertThat(OutgoingWatch.take()).isEmpty();
    }

    private static void seen(String what, ThrowingCallable planted) {
        assertThatThrownBy(planted).isInstanceOf(SecurityException.class);
        assertThat(OutgoingWatch.take())
                .isNotEmpty()
                .allSatisfy(seen -> assertThat(seen).contains(what).contains("OutgoingWatchTest"));
    }

    @Test
    void sockets() {
        seen("to 192.0.2.1 port 80", () -> new Socket(ADDRESS, 80).close());
    }

    @Test
    void channels() {
        seen(
                "to 192.0.2.1 port 443",
                () -> SocketChannel.open(new InetSocketAddress(ADDRESS, 443)).close());
        seen("to 192.0.2.1 port 443", () -> {
            try (AsynchronousSocketChannel channel = AsynchronousSocketChannel.open()) {
                channel.connect(new InetSocketAddress(ADDRESS, 443)).get();
            }
        });
    }

    @Test
    void datagrams() {
        seen("to 192.0.2.1 port 53", () -> {
            try (DatagramSocket socket = new DatagramSocket()) {
                socket.send(new DatagramPacket(new byte[1], 1, InetAddress.getByName(ADDRESS), 53));
            }
        });
    }

    @Test
    void namesAndAddressesOfTheWeb() {
        seen("looked up planted.invalid", () -> InetAddress.getByName(NAME));
        seen(NAME, () -> URI.create("http://" + NAME + "/").toURL().openStream().close());
    }

    /** A class whose code swallows the refusal fails all the same. */
    @Test
    void theClassFails() {
        assertThatThrownBy(() -> new Socket(ADDRESS, 80).close()).isInstanceOf(SecurityException.class);
        assertThatThrownBy(OutgoingWatch::nothingSeen)
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining(ADDRESS);
        assertThat(OutgoingWatch.take()).isEmpty();
    }

    /** Ourselves may be spoken to. */
    @Test
    void thisMachineIsNotElsewhere() throws Exception {
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"));
                Socket socket = new Socket("localhost", server.getLocalPort())) {
            assertThat(socket.isConnected()).isTrue();
        }
        assertThat(OutgoingWatch.take()).isEmpty();
    }
}
