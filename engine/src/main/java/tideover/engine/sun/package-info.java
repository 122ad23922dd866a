/**
 * What the sun gives: its position, the split of sky light, the tilted plane, the panel's temperature and power.
 * Takes angles, irradiance and air temperature; one year of geometry serves all years. Must not know places by name,
 * weather years or parts.
 */
@NullMarked
package tideover.engine.sun;

import org.jspecify.annotations.NullMarked;
