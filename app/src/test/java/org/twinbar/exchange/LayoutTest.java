package org.twinbar.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.quantity.Unit;

class LayoutTest {

    /** The same two numbers, as different recorders write them. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "commas|time_s,force_N/0.5,12.25/0.6,13.5",
                "semicolons, decimal comma|time_s;force_N/0,5;12,25/0,6;13,5",
                "tabs, decimal comma|time_s>force_N/0,5>12,25/0,6>13,5",
                "blanks|time_s force_N/0.5   12.25/0.6   13.5",
                "blanks, decimal comma|time_s  force_N/ 0,5  12,25/ 0,6  13,5",
                "blanks inside a header|Time (s)  Force (N)/0.5 12.25/0.6 13.5",
                "one blank inside a header|Time (s) Force (N)/0.5 12.25/0.6 13.5",
                "units below|time;force/s;N/0.5;12.25/0.6;13.5",
                "units below in brackets|time,force/[s],[N]/0.5,12.25/0.6,13.5",
                "words above|Pulled in May/by hand, slowly//time_s,force_N/0.5,12.25/0.6,13.5",
                "pairs above|Operator;Ann/Speed;slow/time_s;force_N/0,5;12,25/0,6;13,5",
                "pairs above and units below|Operator;Ann/time;force/s;N/0.5;12.25/0.6;13.5",
                "pairs with numbers above|Operator;Ann/Speed;5/time_s;force_N/0,5;12,25/0,6;13,5",
                "quoted decimal commas|time_s,force_N/\"0,5\",\"12,25\"/\"0,6\",\"13,5\"",
                "trailing delimiters|time_s;force_N;/0.5;12.25;/0.6;13.5;",
                "trailing delimiters below|time_s,force_N,note/0.5,12.25,,/0.6,13.5,,",
                "another order|force_N,time_s/12.25,0.5/13.5,0.6",
                "capitals|Time S,FORCE_N/0.5,12.25/0.6,13.5",
            })
    void readsCurveWrittenWith(String name, String lines) {
        String text = lines.replace('/', '\n').replace('>', '\t');
        ReadAs as = name.equals("capitals")
                ? ReadAs.found().withColumn(ReadAs.NamedColumn.parse("time=Time S:s"))
                : ReadAs.found();
        Curves.Read read = Curves.read(
                Source.of(name, text.getBytes(UTF_8)),
                as,
                List.of(
                        new Curves.Wanted("time", Unit.of("s")),
                        new Curves.Wanted("force", Unit.of("N"))));
        assertThat(read.values().get("time")).containsExactly(0.5, 0.6);
        assertThat(read.values().get("force")).containsExactly(12.25, 13.5);
        assertThat(read.problems()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "words alone|specimen,group/A1,plain/A2,coated|2",
                "blanks in cells|specimen,note/bar 1,left edge/bar 2,right edge|2",
                "one row|specimen;width_mm/A1;10,25|1",
                "semicolons, decimal comma|specimen;width_mm;mass_g/A1;10,25;5,5/A2;9,75;6,5|2",
                "dates|specimen;made;width_mm/A1;01.05.2026 10:00;10,25/A2;02.05.2026 10:00;9,5|2",
                "blank cells|specimen,width_mm,note/A1,,/A2,9.75,|2",
                "short rows|specimen,group,width_mm,note/A1,plain,10.5/A2,coated,9.5/A3,plain,9.75,x|3",
            })
    void readsTableWith(String name, String lines, int rows) {
        Table table = table(lines.replace('/', '\n'));
        assertThat(table.column("specimen")).isPresent();
        assertThat(table.dialect().headerLine()).isEqualTo(1);
        assertThat(table.rows()).hasSize(rows);
    }

    @Test
    void findsDecimalMarkBehindManyWholeNumbers() {
        String whole = IntStream.range(0, 3000)
                .mapToObj(i -> i + ";0\n")
                .collect(Collectors.joining("", "time_s;force_N\n", ""));
        Curves.Read read = Curves.read(
                Source.of("c.csv", (whole + "3000;0,5\n").getBytes(UTF_8)),
                ReadAs.found(),
                List.of(new Curves.Wanted("force", Unit.of("N"))));
        assertThat(read.dialect().decimalMark()).isEqualTo(DecimalMark.COMMA);
        assertThat(read.values().get("force")[3000]).isEqualTo(0.5);
    }

    @Test
    void namesTheCellThatMayBeAThousand() {
        assertThatThrownBy(() -> table("specimen;force_N\nA1;12\nA2;1,234\n"))
                .isInstanceOf(InputException.class)
                .hasMessage("t.csv, line 3: '1,234' may be a thousand or one and a bit;"
                        + " say --decimal point or --decimal comma");
    }

    /** Among decimal commas, 1.234 may be a thousand, or a point that somebody typed. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"10,5|1.234", "10.5|1,234"})
    void refusesThousandsThatOneMarkAloneSuggests(String other, String open) {
        String text = "specimen;width_mm;force_N\nA1;" + other + ";" + open + "\n";
        assertThatThrownBy(() -> table(text))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("t.csv, line 2: '" + open + "'")
                .hasMessageContaining("--decimal");
        Table forced = Table.read(
                Source.of("t.csv", text.getBytes(UTF_8)),
                ReadAs.found()
                        .withDecimalMark(
                                other.contains(",") ? DecimalMark.COMMA : DecimalMark.POINT));
        assertThat(forced.dialect().number(open)).isEqualTo(1234);
    }

    @Test
    void readsThousandsThatAreMarkedBeyondDoubt() {
        Table table = table("specimen;force_N\nA1;1.234,5\nA2;2.345\n");
        assertThat(table.dialect().thousands()).isEqualTo(Thousands.GROUPED);
        assertThat(table.dialect().number("2.345")).isEqualTo(2345);
    }

    @Test
    void saysWhichLineHoldsNumbersForNames() {
        assertThatThrownBy(() -> table("\n\n0.1;5\n0.2;6\n"))
                .hasMessageStartingWith("t.csv, line 3: holds numbers where the columns should be");
    }

    private static Table table(String text) {
        return Table.read(Source.of("t.csv", text.getBytes(UTF_8)), ReadAs.found());
    }
}
