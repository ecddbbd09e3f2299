package org.twinbar.study;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.decision.Verdict;
import org.twinbar.method.Methods;
import org.twinbar.report.Report;
import org.twinbar.report.kit.Kit;
import org.twinbar.report.kit.KitFile;
import org.twinbar.report.kit.Palette;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Exact;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Publication;
import org.twinbar.study.packed.PackageReadme;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

/**
 * Reads everything that is published of a question, report, kit, package and correction, for
 * ratios, differences, levels and every verdict: no word says more than its verdict.
 */
class PublishedWordsTest {

    /** Words that no verdict of this bench bears; that nothing is certified may be said. */
    private static final List<String> NEVER = List.of(
            "prove",
            "proof",
            "significan",
            "guarantee",
            "certif",
            "undoubted",
            "certainly",
            "p-value",
            "always");

    private static final List<String> DENIALS =
            List.of("certifies nothing", "never certifies", "proves nothing");

    /** Words that only these verdicts bear. */
    private static final Map<String, Set<Verdict>> RESERVED = Map.of(
            "holds on this bench", EnumSet.of(Verdict.SUPPORTED),
            "goes the way that was claimed", EnumSet.of(Verdict.SUPPORTED),
            "clear 50 mpa on this bench", EnumSet.of(Verdict.SUPPORTED),
            "is a change for the better", EnumSet.of(Verdict.BETTER_SIZE_OPEN),
            "readings cannot tell", EnumSet.of(Verdict.OPEN),
            "smaller than the 5 % worth", EnumSet.of(Verdict.TOO_SMALL),
            "% either way", EnumSet.of(Verdict.SUPPORTED),
            "doesn't hold on this bench", EnumSet.of(Verdict.CONTRADICTED));

    private static final double[] FACTORS = {0.8, 1.0, 1.02, 1.07, 1.3};
    private static final double[] SCATTERS = {0.004, 0.04, 0.1};

    /** A spread of six that is alike in both groups. */
    private static final double[] SPREAD = {-1.2, -0.6, -0.2, 0.2, 0.6, 1.2};

    @TempDir
    static Path folder;

    private static Workspace workspace;

    private static final Set<String> WORDS_MET = new java.util.HashSet<>();
    private static final Set<Verdict> MET = EnumSet.noneOf(Verdict.class);

    @BeforeAll
    static void open() {
        workspace = Workspace.open(
                folder,
                Methods.builtIn(),
                Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneId.of("UTC")),
                "Twinbar test");
    }

    @AfterAll
    static void metEveryVerdictThatReadingsCanGiveAndAllTheWords() {
        workspace.close();
        assertThat(WORDS_MET).isEqualTo(RESERVED.keySet());
        assertThat(MET).isEqualTo(EnumSet.complementOf(EnumSet.of(Verdict.NOT_FOR_THIS_BENCH)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "worth = \"5%\"\nclaimed = \"10%\"",
                "expect = \"lower\"\nworth = \"5%\"",
                "expect = \"same\"\nworth = \"5%\"",
                "claimed = \"10%\"",
                "",
                "effect = \"difference\"\nworth = \"3 MPa\"",
                "at = \"50 MPa\"\nof = \"50%\"",
            })
    void sayNoMoreThanTheVerdict(String terms) {
        JudgedStudy before = null;
        Set<Verdict> read = EnumSet.noneOf(Verdict.class);
        for (double factor : FACTORS) {
            for (double scatter : SCATTERS) {
                JudgedStudy study = study(terms, factor, scatter);
                Verdict verdict = verdict(study);
                if (!read.add(verdict)) {
                    continue;
                }
                texts(study).forEach((name, text) -> {
                    requireModest(name, text);
                    requireEarned(name, text, EnumSet.of(verdict));
                    assertThat(text).as(name).contains(verdict.word());
                });
                besides(study).forEach((name, text) -> {
                    requireModest(name, text);
                    requireEarned(name, text, EnumSet.of(verdict));
                });
                if (before != null) {
                    correction(before, study, verdict);
                }
                before = study;
            }
        }
        MET.addAll(read);
    }

    private static void correction(JudgedStudy then, JudgedStudy now, Verdict verdict) {
        Publication published = new Publication(
                ZonedDateTime.parse("2026-05-04T10:00:00Z"),
                "Ada",
                "",
                "Twinbar test",
                Publication.Said.all(then),
                List.of(),
                then.files(),
                "");
        // Levels of two studies may be the same, and then there is nothing to correct.
        published.correction(now).ifPresent(draft -> {
            requireModest("correction", draft);
            requireEarned("correction", draft, EnumSet.of(verdict, verdict(then)));
            assertThat(draft).contains(verdict.word(), verdict(then).word());
        });
    }

    private static void requireModest(String name, String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        for (String denial : DENIALS) {
            lower = lower.replace(denial, "");
        }
        String plain = lower;
        assertThat(NEVER).as(name).noneMatch(plain::contains);
    }

    private static void requireEarned(String name, String text, Set<Verdict> verdicts) {
        String lower = text.toLowerCase(Locale.ROOT).replaceAll("[\\p{Zs}\\s]+", " ");
        RESERVED.forEach((words, allowed) -> {
            if (lower.contains(words)) {
                WORDS_MET.add(words);
                assertThat(verdicts).as("'%s' in the %s", words, name).anyMatch(allowed::contains);
            }
        });
    }

    /** Returns what is said of pictures to who can't see them, and the kit's other words. */
    private static Map<String, String> besides(JudgedStudy study) {
        Map<String, String> besides = new LinkedHashMap<>();
        besides.put("pictures of the report", labels(Report.html(study)));
        int pictures = 0;
        for (KitFile file : Kit.of(study, List.of(Palette.LIGHT))) {
            String content = file.name().matches(".*\\.(svg|txt|md)")
                    ? new String(file.content().get(), UTF_8)
                    : "";
            if (file.name().endsWith(".svg")) {
                pictures++;
                besides.put(file.name(), labels(content));
            } else if (!content.isEmpty()) {
                besides.put(file.name(), content);
            }
        }
        assertThat(pictures).as("a verdict in three shapes, and the table").isGreaterThan(3);
        assertThat(besides).containsKeys("shots.md", "alternative-text.txt");
        besides.forEach((name, text) -> assertThat(text).as(name).isNotBlank());
        return besides;
    }

    /** Returns every label and title of a page or a picture. */
    private static String labels(String markup) {
        return java.util.regex.Pattern.compile("(?:aria-label|title|alt)=\"([^\"]*)\"")
                .matcher(markup)
                .results()
                .map(it -> it.group(1))
                .collect(java.util.stream.Collectors.joining("\n"));
    }

    private static Map<String, String> texts(JudgedStudy study) {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put(
                "report",
                Report.html(study)
                        .replaceAll("(?s)<style>.*?</style>", "")
                        .replaceAll("<[^>]*>", " ")
                        .replace("&#39;", "'"));
        for (KitFile file : Kit.of(study, List.of(Palette.LIGHT))) {
            if (file.name().matches("(description|table|alternative-text)\\.(txt|md)")) {
                texts.put(file.name(), new String(file.content().get(), UTF_8));
            }
        }
        assertThat(texts).as("the report and four texts of the kit").hasSize(5);
        texts.put("README.md", PackageReadme.of(study, Optional.empty(), List.of()));
        return texts;
    }

    @Test
    void sendsWhatNoBenchSettlesToThoseWhoDecide() {
        JudgedStudy study = workspace.tryOut(StudyFile.parse("s.toml", """
                        study = "cups"
                        [[claim]]
                        words = "fit for drinking water"
                        decided_by = "The local rules, and an accredited laboratory."
                        [[claim.condition]]
                        text = "Nothing migrates."
                        """), Handed.nothing());
        Map<String, String> texts = texts(study);
        besides(study).forEach(PublishedWordsTest::requireModest);
        texts.forEach((name, text) -> {
            requireModest(name, text);
            assertThat(text).as(name).contains("not for this bench");
        });
        assertThat(texts.get("report")).contains("accredited laboratory");
        assertThat(texts.get("description.txt")).contains("accredited laboratory");
    }

    private static Verdict verdict(JudgedStudy study) {
        return study.claims().get(0).answers().get(0).verdict().orElseThrow();
    }

    private static JudgedStudy study(String terms, double factor, double scatter) {
        List<String> rows = new ArrayList<>(List.of("specimen,group,area_mm2,peak_force_N"));
        for (int i = 0; i < SPREAD.length; i++) {
            double plain = 2000 * (1 + scatter * SPREAD[i]);
            rows.add("P%s,plain,40,%s".formatted(i + 1, Exact.of(Math.rint(plain))));
            rows.add("C%s,coated,40,%s".formatted(i + 1, Exact.of(Math.rint(factor * plain))));
        }
        String level = terms.startsWith("at") ? "" : "control = \"plain\"\n";
        StudyFile file = StudyFile.parse("s.toml", """
                study = "bars"
                [[test]]
                method = "tensile"
                specimens = "bars.csv"
                [[claim]]
                words = "what the coat does"
                [[claim.question]]
                name = "strength"
                method = "tensile"
                property = "strength"
                treated = "coated"
                """ + level + terms + "\n");
        return workspace.tryOut(
                file,
                Handed.among(
                        List.of(Upload.of("bars.csv", String.join("\n", rows).getBytes(UTF_8)))));
    }
}
