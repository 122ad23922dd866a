/**
 * How cold things behave: foods and ice with their heats, boxes with their walls, compressors against room temperature, what a label
 * says a box uses, and the hours that the food-safety agencies allow. Takes litres, kilograms and watts; must not know
 * rigs, weather or outages.
 */
@NullMarked
package tideover.engine.cold;

import org.jspecify.annotations.NullMarked;
