package costrel.measure;

import javax.measure.Quantity;

/**
 * The extract that a weight of material can give, such as a malt's hot water extract of 300 L°/kg.
 *
 * <p>Worked in litre-degrees per kilogram; it can't be taken for a {@link SpecificVolume}.
 */
public interface SpecificExtract extends Quantity<SpecificExtract> {}
