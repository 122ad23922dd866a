/**
 * What must stay on: the sealed kinds of load, the need that each owes its people, and the demand they make through
 * the day. Takes watts at the load's own terminals; must not know batteries, inverters or weather.
 */
@NullMarked
package tideover.engine.load;

import org.jspecify.annotations.NullMarked;
