/** What suppliers' lists ask: rows, packs, breaks, terms, carriage and exchange, and which row is taken on a day. */
@NullMarked
package costrel.buying;

import org.jspecify.annotations.NullMarked;
