package costrel.harvest;

/**
 * A lot in packs that have to be used up once open. Taking from the store goes by whole packs; a stock that isn't a whole
 * number of packs has one odd pack with the rest.
 *
 * @param packKg weight of a whole pack, kg
 * @param whole whole packs in stock
 * @param oddKg weight of the odd pack, kg; 0 where there is none
 */
record Packs(double packKg, int whole, double oddKg) {

    /** How much more than a whole number of packs still counts as that number, as a share of a pack: figures as written. */
    private static final double ROUNDING = 1e-9;

    static Packs of(PlanLot lot) {
        double packKg = lot.wholePackKg().orElseThrow();
        int whole = (int) Math.floor(lot.stockKg() / packKg + ROUNDING);
        double oddKg = Math.max(0, lot.stockKg() - whole * packKg);
        return new Packs(packKg, whole, oddKg > ROUNDING * packKg ? oddKg : 0);
    }

    /** A choice of packs to open. */
    record Opened(int whole, boolean odd) {}

    /** The fewest kilograms of packs that hold a weight; everything where nothing less holds it. */
    Opened fewestFor(double kg) {
        Opened without = new Opened(Math.min(whole, packsFor(kg)), false);
        Opened with = new Opened(Math.min(whole, packsFor(kg - oddKg)), true);
        if (oddKg == 0 || (kgOf(without) >= kg - ROUNDING * packKg && kgOf(without) <= kgOf(with))) {
            return without;
        }
        return with;
    }

    double kgOf(Opened opened) {
        return opened.whole() * packKg + (opened.odd() ? oddKg : 0);
    }

    private int packsFor(double kg) {
        return (int) Math.ceil(Math.max(0, kg / packKg - ROUNDING));
    }
}
