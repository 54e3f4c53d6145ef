package costrel.recipe;

import costrel.hops.HopLot;
import costrel.hops.HopVariety;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Everything that a recipe can name: the built-in tables, with the brewery's own rows in their place where it has any.
 *
 * @param materials grist materials by name
 * @param maltLots analyses of deliveries, each in use from a day on
 * @param varieties hop varieties by name
 * @param hopLots hop lots by lot number
 * @param supplies yeast, liquor treatment and process aids by name
 */
public record Catalogue(
        Map<String, GristMaterial> materials,
        List<MaltLot> maltLots,
        Map<String, HopVariety> varieties,
        Map<String, HopLot> hopLots,
        Map<String, Supply> supplies) {

    /**
     * A delivery of a grist material with its own analysis.
     *
     * @param lot lot number
     * @param inUseFrom first day on which this lot is brewed with
     * @param analysis the material with the delivery's figures; its name says which material it is
     */
    public record MaltLot(String lot, LocalDate inUseFrom, GristMaterial analysis) {}

    public Catalogue {
        materials = Map.copyOf(materials);
        maltLots = List.copyOf(maltLots);
        varieties = Map.copyOf(varieties);
        hopLots = Map.copyOf(hopLots);
        supplies = Map.copyOf(supplies);
    }

    /**
     * A grist material as it is on a day: the newest lot in use by then, else the table's row.
     *
     * @param name the material
     * @param day the brewing day; empty takes the table's row
     * @return the material
     * @throws UnknownNameException if no material is called so
     */
    public GristMaterial material(String name, Optional<LocalDate> day) {
        GristMaterial row = Names.require("grist material", materials, name);
        return day.flatMap(date -> maltLots.stream()
                        .filter(lot -> lot.analysis().name().equals(row.name()))
                        .filter(lot -> !lot.inUseFrom().isAfter(date))
                        .max(Comparator.comparing(MaltLot::inUseFrom)))
                .map(MaltLot::analysis)
                .orElse(row);
    }

    /**
     * The lot of a variety to brew with on a day: the newest crop year analysed by then that isn't used up.
     *
     * @param variety name of the variety
     * @param day the brewing day
     * @return the lot, or empty where no lot of the variety was analysed by then
     */
    public Optional<HopLot> lotInUse(String variety, LocalDate day) {
        String wanted = Names.folded(variety);
        return hopLots.values().stream()
                .filter(lot -> Names.folded(lot.variety()).equals(wanted))
                .filter(lot -> !lot.analyses().get(0).date().isAfter(day))
                .filter(lot -> lot.stockKg().orElse(1) > 0)
                .max(Comparator.comparingInt(HopLot::cropYear)
                        .thenComparing(lot -> lot.analyses().get(0).date())
                        .thenComparing(HopLot::id));
    }

    /**
     * The hop varieties that have a lot in store.
     *
     * @return names, sorted
     */
    public List<String> varietiesInStore() {
        return hopLots.values().stream()
                .map(HopLot::variety)
                .distinct()
                .sorted()
                .collect(Collectors.toList());
    }
}
