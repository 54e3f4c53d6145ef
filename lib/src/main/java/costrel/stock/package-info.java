/** What is in store: receipts and issues, the bases of cost by name, and what IAS 2 lets a batch carry. */
@NullMarked
package costrel.stock;

import org.jspecify.annotations.NullMarked;
