package costrel.tables;

import costrel.measure.Amounts;
import costrel.measure.QuantityText;
import costrel.measure.Share;
import costrel.measure.Units;
import costrel.recipe.Amount;
import costrel.wort.Bitterness;
import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.Unit;

/** Amounts in a recipe as text: "5 kg", "12 %", "85 g/hL", "12 EBU", "1.5 mL oil/hL", "0.9 million/mL/°P". */
final class AmountText {

    static final CellKind<Amount> ANY = CellKind.of("an amount with its unit such as 25 kg", AmountText::parse);

    private static final String CELLS_UNIT = "million/mL/°P";
    private static final String OIL = "mL oil/hL";
    private static final int MILLION = 6;

    private AmountText() {}

    /**
     * Reads an amount.
     *
     * @throws IllegalArgumentException if it is none, or negative
     */
    static Amount parse(String text) {
        if (text.endsWith("EBU")) {
            return new Amount.OfBitterness(Bitterness.parse(text).ebu());
        }
        if (text.endsWith("%")) {
            return new Amount.OfGrist(Share.parse(text).fraction());
        }
        if (text.endsWith("/mL/°P")) {
            return new Amount.OfCells(
                    Cells.before(text, CELLS_UNIT).movePointRight(MILLION).doubleValue());
        }
        if (text.endsWith("oil/hL")) {
            return new Amount.OfOil(Cells.before(text, OIL).doubleValue());
        }
        return quantity(text);
    }

    private static Amount quantity(String text) {
        Quantity<?> quantity = QuantityText.any(text);
        Unit<?> unit = quantity.getUnit();
        if (unit.isCompatible(Units.KILOGRAM)) {
            return new Amount.OfMass(Amounts.kilograms(QuantityText.mass(text)));
        }
        if (unit.isCompatible(Units.LITRE)) {
            return new Amount.OfVolume(Amounts.litres(QuantityText.volume(text)));
        }
        if (unit.isCompatible(Units.GRAM_PER_HECTOLITRE)) {
            return new Amount.OfRate(Amounts.gramsPerHectolitre(QuantityText.massConcentration(text)));
        }
        if (unit.isCompatible(Units.MILLILITRE_PER_HECTOLITRE)) {
            return new Amount.OfVolumeRate(Amounts.millilitresPerHectolitre(QuantityText.volumeRatio(text)));
        }
        throw new IllegalArgumentException("expected a mass, a share, a volume or a rate such as 85 g/hL, found "
                + TableProblem.quoted(text) + " (" + QuantityText.symbol(unit) + " is none of them)");
    }

    /** The amount as text that reads back to an equal one. */
    static String print(Amount amount) {
        if (amount instanceof Amount.OfMass mass) {
            return CsvOut.number(mass.kilograms()) + " kg";
        }
        if (amount instanceof Amount.OfGrist share) {
            return Share.of(share.share()).toString();
        }
        if (amount instanceof Amount.OfRate rate) {
            return CsvOut.number(rate.gramsPerHectolitre()) + " g/hL";
        }
        if (amount instanceof Amount.OfVolume volume) {
            return CsvOut.number(volume.litres()) + " L";
        }
        if (amount instanceof Amount.OfVolumeRate rate) {
            return CsvOut.number(rate.millilitresPerHectolitre()) + " mL/hL";
        }
        if (amount instanceof Amount.OfBitterness bitterness) {
            return CsvOut.number(bitterness.ebu()) + " EBU";
        }
        if (amount instanceof Amount.OfOil oil) {
            return CsvOut.number(oil.millilitresPerHectolitre()) + " " + OIL;
        }
        if (amount instanceof Amount.OfCells cells) {
            BigDecimal millions = BigDecimal.valueOf(cells.cellsPerMlPerPlato()).movePointLeft(MILLION);
            return CsvOut.number(millions) + " " + CELLS_UNIT;
        }
        throw new IllegalArgumentException("amount: expected one that recipes can hold, found " + amount.text());
    }
}
