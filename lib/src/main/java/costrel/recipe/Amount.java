package costrel.recipe;

import java.util.Locale;

/** How much of something a recipe asks for, in the way the recipe states it. */
public sealed interface Amount {

    /**
     * A weight, as used at the recipe's own brew length.
     *
     * @param kilograms 0 or more
     */
    record OfMass(double kilograms) implements Amount {
        public OfMass {
            notNegative("mass", kilograms, "kg");
        }

        @Override
        public String text() {
            return number(kilograms) + " kg";
        }
    }

    /**
     * A share by mass of the whole grist, copper sugars included.
     *
     * @param share 0 to 1
     */
    record OfGrist(double share) implements Amount {
        public OfGrist {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException(
                        "share of the grist: expected 0 % to 100 %, found " + number(share * 100) + " %");
            }
        }

        @Override
        public String text() {
            return number(share * 100) + " %";
        }
    }

    /**
     * A weight for each hectolitre of what it goes into.
     *
     * @param gramsPerHectolitre 0 or more
     */
    record OfRate(double gramsPerHectolitre) implements Amount {
        public OfRate {
            notNegative("rate", gramsPerHectolitre, "g/hL");
        }

        @Override
        public String text() {
            return number(gramsPerHectolitre) + " g/hL";
        }
    }

    /**
     * A volume, as used at the recipe's own brew length.
     *
     * @param litres 0 or more
     */
    record OfVolume(double litres) implements Amount {
        public OfVolume {
            notNegative("volume", litres, "L");
        }

        @Override
        public String text() {
            return number(litres) + " L";
        }
    }

    /**
     * A volume for each hectolitre of what it goes into.
     *
     * @param millilitresPerHectolitre 0 or more
     */
    record OfVolumeRate(double millilitresPerHectolitre) implements Amount {
        public OfVolumeRate {
            notNegative("rate", millilitresPerHectolitre, "mL/hL");
        }

        @Override
        public String text() {
            return number(millilitresPerHectolitre) + " mL/hL";
        }
    }

    /**
     * The bitterness that a hop addition is to bring.
     *
     * @param ebu 0 or more
     */
    record OfBitterness(double ebu) implements Amount {
        public OfBitterness {
            notNegative("bitterness", ebu, "EBU");
        }

        @Override
        public String text() {
            return number(ebu) + " EBU";
        }
    }

    /**
     * The hop oil that a hop addition is to bring.
     *
     * @param millilitresPerHectolitre oil, mL per hL, 0 or more
     */
    record OfOil(double millilitresPerHectolitre) implements Amount {
        public OfOil {
            notNegative("oil", millilitresPerHectolitre, "mL/hL");
        }

        @Override
        public String text() {
            return number(millilitresPerHectolitre) + " mL oil/hL";
        }
    }

    /**
     * A number of yeast cells for each millilitre and degree Plato of the original gravity.
     *
     * @param cellsPerMlPerPlato more than 0
     */
    record OfCells(double cellsPerMlPerPlato) implements Amount {
        public OfCells {
            if (!(cellsPerMlPerPlato > 0 && cellsPerMlPerPlato < 1e9)) {
                throw new IllegalArgumentException(
                        "pitching rate: expected more than 0 cells/mL/°P, found " + cellsPerMlPerPlato);
            }
        }

        @Override
        public String text() {
            return number(cellsPerMlPerPlato / 1e6) + " million/mL/°P";
        }
    }

    /**
     * The amount as a recipe file states it.
     *
     * @return number and unit
     */
    String text();

    private static void notNegative(String what, double value, String unit) {
        if (!(value >= 0 && value < 1e12)) {
            throw new IllegalArgumentException(what + ": expected 0 " + unit + " or more, found " + value + " " + unit);
        }
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.6f", value);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
