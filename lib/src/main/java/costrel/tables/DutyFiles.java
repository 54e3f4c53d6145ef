package costrel.tables;

import java.util.Optional;

/**
 * The files that tables of beer duty stand in. Each may be left out.
 *
 * @param rates duty-rates.csv: countries that charge by the litre of pure alcohol as the United Kingdom does
 * @param reliefs duty-reliefs.csv: the small producer's discount of such a country
 * @param factors strength-factors.csv, which serves every country
 * @param bases duty-bases.csv: what another country charges by and where it rounds
 * @param ratesByVolume duty-rates-by-volume.csv: the rates of a country that has a basis
 */
public record DutyFiles(
        Optional<CsvSource> rates,
        Optional<CsvSource> reliefs,
        Optional<CsvSource> factors,
        Optional<CsvSource> bases,
        Optional<CsvSource> ratesByVolume) {

    static final String RATES = "duty-rates.csv";
    static final String RELIEFS = "duty-reliefs.csv";
    static final String FACTORS = "strength-factors.csv";
    static final String BASES = "duty-bases.csv";
    static final String RATES_BY_VOLUME = "duty-rates-by-volume.csv";

    String ratesName() {
        return rates.map(CsvSource::name).orElse(RATES);
    }

    String reliefsName() {
        return reliefs.map(CsvSource::name).orElse(RELIEFS);
    }

    String basesName() {
        return bases.map(CsvSource::name).orElse(BASES);
    }

    String ratesByVolumeName() {
        return ratesByVolume.map(CsvSource::name).orElse(RATES_BY_VOLUME);
    }
}
