/** A brewery's folder opened once, its recipes, plants, hop lots and prices found by name. */
@NullMarked
package costrel.brewery;

import org.jspecify.annotations.NullMarked;
