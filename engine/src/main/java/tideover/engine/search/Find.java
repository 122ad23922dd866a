package tideover.engine.search;

/** What a search tells on the way: the rig, and what it turned out to be. */
public record Find(Kind kind, Rated rated) {
    /** In the order in which one rig may go through them. */
    public enum Kind {
        /** Nothing cheaper carries as much: a step of the front of price against share. */
        STEP,

        /** The cheapest that carries the target in the screened years; the confirmation is still out. */
        MEETS,

        /** It holds on the confirming years too: the winner. */
        CONFIRMED,

        /** It does not; the search goes on to dearer ones. */
        NOT_CONFIRMED
    }
}
