/**
 * The pages: one sheet for each plan, served on this machine alone. Answers what a browser asks from the store, the plan reader,
 * the engine's one door and the reports; knows nothing of commands.
 */
@NullMarked
package tideover.app.web;

import org.jspecify.annotations.NullMarked;
