package costrel.repl;

import costrel.brewery.Brew;
import costrel.brewery.Brewery;
import costrel.brewery.Harvest;
import costrel.brewery.PricedRange;
import costrel.brewery.RackingPlan;
import costrel.brewery.RiskStudy;
import costrel.brewery.SellingPrices;
import costrel.brewery.WhyItMoved;
import costrel.cost.CostSheet;
import costrel.explain.Explanation;
import costrel.harvest.HarvestPlan;
import costrel.measure.QuantityText;
import costrel.pricing.Comparison;
import costrel.repl.sheets.SheetFile;
import costrel.report.HarvestText;
import costrel.report.Sheet;
import costrel.report.TextTable;
import costrel.scaling.Gyle;
import java.time.LocalDate;
import java.util.Optional;

/** The words that the console knows from the start. Each answers with something that prints itself. */
public final class Verbs {

    private Verbs() {}

    /**
     * The brewery that is open.
     *
     * @return the brewery of the folder, read at its first use
     */
    public static Brewery brewery() {
        return Desk.brewery();
    }

    /**
     * Sets the day that is brewed and priced for.
     *
     * @param day such as "2026-11-25"
     * @return the day
     * @throws IllegalArgumentException if it is no date
     */
    public static LocalDate day(String day) {
        return Desk.day(day);
    }

    /**
     * The day that is brewed and priced for: today, unless another was set.
     *
     * @return the day
     */
    public static LocalDate day() {
        return Desk.day();
    }

    /**
     * Plans a brewing of a beer on the desk's day.
     *
     * @param beer name of the beer
     * @return the brew; printed, it is the whole job on one screen
     */
    public static Brew brew(String beer) {
        return brewery().brew(beer).day(Desk.day());
    }

    /**
     * The beers of the brewery.
     *
     * @return a table
     */
    public static TextTable beers() {
        return Listings.beers(brewery());
    }

    /**
     * The plants of the brewery.
     *
     * @return a table
     */
    public static TextTable plants() {
        return Listings.plants(brewery());
    }

    /**
     * The hop lots in store, as they stand on the desk's day.
     *
     * @return a table
     */
    public static TextTable lots() {
        return Listings.lots(brewery(), Desk.day());
    }

    /**
     * The hops of the brewing plan, to be planned from the lots on hand.
     *
     * @return the harvest; its plan() says which lots go where
     */
    public static Harvest harvest() {
        return brewery().harvest();
    }

    /**
     * Hops on hand against what a harvest wants, and what to contract for the next.
     *
     * @param harvest the harvest
     * @return tables
     */
    public static Sheet cover(Harvest harvest) {
        return HarvestText.sheet(harvest.cover(), harvest.contracts());
    }

    /**
     * Varieties in store that may stand in for one that is gone, the nearest first.
     *
     * @param variety the variety that is gone
     * @return a table
     */
    public static Sheet substitutes(String variety) {
        return HarvestText.sheet(harvest().substitutes(variety));
    }

    /**
     * What to charge for a beer: its containers with their cost, to be priced.
     *
     * @param brew the brew
     * @return prices; their margin("35 %"), pub("60 %"), strengths(...) and the like say more
     */
    public static SellingPrices pricing(Brew brew) {
        return brew.pricing();
    }

    /**
     * Why a pint of one cost sheet costs more or less than a pint of another. Hop lots of one variety stand for the same hop.
     *
     * @param before the sheet that is compared with
     * @param after the sheet whose cost is to be explained
     * @return the comparison
     */
    public static Comparison compare(CostSheet before, CostSheet after) {
        return WhyItMoved.between(brewery(), before, after);
    }

    /**
     * Why a pint of one brew costs more or less than a pint of another.
     *
     * @param before the brew that is compared with
     * @param after the brew whose cost is to be explained
     * @return the comparison
     */
    public static Comparison compare(Brew before, Brew after) {
        return compare(before.cost(), after.cost());
    }

    /**
     * What could happen to the cost of a pint.
     *
     * @param brew the brew
     * @return a study; its price("mashed goods", "10 %"), alpha("15 %") and the like say what is drawn
     */
    public static RiskStudy risk(Brew brew) {
        return brew.risk().telling(Desk::shareDone);
    }

    /**
     * At what gravity to rack a beer and with what primings, for the condition wanted in each container.
     *
     * @param brew the brew
     * @return a plan; its at("1.0115"), warmest("19 °C"), wanted("firkin", "1.2 volumes") and the like say more
     */
    public static RackingPlan racking(Brew brew) {
        return brew.racking();
    }

    /**
     * The range of list-prices.csv at the costs of the desk's day: which beers earn their tank time.
     *
     * @return every beer and container
     */
    public static PricedRange range() {
        return PricedRange.of(brewery(), Desk.day());
    }

    /**
     * Writes a sheet to print, or its chart. It takes the place of an earlier sheet of the same kind and of no other file.
     *
     * @param thing a brew, its cost() or pricing(), a comparison, a study of risk, a harvest, range(), or brewery() for its
     *     price list
     * @param file ends in .html or .pdf for the sheet, in .svg or .png for its chart
     * @return what was written
     * @throws IllegalArgumentException if the thing has no sheet, or the file may not be written
     */
    public static String sheet(Object thing, String file) {
        return SheetFile.write(thing, file, Desk.day(), Optional.empty());
    }

    /**
     * Writes a brew sheet with the additions at their time of the clock.
     *
     * @param brew the brew
     * @param file ends in .html or .pdf
     * @param clock such as "boil 09:00" or "cast 10:15"
     * @return what was written
     * @throws IllegalArgumentException if the clock is none, or the file may not be written
     */
    public static String sheet(Brew brew, String file, String clock) {
        return SheetFile.write(brew, file, Desk.day(), Optional.of(clock));
    }

    /**
     * A chart in characters: where a pint's money goes, why it moved, what it may come to, which month takes how many hops.
     *
     * @param thing a brew, its cost() or pricing(), a comparison, a study of risk or a harvest
     * @return the chart
     * @throws IllegalArgumentException if the thing has none
     */
    public static String chart(Object thing) {
        return SheetFile.chart(thing);
    }

    /**
     * How a harvest plan came about.
     *
     * @param plan the plan
     * @return a tree of figures
     */
    public static Explanation explain(HarvestPlan plan) {
        return plan.explanation();
    }

    /**
     * How a cost sheet came about.
     *
     * @param sheet the sheet
     * @return a tree of figures
     */
    public static Explanation explain(CostSheet sheet) {
        return sheet.explanation();
    }

    /**
     * How a gyle came about.
     *
     * @param gyle the gyle
     * @return a tree of figures
     */
    public static Explanation explain(Gyle gyle) {
        return gyle.explanation();
    }

    /**
     * An amount in another unit.
     *
     * @param amount such as "2 oz/brl"
     * @param unit such as "g/hL"
     * @return the amount in that unit
     * @throws IllegalArgumentException if the units don't measure the same
     */
    public static String convert(String amount, String unit) {
        return QuantityText.convert(amount, unit);
    }

    /**
     * An answer as JSON, for programs.
     *
     * @param answer any answer
     * @return one JSON object
     */
    public static String json(Object answer) {
        return Form.JSON.of(Sheets.rendering().sheet(answer));
    }

    /**
     * An answer as CSV, for spreadsheets.
     *
     * @param answer any answer
     * @return CSV text
     */
    public static String csv(Object answer) {
        return Form.CSV.of(Sheets.rendering().sheet(answer));
    }

    /**
     * The words of the console, each with an example from the folder that is open.
     *
     * @return a page to read
     */
    public static Aside help() {
        return new Aside(session -> HelpPages.all(Own.ofDesk(), Desk.width()));
    }

    /**
     * More about one word.
     *
     * @param word such as "brew"
     * @return a page to read
     */
    public static Aside help(String word) {
        return new Aside(session -> HelpPages.of(word, Own.ofDesk(), Desk.width()));
    }

    /**
     * The next of five steps through the whole job, with the names of the folder that is open.
     *
     * @return a page to read
     */
    public static Aside tour() {
        return new Aside(session -> Tour.step(Desk.nextTourStep(Tour.STEPS), Desk.brewery(), Desk.day()));
    }

    /**
     * One of five steps through the whole job.
     *
     * @param step "1" to "5"
     * @return a page to read
     */
    public static Aside tour(String step) {
        return new Aside(session -> Tour.step(Desk.tourStep(Tour.number(step)), Desk.brewery(), Desk.day()));
    }

    /**
     * Takes the last {@code x = ...} back.
     *
     * @return what came of it
     */
    public static Aside undo() {
        return new Aside(Session::undo);
    }

    /**
     * Writes the lines of this session that were answered as a script that runs again.
     *
     * @param file its name, which ends in .jsh
     * @return what came of it
     */
    public static Aside save(String file) {
        return new Aside(session -> SavedScript.write(file, session.lines(), Desk.folder(), Desk.daySet()));
    }

    /**
     * Reads the folder again. Where it has faults, what was read before stays and the faults are told.
     *
     * @return what came of it
     */
    public static Aside reload() {
        return new Aside(session -> Desk.reload() + session.heldFromBefore());
    }
}
