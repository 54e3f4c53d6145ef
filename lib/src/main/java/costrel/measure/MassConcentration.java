package costrel.measure;

import javax.measure.Quantity;

/**
 * A weight for each volume of what it goes into, such as hops at 34.6 g/hL or malt extract at 1 lb/brl.
 *
 * <p>Worked in grams per hectolitre.
 */
public interface MassConcentration extends Quantity<MassConcentration> {}
