/**
 * Commands: each reads its options, asks the engine through the one door, and hands the answer to the report package.
 * The only package that touches standard streams and the exit status.
 */
@NullMarked
package tideover.app.cli;

import org.jspecify.annotations.NullMarked;
