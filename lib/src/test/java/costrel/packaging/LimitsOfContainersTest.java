package costrel.packaging;

import static costrel.cost.Given.assertFigure;
import static costrel.cost.Given.assertRefused;
import static costrel.cost.Given.container;
import static costrel.cost.Given.dec;
import static costrel.cost.Given.holding;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Containers and shares at the very limits that their descriptions state. */
class LimitsOfContainersTest {

    private static Container bottle(String sedimentL, String undrinkableL) {
        return new Container(
                "pint bottle",
                ContainerKind.BOTTLE,
                dec("0.57"),
                dec("0.568"),
                dec(sedimentL),
                dec(undrinkableL),
                true,
                false,
                List.of(),
                List.of());
    }

    @Test
    void a_container_keeps_at_least_a_drop_to_sell_and_a_drop_to_pay_duty_on() {
        assertRefused(
                "pint bottle: sediment: expected less than the 0.57 L it holds, found 0.57 L",
                () -> bottle("0.57", "0"));
        assertFigure("0.57", bottle("0.569", "0").nominalL());
        assertRefused(
                "pint bottle: undrinkable volume: expected less than the 0.568 L on its label, found 0.568 L",
                () -> bottle("0", "0.568"));
        assertFigure("0.001", bottle("0", "0.567").dutiableL());
    }

    @Test
    void a_bottle_is_rated_for_more_than_0_to_10_volumes() {
        Container bottle = bottle("0", "0");

        assertEquals(OptionalDouble.of(10), bottle.ratedFor(10).ratedVolumes());
        assertEquals(OptionalDouble.of(0.1), bottle.ratedFor(0.1).ratedVolumes());
        assertRefused("expected more than 0 to 10 volumes, found 0", () -> bottle.ratedFor(0));
        assertRefused("expected more than 0 to 10 volumes, found 10.1", () -> bottle.ratedFor(10.1));
        assertRefused("expected more than 0 to 10 volumes, found -4", () -> bottle.ratedFor(-4));
    }

    @Test
    void only_a_bottle_is_rated() {
        Container keg = holding("30", false, true);

        assertRefused("expected a rating for a bottle only, found one for a keg", () -> keg.ratedFor(3));
    }

    @Test
    void a_share_is_more_than_nothing_and_no_more_than_all() {
        Container firkin = container("firkin");

        assertRefused("share of what is racked: expected more than 0 to 1, found 0.0", () -> share(firkin, 0, 0));
        assertRefused("share of what is racked", () -> share(firkin, 1.00001, 0));
        assertEquals(1, share(firkin, 1, 0).share());
        assertRefused("fill loss: expected 0 to less than 1, found -0.1", () -> share(firkin, 1, -0.1));
        assertRefused("fill loss: expected 0 to less than 1, found 1.0", () -> share(firkin, 1, 1));
        assertEquals(0.999, share(firkin, 1, 0.999).fillLossShare());
    }

    private static PackagingShare share(Container container, double share, double fillLossShare) {
        return new PackagingShare(container, share, fillLossShare);
    }

    @Test
    void what_settles_in_a_container_is_not_packaged_twice() {
        // 100 L into 3 kegs of 30 L, 1.5 L of sediment each, 10 L over.
        Container keg = new Container(
                "30 L keg",
                ContainerKind.KEG,
                dec("30"),
                dec("30"),
                dec("1.5"),
                BigDecimal.ZERO,
                true,
                true,
                List.of(),
                List.of());
        PackagingRun run = PackagingRun.of(100, List.of(share(keg, 1, 0)));

        assertFigure("90", run.packagedL());
        assertFigure("4.5", run.sedimentL());
        assertFigure("10", run.leftL());
        assertFigure("0", run.fillLossL());
    }
}
