/** How fast the library is: each figure beside its peer or its limit in the same run. Not shipped. */
@NullMarked
package costrel.bench;

import org.jspecify.annotations.NullMarked;
