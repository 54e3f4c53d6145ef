/** What to charge for a costed beer, why its cost moved, what might move it next, and how a range of beers compares. */
@NullMarked
package costrel.pricing;

import org.jspecify.annotations.NullMarked;
