/**
 * One rig walked through outages: the carried share with its interval, hours carried, traces, the binding limit, and the
 * independent checker of every result. Takes series and a rig, flattens them to arrays; must not choose between rigs.
 */
@NullMarked
package tideover.engine.proof;

import org.jspecify.annotations.NullMarked;
