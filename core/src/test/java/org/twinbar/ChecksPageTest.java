package org.twinbar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class ChecksPageTest {

    private static final String KEPT = """
            id,quantity,inputs,expected,tolerance,source,ours,digits
            mean,"mean, plain",n 3,2.5,0.1,a handbook,2.5000000000000004,15.0
            odds,P(A|B),,0.25,1e-3rel,a table,0.2501,3.3
            end,an open end,,Infinity,0,a table,Infinity,15.0
            """;

    private final ChecksPage page = ChecksPage.of(Map.of("org.twinbar.statistics", KEPT));

    @Test
    void showsEachValueBesideOurs() {
        assertThat(page.markdown())
                .contains("\n## org.twinbar.statistics\n\n| id |")
                .contains("\n| mean | mean, plain | n 3 | 2.5 | 2.5 | 15.0 | a handbook |\n")
                .contains("\n| odds | P(A\\|B) |  | 0.25 | 0.2501 | 3.3 | a table |\n")
                .contains("\n| end | an open end |  | Infinity | Infinity | 15.0 | a table |\n");
    }

    @Test
    void holdsWhereNothingChanged() {
        assertThat(page.missedBy(page.markdown())).isEmpty();
    }

    @Test
    void holdsWhereOnlyOurLastDigitsDiffer() {
        String later = KEPT.replace("0.2501,3.3", "0.2502,3.0");
        assertThat(later(later).missedBy(page.markdown())).isEmpty();
    }

    @Test
    void tellsOfDigitsThatWereLost() {
        String later = KEPT.replace("0.2501,3.3", "0.253,1.9");
        assertThat(later(later).missedBy(page.markdown()))
                .containsExactly(
                        "org.twinbar.statistics odds agreed by 3.3 digits and now by 1.9.");
    }

    @Test
    void tellsOfChecksThatCameWentOrChanged() {
        String later = KEPT.replace("mean,\"mean", "average,\"mean").replace("a table", "a book");
        assertThat(later(later).missedBy(page.markdown()))
                .containsExactlyInAnyOrder(
                        "org.twinbar.statistics average was added.",
                        "org.twinbar.statistics mean is gone.",
                        "org.twinbar.statistics odds was changed.",
                        "org.twinbar.statistics end was changed.");
    }

    private static ChecksPage later(String kept) {
        return ChecksPage.of(Map.of("org.twinbar.statistics", kept));
    }
}
