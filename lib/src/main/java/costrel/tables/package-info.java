/** CSV files read into rows or into a full list of what is wrong with them. */
@NullMarked
package costrel.tables;

import org.jspecify.annotations.NullMarked;
