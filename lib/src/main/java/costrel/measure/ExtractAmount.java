package costrel.measure;

import javax.measure.Quantity;

/**
 * Extract in litre-degrees: litres of wort at 20 °C times its excess gravity in degrees.
 *
 * <p>On paper this has the dimension of a volume. Here it has one of its own, so that 300 L° can't be read as 300 L.
 */
public interface ExtractAmount extends Quantity<ExtractAmount> {}
