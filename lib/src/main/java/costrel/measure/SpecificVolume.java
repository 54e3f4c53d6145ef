package costrel.measure;

import javax.measure.Quantity;

/**
 * A volume for each weight, such as 2.5 L of liquor for each kg of grist.
 *
 * <p>Worked in litres per kilogram.
 */
public interface SpecificVolume extends Quantity<SpecificVolume> {}
