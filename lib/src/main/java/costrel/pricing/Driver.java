package costrel.pricing;

import costrel.cost.CostGroup;
import costrel.figures.Figures;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Something that may come out otherwise than a cost sheet reckoned with, and the lines it moves.
 *
 * @param name what it is called
 * @param kind how it moves a line
 * @param base the value the sheet was made with
 * @param spread the values it may take, in the same measure
 * @param groups parts of the sheet whose lines it moves
 * @param items items whose lines it moves, as the sheet names them
 */
public record Driver(String name, Kind kind, double base, Spread spread, Set<CostGroup> groups, Set<String> items) {

    /** The standard score past which nothing is drawn: one draw in 300,000 on either side would lie there. */
    static final double FARTHEST_SCORE = 4.5;

    /** How a driver moves the lines of a sheet. */
    public enum Kind {
        /** A price: the line goes with it. */
        PRICE("price"),
        /** Alpha acid of hops that are dosed by it: the line goes against it. */
        ALPHA("alpha acid"),
        /** Efficiency of the brewhouse: mashed goods go against it. */
        EFFICIENCY("efficiency"),
        /** The share of the beer that is lost before it is packaged: all of the gyle's lines go against what is left. */
        LOSS("loss"),
        /** What foreign money costs: the line goes with it. */
        EXCHANGE_RATE("exchange rate");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /**
         * The words used on sheets.
         *
         * @return the label
         */
        public String label() {
            return label;
        }

        private double least() {
            return this == LOSS ? 0 : Double.MIN_NORMAL;
        }

        private double most() {
            return this == LOSS ? Math.nextDown(1.0) : Double.MAX_VALUE;
        }

        private String expected() {
            return this == LOSS ? "0 to less than 1" : "more than 0";
        }
    }

    public Driver {
        name = Figures.named("driver", name);
        groups = Set.copyOf(groups);
        Set<String> folded = new HashSet<>();
        items.forEach(item -> folded.add(ComparisonOptions.folded(item)));
        items = Set.copyOf(folded);
        require(name + ": value of the sheet", kind, base);
        require(name + ": least that is drawn", kind, spread.at(-FARTHEST_SCORE));
        require(name + ": most that is drawn", kind, spread.at(FARTHEST_SCORE));
        if (kind != Kind.LOSS && groups.isEmpty() && items.isEmpty()) {
            throw new IllegalArgumentException(
                    name + ": expected an item or a part of the sheet that it moves, found none");
        }
    }

    private static void require(String what, Kind kind, double value) {
        if (!(value >= kind.least() && value <= kind.most())) {
            throw new IllegalArgumentException(what + ": expected " + kind.expected() + ", found " + value
                    + "; a triangular or a lognormal spread stays where it is put");
        }
    }

    /**
     * The price of an item.
     *
     * @param item the item as the sheet names it
     * @param base its price on the sheet, or 1 for a spread that is a part of it
     * @param spread the prices it may have
     * @return the driver
     */
    public static Driver price(String item, double base, Spread spread) {
        return new Driver("price of " + item, Kind.PRICE, base, spread, Set.of(), Set.of(item));
    }

    /**
     * The prices of a part of the sheet, which go up and down together.
     *
     * @param group the part
     * @param base 1, or whatever the spread is measured against
     * @param spread the values it may have
     * @return the driver
     */
    public static Driver prices(CostGroup group, double base, Spread spread) {
        return new Driver("price of " + group.label(), Kind.PRICE, base, spread, Set.of(group), Set.of());
    }

    /**
     * The alpha acid of hops that are dosed by it.
     *
     * @param name what it is called
     * @param base the alpha acid the sheet was made with, a share
     * @param spread the alpha acid it may have, a share
     * @param bitteringItems the hop lines that hold the bitterness
     * @return the driver
     */
    public static Driver alpha(String name, double base, Spread spread, Set<String> bitteringItems) {
        return new Driver(name, Kind.ALPHA, base, spread, Set.of(), bitteringItems);
    }

    /**
     * The efficiency of the brewhouse, which the mashed goods go by.
     *
     * @param base the efficiency the sheet was made with, a share
     * @param spread the efficiency it may have, a share
     * @return the driver
     */
    public static Driver efficiency(double base, Spread spread) {
        return new Driver("efficiency", Kind.EFFICIENCY, base, spread, Set.of(CostGroup.MASHED_GOODS), Set.of());
    }

    /**
     * The loss of beer before it is packaged.
     *
     * @param base the loss the sheet was made with, as a share of what is collected
     * @param spread the loss it may have, a share
     * @return the driver
     */
    public static Driver loss(double base, Spread spread) {
        return new Driver("loss", Kind.LOSS, base, spread, Set.of(), Set.of());
    }

    /**
     * What foreign money costs.
     *
     * @param name what it is called, such as the currency
     * @param base what one unit of it cost on the sheet's day
     * @param spread what it may cost
     * @param items the items that are priced in it
     * @return the driver
     */
    public static Driver exchangeRate(String name, double base, Spread spread, Set<String> items) {
        return new Driver(name, Kind.EXCHANGE_RATE, base, spread, Set.of(), items);
    }

    boolean moves(CostVector.Line line) {
        return kind == Kind.LOSS
                ? line.ofGyle()
                : groups.contains(line.group()) || items.contains(ComparisonOptions.folded(line.item()));
    }

    /** What a line is multiplied by when the figure comes out so. */
    double factor(double value) {
        return switch (kind) {
            case PRICE, EXCHANGE_RATE -> value / base;
            case ALPHA, EFFICIENCY -> base / value;
            case LOSS -> (1 - base) / (1 - value);
        };
    }

    /** Every driver of a list moves something; else it is misnamed. */
    static void requireUse(List<Driver> drivers, CostVector cost) {
        for (Driver driver : drivers) {
            if (cost.lines().stream().noneMatch(driver::moves)) {
                throw new IllegalArgumentException(
                        driver.name() + ": expected a line of the sheet that it moves, found none");
            }
        }
    }
}
