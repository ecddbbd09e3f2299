package org.twinbar.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.twinbar.quantity.Unit;

/** Whatever is handed in, it is read or refused in one sentence. */
class FuzzTest {

    private static final long SEED = 4711;
    private static final List<Curves.Wanted> WANTED = List.of(
            new Curves.Wanted("time", Unit.of("s")), new Curves.Wanted("force", Unit.of("N")));
    private static final String[] PIECES = {
        "time_s",
        "force_N",
        "force (kN)",
        "width, mm",
        "specimen",
        ",",
        ";",
        "\t",
        "  ",
        "\n",
        "\r\n",
        "\r",
        "\n\n",
        "\"",
        "\"\"",
        "1",
        "0,5",
        "12.25",
        "1,234",
        "1.234,5",
        "NaN",
        "-",
        "−3",
        "1e400",
        "abc",
        "é",
        "€",
        "\uFEFF",
        "\0",
        "s",
        "N",
        "mm",
        "[N]",
        "()",
        "(",
        "_",
        "/",
        " / ",
        "\u00a0",
        "\u2028",
        "9999999999999999999999"
    };

    @Test
    void readsOrRefusesPiecesOfTables() {
        Random random = new Random(SEED);
        for (int i = 0; i < 2000; i++) {
            StringBuilder text = new StringBuilder();
            int pieces = random.nextInt(60);
            for (int piece = 0; piece < pieces; piece++) {
                text.append(PIECES[random.nextInt(PIECES.length)]);
            }
            readsOrRefuses(
                    text.toString()
                            .getBytes(random.nextInt(8) == 0 ? StandardCharsets.UTF_16 : UTF_8),
                    i);
        }
    }

    @Test
    void readsOrRefusesRandomBytes() {
        Random random = new Random(SEED);
        for (int i = 0; i < 2000; i++) {
            byte[] bytes = new byte[random.nextInt(300)];
            random.nextBytes(bytes);
            readsOrRefuses(bytes, i);
        }
    }

    @Test
    void readsOrRefusesSpoiltCurve() {
        Random random = new Random(SEED);
        for (int i = 0; i < 2000; i++) {
            byte[] bytes = "time_s;force_N\n0,5;12,25\n0,6;13,5\n0,7;\"14,5\"\n".getBytes(UTF_8);
            for (int spoilt = random.nextInt(4); spoilt >= 0; spoilt--) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            readsOrRefuses(bytes, i);
        }
    }

    @Test
    void readsOrRefusesSpoiltSpreadsheet() throws Exception {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(written, "Test", "1.0")) {
            Worksheet sheet = workbook.newWorksheet("May");
            sheet.value(0, 0, "specimen");
            sheet.value(0, 1, "width_mm");
            sheet.value(1, 0, "A1");
            sheet.value(1, 1, 10.25);
        }
        Random random = new Random(SEED);
        for (int i = 0; i < 150; i++) {
            byte[] bytes = written.toByteArray();
            for (int spoilt = random.nextInt(30); spoilt >= 0; spoilt--) {
                bytes[4 + random.nextInt(bytes.length - 4)] = (byte) random.nextInt(256);
            }
            readsOrRefuses(
                    random.nextBoolean()
                            ? bytes
                            : java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length)),
                    i);
        }
    }

    /** Lines are parted here as FastCSV parts them, where a line is one row in its eyes too. */
    @Test
    void partsLinesAsFastCsvDoes() {
        Random random = new Random(SEED);
        String[] cells = {
            "a",
            "12.5",
            "\"a\"",
            "\"a,b\"",
            "\"a;b\"\"c\"",
            "",
            "\"\"",
            "b c",
            "0,5x".replace(',', '.')
        };
        for (int i = 0; i < 5000; i++) {
            StringBuilder line = new StringBuilder(cells[random.nextInt(cells.length)]);
            for (int more = random.nextInt(6); more > 0; more--) {
                line.append(',').append(cells[random.nextInt(cells.length)]);
            }
            if (line.isEmpty()) {
                continue;
            }
            assertThat(Delimiter.COMMA.split(line.toString()))
                    .as("%s, seed %s", line, SEED)
                    .isEqualTo(CsvReader.builder()
                            .ofSingleCsvRecord(line.toString())
                            .getFields());
        }
    }

    private static void readsOrRefuses(byte[] bytes, int round) {
        Source source = Source.of("x.csv", bytes);
        for (Runnable read : List.<Runnable>of(
                () -> Table.read(source, ReadAs.found()),
                () -> Curves.read(source, ReadAs.found(), WANTED))) {
            try {
                read.run();
            } catch (InputException e) {
                assertThat(e.getMessage())
                        .startsWith("x.csv")
                        .doesNotContain("\n")
                        .doesNotContain("\0")
                        .hasSizeLessThan(1000);
            } catch (RuntimeException e) {
                fail("round %s of seed %s: %s".formatted(round, SEED, new String(bytes, UTF_8)), e);
            }
        }
    }
}
