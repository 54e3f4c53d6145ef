package costrel.scaling;

import costrel.hops.AlphaMethod;
import costrel.hops.AlphaMethodFactors;
import costrel.hops.HopForm;
import costrel.hops.HopOnTheDay;
import costrel.hops.HopUse;
import costrel.hops.UtilisationFigure;
import costrel.plant.Plant;
import costrel.recipe.Amount;
import costrel.recipe.Holds;
import costrel.recipe.MissingFigureException;
import costrel.recipe.ResolvedRecipe.ResolvedHop;
import costrel.scaling.BrewSolver.HopRule;
import costrel.scaling.BrewSolver.HopState;
import java.util.List;

/** Weights of the hop additions: as a recipe states them, or as an intent holds them. */
final class HopRules {

    /** EBU are mg/L: kilograms of alpha acid over litres, times this. */
    private static final double MG_PER_KG = 1e6;

    private HopRules() {}

    /**
     * Litres racked: what the FV and the tank leave, less what dry hops in the tank hold.
     *
     * @param plant the plant
     * @param collectedL litres collected
     * @param tankHopHeldL litres held by dry hops in the tank
     * @return litres racked
     */
    static double rackedL(Plant plant, double collectedL, double tankHopHeldL) {
        return collectedL * (1 - plant.losses().fvShare()) * (1 - plant.losses().tankShare()) - tankHopHeldL;
    }

    /** The additions as the recipe states them, at its own brew length. */
    static HopRule asStated(Plant plant, List<ResolvedHop> hops, double collectedL) {
        return boil -> {
            int n = hops.size();
            double[] kg = new double[n];
            double[] ebu = new double[n];
            UtilisationFigure[] figures = new UtilisationFigure[n];
            double tankHeldL = 0;
            for (int i = 0; i < n; i++) {
                ResolvedHop line = hops.get(i);
                figures[i] = plant.utilisation().of(line.use(), boil);
                if (!(line.use() instanceof HopUse.DryHopCask)) {
                    kg[i] = statedKg(plant, line, figures[i], collectedL, collectedL);
                    tankHeldL += tankHeld(plant, line.use(), line.hop().form(), kg[i]);
                }
            }
            double rackedL = rackedL(plant, collectedL, tankHeldL);
            double heldL = 0;
            for (int i = 0; i < n; i++) {
                ResolvedHop line = hops.get(i);
                if (line.use() instanceof HopUse.DryHopCask) {
                    kg[i] = statedKg(plant, line, figures[i], collectedL, rackedL);
                }
                ebu[i] = ebuOf(plant, line.hop().alpha(), figures[i], kg[i], collectedL);
                heldL += wortHeld(plant, line.use(), line.hop().form(), kg[i]);
            }
            return new HopState(kg, ebu, figures, heldL, 0);
        };
    }

    private static double statedKg(
            Plant plant, ResolvedHop line, UtilisationFigure figure, double collectedL, double doseL) {
        Amount amount = line.amount();
        if (amount instanceof Amount.OfMass mass) {
            return mass.kilograms();
        }
        if (amount instanceof Amount.OfRate rate) {
            return rate.gramsPerHectolitre() * doseL / 1e5;
        }
        if (amount instanceof Amount.OfOil oil) {
            return oil.millilitresPerHectolitre() / oilOf(line.hop()) * 100 * doseL / 1e5;
        }
        double ebu = ((Amount.OfBitterness) amount).ebu();
        return kgFor(plant, line.hop(), line.use(), line.hop().alpha(), figure, ebu, collectedL);
    }

    /**
     * The additions as an intent holds them: doses and oil first, then the bittering additions share what is left of the total
     * in the proportions in which they brought it.
     */
    static HopRule held(Plant plant, Intent intent, double collectedL, AlphaMethodFactors factors) {
        List<Intent.Hop> hops = intent.hops();
        int n = hops.size();
        double[] alpha = new double[n];
        for (int i = 0; i < n; i++) {
            alpha[i] = alphaNow(hops.get(i), factors);
        }
        return boil -> {
            double[] kg = new double[n];
            double[] ebu = new double[n];
            UtilisationFigure[] figures = new UtilisationFigure[n];
            double tankHeldL = 0;
            for (int i = 0; i < n; i++) {
                Intent.Hop hop = hops.get(i);
                figures[i] = plant.utilisation().of(hop.use(), boil);
                if (hop.holds() != Holds.BITTERNESS && !(hop.use() instanceof HopUse.DryHopCask)) {
                    kg[i] = doseKg(plant, hop, figures[i], alpha[i], collectedL, collectedL);
                    tankHeldL += tankHeld(plant, hop.use(), hop.now().form(), kg[i]);
                }
            }
            double rackedL = rackedL(plant, collectedL, tankHeldL);
            double left = intent.ebu();
            for (int i = 0; i < n; i++) {
                Intent.Hop hop = hops.get(i);
                if (hop.holds() != Holds.BITTERNESS) {
                    if (hop.use() instanceof HopUse.DryHopCask) {
                        kg[i] = doseKg(plant, hop, figures[i], alpha[i], collectedL, rackedL);
                    }
                    ebu[i] = ebuOf(plant, alpha[i], figures[i], kg[i], collectedL);
                    left -= ebu[i];
                }
            }
            double[] weights = bitteringWeights(plant, intent, figures);
            double weightSum = 0;
            for (double weight : weights) {
                weightSum += weight;
            }
            if (left > 0 && weightSum > 0) {
                for (int i = 0; i < n; i++) {
                    if (weights[i] > 0) {
                        Intent.Hop hop = hops.get(i);
                        ebu[i] = left * weights[i] / weightSum;
                        kg[i] = kgFor(plant, hop.now(), hop.use(), alpha[i], figures[i], ebu[i], collectedL);
                    }
                }
                left = 0;
            }
            double heldL = 0;
            for (int i = 0; i < n; i++) {
                heldL += wortHeld(plant, hops.get(i).use(), hops.get(i).now().form(), kg[i]);
            }
            return new HopState(kg, ebu, figures, heldL, left);
        };
    }

    /** Given weights, as weighed out: the bitterness they bring. */
    static HopRule asWeighed(Plant plant, Intent intent, double[] kg, double collectedL, AlphaMethodFactors factors) {
        List<Intent.Hop> hops = intent.hops();
        return boil -> {
            double[] ebu = new double[kg.length];
            UtilisationFigure[] figures = new UtilisationFigure[kg.length];
            double heldL = 0;
            for (int i = 0; i < kg.length; i++) {
                Intent.Hop hop = hops.get(i);
                figures[i] = plant.utilisation().of(hop.use(), boil);
                ebu[i] = ebuOf(plant, alphaNow(hop, factors), figures[i], kg[i], collectedL);
                heldL += wortHeld(plant, hop.use(), hop.now().form(), kg[i]);
            }
            return new HopState(kg, ebu, figures, heldL, 0);
        };
    }

    private static double[] bitteringWeights(Plant plant, Intent intent, UtilisationFigure[] figures) {
        double[] weights = new double[figures.length];
        for (int i = 0; i < weights.length; i++) {
            Intent.Hop hop = intent.hops().get(i);
            if (hop.holds() == Holds.BITTERNESS) {
                weights[i] = hop.ebu().isPresent()
                        ? hop.ebu().getAsDouble()
                        : 10
                                * hop.gramsPerHl().orElse(0)
                                * hop.asRead().alpha()
                                * figures[i].share()
                                * plant.bitternessCorrection();
            }
        }
        return weights;
    }

    private static double doseKg(
            Plant plant, Intent.Hop hop, UtilisationFigure figure, double alpha, double collectedL, double doseL) {
        if (hop.holds() == Holds.OIL) {
            double oil = hop.oilMlPerHl().orElseThrow(() -> missingOil(hop.asRead()));
            return oil / oilOf(hop.now()) * 100 * doseL / 1e5;
        }
        if (hop.gramsPerHl().isPresent()) {
            return hop.gramsPerHl().getAsDouble() * doseL / 1e5;
        }
        if (hop.oilMlPerHl().isPresent()) {
            return hop.oilMlPerHl().getAsDouble() / oilOf(hop.now()) * 100 * doseL / 1e5;
        }
        return kgFor(plant, hop.now(), hop.use(), alpha, figure, hop.ebu().orElse(0), collectedL);
    }

    /** Alpha of the hops to brew with, on the method of the hops that the addition was read by. */
    private static double alphaNow(Intent.Hop hop, AlphaMethodFactors factors) {
        AlphaMethod read = hop.asRead().method();
        AlphaMethod now = hop.now().method();
        if (read == now || read == AlphaMethod.UNSTATED || now == AlphaMethod.UNSTATED) {
            return hop.now().alpha();
        }
        return factors.convert(hop.now().alpha(), now, read);
    }

    private static double ebuOf(Plant plant, double alpha, UtilisationFigure figure, double kg, double collectedL) {
        return MG_PER_KG * kg * alpha * figure.share() * plant.bitternessCorrection() / collectedL;
    }

    private static double kgFor(
            Plant plant,
            HopOnTheDay hop,
            HopUse use,
            double alpha,
            UtilisationFigure figure,
            double ebu,
            double collectedL) {
        if (ebu == 0) {
            return 0;
        }
        double perKg = MG_PER_KG * alpha * figure.share() * plant.bitternessCorrection() / collectedL;
        if (!(perKg > 0)) {
            throw new IllegalArgumentException(hop.variety() + " (" + hop.lot() + ") in the " + use.text()
                    + ": expected alpha acid and a utilisation over 0 to bring bitterness, found alpha "
                    + alpha * 100 + " % and utilisation " + figure.share() * 100 + " %");
        }
        return ebu / perKg;
    }

    private static double wortHeld(Plant plant, HopUse use, HopForm form, double kg) {
        return use.holdsWort() ? kg * plant.hopback().retention(form) : 0;
    }

    static double tankHeld(Plant plant, HopUse use, HopForm form, double kg) {
        return use instanceof HopUse.DryHopTank ? kg * plant.losses().dryHopRetention(form) : 0;
    }

    private static double oilOf(HopOnTheDay hop) {
        double oil = hop.oilMlPer100g().orElseThrow(() -> missingOil(hop));
        if (!(oil > 0)) {
            throw missingOil(hop);
        }
        return oil;
    }

    private static MissingFigureException missingOil(HopOnTheDay hop) {
        return new MissingFigureException("hop lot " + hop.lot(), "oil", "0.85 mL/100 g");
    }

    /** The total bitterness of a solved brewing as another plant's convention reads it. */
    static double totalBy(Plant reader, Intent intent, BrewSolver.BrewState state, AlphaMethodFactors factors) {
        double sum = 0;
        for (int i = 0; i < intent.hops().size(); i++) {
            Intent.Hop hop = intent.hops().get(i);
            UtilisationFigure figure = reader.utilisation().of(hop.use(), state.boil());
            sum += ebuOf(reader, alphaNow(hop, factors), figure, state.hops().kg()[i], state.collectedL());
        }
        return sum;
    }
}
