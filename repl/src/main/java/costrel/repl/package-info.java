/** The console's program, from the command line to the last printed line. */
@NullMarked
package costrel.repl;

import org.jspecify.annotations.NullMarked;
