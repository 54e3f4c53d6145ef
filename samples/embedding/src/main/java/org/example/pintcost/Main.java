package org.example.pintcost;

import costrel.brewery.Brew;
import costrel.brewery.Brewery;
import costrel.cost.CostSheet;
import costrel.scaling.Gyle;
import java.nio.file.Path;
import java.time.LocalDate;

/** Moves a beer to another plant with this year's hops and prints what a pint of it costs. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        Brewery brewery = Brewery.open(Path.of(args[0]));
        Brew brew = brewery.brew("Wickgate Bitter").on("Main").length("30 brl").day(LocalDate.of(2026, 11, 25));
        Gyle gyle = brew.gyle();
        gyle.grist().forEach(line -> System.out.println(line.material().name() + " " + line.weighedKg() + " kg"));
        gyle.hops().forEach(hop -> System.out.println(hop.hop().lot() + " " + hop.weighedKg() + " kg"));
        CostSheet sheet = brew.cost();
        sheet.containers()
                .forEach(in -> System.out.println(in.container().name() + " " + in.pencePerPint() + "p a pint"));
    }
}
