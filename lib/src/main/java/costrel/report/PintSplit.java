package costrel.report;

import costrel.brewery.SellingPrices;
import costrel.cost.ContainerCost;
import costrel.cost.CostGroup;
import costrel.cost.CostLine;
import costrel.cost.CostSheet;
import costrel.pricing.Price;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Where the price of a pint goes, from malt to value added tax; without a price, where its cost goes. The brewery's own price
 * to the trade: what a pub puts on top is no part of it.
 *
 * @param name what is sold, such as the beer and its container
 * @param currency what the money is in
 * @param parts the parts that are not 0, in the order of {@link Kind}; their sum is the whole
 * @param priced whether margin and value added tax are among them
 */
public record PintSplit(String name, CurrencyUnit currency, List<Part> parts, boolean priced) {

    private static final MathContext DIGITS = new MathContext(34);

    /** What a part of a pint's price pays for. */
    public enum Kind {
        /** Mashed goods, copper sugars and primings. */
        MALT("malt and sugars"),
        /** Hops. */
        HOPS("hops"),
        /** Yeast, process aids and liquor treatment. */
        YEAST("yeast, aids, treatment"),
        /** Fuel and power, water, effluent, cleaning. */
        ENERGY("energy, water, cleaning"),
        /** Wages. */
        LABOUR("labour"),
        /** Rent and the like, and delivery. */
        OVERHEAD("overhead, delivery"),
        /** Containers and what goes with them. */
        PACKAGING("packaging"),
        /** What by-products bring in, below 0. */
        CREDIT("by-products sold"),
        /** Duty. */
        DUTY("duty"),
        /** What is left of the price for the brewery, below 0 for a loss. */
        MARGIN("margin"),
        /** Value added tax on the price. */
        VAT("VAT");

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

        static Kind of(CostGroup group) {
            return switch (group) {
                case MASHED_GOODS, SUGARS, PRIMINGS -> MALT;
                case HOPS -> HOPS;
                case YEAST, LIQUOR_TREATMENT, PROCESS_AIDS -> YEAST;
                case ENERGY, LIQUOR, EFFLUENT, CLEANING -> ENERGY;
                case LABOUR -> LABOUR;
                case OVERHEAD, DELIVERY, LOSSES -> OVERHEAD;
                case CREDIT -> CREDIT;
                case PACKAGING -> PACKAGING;
                case DUTY -> DUTY;
            };
        }
    }

    /**
     * A part.
     *
     * @param kind what it pays for
     * @param perPint money per pint that can be sold, unrounded
     */
    public record Part(Kind kind, BigDecimal perPint) {}

    public PintSplit {
        parts = List.copyOf(parts);
    }

    /**
     * Where the cost of a pint of the whole mix of containers goes.
     *
     * @param sheet the cost sheet
     * @return the parts; they sum to the sheet's cost of a pint
     */
    public static PintSplit of(CostSheet sheet) {
        Map<Kind, BigDecimal> sums = new EnumMap<>(Kind.class);
        for (CostLine line : sheet.lines()) {
            sums.merge(Kind.of(line.group()), line.value().getAmount(), BigDecimal::add);
        }
        BigDecimal pints = sheet.yieldChain().saleablePints();
        sums.replaceAll((kind, sum) -> sum.divide(pints, DIGITS));
        return split(sheet.batch().beer(), sheet, sums, false);
    }

    /**
     * Where the price of a pint from one container goes.
     *
     * @param sheet the cost sheet
     * @param container one of its containers
     * @param price what one of them is sold for; empty where only the cost is asked for
     * @param vat the rate of value added tax, 0.20 for 20 %
     * @return the parts; they sum to the price with tax, or to the cost
     */
    public static PintSplit of(CostSheet sheet, ContainerCost container, Optional<Price> price, BigDecimal vat) {
        Map<Kind, BigDecimal> sums = new EnumMap<>(Kind.class);
        BigDecimal gyle = sheet.gyleCost().getAmount();
        BigDecimal borne = gyle.signum() == 0
                ? BigDecimal.ZERO
                : container.gyleShare().getAmount().divide(gyle, DIGITS);
        for (CostLine line : sheet.gyleLines()) {
            sums.merge(Kind.of(line.group()), line.value().getAmount().multiply(borne), BigDecimal::add);
        }
        for (CostLine line : container.lines()) {
            sums.merge(Kind.of(line.group()), line.value().getAmount(), BigDecimal::add);
        }
        BigDecimal pints = container.saleablePints();
        sums.replaceAll((kind, sum) -> sum.divide(pints, DIGITS));
        price.ifPresent(asked -> {
            sums.put(Kind.MARGIN, asked.perPint().subtract(container.unroundedPerPint()));
            sums.put(Kind.VAT, asked.perPint().multiply(vat));
        });
        return split(sheet.batch().beer() + ", " + container.container().name(), sheet, sums, price.isPresent());
    }

    /**
     * Where the price of a pint goes, container by container.
     *
     * @param prices the containers, priced or not
     * @return a split for each container that was filled
     */
    public static List<PintSplit> of(SellingPrices prices) {
        return prices.sheet().containers().stream()
                .filter(container -> container.count() > 0)
                .map(container -> of(prices.sheet(), container, prices.price(container), prices.vat()))
                .toList();
    }

    private static PintSplit split(String name, CostSheet sheet, Map<Kind, BigDecimal> sums, boolean priced) {
        List<Part> parts = new ArrayList<>();
        sums.forEach((kind, perPint) -> {
            if (perPint.signum() != 0) {
                parts.add(new Part(kind, perPint));
            }
        });
        return new PintSplit(name, sheet.total().getCurrencyUnit(), parts, priced);
    }

    /**
     * The whole.
     *
     * @return the price of a pint with value added tax, or its cost; unrounded money
     */
    public BigDecimal perPint() {
        return parts.stream().map(Part::perPint).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * The whole for reading.
     *
     * @return pence (the currency's smallest unit) to two decimals, halves up
     */
    public BigDecimal pencePerPint() {
        return pence(perPint());
    }

    /**
     * The parts for reading. Each is within a hundredth of its own figure, and they sum to the whole for reading.
     *
     * @return pence to two decimals, in the order of the parts
     */
    public List<BigDecimal> pence() {
        List<BigDecimal> printed = new ArrayList<>();
        BigDecimal exact = BigDecimal.ZERO;
        BigDecimal shown = BigDecimal.ZERO;
        for (Part part : parts) {
            exact = exact.add(part.perPint());
            printed.add(pence(exact).subtract(shown));
            shown = pence(exact);
        }
        return printed;
    }

    static BigDecimal perPint(Money money, BigDecimal pints) {
        return money.getAmount().divide(pints, DIGITS);
    }

    private BigDecimal pence(BigDecimal money) {
        return money.movePointRight(currency.getDecimalPlaces()).setScale(2, RoundingMode.HALF_UP);
    }
}
