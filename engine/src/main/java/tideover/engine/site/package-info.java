/**
 * Where: a place, its monthly climate figures, years of hourly weather generated or imported, snow on panels, rooms.
 * Takes figures already read; must not know loads, outages or parts, and opens no file.
 */
@NullMarked
package tideover.engine.site;

import org.jspecify.annotations.NullMarked;
