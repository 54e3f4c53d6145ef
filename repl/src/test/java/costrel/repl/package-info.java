/** Tests of the console, most of them by what a person or a pipe gets to see. */
@NullMarked
package costrel.repl;

import org.jspecify.annotations.NullMarked;
