package org.twinbar.exchange;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.quantity.Unit;

class ReadAsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "force=Load cell 1:kgf|force|Load cell 1|kgf",
                "force=\"Load cell 1\":kgf|force|Load cell 1|kgf",
                "force=Ch 1: left:N|force|Ch 1: left|N",
                "area=A:mm²|area|A|mm²",
            })
    void readsColumnNamedByHand(String text, String name, String header, String unit) {
        assertThat(ReadAs.NamedColumn.parse(text))
                .isEqualTo(new ReadAs.NamedColumn(name, header, Optional.of(Unit.of(unit))));
    }

    @Test
    void takesUnitOfTheHeaderWhereNoneIsSaid() {
        assertThat(ReadAs.NamedColumn.parse("force=Ch 1: left").unit()).isEmpty();
        Curves.Read read = Curves.read(
                Source.of("c.csv", "Ch1 (kN)\n1.5\n".getBytes(UTF_8)),
                ReadAs.found().withColumn(ReadAs.NamedColumn.parse("force=Ch1 (kN)")),
                List.of(new Curves.Wanted("force", Unit.of("N"))));
        assertThat(read.values().get("force")).containsExactly(1500);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "force", "=x", "force=", "force=:N"})
    void refusesColumnWithoutNameOrHeader(String text) {
        assertThatThrownBy(() -> ReadAs.NamedColumn.parse(text))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("--column '" + text + "': write name=header");
    }

    @Test
    void suggestsHeaderThatWasMisspelt() {
        assertThatThrownBy(() -> Table.read(
                        Source.of("t.csv", "specimen,Load cell 1\nA1,5\n".getBytes(UTF_8)),
                        ReadAs.found().withColumn(ReadAs.NamedColumn.parse("force=Laod cell 1:N"))))
                .isInstanceOf(InputException.class)
                .hasMessage("t.csv: there is no column 'Laod cell 1' among specimen, Load cell 1;"
                        + " did you mean 'Load cell 1'?");
    }

    /** Each option goes before what the file shows. */
    @Test
    void obeysWhatIsForced() {
        byte[] bytes = "specimen;note;width_mm\nA1;a,b;10\n".getBytes(UTF_8);
        Table table = Table.read(
                Source.of("t.csv", bytes), ReadAs.found().withDelimiter(Delimiter.COMMA));
        assertThat(table.dialect().delimiter()).isEqualTo(Delimiter.COMMA);
        byte[] letters = "specimen;Maß_mm\nA1;10\n".getBytes(Charset.forName("windows-1252"));
        assertThat(Table.read(
                                Source.of("t.csv", letters),
                                ReadAs.found().withEncoding(Encoding.WINDOWS_1252))
                        .column("Maß"))
                .isPresent();
    }

    @Test
    void refusesWordsThatNameNothing() {
        assertThatThrownBy(() -> Delimiter.parse("colon"))
                .hasMessageContaining("--delimiter 'colon'");
        assertThatThrownBy(() -> DecimalMark.parse("dot")).hasMessageContaining("--decimal 'dot'");
        assertThatThrownBy(() -> Encoding.parse("ebcdic"))
                .hasMessageContaining("--encoding 'ebcdic'");
        for (Delimiter delimiter : Delimiter.values()) {
            if (delimiter != Delimiter.CELLS) {
                assertThat(Delimiter.parse(delimiter.word())).isEqualTo(delimiter);
            }
        }
        for (Encoding encoding : Encoding.values()) {
            assertThat(Encoding.parse(encoding.word())).isEqualTo(encoding);
        }
    }
}
