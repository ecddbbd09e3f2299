package org.twinbar.planning.claim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.method.Answering;
import org.twinbar.method.Methods;
import org.twinbar.method.TestMethod;
import org.twinbar.planning.PlanException;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.specimen.StandardShapes;

class ClaimGuideTest {

    private static final List<TestMethod> METHODS = Methods.builtIn().all();
    private static final ClaimGuide GUIDE = ClaimGuide.to(METHODS);

    @ParameterizedTest
    @CsvSource({
        "Makes parts 20 % stronger, stronger",
        "Stiffer than plain prints, stiffer",
        "Heat-resistant, heat-resistant",
        "does not warp in the sun, heat-resistant",
        "Watertight for a day, watertight",
        "keeps its dimensions, keeps its size",
        "Harder to scratch, harder",
        "tougher than untreated, tougher",
        "Safe for drinking water, contact with food",
        "Food-safe, contact with food",
        "glossier prints, glossier",
        "a shiny finish, glossier",
        "less rough to the touch, less rough",
    })
    void findsWhatAClaimSaysByItsWords(String words, String topic) {
        assertThat(prompt(guide(words), "topic").answer()).hasValue(topic);
    }

    @Test
    void asksWhatIsMeantWhereTheWordsDontSay() {
        Prompt topic = prompt(guide("makes it superb"), "topic");
        assertThat(topic.waits()).isTrue();
        assertThat(topic.options())
                .extracting(Prompt.Option::value)
                .contains("stronger", "tougher");
        assertThat(guide("airtight and tight").prompts().get(0).waits())
                .as("'tight' alone may be either")
                .isTrue();
    }

    /** A stylus or people can tell; each is a question of its own, with a plan of its own. */
    @ParameterizedTest
    @ValueSource(strings = {"a smoother surface", "hides layer lines"})
    void asksWhetherSmootherIsMeasuredOrSeen(String words) {
        Prompt topic = prompt(guide(words), "topic");
        assertThat(topic.waits()).isTrue();
        assertThat(topic.options().subList(0, 2))
                .extracting(Prompt.Option::value)
                .containsExactlyInAnyOrder("less rough", "looks better");
        assertThat(topic.why()).contains("It may mean ").contains(" or ");
        Guided measured =
                guide(words, "topic", "less rough", "orientation", "upright", "worth", "10%");
        assertThat(measured.isWhole()).isTrue();
        assertThat(measured.proposals()).singleElement().satisfies(it -> {
            assertThat(it.method()).isEqualTo("roughness");
            assertThat(it.expect()).isEqualTo("lower");
            assertThat(StandardShapes.named(it.shape())).isPresent();
        });
    }

    @Test
    void leadsGlossToAQuestionAndAShape() {
        Guided gloss = guide("20 % glossier", "orientation", "flat", "worth", "10%");
        assertThat(gloss.isWhole()).isTrue();
        assertThat(gloss.proposals()).singleElement().satisfies(it -> {
            assertThat(it.method()).isEqualTo("gloss");
            assertThat(it.usualScatter()).isPresent();
            assertThat(StandardShapes.named(it.shape())).isPresent();
        });
    }

    @Test
    void asksOfStrongerWhetherPartOrMaterialAndFlatOrUpright() {
        Guided asked = guide("10 % stronger", "how", "tensile.strength");
        assertThat(asked.waiting())
                .extracting(Prompt::key)
                .containsExactly("stronger.per", "stronger.orientation");
        assertThat(prompt(asked, "stronger.per").options())
                .extracting(Prompt.Option::value)
                .containsExactlyInAnyOrder(
                        "strength", "strength_before", "peak_force", "force_per_mass");
        assertThat(prompt(asked, "stronger.claimed").answer()).hasValue("10%");
    }

    @Test
    void makesAQuestionForEachWayUp() {
        Guided whole = guide(
                "10 % stronger",
                "how",
                "tensile.strength",
                "per",
                "peak_force",
                "orientation",
                "flat,upright",
                "worth",
                "5%");
        assertThat(whole.isWhole()).isTrue();
        assertThat(whole.proposals())
                .extracting(Proposal::name)
                .containsExactly("largest force, flat", "largest force, upright");
        Proposal flat = whole.proposals().get(0);
        assertThat(flat.method()).isEqualTo("tensile");
        assertThat(flat.expect()).isEqualTo("higher");
        assertThat(flat.claimed()).hasValue("10%");
        assertThat(flat.worth()).hasValue("5%");
        assertThat(flat.orientation()).hasValue(PrintOrientation.FLAT);
        assertThat(flat.usualScatter()).hasValue(0.06);
        assertThat(flat.looksLike())
                .isEqualTo("The answer will be the change of the largest force as per cent more or"
                        + " less than the control, with its interval, held against no change and"
                        + " against the 5% worth having.");
    }

    @Test
    void asksOfHeatResistantAtWhatLoad() {
        Guided asked =
                guide("withstands 60 °C heat", "how", "heat-deflection.deflection_temperature");
        Prompt load = prompt(asked, "heat-resistant.stress");
        assertThat(load.question()).startsWith("At what load");
        assertThat(load.waits()).isTrue();
        assertThat(prompt(asked, "heat-resistant.kind").answer()).hasValue("level");
        assertThat(prompt(asked, "heat-resistant.at").answer()).hasValue("60 °C");
        Guided whole = guide(
                "withstands 60 °C heat",
                "how",
                "heat-deflection.deflection_temperature",
                "stress",
                "0.45 MPa",
                "orientation",
                "flat");
        assertThat(whole.proposals().get(0).stated()).containsEntry("stress", "0.45 MPa");
        assertThat(whole.proposals().get(0).level())
                .hasValue(new Proposal.Level(Optional.of("60 °C"), "90%"));
    }

    @Test
    void asksOfWatertightHowLongUnderWhatHeadAndHowManyParts() {
        Guided asked = guide("watertight for 24 h under 0.5 m", "how", "leak.leak_free");
        assertThat(prompt(asked, "watertight.claim_time").answer()).hasValue("24 h");
        assertThat(prompt(asked, "watertight.head").answer()).hasValue("500 mm");
        assertThat(prompt(asked, "watertight.of").answer()).hasValue("90%");
        assertThat(asked.isWhole()).isTrue();
        assertThat(asked.advice())
                .containsExactly(
                        "To show that 90% of parts pass 'dry for the time of the claim' takes"
                                + " 29 of them, all of which pass; the mass lost through the wall per hour"
                                + " (how = leak.leak_rate) answers with far fewer.");
        assertThat(guide("watertight", "how", "leak.leak_free").waiting())
                .extracting(Prompt::key)
                .containsExactly("watertight.head", "watertight.claim_time");
    }

    @Test
    void leadsFoodToConditionsAndNeverToATest() {
        Guided food = guide("Food-safe");
        assertThat(food.isWhole()).isTrue();
        assertThat(food.proposals()).isEmpty();
        assertThat(food.offBench())
                .extracting(OffBench::topic)
                .containsExactly("contact with food");
        assertThat(guide("Food-safe and 10 % stronger", "topic", "stronger").offBench())
                .as("what was said of food is not lost by another answer")
                .hasSize(1);
    }

    @Test
    void asksForTheChangeThatMattersWhereNoneIsClaimed() {
        Guided same = guide("keeps its size", "orientation", "flat");
        assertThat(same.waiting()).extracting(Prompt::key).containsExactly("keeps-its-size.worth");
        assertThat(guide("keeps its size", "orientation", "flat", "worth", "0.3")
                        .proposals())
                .extracting(Proposal::expect)
                .containsExactly("same");
    }

    @Test
    void refusesWhatItCannotUnderstand() {
        refuses(" ", "A claim needs its words", "how", "tensile.strength");
        refuses("stronger", "'hammering' is no answer to 'stronger.how'", "how", "hammering");
        refuses("watertight", "head", "how", "leak.leak_free", "head", "5 kg", "claim_time", "1 h");
        refuses(
                "watertight",
                "The head is 0 mm, must be above 0",
                "how",
                "leak.leak_free",
                "head",
                "0 mm");
        refuses("Food-safe", "Nothing asks for 'load'", "load", "3 N");
        refuses("stronger", "may be per cent or a factor", "how", "tensile.strength", "worth", "5");
    }

    @Test
    void knowsAShapeAndAnInputForAllThatMethodsSay() {
        Set<String> properties = new HashSet<>();
        for (TestMethod method : METHODS) {
            for (Answering answering : method.answering()) {
                assertThat(method.description().properties())
                        .as("what %s answers with", method.description().name())
                        .contains(answering.property());
                assertThat(properties.add(method.description().name()
                                + answering.property().name()))
                        .isTrue();
                assertThat(answering.words())
                        .allMatch(it -> it.equals(it.toLowerCase(Locale.ROOT)));
                if (!answering.shape().equals("own")) {
                    assertThat(StandardShapes.named(answering.shape()))
                            .as(answering.shape())
                            .isPresent();
                }
                answering
                        .stated()
                        .forEach(it ->
                                assertThat(method.description().asked()).contains(it.named()));
            }
        }
        assertThat(properties).hasSizeGreaterThan(15);
    }

    @ParameterizedTest
    @ValueSource(strings = {"twice as strong", "2 times as strong", "100 % stronger"})
    void readsTheClaimedSizeInManyForms(String words) {
        assertThat(prompt(guide(words, "how", "tensile.strength"), "stronger.claimed")
                        .answer())
                .hasValue("100%");
    }

    private static Guided guide(String words, String... answers) {
        Map<String, String> map = new java.util.HashMap<>();
        for (int i = 0; i < answers.length; i += 2) {
            map.put(answers[i], answers[i + 1]);
        }
        return GUIDE.guide(words, map);
    }

    private static Prompt prompt(Guided guided, String key) {
        return guided.prompts().stream()
                .filter(it -> it.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError(key + " among " + guided.prompts()));
    }

    private static void refuses(String words, String part, String... answers) {
        assertThatThrownBy(() -> guide(words, answers))
                .isInstanceOf(PlanException.class)
                .hasMessageContaining(part);
    }
}
