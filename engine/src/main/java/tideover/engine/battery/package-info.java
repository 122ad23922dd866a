/**
 * How a battery behaves, as shapes and fractions: the two wells of its charge, its volts by charge, what cold does to it,
 * what it takes near full, when it freezes, how it ages. Takes figures of a data sheet; must not know parts, rigs or outages.
 */
@NullMarked
package tideover.engine.battery;

import org.jspecify.annotations.NullMarked;
