/**
 * Where a number comes from and what is held against it: basis and source of an input, a rule's finding with value,
 * limit and margin, and what a person typed wrong. Takes texts and figures; knows no part, load or place.
 */
@NullMarked
package tideover.engine.why;

import org.jspecify.annotations.NullMarked;
