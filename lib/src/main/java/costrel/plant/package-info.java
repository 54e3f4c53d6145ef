/** A brewery's vessels with their limits, losses, evaporation and efficiencies. */
@NullMarked
package costrel.plant;

import org.jspecify.annotations.NullMarked;
