/**
 * What stands between battery, panels and plugs: an inverter's losses and its waveform, how a controller follows the panel,
 * the chain of links that a motor's start goes through, the sizes of copper conductors. Takes figures of a data sheet; must
 * not know parts, rigs or outages.
 */
@NullMarked
package tideover.engine.electronics;

import org.jspecify.annotations.NullMarked;
