package tideover.engine.site;

import java.util.List;

/**
 * The station nearest to a place, and what speaks against taking its climate for the place's.
 *
 * @param distanceKm        along the great circle
 * @param heightDifferenceM place less station; NaN where the place's height is not known
 * @param cautions          one sentence each, empty where none applies
 */
public record NearestStation(Station station, double distanceKm, double heightDifferenceM, List<String> cautions) {
    public NearestStation {
        cautions = List.copyOf(cautions);
    }
}
