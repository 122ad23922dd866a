/**
 * From a rig to what it takes to build it, and so to the price of the whole; with the tables and formulas that say what a
 * conductor may carry, loses and bears. Takes a rig and the household's allowances; must not simulate.
 */
@NullMarked
package tideover.engine.wiring;

import org.jspecify.annotations.NullMarked;
