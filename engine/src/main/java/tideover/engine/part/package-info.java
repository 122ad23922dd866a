/**
 * What can be bought: the maker's figures, price and date of batteries, panels, controllers, inverters, enclosures and
 * ready-made boxes. Records only: how full or warm a part is belongs to the proof.
 */
@NullMarked
package tideover.engine.part;

import org.jspecify.annotations.NullMarked;
