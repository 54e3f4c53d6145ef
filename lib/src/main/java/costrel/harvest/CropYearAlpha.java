package costrel.harvest;

/**
 * Alpha acid of a variety over several crop years at one site, as published.
 *
 * @param variety the variety
 * @param years how many crop years, 1 or more
 * @param low alpha acid of the leanest year, mass fraction as is, over 0
 * @param mean mean of the years, mass fraction as is
 * @param high alpha acid of the richest year, mass fraction as is, under 1
 * @param source the publication
 */
public record CropYearAlpha(String variety, int years, double low, double mean, double high, String source) {

    public CropYearAlpha {
        Figures.named("variety", variety);
        Figures.named("source of the crop years of " + variety, source);
        if (years < 1) {
            throw new IllegalArgumentException("years: expected 1 crop year or more, found " + years);
        }
        if (!(low > 0 && low <= mean && mean <= high && high < 1)) {
            throw new IllegalArgumentException("alpha acid of " + variety
                    + " over the years: expected low, mean and high in rising order, over 0 %"
                    + " and under 100 %, found " + Figures.percent(low) + ", " + Figures.percent(mean) + ", "
                    + Figures.percent(high));
        }
    }

    /**
     * What a weight at mean alpha acid is multiplied by in another year, so that the alpha acid stays the same: mean / alpha.
     *
     * @param alpha alpha acid of that year, mass fraction as is, over 0 and under 1
     * @return the factor on the weight
     * @throws IllegalArgumentException outside that range
     */
    public double massFactor(double alpha) {
        Figures.positive("alpha acid of " + variety, alpha, "");
        return mean / Figures.shareUnderOne("alpha acid of " + variety, alpha);
    }

    /**
     * The spread in words.
     *
     * @return the years, the lowest, mean and highest alpha acid, and the source
     */
    public String text() {
        return variety + ", " + years + (years == 1 ? " crop year: " : " crop years: ") + Figures.percent(low) + " to "
                + Figures.percent(high) + " of alpha acid, mean " + Figures.percent(mean) + " (" + source + ")";
    }
}
