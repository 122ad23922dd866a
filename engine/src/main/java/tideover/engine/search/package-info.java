/**
 * Which rig is the least that will do: candidates from the parts, drawdown screening that serves every store size at
 * once, the cheapest, near ties, misses and the trade-off front. Takes parts and a question; judges only by the proof.
 */
@NullMarked
package tideover.engine.search;

import org.jspecify.annotations.NullMarked;
