package org.twinbar.study.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Keys;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;
import org.twinbar.study.judged.Claim;

class StudyFileTest {

    private static final String CLAIM = """
            [[claim]]
            words = "Stronger"
            said_by = "leaflet"
            [[claim.question]]
            name = "flat"
            method = "tensile"
            property = "peak_force"
            where = { orientation = "flat" }
            control = "plain"
            treated = ["coated", "waxed"]
            claimed = "10%"
            """;

    @Test
    void readsClaimsWithTheirQuestions() {
        StudyFile file = StudyFile.parse("c.toml", CLAIM);
        assertThat(file.head()).isEmpty();
        Claim claim = file.claims().get(0);
        assertThat(claim.saidBy()).isEqualTo("leaflet");
        Asked asked = claim.questions().get(0).asked();
        assertThat(asked.where()).containsEntry("orientation", "flat");
        assertThat(asked.treated()).containsExactly("coated", "waxed");
        assertThat(asked.said(Term.CLAIMED)).contains("10%");
        assertThat(asked.said(Term.WORTH)).isEmpty();
    }

    @Test
    void keepsClaimsInTheStoreAsInTheFile() {
        Claim claim = StudyFile.parse("c.toml", CLAIM).claims().get(0);
        assertThat(Claim.read("workspace", claim.json())).isEqualTo(claim);
        Claim off = StudyFile.parse("c.toml", """
                [[claim]]
                words = "Safe for food"
                decided_by = "a laboratory"
                [[claim.condition]]
                text = "Nothing migrates"
                """).claims().get(0);
        assertThat(Claim.read("workspace", off.json())).isEqualTo(off);
        assertThat(off.offBench()).isPresent();
    }

    @Test
    void keepsSheetsInTheStoreAsInTheFile() {
        TestSheet sheet = StudyFile.parse("c.toml", """
                [[test]]
                method = "leak"
                things = "cups"
                specimens = "cups.csv"
                set = { claim_time = "24 h" }
                resolution = { timer = "1 min" }
                """).tests().get(0).sheet();
        assertThat(TestSheet.read(Keys.of("workspace", sheet.json(), TestSheet.KEYS)))
                .isEqualTo(sheet);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "studdy = 'x'|did you mean 'study'?",
                "study = |line 1: is not TOML",
                "[[claim]]|'words' is missing",
                "claim = 3|'claim' must be a list",
                "invented = 'perhaps'|true or false",
                "[[test]]\\nmethod = 'leak'|'specimens' is missing",
                "[[claim]]\\nwords = 'a'\\n[[claim.question]]\\nmethod = 'leak'|'property' is missing",
                "[[claim]]\\nwords = 'a'\\n[[claim.condition]]\\ntext = 'b'|decided_by",
                "[[left_out]]\\nmethod='leak'\\nspecimen='A'\\nwho='w'\\nwhen='noon'\\nwhy='y'\\nsight='after'|is not a time",
                "[[left_out]]\\nmethod='leak'\\nspecimen='A'\\nwho='w'\\nwhen='noon'\\nwhy='y'\\nsight='maybe'|before or after",
            })
    void refuses(String toml, String words) {
        String text =
                toml.replace("\\n", "\n") + (toml.startsWith("invented") ? "\nstudy = 'x'" : "");
        assertThatThrownBy(() -> StudyFile.parse("c.toml", text))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("c.toml")
                .hasMessageContaining(words);
    }

    /**
     * Every TOML example of the page of keys is read; the keys that it tells are those there are.
     */
    @Test
    void documentsItsKeys() throws IOException {
        String page = Files.readString(Path.of("../docs/claims.md"));
        String[] parts = page.split("```toml\n", -1);
        assertThat(parts.length).isGreaterThan(1);
        for (int i = 1; i < parts.length; i++) {
            StudyFile.parse("docs/claims.md", parts[i].substring(0, parts[i].indexOf("```")));
        }
        assertThat(Asked.KEYS).allSatisfy(key -> assertThat(page).contains("`" + key + "`"));
        assertThat(TestSheet.KEYS).allSatisfy(key -> assertThat(page).contains("`" + key + "`"));
    }
}
