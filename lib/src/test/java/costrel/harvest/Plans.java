package costrel.harvest;

import costrel.hops.AlphaMethod;
import costrel.hops.HopForm;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;

/** Gyles and lots to plan with. */
final class Plans {
    static final LocalDate NEW_YEAR = LocalDate.of(2027, 1, 4);

    private Plans() {}

    static OptionalDouble some(double figure) {
        return OptionalDouble.of(figure);
    }

    static OptionalDouble none() {
        return OptionalDouble.empty();
    }

    /** A gyle of 1000 L, a week after the one before. */
    static PlanGyle gyle(int number, String beer, double ebu, PlanAddition... additions) {
        return gyle(number, beer, ebu, 0, 0, additions);
    }

    static PlanGyle gyle(
            int number, String beer, double ebu, double toleranceEbu, double leafKg, PlanAddition... additions) {
        return new PlanGyle(
                "G" + number,
                beer,
                NEW_YEAR.plusWeeks(number),
                1000,
                AlphaMethod.LEAD_CONDUCTANCE,
                ebu,
                toleranceEbu,
                leafKg,
                List.of(additions));
    }

    /** A leaf lot of 2026 that has the same alpha acid on the day of every gyle up to the hundredth. */
    static PlanLot lot(String id, String variety, double alpha, double stockKg, double pricePerKg) {
        return lot(id, variety, 2026, alpha, stockKg, none(), some(pricePerKg));
    }

    static PlanLot lot(
            String id,
            String variety,
            int cropYear,
            double alpha,
            double stockKg,
            OptionalDouble packKg,
            OptionalDouble pricePerKg) {
        Map<String, Double> alphas = new HashMap<>();
        for (int g = 0; g < 100; g++) {
            alphas.put("G" + g, alpha);
        }
        return new PlanLot(
                id,
                variety,
                HopForm.LEAF,
                cropYear,
                LocalDate.of(cropYear, 10, 1),
                AlphaMethod.LEAD_CONDUCTANCE,
                alphas,
                OptionalDouble.empty(),
                stockKg,
                packKg,
                pricePerKg);
    }

    static PlanLot from(PlanLot lot, LocalDate day) {
        return new PlanLot(
                lot.id(),
                lot.variety(),
                lot.form(),
                lot.cropYear(),
                day,
                lot.method(),
                lot.alphaByGyle(),
                lot.oilMlPer100g(),
                lot.stockKg(),
                lot.wholePackKg(),
                lot.pricePerKg());
    }

    static PlanLot of(PlanLot lot, HopForm form, AlphaMethod method, OptionalDouble oilMlPer100g) {
        return new PlanLot(
                lot.id(),
                lot.variety(),
                form,
                lot.cropYear(),
                lot.availableFrom(),
                method,
                lot.alphaByGyle(),
                oilMlPer100g,
                lot.stockKg(),
                lot.wholePackKg(),
                lot.pricePerKg());
    }

    /** EBU of a kilogram of alpha acid in 1000 L at a utilisation. */
    static double ebuPerKgAlpha(double utilisation) {
        return 1e6 * utilisation / 1000;
    }

    /** A year of a brewery: five beers in turn, five additions each, ten varieties of which every addition takes two. */
    static List<PlanGyle> year(Random random, int gyles) {
        String[][] varieties = new String[5][10];
        for (String[] beer : varieties) {
            for (int i = 0; i < beer.length; i++) {
                beer[i] = "variety " + random.nextInt(10);
            }
        }
        List<PlanGyle> year = new ArrayList<>();
        for (int g = 0; g < gyles; g++) {
            String[] of = varieties[g % 5];
            PlanAddition[] additions = {
                PlanAddition.bittering("copper start", of[0], some(0.7), ebuPerKgAlpha(0.3))
                        .allowing(java.util.Set.of(of[1])),
                PlanAddition.bittering("copper half", of[2], some(0.3), ebuPerKgAlpha(0.2))
                        .allowing(java.util.Set.of(of[3])),
                PlanAddition.dose("late copper", of[4], 1.0, ebuPerKgAlpha(0.08))
                        .allowing(java.util.Set.of(of[5])),
                PlanAddition.dose("hot stand", of[6], 1.5, ebuPerKgAlpha(0.03)).allowing(java.util.Set.of(of[7])),
                PlanAddition.dose("dry hop", of[8], 0.5, 0).allowing(java.util.Set.of(of[9]))
            };
            year.add(gyle(g, "beer " + g % 5, 25 + 2 * (g % 5), 0.5, 1.5, additions));
        }
        return year;
    }

    /** Lots for such a year: four of each variety, a half of them there from the middle of it only. */
    static List<PlanLot> lots(Random random, int lots, double leastKg, double mostKg, OptionalDouble packKg) {
        List<PlanLot> all = new ArrayList<>();
        for (int l = 0; l < lots; l++) {
            PlanLot lot = lot(
                    "L" + l,
                    "variety " + l % 10,
                    l < lots / 2 ? 2025 : 2026,
                    0.03 + 0.1 * random.nextDouble(),
                    leastKg + (mostKg - leastKg) * random.nextDouble(),
                    packKg,
                    some(8 + 12 * random.nextDouble()));
            all.add(l < lots / 2 ? lot : from(lot, NEW_YEAR.plusWeeks(30)));
        }
        return all;
    }

    /** The lot, sold by any weight. */
    static PlanLot unpacked(PlanLot lot) {
        return new PlanLot(
                lot.id(),
                lot.variety(),
                lot.form(),
                lot.cropYear(),
                lot.availableFrom(),
                lot.method(),
                lot.alphaByGyle(),
                lot.oilMlPer100g(),
                lot.stockKg(),
                none(),
                lot.pricePerKg());
    }
}
