/** What every record that carries money checks, rounds and prints alike; not exported. */
@NullMarked
package costrel.figures;

import org.jspecify.annotations.NullMarked;
