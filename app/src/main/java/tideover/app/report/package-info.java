/**
 * Answers as text, JSON, CSV and a self-contained HTML page. Takes answers; asks the engine nothing and reads no file.
 */
@NullMarked
package tideover.app.report;

import org.jspecify.annotations.NullMarked;
