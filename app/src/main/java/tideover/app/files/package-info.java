/**
 * Everything that is read from disk: plans, parts, rigs, hourly weather, the station table. Turns what a person typed
 * into the engine's records, with file, line and field beside everything that is wrong, all of it at once. Converts
 * units here and nowhere deeper. Computes nothing and writes nothing.
 */
@NullMarked
package tideover.app.files;

import org.jspecify.annotations.NullMarked;
