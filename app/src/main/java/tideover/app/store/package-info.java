/**
 * Where the pages keep plans: one SQLite file. Knows texts and files, and nothing of what they mean; a crash or a power cut at any
 * instant loses at most the change in flight.
 */
@NullMarked
package tideover.app.store;

import org.jspecify.annotations.NullMarked;
