/** Duty on a beer by dated tables: bands, relief, draught rates, and other countries' bases, each rounding in its place. */
@NullMarked
package costrel.duty;

import org.jspecify.annotations.NullMarked;
