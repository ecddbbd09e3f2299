package org.twinbar.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.quantity.Unit;

class CurvesTest {

    private static final List<Curves.Wanted> WANTED = List.of(
            new Curves.Wanted("force", Unit.of("N")), new Curves.Wanted("time", Unit.of("s")));

    @Test
    void readsColumnsByNameInTheUnitsWanted() {
        Curves.Read read = read("time_ms,junk,force_kN\n0,a,0\n250,b,1.5\n");
        assertThat(read.values().get("force")).containsExactly(0, 1500);
        assertThat(read.values().get("time")).containsExactly(0, 0.25);
        assertThat(read.problems()).isEmpty();
    }

    @Test
    void readsWhatIsThere() {
        assertThat(read("force_N\n1\n2\n").values()).containsOnlyKeys("force");
    }

    @ParameterizedTest
    @ValueSource(strings = {"windows-1252", "UTF-16LE", "UTF-16BE", "UTF-8"})
    void readsEachEncodingAlike(String name) {
        String mark = name.startsWith("UTF-16") ? "\uFEFF" : "";
        byte[] bytes = (mark + "Prüfung in °C\ntime_s;force_N\n0;1,5\n1;−2,5\n")
                .getBytes(Charset.forName(name.equals("windows-1252") ? "UTF-8" : name));
        Curves.Read read = Curves.read(Source.of("c.csv", bytes), ReadAs.found(), WANTED);
        assertThat(read.values().get("force")).containsExactly(1.5, -2.5);
    }

    /**
     * Plain rows are read from their bytes, others through their text: the numbers are the same.
     */
    @Test
    void readsQuotedRowsToTheSameBit() {
        Random random = new Random(11);
        StringBuilder plain = new StringBuilder("time_s,force_N\n");
        StringBuilder quoted = new StringBuilder("time_s,force_N\n");
        for (int i = 0; i < 5000; i++) {
            double force = random.nextGaussian() * StrictMath.pow(10, random.nextInt(9) - 4);
            plain.append(i / 10.0).append(',').append(force).append('\n');
            quoted.append(i / 10.0).append(",\"").append(force).append("\"\n");
        }
        assertThat(read(quoted.toString()).values().get("force"))
                .as("seed 11")
                .isEqualTo(read(plain.toString()).values().get("force"));
    }

    @Test
    void keepsRowWithoutNumberAndSaysSo() {
        Curves.Read read = read("time_s,force_N\n0,1\n1,NaN\n2,x\n3,4\n");
        assertThat(read.values().get("force")).containsExactly(1, Double.NaN, Double.NaN, 4);
        assertThat(read.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.rows()).isEqualTo(2);
            assertThat(problem.first().line()).hasValue(3);
        });
    }

    @Test
    void passesOverRemarksBelowTheNumbers() {
        Curves.Read read = read("time_s,force_N\n0,1\n1,2\nend of test,\n\n");
        assertThat(read.values().get("force")).containsExactly(1, 2);
    }

    @Test
    void refusesColumnTwice() {
        assertThatThrownBy(() -> read("force_N,force_kN\n1,2\n"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("force_N")
                .hasMessageContaining("force_kN");
    }

    @Test
    void refusesUnitOfTheWrongDimension() {
        assertThatThrownBy(() -> read("time_s,force_mm\n1,2\n"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("force_mm")
                .hasMessageContaining("mm is");
    }

    /** Two gigabytes without a line end must be refused before they fill the memory. */
    @Test
    void refusesEndlessLineWithoutReadingItAll() {
        long[] handedOut = {0};
        Source source = Source.of("huge.csv", () -> new InputStream() {
            private final byte[] head = "time_s,force_N\n0,1\n".getBytes(UTF_8);

            @Override
            public int read() {
                long at = handedOut[0]++;
                return at < head.length ? head[(int) at] : at < 2L << 30 ? '1' : -1;
            }
        });
        assertThatThrownBy(() -> Curves.read(source, ReadAs.found(), WANTED))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("huge.csv, line 3");
        assertThat(handedOut[0]).isLessThan(8L << 20);
    }

    /** Two gigabytes of rows that are wide: what is wanted of them is small. */
    @Test
    void streamsWideFileOfTwoGigabytes() {
        long rows = (2L << 30) / WideRows.ROW.length;
        Source source = Source.of("wide.csv", () -> new WideRows(rows));
        Curves.Read read = Curves.read(source, ReadAs.found(), WANTED);
        assertThat(read.rows()).isEqualTo((int) rows);
        assertThat(read.values().get("force"))
                .contains(12.5, org.assertj.core.data.Index.atIndex(0));
        assertThat(read.problems()).isEmpty();
    }

    @Test
    void refusesMoreRowsThanACurveMayHave() {
        Source source = Source.of(
                "long.csv",
                () -> new java.io.SequenceInputStream(
                        new java.io.ByteArrayInputStream("force_N\n".getBytes(UTF_8)),
                        new Zeros(2L << 30)));
        assertThatThrownBy(() -> Curves.read(source, ReadAs.found(), WANTED))
                .isInstanceOf(InputException.class)
                .hasMessage("long.csv: has more than 5 million rows, the limit of a curve");
    }

    /** Lines of a single zero. */
    private static final class Zeros extends InputStream {
        private long left;

        Zeros(long bytes) {
            left = bytes;
        }

        @Override
        public int read() {
            return left-- <= 0 ? -1 : (left & 1) == 1 ? '0' : '\n';
        }
    }

    /** A header, and rows with a kilobyte of words behind their numbers. */
    private static final class WideRows extends InputStream {
        static final byte[] ROW = ("0.5,12.5," + "x".repeat(1014) + "\n").getBytes(UTF_8);
        private static final byte[] HEADER = "time_s,force_N,remark\n".getBytes(UTF_8);
        private byte[] line = HEADER;
        private int at;
        private long rows;

        WideRows(long rows) {
            this.rows = rows;
        }

        @Override
        public int read() {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0];
        }

        @Override
        public int read(byte[] into, int offset, int length) {
            if (at == line.length) {
                if (rows == 0) {
                    return -1;
                }
                rows--;
                line = ROW;
                at = 0;
            }
            int given = Math.min(length, line.length - at);
            System.arraycopy(line, at, into, offset, given);
            at += given;
            return given;
        }
    }

    @Test
    void readsLinesAcrossTheEndsOfItsBuffer() {
        StringBuilder text = new StringBuilder("time_s,force_N\r\n");
        for (int i = 0; i < 200_000; i++) {
            text.append(i).append(',').append(2 * i).append("\r\n");
        }
        double[] force = read(text.toString()).values().get("force");
        assertThat(force).hasSize(200_000);
        for (int i = 0; i < force.length; i++) {
            assertThat(force[i]).isEqualTo(2.0 * i);
        }
    }

    private static Curves.Read read(String text) {
        return Curves.read(Source.of("c.csv", text.getBytes(UTF_8)), ReadAs.found(), WANTED);
    }
}
