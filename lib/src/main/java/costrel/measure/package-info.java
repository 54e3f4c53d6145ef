/** Units with exact factors, and the one door between quantities or their text and plain numbers. */
@NullMarked
package costrel.measure;

import org.jspecify.annotations.NullMarked;
