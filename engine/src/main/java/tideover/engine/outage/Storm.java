package tideover.engine.outage;

import tideover.engine.quantity.Require;

/**
 * What a storm does beside taking the grid.
 *
 * @param panelsStowedHours from the outage's beginning until the panels are out: wind keeps them in, snow lies on them
 * @param forecast          whether it is known a day ahead, so that boxes are cooled down before
 */
public record Storm(int panelsStowedHours, boolean forecast) {
    public Storm {
        Require.within(0, 60 * 24, "panelsStowedHours", panelsStowedHours);
    }
}
