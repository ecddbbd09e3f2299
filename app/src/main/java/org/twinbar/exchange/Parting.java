package org.twinbar.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The first lines of a file, parted into cells in one way.
 *
 * @param delimiter what they were parted at
 * @param rows the lines that hold something
 * @param width the number of cells that most rows have
 * @param first the place, among the rows, of the first one of that width
 */
record Parting(Delimiter delimiter, List<Row> rows, int width, int first) {

    private static final Delimiter[] IN_ORDER = {
        Delimiter.TAB, Delimiter.SEMICOLON, Delimiter.COMMA, Delimiter.BLANKS
    };

    /** Share of the rows, from the first fitting one on, that must have the same width. */
    private static final double MOST = 0.5;

    /**
     * The same where blanks part the cells: none can be left out there, and words have them too.
     */
    private static final double MOST_AT_BLANKS = 0.8;

    private static final Pattern BEFORE_BRACKET = Pattern.compile("\\s+(?=[(\\[])");
    private static final Pattern WIDE_GAP = Pattern.compile("\\s{2,}|\\t");

    /** Parts lines at what is found to stand between their cells. */
    static Parting found(List<String> lines) {
        Optional<Parting> best = Optional.empty();
        for (Delimiter delimiter : IN_ORDER) {
            if (lines.stream().noneMatch(line -> mayPart(delimiter, line))) {
                continue;
            }
            Parting parting = at(delimiter, lines);
            boolean better = parting.isPlausible()
                    && best.map(other -> parting.likelihood() > other.likelihood())
                            .orElse(true);
            best = better ? Optional.of(parting) : best;
        }
        return best.orElseGet(() -> at(Delimiter.NONE, lines));
    }

    private static boolean mayPart(Delimiter delimiter, String line) {
        return line.indexOf(delimiter.sign()) >= 0
                || delimiter == Delimiter.BLANKS && line.indexOf('\t') >= 0;
    }

    /** Numbers from the first line on are a table that lacks its header. */
    private boolean lacksHeader() {
        return first == 0 && !hasWords(rows.get(0)) && hasNumbers(rows.get(0));
    }

    static Parting at(Delimiter delimiter, List<String> lines) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                rows.add(new Row(i + 1, delimiter.split(lines.get(i))));
            }
        }
        int width = commonWidth(rows);
        if (delimiter == Delimiter.BLANKS) {
            rows.replaceAll(row -> withoutLooseBlanks(row, lines.get(row.line() - 1), width));
        }
        return of(delimiter, rows);
    }

    static Parting of(Delimiter delimiter, List<Row> rows) {
        int width = commonWidth(rows);
        int first = 0;
        while (first < rows.size() && !fits(rows.get(first), width)) {
            first++;
        }
        return new Parting(delimiter, rows, width, first);
    }

    /** A header may have blanks inside its names: {@code Time (s) Load cell (N)}. */
    private static Row withoutLooseBlanks(Row row, String line, int width) {
        if (row.cells().size() <= width || Numeral.of(row.cell(0)).isNumber()) {
            return row;
        }
        List<String> apart = List.of(WIDE_GAP.split(line.strip()));
        if (apart.size() == width) {
            return new Row(row.line(), apart);
        }
        List<String> glued = Delimiter.BLANKS.split(BEFORE_BRACKET.matcher(line).replaceAll(""));
        return glued.size() == width ? new Row(row.line(), glued) : row;
    }

    private static int commonWidth(List<Row> rows) {
        Map<Integer, Integer> counts = new HashMap<>();
        rows.forEach(row -> counts.merge(row.cells().size(), 1, Integer::sum));
        return counts.entrySet().stream()
                .max(Comparator.<Map.Entry<Integer, Integer>>comparingInt(Map.Entry::getValue)
                        .thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    /** A header may lack the delimiter that ends each row below it. */
    private static boolean fits(Row row, int width) {
        return row.cells().size() == width
                || row.filledWidth() == width
                || row.filledWidth() == width - 1 && width > 2;
    }

    boolean fits(Row row) {
        return fits(row, width);
    }

    private boolean isPlausible() {
        if (first == rows.size()) {
            return false;
        }
        List<Row> from = rows.subList(first, rows.size());
        long fitting = from.stream().filter(this::fits).count();
        double least = delimiter == Delimiter.BLANKS ? MOST_AT_BLANKS : MOST;
        return width >= 2
                && fitting >= least * from.size()
                && (hasWords(from.get(0)) || lacksHeader());
    }

    /**
     * Returns how likely the delimiter is: a header of words alone counts as much as numbers in all
     * cells below it, for the wrong delimiter cuts numbers or glues them together.
     */
    private double likelihood() {
        return (hasNumbers(rows.get(first)) ? 0 : 1) + numbers();
    }

    private double numbers() {
        int numbers = 0;
        int filled = 0;
        for (Row row : rows.subList(first + 1, rows.size())) {
            for (String cell : row.cells()) {
                filled += cell.isEmpty() ? 0 : 1;
                numbers += Numeral.of(cell).isNumber() ? 1 : 0;
            }
        }
        return filled == 0 ? 0 : (double) numbers / filled;
    }

    static boolean hasWords(Row row) {
        return row.cells().stream().anyMatch(cell -> Numeral.of(cell) == Numeral.TEXT);
    }

    static boolean hasNumbers(Row row) {
        return row.cells().stream().anyMatch(cell -> Numeral.of(cell).isNumber());
    }

    /**
     * Returns the place, among the rows, of the one that names the columns; empty where none does.
     *
     * <p>Above a table of numbers alone it is the last row of words, for what stands higher may
     * have as many cells (an operator and her name above time and force); above a table with words
     * in it, it is the first row of the common width.
     */
    Optional<Integer> header() {
        int numbers = firstOfNumbersAlone();
        if (numbers < rows.size() && isOfNumbersAlone(numbers)) {
            int last = numbers - 1;
            while (last >= first && !isHeader(rows.get(last))) {
                last--;
            }
            boolean units = last > first && Layout.isUnits(rows.get(last));
            if (units && isHeader(rows.get(last - 1))) {
                last--;
            }
            return last < first ? Optional.empty() : Optional.of(last);
        }
        for (int i = first; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (fits(row) && 2 * filled(row) >= width) {
                return hasNumbers(row) && !hasWords(row) ? Optional.empty() : Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private static long filled(Row row) {
        return row.cells().stream().filter(cell -> !cell.isEmpty()).count();
    }

    private boolean isHeader(Row row) {
        return fits(row) && hasWords(row) && !hasNumbers(row);
    }

    private int firstOfNumbersAlone() {
        int at = first;
        while (at < rows.size() && (hasWords(rows.get(at)) || !hasNumbers(rows.get(at)))) {
            at++;
        }
        return at;
    }

    private boolean isOfNumbersAlone(int from) {
        List<Row> below =
                rows.subList(from, rows.size()).stream().filter(this::fits).toList();
        long alone =
                below.stream().filter(row -> hasNumbers(row) && !hasWords(row)).count();
        return 2 * alone > below.size();
    }
}
