package costrel.duty;

import costrel.figures.Figures;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * How a country reckons duty on beer: what it charges by, and where it rounds.
 *
 * @param unit what duty is charged by
 * @param strength how the strength is rounded, in per cent by volume or degrees Plato; empty to take it as it is declared
 * @param reducedRate how a rate for small breweries is rounded; empty where it isn't
 * @param perVolume how the duty on one hL or barrel is rounded before it is multiplied; empty where it isn't
 * @param container how the volume of one cask or keg is rounded, in the unit's volume, and of a line of bottles or cans;
 *     empty where it isn't
 * @param run how the volume of a run is rounded; empty where it isn't
 * @param duty how the duty on a run is rounded
 * @param source the law
 */
public record DutyBasis(
        DutyUnit unit,
        Optional<DutyRounding> strength,
        Optional<DutyRounding> reducedRate,
        Optional<DutyRounding> perVolume,
        Optional<DutyRounding> container,
        Optional<DutyRounding> run,
        DutyRounding duty,
        String source) {

    /** The United Kingdom: strength down to one decimal and duty down to the penny, by the litre of pure alcohol. */
    public static final DutyBasis PURE_ALCOHOL = new DutyBasis(
            DutyUnit.PURE_ALCOHOL,
            Optional.of(new DutyRounding(1, RoundingMode.DOWN)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            new DutyRounding(2, RoundingMode.DOWN),
            "Alcoholic products technical guide s.11; guidance on working out Alcohol Duty");

    public DutyBasis {
        source = Figures.named("duty basis: source", source);
    }
}
