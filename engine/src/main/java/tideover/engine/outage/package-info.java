/**
 * The question only: which months or which days, how long, how full the store is at the start, when panels come out,
 * what share must be carried. Takes weather to pick the storm days; must not know any rig.
 */
@NullMarked
package tideover.engine.outage;

import org.jspecify.annotations.NullMarked;
