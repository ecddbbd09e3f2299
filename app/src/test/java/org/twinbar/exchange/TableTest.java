package org.twinbar.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.util.List;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.quantity.Unit;

class TableTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "width_mm",
                "width (mm)",
                "width [mm]",
            })
    void readsUnitFromHeader(String header) {
        Table table = read("specimen;" + header + "\nA1;10.2\n");
        assertThat(table.columns().get(1).label()).isEqualTo("width");
        assertThat(table.columns().get(1).unit()).contains(Unit.of("mm"));
    }

    @Test
    void readsUnitBehindComma() {
        assertThat(read("specimen;width, mm\nA1;10.2\n").columns().get(1).unit())
                .contains(Unit.of("mm"));
    }

    @Test
    void readsUnitsFromTheRowBelow() {
        Table table = read("specimen,width,mass\n,mm,(g)\nA1,10.2,5\n");
        assertThat(table.columns().get(1).unit()).contains(Unit.of("mm"));
        assertThat(table.columns().get(2).unit()).contains(Unit.of("g"));
        assertThat(table.rows()).containsExactly(new Row(3, List.of("A1", "10.2", "5")));
    }

    @Test
    void numbersRepeatedReadings() {
        Column second =
                read("specimen,width_1_mm,width_2_mm\nA1,10,11\n").columns().get(2);
        assertThat(second.name()).isEqualTo("width");
        assertThat(second.repeat()).hasValue(2);
    }

    static Stream<Arguments> sameTableInManyWritings() {
        String plain = "specimen,width_mm,note\nA1,10.25,left\nA2,9.75,\n";
        return Stream.of(
                Arguments.of("comma", plain.getBytes(UTF_8)),
                Arguments.of("semicolon", plain.replace(',', ';').getBytes(UTF_8)),
                Arguments.of("tab", plain.replace(',', '\t').getBytes(UTF_8)),
                Arguments.of("CRLF", plain.replace("\n", "\r\n").getBytes(UTF_8)),
                Arguments.of("old Mac line ends", plain.replace("\n", "\r").getBytes(UTF_8)),
                Arguments.of("mark", ("\uFEFF" + plain).getBytes(UTF_8)),
                Arguments.of("UTF-16LE", ("\uFEFF" + plain).getBytes(Charset.forName("UTF-16LE"))),
                Arguments.of("UTF-16BE", ("\uFEFF" + plain).getBytes(Charset.forName("UTF-16BE"))),
                Arguments.of("blank lines", plain.replace("\nA2", "\n\n\nA2").getBytes(UTF_8)),
                Arguments.of("text above", ("Pulled in May\n\n" + plain).getBytes(UTF_8)),
                Arguments.of("quoted", plain.replace("left", "\"left\"").getBytes(UTF_8)),
                Arguments.of("no last line end", plain.strip().getBytes(UTF_8)),
                Arguments.of("trailing delimiters", plain.replace("\n", ",\n").getBytes(UTF_8)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sameTableInManyWritings")
    void readsTheSameFrom(String writing, byte[] bytes) {
        Table table = Table.read(Source.of(writing, bytes), ReadAs.found());
        assertThat(table.columns().stream().map(Column::header))
                .containsExactly("specimen", "width_mm", "note");
        assertThat(table.rows().stream().map(row -> row.cell(0) + row.cell(1) + row.cell(2)))
                .containsExactly("A110.25left", "A29.75");
    }

    @Test
    void readsDecimalComma() {
        Table table = read("specimen;width_mm\nA1;10,25\nA2;9,5\n");
        assertThat(table.dialect().decimalMark()).isEqualTo(DecimalMark.COMMA);
        assertThat(table.dialect().delimiter()).isEqualTo(Delimiter.SEMICOLON);
    }

    @Test
    void readsWindowsLetters() {
        byte[] bytes = "specimen;Längung_µm\nA1;10\n".getBytes(Charset.forName("windows-1252"));
        Table table = Table.read(Source.of("w.csv", bytes), ReadAs.found());
        assertThat(table.columns().get(1).label()).isEqualTo("Längung");
        assertThat(table.columns().get(1).unit()).contains(Unit.of("µm"));
    }

    @Test
    void keepsDelimiterAndLineEndInsideQuotes() {
        Table table = read("specimen,note\nA1,\"left, \"\"upper\"\" edge\nand more\"\nA2,x\n");
        assertThat(table.rows().get(0).cells()).contains("left, \"upper\" edge\nand more");
        assertThat(table.rows().get(1).line()).isEqualTo(4);
    }

    @Test
    void refusesNumberThatMayBeAThousand() {
        assertThatThrownBy(() -> read("specimen;force_N\nA1;1,234\n"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("t.csv")
                .hasMessageContaining("1,234")
                .hasMessageContaining("--decimal");
        Table forced = Table.read(
                Source.of("t.csv", "specimen;force_N\nA1;1,234\n".getBytes(UTF_8)),
                ReadAs.found().withDecimalMark(DecimalMark.COMMA));
        assertThat(forced.dialect().decimalMark()).isEqualTo(DecimalMark.COMMA);
    }

    @Test
    void refusesPointsAndCommasTogether() {
        assertThatThrownBy(() -> read("specimen;a_N;b_N\nA1;1.5;2,5\n"))
                .hasMessageContaining("decimal points and decimal commas");
    }

    @Test
    void refusesEmptyFile() {
        assertThatThrownBy(() -> read("")).hasMessage("t.csv: is empty");
        assertThatThrownBy(() -> read("\n\n  \n")).hasMessageContaining("is empty");
    }

    @Test
    void refusesBinaryFile() {
        byte[] bytes = new byte[2000];
        new java.util.Random(3).nextBytes(bytes);
        assertThatThrownBy(() -> Table.read(Source.of("photo.jpg", bytes), ReadAs.found()))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("photo.jpg")
                .hasMessageContaining("not a text file");
    }

    @Test
    void refusesNumbersWithoutHeader() {
        assertThatThrownBy(() -> read("1,2\n3,4\n"))
                .hasMessageContaining("line 1")
                .hasMessageContaining("named");
    }

    @Test
    void refusesRowThatIsLongerThanTheHeader() {
        assertThatThrownBy(() -> read("specimen,width_mm\nA1,10\nA2,10,11,12\n"))
                .hasMessageContaining("line 3")
                .hasMessageContaining("4 cells");
    }

    @Test
    void readsSheetByName() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(bytes, "Test", "1.0")) {
            workbook.newWorksheet("Notes").value(0, 0, "nothing here");
            Worksheet sheet = workbook.newWorksheet("May");
            sheet.value(0, 0, "specimen");
            sheet.value(0, 1, "width_mm");
            sheet.value(1, 0, "A1");
            sheet.value(1, 1, 10.25);
        }
        Source source = Source.of("bars.xlsx", bytes.toByteArray());
        Table table = Table.read(source, ReadAs.found().withSheet("May"));
        assertThat(table.rows()).containsExactly(new Row(2, List.of("A1", "10.25")));
        assertThatThrownBy(() -> Table.read(source, ReadAs.found().withSheet("June")))
                .hasMessageContaining("Notes, May");
    }

    @Test
    void readsSheetAsItIsShown() throws IOException {
        Table table = sheet(sheet -> {
            sheet.value(0, 0, "Pulled in May");
            List<String> headers = List.of(
                    "specimen", "humidity_percent", "made", "started", "lasted", "width_mm");
            for (int i = 0; i < headers.size(); i++) {
                sheet.value(2, i, headers.get(i));
            }
            sheet.value(3, 0, "A1");
            sheet.value(3, 1, 0.07);
            sheet.style(3, 1).format("0.0%").set();
            sheet.value(3, 2, java.time.LocalDate.of(2026, 5, 1));
            sheet.style(3, 2).format("dd.mm.yyyy").set();
            sheet.value(3, 3, 0.4375);
            sheet.style(3, 3).format("hh:mm").set();
            sheet.value(3, 4, 1.25);
            sheet.style(3, 4).format("[h]:mm").set();
            sheet.value(3, 5, 10.25);
            sheet.style(3, 5).format("0.00 \"mm, dry\"").set();
            sheet.value(4, 0, "A2");
        });
        assertThat(table.dialect().headerLine()).isEqualTo(3);
        assertThat(table.rows()).hasSize(2);
        assertThat(table.rows().get(0).cells())
                .containsExactly("A1", "7", "2026-05-01", "10:30:00", "30:00:00", "10.25");
    }

    @Test
    void refusesOldSpreadsheet() {
        byte[] bytes = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1};
        assertThatThrownBy(() -> Table.read(Source.of("bars.xls", bytes), ReadAs.found()))
                .hasMessage(
                        "bars.xls: is a spreadsheet of the older kind (XLS); save it as XLSX or CSV");
    }

    @Test
    void refusesArchiveThatIsNoSpreadsheet() {
        byte[] bytes = {'P', 'K', 3, 4, 20, 0, 0, 0, 8, 0};
        assertThatThrownBy(() -> Table.read(Source.of("bars.zip", bytes), ReadAs.found()))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("bars.zip: is damaged, or no spreadsheet (XLSX)");
    }

    @Test
    void refusesColumnThatStandsThereTwice() {
        assertThatThrownBy(() -> read("specimen,width_mm,Width mm\nA1,10,11\n"))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        "t.csv, line 1, column Width mm: stands there twice, as column 2 and column 3;"
                                + " keep one");
    }

    @Test
    void refusesFileBeyondTheLimitOfTables() {
        Source huge = Source.of("huge.csv", () -> new java.io.InputStream() {
            private long left = 2L << 30;

            @Override
            public int read() {
                return left-- > 0 ? '1' : -1;
            }

            @Override
            public int read(byte[] into, int offset, int length) {
                int given = (int) Math.min(length, left);
                java.util.Arrays.fill(into, offset, offset + given, (byte) '1');
                left -= given;
                return length > 0 && given == 0 ? -1 : given;
            }
        });
        assertThatThrownBy(() -> Table.read(huge, ReadAs.found()))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("huge.csv: is larger than 64 MiB");
    }

    private static Table sheet(java.util.function.Consumer<Worksheet> filled) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(bytes, "Test", "1.0")) {
            filled.accept(workbook.newWorksheet("May"));
        }
        return Table.read(Source.of("bars.xlsx", bytes.toByteArray()), ReadAs.found());
    }

    @Test
    void tellsHowItWasRead() {
        assertThat(read("specimen;width_mm\nA1;10,25\n").explanation())
                .isEqualTo(
                        "t.csv: read as specimen and width in mm, semicolon between columns, comma in"
                                + " decimals, UTF-8; header in line 1; 1 row");
    }

    private static Table read(String text) {
        return Table.read(Source.of("t.csv", text.getBytes(UTF_8)), ReadAs.found());
    }
}
