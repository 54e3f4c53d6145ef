/** Results written as text tables, CSV, JSON, HTML brew sheets and SVG. */
@NullMarked
package costrel.report;

import org.jspecify.annotations.NullMarked;
