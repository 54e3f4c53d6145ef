/** Tests of the library as a whole. */
@NullMarked
package costrel;

import org.jspecify.annotations.NullMarked;
