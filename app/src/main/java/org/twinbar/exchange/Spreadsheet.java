package org.twinbar.exchange;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Sheet;

/** Rows of a sheet of an XLSX workbook; numbers are written with a decimal point. */
final class Spreadsheet {

    private static final byte[] ZIP = {'P', 'K', 3, 4};

    /** What the workbooks of before 2007 begin with. */
    private static final byte[] OLD = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

    private static final ReadingOptions WITH_FORMATS = new ReadingOptions(true, false);

    /** Digits that spreadsheets hold their numbers to. */
    private static final MathContext SHEET_PRECISION = new MathContext(15);

    private static final BigDecimal SECONDS_A_DAY = new BigDecimal(86_400);

    /** What a number format shows as it stands, or names a colour or locale with. */
    private static final Pattern LITERAL =
            Pattern.compile("\"[^\"]*\"|\\\\.|_.|\\[[^hms\\]][^\\]]*\\]");

    private static final Pattern DATE = Pattern.compile("[dmyhs]", Pattern.CASE_INSENSITIVE);
    private static final Pattern ELAPSED = Pattern.compile("\\[[hms]+\\]");

    private Spreadsheet() {}

    static boolean isOne(byte[] bytes) {
        return begins(bytes, ZIP) || begins(bytes, OLD);
    }

    private static boolean begins(byte[] bytes, byte[] mark) {
        return bytes.length >= mark.length
                && Arrays.equals(bytes, 0, mark.length, mark, 0, mark.length);
    }

    /** @throws InputException where it is no workbook, or has no such sheet */
    static List<Row> rows(Place file, byte[] bytes, ReadAs as) {
        if (begins(bytes, OLD)) {
            throw file.refuse("is a spreadsheet of the older kind (XLS); save it as XLSX or CSV");
        }
        try (ReadableWorkbook workbook =
                new ReadableWorkbook(new ByteArrayInputStream(bytes), WITH_FORMATS)) {
            Sheet sheet = sheet(file, workbook, as);
            try (Stream<org.dhatim.fastexcel.reader.Row> rows = sheet.openStream()) {
                return evened(
                        rows.map(row -> new Row(row.getRowNum(), cells(row))).toList());
            }
        } catch (InputException e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            // The library throws what its parsers do: of the archive, of XML, of numbers.
            InputException refusal =
                    file.refuse("is damaged, or no spreadsheet (XLSX); save it anew, or as CSV");
            refusal.initCause(e);
            throw refusal;
        }
    }

    /** A sheet leaves out the blank cells that end a row. */
    private static List<Row> evened(List<Row> rows) {
        int width = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
        return rows.stream()
                .map(row -> {
                    List<String> cells = new ArrayList<>(row.cells());
                    cells.addAll(Collections.nCopies(width - cells.size(), ""));
                    return new Row(row.line(), cells);
                })
                .toList();
    }

    private static Sheet sheet(Place file, ReadableWorkbook workbook, ReadAs as) {
        if (as.sheet().isEmpty()) {
            return workbook.getFirstSheet();
        }
        String wanted = as.sheet().get();
        List<Sheet> sheets = workbook.getSheets().toList();
        return sheets.stream()
                .filter(sheet -> sheet.getName().equals(wanted)
                        || Integer.toString(sheet.getIndex() + 1).equals(wanted))
                .findFirst()
                .orElseThrow(() -> file.refuse("there is no sheet '%s' among %s"
                        .formatted(
                                wanted,
                                sheets.stream()
                                        .map(Sheet::getName)
                                        .collect(Collectors.joining(", ")))));
    }

    private static List<String> cells(org.dhatim.fastexcel.reader.Row row) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.getCellCount(); i++) {
            cells.add(row.getOptionalCell(i).map(Spreadsheet::text).orElse(""));
        }
        return cells;
    }

    /**
     * Returns what stands in a cell: a percentage with its sign and a date as ISO 8601 writes it,
     * as the sheet shows them, for neither is the number that is stored.
     */
    private static String text(Cell cell) {
        String raw = cell.getText().strip();
        boolean number = cell.getType() == CellType.NUMBER
                || cell.getType() == CellType.FORMULA && Numeral.of(raw).isNumber();
        if (!number) {
            return raw;
        }
        BigDecimal stored = new BigDecimal(cell.getRawValue().strip());
        String format = cell.getDataFormatString() == null ? "" : cell.getDataFormatString();
        String signs = LITERAL.matcher(format).replaceAll("");
        if (signs.contains("%")) {
            return stored.movePointRight(2)
                            .round(SHEET_PRECISION)
                            .stripTrailingZeros()
                            .toPlainString()
                    + "%";
        }
        if (!signs.equalsIgnoreCase("General") && DATE.matcher(signs).find()) {
            return date(cell, stored);
        }
        return stored.toPlainString();
    }

    private static String date(Cell cell, BigDecimal days) {
        if (days.compareTo(BigDecimal.ONE) < 0
                || ELAPSED.matcher(cell.getDataFormatString()).find()) {
            Duration elapsed = Duration.ofSeconds(days.multiply(SECONDS_A_DAY)
                    .setScale(0, RoundingMode.HALF_UP)
                    .longValue());
            return String.format(
                    Locale.ROOT,
                    "%s:%02d:%02d",
                    elapsed.toHours(),
                    elapsed.toMinutesPart(),
                    elapsed.toSecondsPart());
        }
        LocalDateTime date = cell.asDate();
        return date.toLocalTime().equals(LocalTime.MIDNIGHT)
                ? date.toLocalDate().toString()
                : date.toString();
    }
}
