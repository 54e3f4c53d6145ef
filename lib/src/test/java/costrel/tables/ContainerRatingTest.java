package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import costrel.packaging.Container;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ContainerRatingTest {

    @Test
    void a_bottle_is_ordinary_glass_until_its_rating_is_stated() {
        List<Container> containers =
                ContainerReader.read(CsvSource.text("containers.csv", """
                        name,kind,nominal,label,conditioned,draught,rated for
                        swing-top,bottle,500 mL,500 mL,yes,no,4.5 volumes
                        plain,bottle,500 mL,500 mL,yes,no,
                        firkin,cask,40.91481 L,40.91 L,yes,yes,
                        """)).orThrow();
        assertEquals(OptionalDouble.of(4.5), containers.get(0).ratedVolumes());
        assertEquals(OptionalDouble.empty(), containers.get(1).ratedVolumes());
        assertEquals(OptionalDouble.empty(), containers.get(2).ratedVolumes());
        assertEquals(
                containers.get(0).ratedVolumes(),
                containers.get(1).ratedFor(4.5).ratedVolumes());
    }
}
