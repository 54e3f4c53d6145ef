/** How a figure came about, as a tree that can be read or printed. */
@NullMarked
package costrel.explain;

import org.jspecify.annotations.NullMarked;
