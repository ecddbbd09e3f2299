package org.twinbar.study.packed;

import static org.twinbar.exchange.datapackage.Field.Type.BOOLEAN;
import static org.twinbar.exchange.datapackage.Field.Type.DATETIME;
import static org.twinbar.exchange.datapackage.Field.Type.INTEGER;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.twinbar.decision.LeftOut;
import org.twinbar.exchange.datapackage.DataTable;
import org.twinbar.exchange.datapackage.DataTable.Reference;
import org.twinbar.exchange.datapackage.Field;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Choice;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.method.Setting;
import org.twinbar.method.Yield;
import org.twinbar.store.Digest;
import org.twinbar.study.judged.Exact;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.judged.Reading;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Source;

/** What was tested, how, and what it gave, as tables of a package. */
public final class ResultsAsTables {

    private static final Field METHOD =
            Field.text("method", "Name of the test method.").required();
    private static final Field SPECIMEN =
            Field.text("specimen", "Code that is written on it.").required();
    private static final Field PROPERTY =
            Field.text("property", "What was found, by its name.").required();
    private static final Reference TO_METHODS = Reference.to("methods", "method");
    private static final Reference TO_SPECIMENS = Reference.to("specimens", "method", "specimen");

    private final JudgedStudy study;

    private ResultsAsTables(JudgedStudy study) {
        this.study = study;
    }

    static List<DataTable> of(JudgedStudy study) {
        ResultsAsTables tables = new ResultsAsTables(study);
        return List.of(
                tables.methods(),
                tables.settings(),
                tables.instruments(),
                tables.specimens(),
                tables.readings(),
                tables.results(),
                tables.moves(),
                tables.marks());
    }

    /** Returns the SHA-256 of every reading and specimen, corrected and left out as they stand. */
    public static String digest(JudgedStudy study) {
        ResultsAsTables tables = new ResultsAsTables(study);
        StringBuilder text = new StringBuilder();
        for (DataTable table : List.of(tables.readings(), tables.specimens())) {
            for (List<String> row : table.rows()) {
                text.append(String.join("\t", row)).append('\n');
            }
        }
        return Digest.of(text.toString().getBytes(StandardCharsets.UTF_8)).hex();
    }

    private DataTable methods() {
        List<List<String>> rows = study.methods().stream()
                .map(used -> List.of(
                        used.name(),
                        Integer.toString(used.description().version()),
                        used.description().title(),
                        used.description().standard(),
                        Integer.toString(study.specimensOf(used.name()).size())))
                .toList();
        return new DataTable(
                "methods",
                "The test methods that were used, with the version of their calculation.",
                List.of(
                        METHOD,
                        Field.of(
                                        "version",
                                        INTEGER,
                                        "Raised where the same readings give another" + " number.")
                                .required(),
                        Field.text("title", "What people call the test."),
                        Field.text("standard", "What it follows and where it departs from it."),
                        Field.of("specimens", INTEGER, "How many were tested, left out or not.")),
                List.of("method"),
                List.of(),
                rows);
    }

    private DataTable settings() {
        List<List<String>> rows = new ArrayList<>();
        for (MethodUsed used : study.methods()) {
            Set<String> own = new LinkedHashSet<>();
            for (Named setting : used.description().settings()) {
                own.add(setting.name());
                String given = used.settings().get(setting.name());
                rows.add(List.of(
                        used.name(),
                        setting.name(),
                        setting.label(),
                        given == null ? preset(setting) : given,
                        given == null ? "preset" : "set"));
            }
            used.settings().forEach((name, value) -> {
                if (!own.contains(name)) {
                    rows.add(List.of(used.name(), name, name.replace('_', ' '), value, "set"));
                }
            });
        }
        return new DataTable(
                "settings",
                "What was the same for all specimens of a test, and how it was calculated.",
                List.of(
                        METHOD,
                        Field.text("setting", "Its name.").required(),
                        Field.text("label", "What people call it."),
                        Field.text("value", "As it was written, with its unit."),
                        Field.text("origin", "Whether somebody set it.")
                                .oneOf(List.of("set", "preset"))),
                List.of("method", "setting"),
                List.of(TO_METHODS),
                rows);
    }

    private static String preset(Named setting) {
        if (setting instanceof Setting number) {
            String unit = number.unit().symbol();
            return Exact.of(number.preset()) + (unit.isEmpty() ? "" : " " + unit);
        }
        return setting instanceof Choice choice ? choice.preset() : "";
    }

    private DataTable instruments() {
        List<List<String>> rows = new ArrayList<>();
        for (MethodUsed used : study.methods()) {
            int number = 0;
            for (Instrument it : used.instruments()) {
                number++;
                rows.add(List.of(
                        used.name(),
                        Integer.toString(number),
                        it.name(),
                        it.unit().symbol(),
                        Exact.of(it.resolution()),
                        Exact.of(it.gainUncertainty()),
                        Exact.of(it.zeroUncertainty()),
                        finite(it.degreesOfFreedom()),
                        it.origin().name().toLowerCase(java.util.Locale.ROOT)));
            }
        }
        return new DataTable(
                "instruments",
                "What readings were read on, with standard uncertainties.",
                List.of(
                        METHOD,
                        Field.of("number", INTEGER, "Counts the instruments of a test.")
                                .required(),
                        Field.text("instrument", "What its errors are named by.")
                                .required(),
                        Field.text("unit", "Unit of its readings."),
                        Field.number("resolution", "Smallest step of its display, in its unit.")
                                .atLeast(0),
                        Field.number("gain_u", "Of its gain, as a share of the reading.")
                                .atLeast(0),
                        Field.number("zero_u", "Of its zero, in its unit.").atLeast(0),
                        Field.number("df", "Degrees of freedom; empty where taken as known."),
                        Field.text("origin", "Where these figures come from.")
                                .oneOf(List.of("assumed", "given", "calibrated"))),
                List.of("method", "number"),
                List.of(TO_METHODS),
                rows);
    }

    private DataTable specimens() {
        Set<String> factors = new LinkedHashSet<>();
        study.specimens().forEach(it -> factors.addAll(it.factors().keySet()));
        List<Field> fields = new ArrayList<>(List.of(
                METHOD,
                SPECIMEN,
                Field.text("group", "What was made alike.").required(),
                Field.of("counts", BOOLEAN, "False where it was left out.").required(),
                Field.text("left_out_why", "Why it does not count."),
                Field.text("left_out_by", "Who left it out."),
                Field.of("left_out_at", DATETIME, "When, with the zone that it was done in."),
                Field.text("left_out_sight", "Whether its value was known by then.")
                        .oneOf(List.of("before", "after"))));
        Set<String> taken = new LinkedHashSet<>();
        fields.forEach(it -> taken.add(it.name()));
        for (String factor : factors) {
            String name = taken.contains(factor) ? "factor_" + factor : factor;
            fields.add(Field.text(name, "A factor that tells specimens apart."));
        }
        List<List<String>> rows = new ArrayList<>();
        for (JudgedSpecimen specimen : study.specimens()) {
            Optional<LeftOut> out = specimen.leftOut();
            List<String> row = new ArrayList<>(List.of(
                    specimen.method(),
                    specimen.code(),
                    specimen.group(),
                    Boolean.toString(specimen.counts()),
                    out.map(LeftOut::why).orElse(""),
                    out.map(LeftOut::who).orElse(""),
                    out.map(it -> it.when().toOffsetDateTime().toString()).orElse(""),
                    out.map(it -> it.sight() == LeftOut.Sight.BEFORE_VALUE_WAS_SEEN
                                    ? "before"
                                    : "after")
                            .orElse("")));
            factors.forEach(it -> row.add(specimen.factors().getOrDefault(it, "")));
            rows.add(row);
        }
        return new DataTable(
                "specimens",
                "Every specimen, those that were left out included.",
                fields,
                List.of("method", "specimen"),
                List.of(TO_METHODS),
                rows);
    }

    private DataTable readings() {
        List<List<String>> rows = new ArrayList<>();
        for (JudgedSpecimen specimen : study.specimens()) {
            for (Reading reading : specimen.readings()) {
                rows.add(List.of(
                        specimen.method(),
                        specimen.code(),
                        reading.column(),
                        Integer.toString(reading.line()),
                        reading.text(),
                        reading.typed().map(Reading.Typed::who).orElse(""),
                        reading.typed()
                                .map(it -> it.when().toOffsetDateTime().toString())
                                .orElse(""),
                        reading.corrected().map(Reading.Corrected::text).orElse(""),
                        reading.file().name(),
                        reading.file().sha256()));
            }
        }
        return new DataTable(
                "readings",
                "What was read on each specimen, as it stands in the files, and what it was"
                        + " corrected to.",
                List.of(
                        METHOD,
                        SPECIMEN,
                        Field.text("column", "Header that it stands under, with its unit.")
                                .required(),
                        Field.of("line", INTEGER, "Line in the file, counted from 1.")
                                .required(),
                        Field.text("text", "What stands there, or was typed there first."),
                        Field.text("typed_by", "Who typed it, where the file had no value."),
                        Field.of("typed_at", DATETIME, "When, with the zone."),
                        Field.text("corrected_to", "What counts in its place."),
                        Field.text("file", "Where it stands."),
                        Field.text("sha256", "Digest of that file.")),
                List.of("method", "specimen", "column", "line"),
                List.of(TO_SPECIMENS),
                rows);
    }

    private DataTable results() {
        List<List<String>> rows = new ArrayList<>();
        for (JudgedSpecimen specimen : study.specimens()) {
            specimen.result()
                    .yields()
                    .forEach((property, yield) -> rows.add(result(specimen, property, yield)));
        }
        return new DataTable(
                "results",
                "What each specimen gave: a value with its standard uncertainty, a bound, a word,"
                        + " or the reason why there is none.",
                List.of(
                        METHOD,
                        SPECIMEN,
                        PROPERTY,
                        Field.text("unit", "Unit of value, uncertainty and bounds."),
                        Field.number("value", "The value, where it is a number."),
                        Field.number("u", "Its standard uncertainty.").atLeast(0),
                        Field.number("own_u", "The part of it that no other specimen shares.")
                                .atLeast(0),
                        Field.number("df", "Degrees of freedom; empty where taken as known."),
                        Field.number("at_least", "The true value is at least this."),
                        Field.number("below", "The true value is below this."),
                        Field.text("word", "The value, where it is a word."),
                        Field.text("reason", "Why there is no value, or only a bound.")),
                List.of("method", "specimen", "property"),
                List.of(TO_SPECIMENS),
                rows);
    }

    private static List<String> result(JudgedSpecimen specimen, Property property, Yield yield) {
        @Nullable Budget budget = specimen.result().budgets().get(property);
        String value = budget == null ? "" : Exact.of(budget.value());
        String u = budget == null ? "" : Exact.of(budget.u());
        String own = budget == null ? "" : Exact.of(budget.u(Source.Reach.OWN));
        String df = budget == null ? "" : finite(budget.degreesOfFreedom());
        String atLeast = "";
        String below = "";
        String word = "";
        String reason = "";
        if (yield instanceof Yield.AtLeast bound) {
            atLeast = Exact.of(bound.bound());
            reason = bound.reason();
        } else if (yield instanceof Yield.Below bound) {
            below = Exact.of(bound.bound());
            reason = bound.reason();
        } else if (yield instanceof Yield.Between between) {
            atLeast = Exact.of(between.from());
            below = Exact.of(between.to());
            reason = between.reason();
        } else if (yield instanceof Yield.Word said) {
            word = said.word();
        } else if (yield instanceof Yield.Missing missing) {
            reason = missing.reason();
        }
        return List.of(
                specimen.method(),
                specimen.code(),
                property.name(),
                property.unit().symbol(),
                value,
                u,
                own,
                df,
                atLeast,
                below,
                word,
                reason);
    }

    private DataTable moves() {
        List<List<String>> rows = new ArrayList<>();
        for (JudgedSpecimen specimen : study.specimens()) {
            specimen.result().budgets().forEach((property, budget) -> {
                for (Map.Entry<Source, Double> shift : budget.shifts().entrySet()) {
                    if (shift.getKey().reach() == Source.Reach.SHARED) {
                        rows.add(List.of(
                                specimen.method(),
                                specimen.code(),
                                property.name(),
                                shift.getKey().identity(),
                                Exact.of(shift.getValue())));
                    }
                }
            });
        }
        return new DataTable(
                "moves",
                "How far one standard uncertainty of each source of error that specimens share"
                        + " moves a value, in its unit.",
                List.of(
                        METHOD,
                        SPECIMEN,
                        PROPERTY,
                        Field.text("source", "The source of error.").required(),
                        Field.number("move", "How far the value moves.").required()),
                List.of("method", "specimen", "property", "source"),
                List.of(Reference.to("results", "method", "specimen", "property")),
                rows);
    }

    private DataTable marks() {
        List<List<String>> rows = new ArrayList<>();
        for (JudgedSpecimen specimen : study.specimens()) {
            specimen.result()
                    .marks()
                    .forEach((mark, row) -> row.ifPresent(at -> rows.add(List.of(
                            specimen.method(),
                            specimen.code(),
                            mark.name(),
                            Integer.toString(at)))));
        }
        return new DataTable(
                "marks",
                "Places on curves that the method found.",
                List.of(
                        METHOD,
                        SPECIMEN,
                        Field.text("mark", "Name of the place.").required(),
                        Field.of("row", INTEGER, "Row of the curve, counted from 0.")
                                .required()),
                List.of("method", "specimen", "mark"),
                List.of(TO_SPECIMENS),
                rows);
    }

    private static String finite(double value) {
        return Double.isFinite(value) ? Exact.of(value) : "";
    }
}
