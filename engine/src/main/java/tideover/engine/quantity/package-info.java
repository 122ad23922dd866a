/**
 * Figures and the checks on them: arguments, unit conversions, the model year, immutable series, keyed random streams.
 * Takes plain numbers. Knows nothing of sun, batteries or plans; every other engine package may lean on it.
 */
@NullMarked
package tideover.engine.quantity;

import org.jspecify.annotations.NullMarked;
