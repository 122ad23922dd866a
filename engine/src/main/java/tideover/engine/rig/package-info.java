/**
 * Parts put together as one system, the rules they must keep, and what they weigh. Takes parts and loads; a failed rule
 * rejects a rig before any simulation. Must not know weather beyond the cold that a rule asks for.
 */
@NullMarked
package tideover.engine.rig;

import org.jspecify.annotations.NullMarked;
