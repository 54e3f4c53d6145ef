package costrel.measure;

import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;

/** What several tests of texts and units share. */
final class TextTables {

    /** The readers by the names that the tables use. */
    static final Map<String, Function<String, Quantity<?>>> READERS = Map.of(
            "mass", QuantityText::mass,
            "volume", QuantityText::volume,
            "time", QuantityText::time,
            "temperature", QuantityText::temperature,
            "massConcentration", QuantityText::massConcentration,
            "specificVolume", QuantityText::specificVolume,
            "volumeRatio", QuantityText::volumeRatio,
            "extractAmount", QuantityText::extractAmount,
            "specificExtract", QuantityText::specificExtract,
            "flowRate", QuantityText::flowRate);

    static final long SEED = Long.getLong("seed", 20_260_101L);

    private TextTables() {}

    static Quantity<?> read(String kind, String text) {
        Function<String, Quantity<?>> reader = READERS.get(kind);
        if (reader == null) {
            throw new IllegalArgumentException("no kind " + kind);
        }
        return reader.apply(text);
    }

    static String message(Throwable refused) {
        return String.valueOf(refused.getMessage());
    }

    static Unit<?> unit(String symbol) {
        return QuantityText.any("1 " + symbol).getUnit();
    }

    /** Any size a double can have, half of them short decimals. */
    static double anyNumber(Random random) {
        double sign = random.nextBoolean() ? 1 : -1;
        if (random.nextBoolean()) {
            return sign * random.nextInt(1_000_000) / Math.pow(10, random.nextInt(7));
        }
        return sign * random.nextDouble() * Math.pow(10, random.nextInt(600) - 300);
    }
}
