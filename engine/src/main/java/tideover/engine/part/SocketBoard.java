package tideover.engine.part;

import java.util.List;

/** Sockets of direct current on a plate of their own, fed from the battery through a fuse. */
public record SocketBoard(Listing listing, List<Outlet> outlets) implements Part {
    public SocketBoard {
        outlets = List.copyOf(outlets);
    }

    @Override
    public String kind() {
        return "sockets";
    }
}
