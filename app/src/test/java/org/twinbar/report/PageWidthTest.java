package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.twinbar.report.PageWidth.ROOM;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.twinbar.report.Sheet.Column;

class PageWidthTest {

    @Test
    void partsColumnsThatDoNotFitBesideEachOther() {
        List<String> wide = Collections.nCopies(5, "remaining_width_before_1_mm");
        List<List<String>> chunks = PageWidth.of(List.of(Column.name("Specimen")))
                .chunks(wide, 7, name -> PageWidth.text(name, Stream.of("10.02")));
        assertThat(chunks).extracting(List::size).containsExactly(3, 2);
        assertThat(4 * PageWidth.text(wide.get(0), Stream.empty())).isGreaterThan(ROOM - 20);
    }

    @Test
    void aColumnThatIsTooWideByItselfHasATableOfItsOwn() {
        String endless = "x".repeat(200);
        assertThat(PageWidth.of(List.of())
                        .chunks(
                                List.of("a", endless, "b"),
                                7,
                                name -> PageWidth.text(name, Stream.of())))
                .containsExactly(List.of("a"), List.of(endless), List.of("b"));
    }

    @Test
    void noTableHasMoreColumnsThanItMay() {
        assertThat(PageWidth.of(List.of()).chunks(Collections.nCopies(9, "n"), 4, name -> 1))
                .extracting(List::size)
                .containsExactly(4, 4, 1);
    }
}
