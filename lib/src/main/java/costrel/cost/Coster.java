package costrel.cost;

import costrel.buying.NoPriceException;
import costrel.buying.PackUnit;
import costrel.buying.PriceList;
import costrel.buying.UnitPrice;
import costrel.duty.DutyFigure;
import costrel.duty.DutyInput;
import costrel.duty.DutyOnDay;
import costrel.duty.DutySchedule;
import costrel.duty.ProductionYears;
import costrel.figures.Figures;
import costrel.figures.Rounded;
import costrel.packaging.Container;
import costrel.packaging.PackagingRun;
import costrel.stock.ProcessCost;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Makes the cost sheet of a gyle. Each line is amount × unit price, rounded once, halves up, to the penny; every total is the
 * sum of its lines. The gyle's cost before packaging is shared over the container types by what was planned for each,
 * each share rounded halves up, and what the roundings leave goes to the last.
 */
public final class Coster {

    private Coster() {}

    /**
     * Costs a gyle.
     *
     * @param batch the gyle: its bill of materials, litres, strength, days and containers
     * @param prices all price lists
     * @param rates energy, labour, overhead, credits; those that hold on the day of the sheet are taken
     * @param packages what each container takes
     * @param duty the duty tables
     * @param production pure alcohol made, by production year, for Small Producer Relief
     * @param options the currency and how it is to be made
     * @return the sheet
     * @throws NoPriceException when prices are missing or can't be told, naming all of them
     * @throws IllegalArgumentException when containers, rates or duty tables don't fit the batch, naming what to supply
     */
    public static CostSheet cost(
            Batch batch,
            PriceList prices,
            List<Rate> rates,
            List<PackageItem> packages,
            DutySchedule duty,
            ProductionYears production,
            CostOptions options) {
        CurrencyUnit currency = options.currency();
        if (!duty.currency().equals(currency)) {
            throw new IllegalArgumentException("duty of " + duty.country() + " is in " + duty.currency()
                    + ", the sheet is in " + currency + "; cost the gyle in " + duty.currency());
        }
        PackagingRun run = PackagingRun.of(batch.rackedL(), batch.packaging());
        BigDecimal collectedL = Rounded.decimal(batch.collectedL());
        BoughtLines bought = new BoughtLines(batch, prices, packages, run, options);
        List<String> leftOut = new ArrayList<>(missingFromBill(batch.bill()));
        RateCard rateCard = new RateCard(rates, batch, collectedL, run.rackedL(), currency);
        List<List<CostLine>> packagingLines = new ArrayList<>();
        for (PackagingRun.Filled filled : run.filled()) {
            if (filled.count() == 0) {
                continue;
            }
            Container container = filled.plan().container();
            List<CostLine> lines = new ArrayList<>(bought.packagingLines().get(packagingLines.size()));
            if (lines.isEmpty()) {
                leftOut.add("packaging of " + container.name() + ": no items given");
            }
            rateCard.addContainerLines(container.kind(), filled.count(), lines);
            lines.addAll(
                    options.containerCharges().lines(container, filled.count(), batch.costedOn(), currency, leftOut));
            packagingLines.add(lines);
        }

        List<CostLine> gyleLines = new ArrayList<>(bought.gyleLines());
        gyleLines.addAll(rateCard.gyleLines(leftOut));
        Money gyleCost = sum(gyleLines, currency);
        Optional<CostLine> abnormal =
                options.normalLossShare().flatMap(normal -> abnormalLoss(batch, gyleLines, normal, currency));
        if (abnormal.isPresent()) {
            gyleLines.add(abnormal.get());
            gyleCost = gyleCost.plus(abnormal.get().value());
        }
        YieldChain yieldChain = YieldChain.of(collectedL, run, options.unsoldShare());
        gyleLines.addAll(losses(yieldChain, gyleCost));
        BoughtLines.inOrder(gyleLines, CostLine::group);
        leftOut.addAll(rateCard.leftOut());

        List<ContainerCost> containers =
                containers(batch, packagingLines, GyleShares.of(run, gyleCost), duty, production, options);
        Money total = Money.zero(currency);
        for (ContainerCost container : containers) {
            total = total.plus(container.total());
        }
        return new CostSheet(
                batch,
                run,
                yieldChain,
                gyleLines,
                gyleCost,
                containers,
                total,
                SheetNotes.findings(batch, run, bought.findings(), containers),
                leftOut,
                SheetNotes.defaultsUsed(batch, bought.defaultsUsed()));
    }

    /** What is lost in FV, tank and dry hops beyond the normal: taken out of the pint, by the rule of {@link ProcessCost}. */
    private static Optional<CostLine> abnormalLoss(
            Batch batch, List<CostLine> gyleLines, BigDecimal normalShare, CurrencyUnit currency) {
        List<CostLine> credits = gyleLines.stream()
                .filter(line -> line.group() == CostGroup.CREDIT)
                .toList();
        Money byProducts = sum(credits, currency).negated();
        ProcessCost cost = new ProcessCost(
                sum(gyleLines, currency).plus(byProducts),
                byProducts,
                BigDecimal.valueOf(batch.collectedL()).movePointLeft(2),
                normalShare,
                BigDecimal.valueOf(Math.min(batch.rackedL(), batch.collectedL()))
                        .movePointLeft(2));
        if (cost.expensed().isZero()) {
            return Optional.empty();
        }
        BigDecimal litres = cost.abnormalLossHl().movePointRight(2);
        return Optional.of(new CostLine(
                CostGroup.LOSSES,
                "abnormal loss, expensed",
                litres,
                PackUnit.LITRE.label(),
                Optional.empty(),
                "",
                "",
                cost.expensed().negated(),
                Optional.empty(),
                false,
                "beyond the normal " + Figures.plain(normalShare.movePointRight(2)) + " %, at "
                        + Figures.rounded(cost.unitCost(), 4) + " per hL of normal output; an expense, not in the pint",
                List.of()));
    }

    /** Beer that is lost, valued at what a litre has cost where it is lost; 0.00 in the sum. */
    private static List<CostLine> losses(YieldChain beer, Money gyleCost) {
        List<CostLine> lines = new ArrayList<>();
        lose(lines, "FV, tank and dry hops", beer.collectedL().subtract(beer.rackedL()), gyleCost, beer.collectedL());
        lose(lines, "filling", beer.fillLossL(), gyleCost, beer.rackedL());
        lose(lines, "left after the smallest container", beer.leftL(), gyleCost, beer.rackedL());
        return lines;
    }

    private static void lose(List<CostLine> lines, String where, BigDecimal lossL, Money gyleCost, BigDecimal ofL) {
        if (lossL.signum() > 0) {
            UnitPrice perLitre = new UnitPrice(gyleCost.getAmount(), ofL, PackUnit.LITRE.label());
            CurrencyUnit currency = gyleCost.getCurrencyUnit();
            lines.add(CostLine.lost(
                    where, lossL, Money.of(currency, perLitre.times(lossL, currency.getDecimalPlaces()))));
        }
    }

    private static List<ContainerCost> containers(
            Batch batch,
            List<List<CostLine>> packagingLines,
            List<GyleShares.Share> shares,
            DutySchedule duty,
            ProductionYears production,
            CostOptions options) {
        List<ContainerCost> containers = new ArrayList<>();
        DutyOnDay tables = duty.on(batch.dutyOn());
        for (GyleShares.Share share : shares) {
            PackagingRun.Filled filled = share.filled();
            DutyFigure figure = tables.of(new DutyInput(
                    filled.plan().container(),
                    filled.count(),
                    batch.og(),
                    batch.pg(),
                    batch.declaredStrength(),
                    batch.brewedOn(),
                    batch.dutyOn(),
                    batch.costedOn(),
                    production,
                    options.claimRelief(),
                    options.statedDiscount(),
                    options.yearVolume()));
            containers.add(ContainerCost.of(
                    filled, share.part(), share.money(), packagingLines.get(containers.size()), figure));
        }
        return containers;
    }

    private static List<String> missingFromBill(List<BillLine> bill) {
        Set<BillGroup> missing = EnumSet.of(
                BillGroup.MASHED_GOODS,
                BillGroup.HOPS,
                BillGroup.YEAST,
                BillGroup.LIQUOR_TREATMENT,
                BillGroup.PROCESS_AIDS);
        bill.forEach(line -> missing.remove(line.group()));
        List<String> words = new ArrayList<>();
        missing.forEach(group -> words.add(group.label() + ": none on the bill of materials"));
        return words;
    }

    private static Money sum(List<CostLine> lines, CurrencyUnit currency) {
        BigDecimal sum = BigDecimal.ZERO;
        for (CostLine line : lines) {
            sum = sum.add(line.value().getAmount());
        }
        return Money.of(currency, sum);
    }
}
