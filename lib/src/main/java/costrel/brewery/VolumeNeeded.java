package costrel.brewery;

import costrel.pricing.BreakEven;
import costrel.pricing.Price;

/**
 * How many containers pay for a fixed cost, and for a profit where one is wanted.
 *
 * @param price the price of a container and what it leaves
 * @param breakEven the containers that it takes, rounded up to whole ones
 */
public record VolumeNeeded(Price price, BreakEven breakEven) {}
