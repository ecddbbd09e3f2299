package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;

class TypesetTest {

    private static final String PAGE = Typeset.screen(Sheets.sample());

    @Test
    void asksNothingOfAnyoneAndRunsNoScript() throws Exception {
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target", "report.html"), PAGE);
        String withoutNames = PAGE.replace("http://www.w3.org/2000/svg", "");
        assertThat(withoutNames)
                .doesNotContain("http:")
                .doesNotContain("https:")
                .doesNotContainIgnoringCase("<script")
                .doesNotContainPattern("\\son[a-z]+=")
                .doesNotContainPattern("url\\((?!data:)")
                .doesNotContainPattern("src=\"(?!data:)");
        assertThat(PAGE).contains("default-src 'none'");
    }

    @Test
    void saysInventedOnThePageAndOnEveryPageOfThePdf() {
        assertThat(PAGE).contains("<span class=\"invented\">invented data</span>");
        String print = Typeset.print(Sheets.sample());
        assertThat(print).contains("class=\"running\"").contains("· invented data</div>");
        Sheet measured = measured();
        assertThat(Typeset.screen(measured)).doesNotContain("invented data");
        assertThat(Typeset.print(measured)).doesNotContain("invented data");
    }

    @Test
    void putsClaimsAndVerdictsBeforeEverythingElse() {
        int claims = PAGE.indexOf("class=\"claims\"");
        int answers = PAGE.indexOf("class=\"answer\"");
        int method = PAGE.indexOf("id=\"method\"");
        assertThat(claims).isPositive().isLessThan(answers);
        assertThat(answers).isLessThan(method);
        for (Sheet.Answer answer : Sheets.sample().answers()) {
            assertThat(PAGE).contains("href=\"#" + answer.anchor() + "\"");
            assertThat(PAGE).contains("id=\"" + answer.anchor() + "\"");
        }
    }

    @Test
    void isWellFormedInPrintAndHasNoTokenLeft() throws Exception {
        String print = Typeset.print(Sheets.sample());
        DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(print.getBytes(StandardCharsets.UTF_8)));
        assertThat(print).doesNotContain("var(--").doesNotContain("class=\"tip\"");
    }

    @Test
    void writesWhatPeopleWroteAsText() {
        Sheet sheet = Sheets.titled("<b>Höhe</b> & \"Größe\" 高さ");
        assertThat(Typeset.screen(sheet))
                .contains("<h1>&lt;b&gt;Höhe&lt;/b&gt; &amp; \"Größe\" 高さ</h1>")
                .doesNotContain("<b>Höhe");
    }

    @Test
    void keepsNumbersAndUnitsTogether() {
        assertThat(PAGE).contains("13\u202f% more").doesNotContain("\u2009");
    }

    @Test
    void givesTheSameBytesEachTime() {
        assertThat(Typeset.screen(Sheets.sample())).isEqualTo(PAGE);
    }

    private static Sheet measured() {
        Sheet sheet = Sheets.sample();
        return new Sheet(
                sheet.title(),
                sheet.about(),
                Sheet.Origin.MEASURED,
                sheet.claims(),
                sheet.sections(),
                sheet.made());
    }
}
