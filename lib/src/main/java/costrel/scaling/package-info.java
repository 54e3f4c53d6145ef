/** One recipe on one plant at one brew length: the gyle, with its volume ledger and extract ledger. */
@NullMarked
package costrel.scaling;

import org.jspecify.annotations.NullMarked;
