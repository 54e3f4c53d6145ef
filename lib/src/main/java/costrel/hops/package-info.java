/** Hop varieties and lots, their alpha acid on the brewing day, and named conventions for utilisation. */
@NullMarked
package costrel.hops;

import org.jspecify.annotations.NullMarked;
