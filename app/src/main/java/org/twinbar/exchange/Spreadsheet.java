package org.twinbar.exchange;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Sheet;

/** Rows of a sheet of an XLSX workbook; numbers are written with a decimal point. */
final class Spreadsheet {

    private static final byte[] ZIP = {'P', 'K', 3, 4};

    private Spreadsheet() {}

    static boolean isOne(byte[] bytes) {
        for (int i = 0; i < ZIP.length; i++) {
            if (bytes.length <= i || bytes[i] != ZIP[i]) {
                return false;
            }
        }
        return true;
    }

    /** @throws InputException where it is no workbook, or has no such sheet */
    static List<Row> rows(Place file, byte[] bytes, ReadAs as) {
        try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(bytes))) {
            Sheet sheet = sheet(file, workbook, as);
            try (Stream<org.dhatim.fastexcel.reader.Row> rows = sheet.openStream()) {
                return rows.map(row -> new Row(row.getRowNum(), cells(row))).toList();
            }
        } catch (IOException | ExcelReaderException e) {
            throw file.refuse("can't be read as a spreadsheet (XLSX): " + e.getMessage());
        }
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

    private static String text(Cell cell) {
        return cell.getType() == CellType.NUMBER
                ? cell.asNumber().toPlainString()
                : cell.getText().strip();
    }
}
