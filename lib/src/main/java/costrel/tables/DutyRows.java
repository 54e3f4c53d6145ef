package costrel.tables;

import costrel.duty.DutyBasis;
import costrel.duty.DutyRate;
import costrel.duty.DutySchedule;
import costrel.duty.ReliefBand;
import costrel.recipe.Names;
import costrel.tables.DutyReader.OfCountry;
import costrel.wort.StrengthFactorTable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;

/** The rows of all tables of duty, before they are sorted by country. */
record DutyRows(
        List<OfCountry<DutyRate>> rates,
        List<OfCountry<ReliefBand>> reliefs,
        List<StrengthFactorTable> factors,
        List<DutyByVolumeReader.Basis> bases,
        List<DutyByVolumeReader.Rate> ratesByVolume) {

    /** These rows with those that a brewery adds or that take the place of some of them. */
    DutyRows with(DutyRows own, DutyFiles ownFiles, List<TableProblem> problems) {
        Map<String, String> known = names();
        own.names().forEach(known::putIfAbsent);
        Map<String, CurrencyUnit> currencies = new LinkedHashMap<>();
        rates.forEach(row -> currencies.putIfAbsent(row.country(), row.currency()));
        ratesByVolume.forEach(row -> currencies.putIfAbsent(row.country(), row.currency()));
        Function<String, String> called = name -> known.getOrDefault(Names.folded(name), name);
        own.rates.forEach(row ->
                oneCurrency(called.apply(row.country()), row.currency(), currencies, ownFiles.ratesName(), problems));
        own.reliefs.forEach(row ->
                oneCurrency(called.apply(row.country()), row.currency(), currencies, ownFiles.reliefsName(), problems));
        own.ratesByVolume.forEach(row -> oneCurrency(
                called.apply(row.country()), row.currency(), currencies, ownFiles.ratesByVolumeName(), problems));
        List<StrengthFactorTable> allFactors = new ArrayList<>(own.factors);
        allFactors.addAll(factors);
        Map<String, DutyByVolumeReader.Basis> allBases = new LinkedHashMap<>();
        bases.forEach(basis -> allBases.put(Names.folded(basis.country()), basis));
        own.bases.forEach(basis -> {
            String name = called.apply(basis.country());
            Set<String> alsoCalled = new LinkedHashSet<>(basis.alsoCalled());
            Optional.ofNullable(allBases.get(Names.folded(name)))
                    .ifPresent(before -> alsoCalled.addAll(before.alsoCalled()));
            allBases.put(
                    Names.folded(name),
                    new DutyByVolumeReader.Basis(basis.line(), name, List.copyOf(alsoCalled), basis.basis()));
            anotherCountrys(basis, name, known, ownFiles.basesName(), problems);
        });
        return new DutyRows(
                HeldDays.replaced(
                        rates,
                        renamed(own.rates, called),
                        OfCountry::country,
                        row -> new HeldDays(row.row().validFrom(), row.row().validUntil()),
                        (row, days) -> new OfCountry<>(row.country(), row.currency(), days.of(row.row()))),
                HeldDays.replaced(
                        reliefs,
                        renamed(own.reliefs, called),
                        OfCountry::country,
                        row -> new HeldDays(row.row().validFrom(), row.row().validUntil()),
                        (row, days) -> new OfCountry<>(row.country(), row.currency(), days.of(row.row()))),
                allFactors,
                List.copyOf(allBases.values()),
                HeldDays.replaced(
                        ratesByVolume,
                        own.ratesByVolume.stream()
                                .map(row -> new DutyByVolumeReader.Rate(
                                        row.line(),
                                        called.apply(row.country()),
                                        row.currency(),
                                        row.rate(),
                                        row.volumes()))
                                .toList(),
                        DutyByVolumeReader.Rate::country,
                        row -> new HeldDays(row.rate().validFrom(), row.rate().validUntil()),
                        (row, days) -> new DutyByVolumeReader.Rate(
                                row.line(), row.country(), row.currency(), days.of(row.rate()), row.volumes())));
    }

    private static <T> List<OfCountry<T>> renamed(List<OfCountry<T>> rows, Function<String, String> called) {
        return rows.stream()
                .map(row -> new OfCountry<>(called.apply(row.country()), row.currency(), row.row()))
                .toList();
    }

    /** A second name of a country that is already the name of another. */
    private static void anotherCountrys(
            DutyByVolumeReader.Basis basis,
            String name,
            Map<String, String> known,
            String file,
            List<TableProblem> problems) {
        for (String other : basis.alsoCalled()) {
            String called = known.getOrDefault(Names.folded(other), name);
            String owner = known.getOrDefault(Names.folded(called), called);
            if (!Names.folded(owner).equals(Names.folded(name))) {
                problems.add(new TableProblem(
                        file,
                        basis.line(),
                        "also called",
                        TableProblem.quoted(other) + ", which is " + owner,
                        "a name that no other country has"));
            }
        }
    }

    private static void oneCurrency(
            String country,
            CurrencyUnit currency,
            Map<String, CurrencyUnit> currencies,
            String file,
            List<TableProblem> problems) {
        CurrencyUnit before = currencies.putIfAbsent(country, currency);
        if (before != null && !before.equals(currency)) {
            TableProblem problem = new TableProblem(
                    file, 0, "", country + " in " + currency, "amounts in " + before + " as all rows of the country");
            if (!problems.contains(problem)) {
                problems.add(problem);
            }
        }
    }

    /** What each country is called in these rows, by every name it goes by, folded. */
    private Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        countries().forEach(name -> names.putIfAbsent(Names.folded(name), name));
        for (DutyByVolumeReader.Basis basis : bases) {
            basis.alsoCalled().forEach(name -> names.putIfAbsent(Names.folded(name), basis.country()));
        }
        return names;
    }

    private Set<String> countries() {
        Set<String> countries = new LinkedHashSet<>();
        rates.forEach(row -> countries.add(row.country()));
        ratesByVolume.forEach(row -> countries.add(row.country()));
        return countries;
    }

    /** The schedule of each country by its name and by what else it is called. */
    Loaded<Map<String, DutySchedule>> schedules(DutyFiles files) {
        List<TableProblem> problems = new ArrayList<>();
        Map<String, DutySchedule> schedules = new LinkedHashMap<>();
        for (String country : countries()) {
            boolean byAlcohol = rates.stream().anyMatch(row -> row.country().equals(country));
            boolean byVolume =
                    ratesByVolume.stream().anyMatch(row -> row.country().equals(country));
            if (byAlcohol && byVolume) {
                problems.add(new TableProblem(
                        files.ratesByVolumeName(),
                        0,
                        "country",
                        country + " in both",
                        "the rates of a country in one of " + files.ratesName() + " and " + files.ratesByVolumeName()));
            } else {
                (byAlcohol ? byAlcohol(country, files, problems) : byVolume(country, files, problems))
                        .ifPresent(schedule -> schedules.put(country, schedule));
            }
        }
        for (DutyByVolumeReader.Basis basis : bases) {
            if (ratesByVolume.stream().noneMatch(row -> row.country().equals(basis.country()))) {
                problems.add(new TableProblem(
                        files.basesName(),
                        basis.line(),
                        "country",
                        TableProblem.quoted(basis.country()),
                        "a country with rates in " + files.ratesByVolumeName()));
            }
            basis.alsoCalled()
                    .forEach(name -> Optional.ofNullable(schedules.get(basis.country()))
                            .ifPresent(schedule -> schedules.putIfAbsent(name, schedule)));
        }
        reliefs.stream()
                .map(OfCountry::country)
                .distinct()
                .filter(country -> !countries().contains(country))
                .forEach(country -> problems.add(new TableProblem(
                        files.reliefsName(),
                        0,
                        "country",
                        TableProblem.quoted(country),
                        "a country with rates in " + files.ratesName())));
        return problems.isEmpty()
                ? Loaded.of(Collections.unmodifiableMap(schedules), List.of())
                : Loaded.refused(problems);
    }

    private Optional<DutySchedule> byAlcohol(String country, DutyFiles files, List<TableProblem> problems) {
        List<DutyRate> own = of(country, rates);
        // Rates alone first, so that a refusal is told of the file that it belongs to.
        return schedule(country, own, List.of(), DutyBasis.PURE_ALCOHOL, files.ratesName(), problems)
                .flatMap(sound -> schedule(
                        country, own, of(country, reliefs), DutyBasis.PURE_ALCOHOL, files.reliefsName(), problems));
    }

    private Optional<DutySchedule> byVolume(String country, DutyFiles files, List<TableProblem> problems) {
        Optional<DutyByVolumeReader.Basis> basis =
                bases.stream().filter(row -> row.country().equals(country)).findFirst();
        if (basis.isEmpty()) {
            problems.add(new TableProblem(
                    files.ratesByVolumeName(),
                    0,
                    "country",
                    TableProblem.quoted(country),
                    "a country that " + files.basesName() + " says what it charges by"));
            return Optional.empty();
        }
        DutyBasis charged = basis.get().basis();
        List<DutyByVolumeReader.Rate> own = ratesByVolume.stream()
                .filter(row -> row.country().equals(country))
                .toList();
        own.stream()
                .filter(row -> row.volumes().isPresent()
                        && !row.volumes()
                                .get()
                                .volumeUnit()
                                .equals(charged.unit().volumeUnit()))
                .forEach(row -> problems.add(new TableProblem(
                        files.ratesByVolumeName(),
                        row.line(),
                        "over",
                        "volumes in " + row.volumes().get().volumeUnit(),
                        "volumes in " + charged.unit().volumeUnit() + ", which " + country + " charges by")));
        List<DutyRate> its = own.stream().map(DutyByVolumeReader.Rate::rate).toList();
        return schedule(country, its, List.of(), charged, files.ratesByVolumeName(), problems)
                .flatMap(sound -> schedule(country, its, of(country, reliefs), charged, files.reliefsName(), problems));
    }

    private Optional<DutySchedule> schedule(
            String country,
            List<DutyRate> own,
            List<ReliefBand> bands,
            DutyBasis basis,
            String file,
            List<TableProblem> problems) {
        CurrencyUnit currency = rates.stream()
                .filter(row -> row.country().equals(country))
                .map(OfCountry::currency)
                .findFirst()
                .orElseGet(() -> ratesByVolume.stream()
                        .filter(row -> row.country().equals(country))
                        .map(DutyByVolumeReader.Rate::currency)
                        .findFirst()
                        .orElseThrow());
        try {
            return Optional.of(new DutySchedule(country, currency, own, bands, factors, basis));
        } catch (IllegalArgumentException e) {
            problems.add(TableProblem.from(file, 0, "", String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }

    private static <T> List<T> of(String country, List<OfCountry<T>> rows) {
        return rows.stream()
                .filter(row -> row.country().equals(country))
                .map(OfCountry::row)
                .toList();
    }
}
