package costrel.brewery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.harvest.HarvestPlan;
import costrel.scaling.Finding;
import costrel.tables.TableProblem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a brewer is told who has slipped, in the sample brewery. */
class SlipsTest {

    private static final Brewery LANTERNFOLD = Brewery.open(LanternfoldTest.FOLDER);

    private static Brew bitter() {
        return LANTERNFOLD.brew("Wickgate Bitter").on("Main").length("30 brl").day(LanternfoldTest.DAY);
    }

    @Test
    void a_lot_for_a_variety_that_the_recipe_has_not_is_refused() {
        String told = String.valueOf(assertThrows(RuntimeException.class, () -> bitter().lot("Fuggle", "FU26-0034"))
                .getMessage());
        assertTrue(told.contains("hop variety in Wickgate Bitter") && told.contains("Fuggle"), told);
    }

    @Test
    void a_lot_of_another_variety_is_told_to_stand_in() {
        List<String> cautions = bitter().lot("Challenger", "FU26-0034").gyle().findings().stream()
                .map(Finding::what)
                .toList();
        assertTrue(cautions.contains("Fuggle lot FU26-0034 stands in for Challenger"), cautions.toString());
        assertTrue(bitter().gyle().findings().stream()
                .noneMatch(finding -> finding.what().contains("stands in")));
    }

    @Test
    void a_slip_in_a_file_does_not_make_all_its_names_unknown(@TempDir Path inner) throws IOException {
        Path folder = SampleFolder.copiedInto(inner);
        Files.writeString(
                folder.resolve("plants.csv"), Files.readString(folder.resolve("plants.csv")) + "Main,FV losss,4 %\n");
        List<TableProblem> problems = Brewery.load(folder).problems();
        assertEquals(1, problems.size(), problems.toString());
        assertTrue(problems.get(0).found().contains("FV losss"), problems.toString());
    }

    @Test
    void a_plan_says_which_gyles_the_scales_take_out_of_their_tolerance() {
        HarvestPlan plan =
                LANTERNFOLD.harvest().allow("East Kent Golding", "First Gold").plan();
        long out = plan.gyles().stream()
                .filter(gyle -> Math.abs(gyle.weighedEbu() - gyle.targetEbu()) > gyle.toleranceEbu() + 1e-6)
                .count();
        assertTrue(out > 0, "the sample weighs hops in steps that show");
        assertTrue(
                plan.remarks().stream()
                        .anyMatch(remark -> remark.startsWith(
                                "as weighed out, " + out + " of " + plan.gyles().size())),
                plan.remarks().toString());
    }

    @Test
    void a_harvest_says_what_it_is() {
        String said = LANTERNFOLD.harvest().toString();
        assertTrue(
                said.startsWith(LANTERNFOLD.brewingPlan().size() + " gyles, 2026-12-01 to ")
                        && said.contains("least cost"),
                said);
    }

    @Test
    void a_margin_of_all_is_refused_in_per_cent() {
        String told = String.valueOf(assertThrows(
                        IllegalArgumentException.class, () -> bitter().pricing().margin("100 %"))
                .getMessage());
        assertEquals("margin: expected under 100 %, found 100 %", told);
    }
}
