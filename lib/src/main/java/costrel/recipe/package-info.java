/** A beer as its brewer wrote it down, and the same with every name found in a catalogue. */
@NullMarked
package costrel.recipe;

import org.jspecify.annotations.NullMarked;
