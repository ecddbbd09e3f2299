package org.twinbar.study.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Table;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Named;
import org.twinbar.method.Readings;
import org.twinbar.method.Words;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.Reading;

/** One row of a table of specimens, read as its columns say. */
public final class SpecimenRow {

    static final Finding.Kind IMPLAUSIBLE = Finding.Kind.warning(
            "implausible",
            "%s is %s, where it usually is %s; check the unit and the decimal mark.");

    /** What people write where they read nothing. */
    private static final Set<String> NOTHING = Set.of("", "-", "–", "—", "?", "na", "n/a", "nan");

    private final Table table;
    private final Columns columns;
    private final Row row;
    private final Corrections corrections;

    public SpecimenRow(Table table, Columns columns, Row row, Corrections corrections) {
        this.table = table;
        this.columns = columns;
        this.row = row;
        this.corrections = corrections;
    }

    public int line() {
        return row.line();
    }

    public String code() {
        String code = text(columns.specimen());
        if (code.isEmpty()) {
            throw place(columns.specimen()).refuse("this row has no specimen code");
        }
        return code;
    }

    public String group() {
        return columns.group().map(this::text).filter(it -> !it.isEmpty()).orElse("all");
    }

    /** Returns the name of the curve file, where the row has one. */
    public Optional<String> curve() {
        return columns.curve().map(this::text).filter(it -> !isNothing(it));
    }

    public Place codePlace() {
        return place(columns.specimen());
    }

    public Place curvePlace() {
        return place(columns.curve().orElseThrow());
    }

    /** Returns what parts specimens: columns that are no readings, and words that do. */
    public Map<String, String> factors() {
        Map<String, String> factors = new LinkedHashMap<>();
        for (Column column : columns.factors()) {
            factors.put(column.header(), text(column));
        }
        columns.readings().forEach((named, read) -> {
            if (named instanceof Words words && words.parts()) {
                factors.put(words.name(), text(read.get(0)));
            }
        });
        return factors;
    }

    /** Returns the readings as they came, each cell that holds something. */
    public List<Reading> asTheyCame(KeptFile file) {
        List<Reading> came = new ArrayList<>();
        for (Column column : table.columns()) {
            boolean reading =
                    columns.readings().values().stream().anyMatch(group -> group.contains(column));
            if (reading) {
                corrections
                        .reading(column.header(), asItCame(column), file, row.line())
                        .ifPresent(came::add);
            }
        }
        return came;
    }

    /**
     * Puts what stands in the row into a specimen's readings.
     *
     * @return what looks implausible
     * @throws org.twinbar.exchange.InputException where a cell is no number, no allowed word, or
     *     beyond the limits of what it is
     */
    public List<Finding> into(Readings.Builder readings) {
        List<Finding> findings = new ArrayList<>();
        columns.readings().forEach((named, repeats) -> {
            if (named instanceof Input input) {
                numbers(input, repeats, readings, findings);
            } else if (named instanceof Words words) {
                word(words, repeats.get(0), readings);
            }
        });
        return findings;
    }

    private void numbers(
            Input input, List<Column> repeats, Readings.Builder readings, List<Finding> findings) {
        double[] values = repeats.stream()
                .filter(column -> !isNothing(text(column)))
                .mapToDouble(column -> number(input, column))
                .toArray();
        if (values.length == 0) {
            return;
        }
        for (double value : values) {
            if (!input.plausible().allow(value)) {
                findings.add(IMPLAUSIBLE.with(
                        input.label(),
                        Figures.three(value) + " " + input.unit().symbol(),
                        input.plausible().describe(input.unit())));
                break;
            }
        }
        Optional<Column> own =
                columns.ownUncertainty(input).filter(column -> !isNothing(text(column)));
        Optional<OnPicture> picture = picture(repeats);
        if (picture.isPresent() && values.length == 1) {
            Unit.Conversion size = picture.get().unit().differenceTo(input.unit());
            readings.numberWithUncertainty(
                    input,
                    values[0],
                    size.apply(picture.get().own()),
                    picture.get().ownFreedom());
        } else if (own.isPresent() && values.length == 1) {
            readings.numberWithUncertainty(input, values[0], uncertainty(input, own.get()));
        } else {
            readings.number(input, values);
        }
    }

    /**
     * Returns how a reading was had from a picture. Of several that were had differently, the one
     * with the largest uncertainty stands for all, so that none is believed too well.
     */
    private Optional<OnPicture> picture(List<Column> repeats) {
        return repeats.stream()
                .filter(column -> !isNothing(text(column)))
                .flatMap(column -> corrections.of(row.line(), column.header()).stream())
                .flatMap(said -> said.picture().stream())
                .max(Comparator.comparingDouble(OnPicture::share)
                        .thenComparingDouble(OnPicture::own));
    }

    /** Returns the bench with the pictures that this specimen's readings were read on. */
    public Bench on(Bench bench, Description description) {
        if (corrections.cells().isEmpty()) {
            return bench;
        }
        Bench own = bench;
        for (Map.Entry<Named, List<Column>> read : columns.readings().entrySet()) {
            if (read.getKey() instanceof Input input) {
                own = on(own, input.name(), picture(read.getValue()));
            }
        }
        Optional<OnPicture> filmed = columns.curve().flatMap(column -> picture(List.of(column)));
        for (Channel channel : description.channels()) {
            own = on(
                    own,
                    channel.name(),
                    filmed.filter(it -> it.unit().measuresSameAs(channel.unit())));
        }
        return own;
    }

    private static Bench on(Bench bench, String reading, Optional<OnPicture> picture) {
        return picture.flatMap(OnPicture::instrument)
                .map(instrument -> bench.withInstrument(reading, instrument))
                .orElse(bench);
    }

    /** Whether anything at all stands in it beside what says which specimen it is. */
    public boolean isBegun() {
        return columns.readings().values().stream()
                        .flatMap(List::stream)
                        .anyMatch(column -> !isNothing(text(column)))
                || curve().isPresent();
    }

    private double number(Input input, Column column) {
        double value = columns.conversionOf(input, column)
                .apply(parse(column, column.unit().orElse(input.unit())));
        if (!input.limits().allow(value)) {
            throw place(column)
                    .refuse("%s of %s is %s, must be %s"
                            .formatted(
                                    input.name().replace('_', ' '),
                                    code(),
                                    text(column),
                                    described(input.limits(), input.unit())));
        }
        return value;
    }

    private double uncertainty(Input input, Column column) {
        double value = column.unit()
                .orElse(input.unit())
                .differenceTo(input.unit())
                .apply(parse(column, Unit.ONE));
        if (!(value >= 0)) {
            throw place(column)
                    .refuse("the standard uncertainty is %s, must be zero or more"
                            .formatted(text(column)));
        }
        return value;
    }

    private static String described(Limits limits, Unit unit) {
        String words = limits.describe(unit);
        return words.isEmpty() ? "a number" : words;
    }

    private double parse(Column column, Unit unit) {
        try {
            return corrections.of(row.line(), column.header()).isPresent()
                    ? TypedNumber.parse(text(column), unit)
                    : table.dialect().number(text(column));
        } catch (QuantityException e) {
            throw place(column).value(text(column)).refuseValue("is not a number");
        }
    }

    private void word(Words words, Column column, Readings.Builder readings) {
        String text = text(column);
        if (isNothing(text)) {
            return;
        }
        String word = words.allowed().isEmpty()
                ? text
                : words.allowed().stream()
                        .filter(text::equalsIgnoreCase)
                        .findFirst()
                        .orElseThrow(() -> place(column)
                                .value(text)
                                .refuseValue("is none of " + String.join(", ", words.allowed())));
        readings.word(words, word);
    }

    /** Returns what counts under a header. */
    public String text(String header) {
        return table.columns().stream()
                .filter(column -> column.header().equals(header))
                .map(this::text)
                .findFirst()
                .orElse("");
    }

    private String text(Column column) {
        return corrections
                .of(row.line(), column.header())
                .map(said -> said.counting().strip())
                .orElseGet(() -> asItCame(column));
    }

    private String asItCame(Column column) {
        return column.index() < row.cells().size()
                ? row.cells().get(column.index()).strip()
                : "";
    }

    private Place place(Column column) {
        return Place.of(table.name()).line(row.line()).column(column.header());
    }

    public static boolean isNothing(String text) {
        return NOTHING.contains(text.toLowerCase(Locale.ROOT));
    }
}
