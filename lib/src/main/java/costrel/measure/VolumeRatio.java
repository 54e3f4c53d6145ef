package costrel.measure;

import javax.measure.Quantity;

/**
 * A volume for each volume of what it goes into, such as finings at 350 mL/hL.
 *
 * <p>Worked in millilitres per hectolitre.
 */
public interface VolumeRatio extends Quantity<VolumeRatio> {}
