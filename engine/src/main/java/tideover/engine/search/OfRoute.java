package tideover.engine.search;

/**
 * What one way of building has to offer.
 *
 * @param meets whether it meets the target and was confirmed; else it is the one whose share is nearest
 */
public record OfRoute(Rated rated, boolean meets) {}
