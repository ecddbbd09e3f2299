package org.twinbar.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainLayoutLawsTest {

    private static final long SEED = 815;
    private static final int ROUNDS = 20_000;
    private static final Place FILE = Place.of("curve.csv");

    private static final String[] HEADERS = {
        "time_s,force_N",
        "time;force",
        "time_s\tforce_N\tx",
        "Time (s),Force (N)",
        "t_s;F, N;x",
        "a,b,c",
        "5,force",
        "\"a\",b",
        "time",
        "s,N",
        "na,b",
        ",b",
        "Kraft_N;Länge_mm"
    };
    private static final String[] CELLS = {
        "0.5",
        "1",
        "-2.25",
        "1.234",
        "12,5",
        "1,234",
        "1e-3",
        "2.5E+4",
        ".5",
        "5.",
        "1.2.3",
        "",
        " 7.5",
        "x",
        "N",
        "NaN",
        "1234.5",
        "1.234.567",
        "\"3\"",
        "+4"
    };

    @Test
    void findsWhatTheWholeSearchFinds() {
        Random random = new Random(SEED);
        int plain = 0;
        for (int round = 0; round < ROUNDS; round++) {
            String text = text(random);
            Optional<Layout> found = find(text);
            if (found.isPresent()) {
                plain++;
                assertThat(Layout.ofText(FILE, whole(text), ReadAs.found(), Encoding.UTF_8))
                        .as("round %s of seed %s: %s", round, SEED, text)
                        .isEqualTo(found.get());
            }
        }
        assertThat(plain).isGreaterThan(ROUNDS / 20);
    }

    @Test
    void findsTableOfPlainNumbers() {
        Layout layout = find("time_s,force_N\n0.5,12\n0.6,13\n").orElseThrow();
        assertThat(layout.dialect().delimiter()).isEqualTo(Delimiter.COMMA);
        assertThat(layout.isCertain()).isTrue();
        assertThat(layout.columns()).extracting(Column::label).containsExactly("time", "force");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "time_s,force_N\n1,234\n5,678\n",
                "time_s;force_N\n1.234;5.678\n",
                "time;force\ns;N\n0.5;12\n",
                "time_s;force_N\n0,5;12\n",
                "Pulled by hand\ntime_s,force_N\n0.5,12\n",
                "time_s,force_N\n0.5,12\n0.6,\n",
                "time_s,force_N\n",
                ""
            })
    void leavesTheRestToTheWholeSearch(String text) {
        assertThat(find(text)).isEmpty();
    }

    private static Optional<Layout> find(String text) {
        byte[] bytes = text.getBytes(UTF_8);
        return PlainLayout.find(FILE, bytes, 0, bytes.length);
    }

    private static List<String> whole(String text) {
        List<String> lines = Table.lines(text);
        return lines.subList(0, lines.size() - 1);
    }

    private static String text(Random random) {
        String end = random.nextInt(4) == 0 ? "\r\n" : "\n";
        String header = HEADERS[random.nextInt(HEADERS.length)];
        String sign = header.contains("\t") ? "\t" : header.contains(";") ? ";" : ",";
        int width = header.split(sign, -1).length;
        StringBuilder text = new StringBuilder(header).append(end);
        int kinds = random.nextInt(3) == 0 ? CELLS.length : 4 + random.nextInt(3);
        for (int row = 1 + random.nextInt(4); row > 0; row--) {
            int cells = random.nextInt(20) == 0 ? width + 1 : width;
            for (int cell = 0; cell < cells; cell++) {
                text.append(cell > 0 ? sign : "").append(CELLS[random.nextInt(kinds)]);
            }
            text.append(end);
        }
        return text.toString();
    }
}
