package tideover.engine.site;

/** One row of the station table: where it is and what its climate is. */
public record Station(String id, String state, Place place, MonthlyClimate climate) {
    public String label() {
        return place.name() + " " + state;
    }
}
