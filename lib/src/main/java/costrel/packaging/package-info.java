/** The casks, kegs, bottles and cans a gyle is racked into, and how it is shared among them. */
@NullMarked
package costrel.packaging;

import org.jspecify.annotations.NullMarked;
