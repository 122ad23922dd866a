/**
 * The one door: a question in, an answer out. Commands, pages and studies all call this and nothing deeper. Adds no
 * physics of its own.
 */
@NullMarked
package tideover.engine.answer;

import org.jspecify.annotations.NullMarked;
