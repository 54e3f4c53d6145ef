package costrel.measure;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;

/**
 * A kind of amount: what a person calls it, and the unit that calculations use.
 *
 * @param <Q> the quantity
 * @param noun with its article, such as "a mass"
 * @param example text that reads, such as "25 kg"
 * @param canonical the unit of calculations
 * @param compound whether "4 lb 6 oz" makes sense for it
 */
record Kind<Q extends Quantity<Q>>(String noun, String example, Unit<Q> canonical, boolean compound) {

    static final Kind<Mass> MASS = new Kind<>("a mass", "25 kg", Units.KILOGRAM, true);
    static final Kind<Volume> VOLUME = new Kind<>("a volume", "30 brl", Units.LITRE, true);
    static final Kind<Time> TIME = new Kind<>("a time", "90 min", Units.MINUTE, true);
    static final Kind<Temperature> TEMPERATURE = new Kind<>("a temperature", "21 °C", Units.CELSIUS, false);
    static final Kind<MassConcentration> MASS_CONCENTRATION =
            new Kind<>("a weight per volume", "12 g/hL", Units.GRAM_PER_HECTOLITRE, false);
    static final Kind<SpecificVolume> SPECIFIC_VOLUME =
            new Kind<>("a volume per weight", "2.5 L/kg", Units.LITRE_PER_KILOGRAM, false);
    static final Kind<VolumeRatio> VOLUME_RATIO =
            new Kind<>("a volume per volume", "15 mL/hL", Units.MILLILITRE_PER_HECTOLITRE, false);
    static final Kind<ExtractAmount> EXTRACT_AMOUNT =
            new Kind<>("an amount of extract", "36000 L°", Units.LITRE_DEGREE, false);
    static final Kind<SpecificExtract> SPECIFIC_EXTRACT =
            new Kind<>("an extract per weight", "300 L°/kg", Units.LITRE_DEGREE_PER_KILOGRAM, false);
    static final Kind<FlowRate> FLOW_RATE = new Kind<>("a flow", "140 L/h", Units.LITRE_PER_HOUR, false);

    static final List<Kind<?>> ALL = List.of(
            MASS,
            VOLUME,
            TIME,
            TEMPERATURE,
            MASS_CONCENTRATION,
            SPECIFIC_VOLUME,
            VOLUME_RATIO,
            EXTRACT_AMOUNT,
            SPECIFIC_EXTRACT,
            FLOW_RATE);

    /** What is expected where this kind is wanted, such as "a mass such as 25 kg". */
    String expected() {
        return noun + " such as " + example;
    }
}
