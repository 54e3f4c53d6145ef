/** Gravity, extract, strength, colour, heat and density of wort and beer, each a type or a formula with its source. */
@NullMarked
package costrel.wort;

import org.jspecify.annotations.NullMarked;
