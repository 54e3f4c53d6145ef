package costrel.wort;

/**
 * Density of mixtures of ethanol and water, and strength by volume against strength by mass.
 *
 * <p>Source: International Recommendation OIML R 22 (1975), the same formula as in the annex of Council Directive
 * 76/766/EEC (OJ L 262, 27.9.1976, p. 149), all 54 coefficients, -20 to 40 °C (IPTS-68):
 *
 * <pre>
 * ρ(p,t) = A1 + Σ A(k) p^(k-1) + Σ B(k) (t-20)^k + Σ Σ C(i,k) p^k (t-20)^i      kg/m³, p the mass fraction of ethanol
 * q = 100 p ρ(p,20) / ρ(1,20)                                                    % vol at 20 °C
 * </pre>
 *
 * It reproduces the published table of density by volume to the printed 0.01 kg/m³.
 */
public final class EthanolWater {
    /** A(1) to A(12), powers 0 to 11 of the mass fraction. */
    private static final double[] A = {
        998.20123,
        -192.9769495,
        389.1238958,
        -1668.103923,
        13522.15441,
        -88292.78388,
        306287.4042,
        -613838.1234,
        747017.2998,
        -547846.1354,
        223446.0334,
        -39032.85426
    };

    /** B(1) to B(6), powers 1 to 6 of t - 20. */
    private static final double[] B = {
        -0.20618513, -0.0052682542, 3.6130013e-05, -3.8957702e-07, 7.169354e-09, -9.9739231e-11
    };

    /** Row i holds C(i,1), C(i,2), …: powers of the mass fraction that go with (t - 20) to the power i. */
    private static final double[][] C = {
        {
            0.1693443461530087,
            -10.46914743455169,
            71.96353469546523,
            -704.7478054272792,
            3924.090430035045,
            -12101.64659068747,
            22486.46550400788,
            -26055.62982188164,
            18523.73922069467,
            -7420.201433430137,
            1285.617841998974
        },
        {
            -0.0119301300505701,
            0.2517399633803461,
            -2.170575700536993,
            13.53034988843029,
            -50.29988758547014,
            109.635566657757,
            -142.2753946421155,
            108.043594285623,
            -44.14153236817392,
            7.442971530188783
        },
        {
            -0.0006802995733503803,
            0.01876837790289664,
            -0.2002561813734156,
            1.02299296671922,
            -2.895696483903638,
            4.810060584300675,
            -4.672147440794683,
            2.458043105903461,
            -0.5411227621436812
        },
        {4.075376675622027e-06, -8.76305857347111e-06, 6.515031360099368e-06, -1.51578483698721e-06},
        {-2.788074354782409e-08, 1.345612883493354e-08}
    };

    private static final double TOLERANCE = 1e-14;

    /** Density of ethanol at 20 °C, 789.239 kg/m³. */
    static final double ETHANOL_KG_PER_M3 = at20(1);

    /** Density of water at 20 °C in this formula, 998.201 kg/m³. */
    static final double WATER_KG_PER_M3 = at20(0);

    private EthanolWater() {}

    /**
     * Density of a mixture.
     *
     * @param massFraction kg of ethanol in a kg of mixture, 0 to 1
     * @param celsius temperature in °C, -20 to 40; below the freezing point of the mixture the figure means nothing
     * @return kg in a cubic metre
     * @throws IllegalArgumentException outside those ranges
     */
    public static double densityByMass(double massFraction, double celsius) {
        double p = Limits.within("mass fraction of ethanol", massFraction, 0, 1, "");
        double warmer = Limits.within("temperature of spirit", celsius, -20, 40, " °C") - 20;
        double density = 0;
        for (int i = C.length; i >= 1; i--) {
            density = (density + polynomial(C[i - 1], p) * p) * warmer;
        }
        return at20(p) + polynomial(B, warmer) * warmer + density;
    }

    /**
     * Strength by volume at 20 °C.
     *
     * @param massFraction kg of ethanol in a kg of mixture, 0 to 1
     * @return per cent by volume, 0 to 100
     * @throws IllegalArgumentException outside that range
     */
    public static double volumePercentFromMass(double massFraction) {
        double p = Limits.within("mass fraction of ethanol", massFraction, 0, 1, "");
        return 100 * p * at20(p) / ETHANOL_KG_PER_M3;
    }

    /**
     * Mass fraction of a strength by volume at 20 °C, the numerical inverse of {@link #volumePercentFromMass}.
     *
     * @param volumePercent per cent by volume, 0 to 100
     * @return kg of ethanol in a kg of mixture
     * @throws IllegalArgumentException outside that range
     */
    public static double massFromVolumePercent(double volumePercent) {
        double q = Limits.within("strength", volumePercent, 0, 100, " % vol");
        return Roots.between("% vol to mass", 0, 1, TOLERANCE, p -> 100 * p * at20(p) / ETHANOL_KG_PER_M3 - q);
    }

    /** Density at 20 °C without the ranges. */
    static double at20(double massFraction) {
        return polynomial(A, massFraction);
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int k = coefficients.length - 1; k >= 0; k--) {
            sum = sum * x + coefficients[k];
        }
        return sum;
    }
}
