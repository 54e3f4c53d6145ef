package costrel.wort;

import java.util.function.DoubleUnaryOperator;

/** The rules behind {@link ColourRule}: a curve from kg·EBC in a litre to EBC, and the colour below which it holds. */
record PublishedColourRule(String name, String source, double limitEbc, DoubleUnaryOperator ebcOfKgEbcPerL)
        implements ColourRule {
    @Override
    public Colour of(double sumKgEbc, double litres) {
        Limits.atLeast("colour of the grist", sumKgEbc, 0, " kg·EBC");
        Limits.above("volume of wort", litres, 0, " L");
        return new Colour(ebcOfKgEbcPerL.applyAsDouble(sumKgEbc / litres));
    }

    @Override
    public boolean within(Colour colour) {
        return colour.ebc() < limitEbc;
    }

    @Override
    public double uncertaintyShare() {
        return 0.25;
    }

    @Override
    public String toString() {
        return name;
    }
}
