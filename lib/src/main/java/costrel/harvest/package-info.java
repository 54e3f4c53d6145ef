/** New hop lots into a year's gyles: which lots, how many kilograms, what runs out, what to contract for. */
@NullMarked
package costrel.harvest;

import org.jspecify.annotations.NullMarked;
