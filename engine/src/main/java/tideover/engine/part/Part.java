package tideover.engine.part;

/** Something that can be bought, or is on the shelf. */
public sealed interface Part
        permits Aid, Battery, Panel, ChargeController, Inverter, Charger, SocketBoard, Enclosure, ReadyBox, Engine {
    Listing listing();

    /** Kind as a parts file writes it. */
    String kind();
}
