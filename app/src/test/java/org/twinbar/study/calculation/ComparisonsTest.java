package org.twinbar.study.calculation;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Effect;
import org.twinbar.decision.QuestionException;
import org.twinbar.decision.Verdict;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Source;
import org.twinbar.exchange.Table;
import org.twinbar.method.Methods;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;

class ComparisonsTest {

    private static final Methods METHODS = Methods.builtIn();

    private static final Asked STRONGER = Asked.of("strength_MPa").with(Term.CONTROL, "plain");
    private static final String BARS = "specimen,group,orientation,strength_MPa\n"
            + "1,plain,flat,50\n2,plain,flat,51\n3,plain,flat,49\n"
            + "4,coated,flat,60\n5,coated,flat,61\n6,coated,flat,59\n"
            + "7,plain,upright,20\n8,plain,upright,26\n9,coated,upright,23\n10,coated,upright,22\n";

    @Test
    void comparesForEachValueOfAColumn() {
        List<Comparisons.Parted> parted = compare(BARS, STRONGER, List.of("orientation"));
        assertThat(parted)
                .extracting(Comparisons.Parted::by)
                .containsExactly(Map.of("orientation", "flat"), Map.of("orientation", "upright"));
        Comparison flat = parted.get(0).comparison();
        assertThat(flat.found().estimate().orElse(0)).isCloseTo(1.2, within(1e-12));
        assertThat(flat.verdict()).isEqualTo(Verdict.SUPPORTED);
        assertThat(parted.get(1).comparison().verdict()).isEqualTo(Verdict.OPEN);
    }

    @Test
    void comparesEachGroupWithTheControl() {
        String three = BARS + "11,waxed,flat,50\n12,waxed,flat,51\n";
        assertThat(compare(three, STRONGER.where("orientation", "flat"), List.of()))
                .extracting(it -> it.comparison().treated().name())
                .containsExactly("coated", "waxed");
        assertThat(compare(three, STRONGER.treated(List.of("waxed")), List.of()))
                .hasSize(1);
    }

    /** "Higher" is easily taken for a longer time, so that a rate has no default and own words. */
    @Test
    void needsToBeToldWhichWayARateIsExpectedToGo() {
        String cups = "cup,group,time_h,leaked\nP1,plain,2,1\nP2,plain,5,1\nP3,plain,9,1\n"
                + "C1,coated,20,1\nC2,coated,24,0\nC3,coated,24,0\n";
        Asked rate = Asked.of("time").with(Term.CONTROL, "plain").with(Term.EVENT, "leaked");
        assertThatThrownBy(() -> compare(cups, rate, List.of()))
                .isInstanceOf(QuestionException.class)
                .hasMessageContaining("'slower' (or 'lower') where parts last longer");
        Comparison slower = compare(cups, rate.with(Term.EXPECT, "slower"), List.of())
                .get(0)
                .comparison();
        Comparison lower =
                compare(cups, rate.with(Term.EXPECT, "lower"), List.of()).get(0).comparison();
        assertThat(slower.question()).isEqualTo(lower.question());
        assertThat(slower.beside()).extracting(it -> it.interval()).contains("restricted-mean");
        assertThatThrownBy(() -> compare(BARS, STRONGER.with(Term.EXPECT, "slower"), List.of()))
                .isInstanceOf(QuestionException.class);
    }

    @Test
    void findsColumnWithoutItsUnit() {
        Asked asked = Asked.of("strength").with(Term.CONTROL, "plain");
        assertThat(compare(BARS, asked, List.of()).get(0).value()).isEqualTo("strength_MPa");
    }

    @Test
    void comparesTemperaturesByDifference() {
        Comparison warm = compare(
                        "group,onset_C\nplain,60\nplain,61\nplain,60.5\ncoated,66\ncoated,65\ncoated,65.5\n",
                        Asked.of("onset_C").with(Term.CONTROL, "plain").with(Term.WORTH, "3 °C"),
                        List.of())
                .get(0)
                .comparison();
        assertThat(warm.found().kind()).isEqualTo(Effect.DIFFERENCE);
        assertThat(warm.found().estimate().orElse(0)).isCloseTo(5, within(1e-12));
        assertThat(warm.question().worth()).isEqualTo(3);
    }

    @Test
    void comparesWordsByTheirShare() {
        Comparison dry = compare(
                        "group,leak_free\nplain,no\nplain,No\nplain,\ncoated,yes\ncoated,yes\n",
                        Asked.of("leak_free").with(Term.CONTROL, "plain"),
                        List.of())
                .get(0)
                .comparison();
        assertThat(dry.found().kind()).isEqualTo(Effect.SHARE);
        assertThat(dry.control().orElseThrow().n()).isEqualTo(2);
    }

    @Test
    void takesSharedErrorsFromTheirColumns() {
        String plain = "group,strength_MPa,strength_MPa_own_u,strength_MPa_move_load cell zero\n"
                + "plain,50,0.2,%1$s\nplain,51,0.2,%1$s\nplain,49,0.2,%1$s\n"
                + "coated,60,0.2,%1$s\ncoated,61,0.2,%1$s\ncoated,59,0.2,%1$s\n";
        double without = width(compare(plain.formatted("0"), STRONGER, List.of()));
        double with = width(compare(plain.formatted("9"), STRONGER, List.of()));
        assertThat(with).isGreaterThan(1.02 * without);
    }

    @Test
    void readsWhatCalculateWroteAsJson() {
        String json = "{\"method\":\"tensile\",\"results\":["
                + row("1", "plain", "{\"value\":50,\"own\":0.1,\"moves\":{\"gain\":0.2}}") + ","
                + row("2", "plain", "{\"value\":51}") + ","
                + row("3", "plain", "{\"reason\":\"it slipped\"}") + ","
                + row("4", "coated", "{\"value\":60}") + ","
                + row("5", "coated", "{\"value\":61}") + "]}";
        Comparison comparison = Comparisons.ofJson("r.json", json, STRONGER, "group", METHODS)
                .comparisons()
                .get(0)
                .comparison();
        assertThat(comparison.control().orElseThrow().n()).isEqualTo(2);
        assertThat(comparison.treated().n()).isEqualTo(2);
        assertThatThrownBy(() -> Comparisons.ofJson("r.json", "{", STRONGER, "group", METHODS))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("r.json");
        assertThatThrownBy(() -> Comparisons.ofJson("r.json", "{}", STRONGER, "group", METHODS))
                .hasMessageContaining("'results'");
    }

    private static String row(String code, String group, String value) {
        return "{\"specimen\":\"%s\",\"group\":\"%s\",\"values\":{\"strength_MPa\":%s}}"
                .formatted(code, group, value);
    }

    @Test
    void refusesWhatIsNotThere() {
        assertThatThrownBy(() -> compare(
                        BARS, Asked.of("strenght_MPa").with(Term.CONTROL, "plain"), List.of()))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("did you mean 'strength_MPa'?");
        assertThatThrownBy(() -> compare(BARS, STRONGER.with(Term.CONTROL, "bare"), List.of()))
                .isInstanceOf(QuestionException.class)
                .hasMessageContaining("bare");
        assertThatThrownBy(() -> compare(BARS, Asked.of("strength_MPa"), List.of()))
                .isInstanceOf(QuestionException.class)
                .hasMessageContaining("control");
        assertThatThrownBy(() -> compare(BARS, STRONGER, List.of("mix")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("'mix'");
    }

    @Test
    void refusesTextWhereANumberBelongs() {
        assertThatThrownBy(() -> compare(BARS.replace("51", "strong"), STRONGER, List.of()))
                .isInstanceOf(InputException.class)
                .hasMessage("bars.csv, line 3, column strength_MPa: 'strong' is not a number");
    }

    @Test
    void refusesRatioOfMeanThatIsNotAboveZero() {
        assertThatThrownBy(() -> compare(
                        "group,strength_MPa\nplain,-1\nplain,-2\ncoated,1\ncoated,2\n",
                        STRONGER,
                        List.of()))
                .isInstanceOf(QuestionException.class);
    }

    @Test
    void refusesSizesThatMayBeTwoThings() {
        assertThatThrownBy(() -> compare(BARS, STRONGER.with(Term.WORTH, "5"), List.of()))
                .isInstanceOf(QuestionException.class)
                .hasMessageContaining("per cent or a factor");
        assertThatThrownBy(() -> compare(BARS, STRONGER.with(Term.EXPECT, "more"), List.of()))
                .isInstanceOf(QuestionException.class)
                .hasMessageContaining("higher, lower, same");
    }

    @Test
    void holdsEachGroupAgainstALevel() {
        Asked asked = Asked.of("strength").with(Term.AT, "10 MPa").with(Term.OF, "90%");
        List<Comparisons.Parted> parted = compare(BARS, asked, List.of());
        assertThat(parted)
                .extracting(it -> it.comparison().treated().name())
                .containsExactly("plain", "coated");
        assertThat(parted.get(0).comparison().found().kind()).isEqualTo(Effect.LEVEL);
    }

    private static double width(List<Comparisons.Parted> parted) {
        Comparison comparison = parted.get(0).comparison();
        return comparison.found().high().orElse(0) - comparison.found().low().orElse(0);
    }

    private static List<Comparisons.Parted> compare(String text, Asked asked, List<String> by) {
        Table table = Table.read(Source.of("bars.csv", text.getBytes(UTF_8)), ReadAs.found());
        return Comparisons.of(table, asked.by(by), "group", METHODS).comparisons();
    }
}
