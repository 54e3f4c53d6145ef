package costrel.duty;

import java.math.BigDecimal;

/** What a country charges duty on beer by. */
public enum DutyUnit {
    /** By the litre of pure alcohol. */
    PURE_ALCOHOL("litre of pure alcohol", "hL", BigDecimal.valueOf(100)),
    /** By hectolitres times per cent by volume. */
    HL_PERCENT("hL and % vol", "hL", BigDecimal.valueOf(100)),
    /** By hectolitres times degrees Plato of the original wort. */
    HL_PLATO("hL and °P", "hL", BigDecimal.valueOf(100)),
    /** By the US barrel of 31 US gallons, each 3.785411784 L (26 USC 5051; 27 CFR 25.11), whatever the strength. */
    US_BARREL("US barrel", "US barrel", new BigDecimal("3.785411784").multiply(BigDecimal.valueOf(31)));

    private final String label;
    private final String volumeUnit;
    private final BigDecimal volumeL;

    DutyUnit(String label, String volumeUnit, BigDecimal volumeL) {
        this.label = label;
        this.volumeUnit = volumeUnit;
        this.volumeL = volumeL;
    }

    /**
     * The words used in tables.
     *
     * @return the label
     */
    public String label() {
        return label;
    }

    /**
     * What volumes, and limits by the year, are counted in.
     *
     * @return hL or US barrel
     */
    public String volumeUnit() {
        return volumeUnit;
    }

    /** Litres in one of them. */
    BigDecimal volumeL() {
        return volumeL;
    }
}
