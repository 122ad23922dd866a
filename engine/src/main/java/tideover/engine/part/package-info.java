/**
 * What can be bought: the maker's figures, price and date of batteries, panels, controllers, inverters, enclosures,
 * ready-made boxes, and of the small parts and tools that join them. Records only: how full or warm a part is belongs to the
 * proof.
 */
@NullMarked
package tideover.engine.part;

import org.jspecify.annotations.NullMarked;
