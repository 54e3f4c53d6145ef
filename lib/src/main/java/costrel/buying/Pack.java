package costrel.buying;

import costrel.figures.Figures;
import java.math.BigDecimal;

/**
 * What one price buys: 25 kg, 1000 each, 20 L.
 *
 * @param content how much is in it, more than 0
 * @param unit what the content is counted in
 */
public record Pack(BigDecimal content, PackUnit unit) {

    public Pack {
        Figures.overZero("pack", content, " " + unit.label());
    }

    /**
     * The pack as written in a price list.
     *
     * @return such as "25 kg"
     */
    public String text() {
        return Figures.plain(content) + " " + unit.label();
    }
}
