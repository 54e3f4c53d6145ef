package costrel.measure;

import javax.measure.Quantity;

/**
 * A volume in each unit of time, such as a copper's evaporation of 140 L/h.
 *
 * <p>Worked in litres per hour.
 */
public interface FlowRate extends Quantity<FlowRate> {}
