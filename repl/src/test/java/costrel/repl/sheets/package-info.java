@NullMarked
package costrel.repl.sheets;

import org.jspecify.annotations.NullMarked;
