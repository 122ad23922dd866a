/**
 * Meter readings to loads and capacities, with their uncertainty. Takes readings already read from files; must not know
 * the search. Readings enter a plan as measured figures.
 */
@NullMarked
package tideover.engine.meter;

import org.jspecify.annotations.NullMarked;
