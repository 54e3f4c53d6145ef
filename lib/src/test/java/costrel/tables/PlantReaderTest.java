package costrel.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.FixedFigures;
import costrel.hops.HopForm;
import costrel.hops.Kinetic;
import costrel.hops.Tinseth;
import costrel.plant.DipTable;
import costrel.plant.MashEfficiency;
import costrel.plant.Plant;
import costrel.wort.TemperatureCourse;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PlantReaderTest {

    private static final String SHED = """
            Shed,mash tun volume,7 hL
            Shed,Greatest Grist,225 kg
            Shed,mash tun dead space,22 L
            Shed,mash heat allowance,2.0 °C
            Shed,grain retention,1.02 L/kg
            Shed,displacement,0.68 L/kg
            Shed,grist temperature,14 °C
            Shed,mash efficiency,84 %
            Shed,mash efficiency slope,0.2 % per °
            Shed,mash efficiency reference gravity,1.040
            Shed,mash efficiency lowest gravity,32 °
            Shed,mash efficiency highest gravity,65 °
            Shed,copper volume,1240 L
            Shed,copper headspace,18 %
            Shed,boiling temperature,99.5 °C
            Shed,evaporation,62 L/h
            Shed,copper left,9 L
            Shed,hopback dead space,6 L
            Shed,hop retention leaf,6.1 L/kg
            Shed,hop retention T90,7.5 L/kg
            Shed,hop retention T45,7.6 L/kg
            Shed,hop retention CO2 extract,0 L/kg
            Shed,hopback contact,10 min
            Shed,hopback temperature,90 °C
            Shed,least leaf hops,400 g
            Shed,stand,hold 97 °C 8 min; linear 97 °C to 88 °C 30 min
            Shed,FV volume,980 L
            Shed,fv dip 4 hL,42.3 cm
            Shed,FV dip 900 L,910 mm
            Shed,FV headspace,15 %
            Shed,FV loss,5.2 %
            Shed,tank loss,2.4 %
            Shed,dry hop retention leaf,7 L/kg
            Shed,dry hop retention T90,9 L/kg
            Shed,dry hop retention T45,9.5 L/kg
            Shed,dry hop retention CO2 extract,0 L/kg
            Shed,fill loss,1.4 %
            Shed,fill loss 500 mL bottle,3.0 %
            Shed,utilisation,plant
            Shed,utilisation copper 90 min,27.0 %
            Shed,utilisation copper 0 min,2.0 %
            Shed,utilisation first wort,25.0 %
            Shed,utilisation hot stand,8.5 %
            Shed,bitterness correction,1.05
            Shed,malt weighed to,0.5 kg
            Shed,sugar weighed to,0.5 kg
            Shed,hops weighed to,50 g
            Shed,others weighed to,5 g
            Shed,sack,25 kg
            Shed,held condition,1.0 vol
            Shed,warmest temperature,19.5 °C
            """;

    @Test
    void a_plant_that_states_everything_assumes_nothing() {
        Loaded<List<Plant>> loaded = read(SHED);
        assertEquals(List.of(), loaded.problems());
        assertEquals(List.of(), loaded.assumed());
        Plant plant = loaded.orThrow().get(0);
        assertEquals("Shed", plant.name());
        assertEquals(
                new Plant.MashTun(
                        OptionalDouble.of(700), OptionalDouble.of(225), 22, 2, 1.02, 0.68, OptionalDouble.of(14)),
                plant.mashTun());
        assertEquals(new MashEfficiency.Linear(0.84, 0.002, 40, 32, 65), plant.efficiency());
        assertEquals(new Plant.Copper(OptionalDouble.of(1240), 0.18, 99.5, 62, 9), plant.copper());
        assertEquals(
                new Plant.Hopback(
                        6,
                        Map.of(HopForm.LEAF, 6.1, HopForm.T90, 7.5, HopForm.T45, 7.6, HopForm.CO2_EXTRACT, 0.0),
                        10,
                        90,
                        OptionalDouble.of(0.4)),
                plant.hopback());
        assertEquals(TemperatureCourse.parse("hold 97 °C 8 min; linear 97 °C to 88 °C 30 min"), plant.stand());
        assertEquals(new Plant.Fv(OptionalDouble.of(980), 0.15), plant.fv());
        assertEquals(
                new Plant.Losses(
                        0.052,
                        0.024,
                        Map.of(HopForm.LEAF, 7.0, HopForm.T90, 9.0, HopForm.T45, 9.5, HopForm.CO2_EXTRACT, 0.0),
                        Map.of("", 0.014, "500 mL bottle", 0.03)),
                plant.losses());
        assertEquals(
                new FixedFigures(
                        Map.of("first wort", 0.25, "hot stand", 0.085),
                        List.of(new FixedFigures.Point(0, 0.02), new FixedFigures.Point(90, 0.27))),
                plant.utilisation());
        assertEquals(1.05, plant.bitternessCorrection());
        assertEquals(new Plant.Weighing(0.5, 0.5, 0.05, 0.005, OptionalDouble.of(25)), plant.weighing());
        assertEquals(OptionalDouble.of(1), plant.heldCarbonDioxide());
        assertEquals(OptionalDouble.of(19.5), plant.warmestCelsius());
        assertEquals(Map.of(400.0, 42.3, 900.0, 91.0), plant.fvDips().centimetresByLitres());
        assertEquals(DipTable.NONE, plant.copperDips());
    }

    @Test
    void what_a_plant_leaves_out_is_named() {
        Loaded<List<Plant>> loaded = read("""
                Barn,evaporation,200 L/h
                Barn,extract efficiency,88 %
                Barn,reference gyle,Cresset Bitter
                Barn,utilisation,kinetic
                Barn,isomerisation recovery,47 %
                Barn,hopback contact,10 min
                """);
        Plant plant = loaded.orThrow().get(0);
        assertEquals(new MashEfficiency.OfReference(0.88, "Cresset Bitter"), plant.efficiency());
        assertEquals(new Kinetic(OptionalDouble.of(0.47)), plant.utilisation());
        assertEquals(plant.copper().boilingCelsius(), plant.hopback().contactCelsius());
        List<String> assumed = loaded.assumed();
        assertTrue(assumed.contains("plants.csv:2: Barn: grain retention: 0.96 L/kg, not stated"), assumed.toString());
        for (String property : List.of(
                "mash tun dead space",
                "displacement",
                "FV loss",
                "tank loss",
                "fill loss",
                "stand",
                "hopback temperature")) {
            assertTrue(
                    assumed.stream().anyMatch(sentence -> sentence.contains("Barn: " + property + ":")),
                    () -> property + " in " + assumed);
        }
        assertEquals(
                assumed.size(), assumed.stream().distinct().count(), () -> "each default is named once: " + assumed);
    }

    @Test
    void two_plants_stand_in_one_file() {
        String barn = SHED.replace("Shed,", "Barn,")
                .replace("Barn,utilisation,plant", "Barn,utilisation,Tinseth")
                .replaceAll("Barn,mash efficiency (slope|reference|lowest|highest).*\n", "");
        List<Plant> plants = read(SHED + "# the other\n\n" + barn).orThrow();
        assertEquals(List.of("Shed", "Barn"), plants.stream().map(Plant::name).toList());
        assertEquals(new Tinseth(), plants.get(1).utilisation());
        assertEquals(new MashEfficiency.Constant(0.84), plants.get(1).efficiency());
    }

    private static Loaded<List<Plant>> read(String rows) {
        return PlantReader.read(CsvSource.text("plants.csv", "plant,property,value\n" + rows));
    }
}
