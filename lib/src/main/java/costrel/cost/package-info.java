/** Bill of materials, rates, packages and yield to a cost sheet, per pint, per container and per mix. */
@NullMarked
package costrel.cost;

import org.jspecify.annotations.NullMarked;
