package costrel.tables;

import costrel.cost.ContainerCharges.PackagingFee;
import costrel.duty.DutySchedule;
import costrel.harvest.CropYearAlpha;
import costrel.hops.HopVariety;
import costrel.packaging.Container;
import costrel.recipe.GristMaterial;
import costrel.recipe.Supply;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tables that ship with the library. Each row names its published source; a blank cell is one on which the source is silent. */
public final class IngredientTables {

    private static final String FOLDER = "/costrel/ingredient-tables/";

    private IngredientTables() {}

    /**
     * Malts, adjuncts and copper sugars.
     *
     * @return the materials in the order of the table
     */
    public static List<GristMaterial> materials() {
        return GristMaterialReader.read(source("grist-materials.csv")).orThrow();
    }

    /**
     * Hop varieties.
     *
     * @return the varieties in the order of the table
     */
    public static List<HopVariety> varieties() {
        return HopVarietyReader.read(source("hop-varieties.csv")).orThrow();
    }

    /**
     * Alpha acid of hop varieties over several crop years.
     *
     * @return a row for each variety, in the order of the table
     */
    public static List<CropYearAlpha> cropYears() {
        return CropYearAlphaReader.read(source("crop-year-alpha.csv")).orThrow();
    }

    /**
     * Yeast, liquor treatment and process aids.
     *
     * @return the supplies in the order of the table
     */
    public static List<Supply> supplies() {
        return SupplyReader.read(source("supplies.csv")).orThrow();
    }

    /**
     * Casks, kegs and bottles.
     *
     * @return the containers in the order of the table
     */
    public static List<Container> containers() {
        return ContainerReader.read(source("containers.csv")).orThrow();
    }

    /**
     * Beer duty of every country in the tables, with reliefs and strength factors.
     *
     * @return the schedule of each country by its name in the tables, and by what else it is called
     */
    public static Map<String, DutySchedule> duty() {
        return DutyReader.read(dutyFiles()).orThrow();
    }

    /**
     * Beer duty with what a brewery adds to the tables: countries of its own, or rows that take the place of others for the days
     * they cover.
     *
     * @param own the brewery's files
     * @return the schedule of each country, or what is wrong with the brewery's files
     */
    public static Loaded<Map<String, DutySchedule>> duty(DutyFiles own) {
        return DutyReader.read(dutyFiles(), own);
    }

    /**
     * Fees on packaging by weight. Who is liable depends on turnover and tonnage: ask the authority.
     *
     * @return the fees in the order of the table
     */
    public static List<PackagingFee> packagingFees() {
        return PackagingFeeReader.read(source("packaging-fees.csv")).orThrow();
    }

    /**
     * Fees on packaging by weight with those of a brewery, which add a material or take the place of others on their days.
     *
     * @param own the brewery's packaging-fees.csv
     * @return the fees, or what is wrong with the brewery's file
     */
    public static Loaded<List<PackagingFee>> packagingFees(CsvSource own) {
        return PackagingFeeReader.read(own).map(fees -> PackagingFeeReader.replaced(packagingFees(), fees));
    }

    private static DutyFiles dutyFiles() {
        return new DutyFiles(
                Optional.of(source(DutyFiles.RATES)),
                Optional.of(source(DutyFiles.RELIEFS)),
                Optional.of(source(DutyFiles.FACTORS)),
                Optional.of(source(DutyFiles.BASES)),
                Optional.of(source(DutyFiles.RATES_BY_VOLUME)));
    }

    /** A table by its file name, as bytes on the class path or in the module. */
    static CsvSource source(String file) {
        InputStream bytes = IngredientTables.class.getResourceAsStream(FOLDER + file);
        if (bytes == null) {
            throw new IllegalStateException(
                    "ingredient table " + file + ": expected it inside the library, found none");
        }
        return CsvSource.stream(file, bytes);
    }
}
