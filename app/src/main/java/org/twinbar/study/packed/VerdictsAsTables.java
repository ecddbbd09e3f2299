package org.twinbar.study.packed;

import static org.twinbar.exchange.datapackage.Field.Type.DATETIME;
import static org.twinbar.exchange.datapackage.Field.Type.INTEGER;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.twinbar.decision.Amount;
import org.twinbar.decision.Beside;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Found;
import org.twinbar.decision.Group;
import org.twinbar.decision.Needed;
import org.twinbar.decision.Question;
import org.twinbar.decision.Reach;
import org.twinbar.decision.Verdict;
import org.twinbar.exchange.datapackage.DataTable;
import org.twinbar.exchange.datapackage.DataTable.Reference;
import org.twinbar.exchange.datapackage.Field;
import org.twinbar.finding.Finding;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.Exact;
import org.twinbar.study.judged.JudgedClaim;
import org.twinbar.study.judged.JudgedStudy;

/** Claims, verdicts and the comparisons that they read off, as tables of a package. */
final class VerdictsAsTables {

    private static final Field ANSWER =
            Field.of("answer", INTEGER, "Counts the answers of a study.").required();
    private static final Reference TO_VERDICTS = Reference.to("verdicts", "answer");

    private final JudgedStudy study;
    private final List<Numbered> answers = new ArrayList<>();

    /** An answer with its number and that of its claim. */
    private record Numbered(int number, int claim, Answer answer) {
        String key() {
            return Integer.toString(number);
        }
    }

    /** An answer that groups of specimens gave. */
    private record Compared(String key, Answer.Compared answer) {
        Comparison comparison() {
            return answer.comparison();
        }
    }

    private VerdictsAsTables(JudgedStudy study) {
        this.study = study;
        int claim = 0;
        for (JudgedClaim each : study.claims()) {
            claim++;
            for (Answer answer : each.answers()) {
                answers.add(new Numbered(answers.size() + 1, claim, answer));
            }
        }
    }

    static List<DataTable> of(JudgedStudy study) {
        VerdictsAsTables tables = new VerdictsAsTables(study);
        return List.of(
                tables.claims(),
                tables.verdicts(),
                tables.comparisons(),
                tables.groups(),
                tables.beside(),
                tables.conditions(),
                tables.findings(),
                tables.changes());
    }

    private DataTable claims() {
        List<List<String>> rows = new ArrayList<>();
        for (JudgedClaim claim : study.claims()) {
            rows.add(List.of(Integer.toString(rows.size() + 1), claim.words(), claim.saidBy()));
        }
        return new DataTable(
                "claims",
                "What is said of the treatment.",
                List.of(
                        Field.of("claim", INTEGER, "Counts the claims.").required(),
                        Field.text("words", "The claim in its words.").required(),
                        Field.text("said_by", "Who says it.")),
                List.of("claim"),
                List.of(),
                rows);
    }

    private DataTable verdicts() {
        List<List<String>> rows = answers.stream()
                .map(it -> List.of(
                        it.key(),
                        Integer.toString(it.claim()),
                        it.answer().question(),
                        it.answer().verdict().map(Verdict::word).orElse(""),
                        it.answer().sentence()))
                .toList();
        return new DataTable(
                "verdicts",
                "The answer to each question of each claim.",
                List.of(
                        ANSWER,
                        Field.of("claim", INTEGER, "The claim that it answers.").required(),
                        Field.text("question", "The question in a few words."),
                        Field.text("verdict", "The answer; empty where nothing was asked yet.")
                                .oneOf(Arrays.stream(Verdict.values())
                                        .map(Verdict::word)
                                        .toList()),
                        Field.text("sentence", "What was found, how sure, on what.")),
                List.of("answer"),
                List.of(Reference.to("claims", "claim")),
                rows);
    }

    private List<Compared> compared() {
        return answers.stream()
                .filter(it -> it.answer() instanceof Answer.Compared)
                .map(it -> new Compared(it.key(), (Answer.Compared) it.answer()))
                .toList();
    }

    private DataTable comparisons() {
        return new DataTable(
                "comparisons",
                "The effects that verdicts read off, each with its default interval.",
                List.of(
                        ANSWER,
                        Field.text("method", "The test that gave the values.").required(),
                        Field.text("property", "What was compared.").required(),
                        Field.text("where", "What specimens had to have to take part."),
                        Field.text("effect", "What the number is.")
                                .required()
                                .oneOf(Arrays.stream(Effect.values())
                                        .map(Effect::word)
                                        .toList()),
                        Field.text("unit", "Unit of the effect; empty for a plain number."),
                        Field.number("estimate", "The effect as seen."),
                        Field.number("low", "Lower end of its interval; empty where unbounded."),
                        Field.number("high", "Upper end of its interval; empty where unbounded."),
                        Field.number("level", "Of the interval.").required(),
                        Field.number("df", "Degrees of freedom."),
                        Field.number("p", "For reference only."),
                        Field.text("interval", "How it was calculated."),
                        Field.text("expect", "Which way the claim points."),
                        Field.number("none", "The effect's value for no change, or the level."),
                        Field.number("worth", "The smallest effect worth having."),
                        Field.number("claimed", "The effect that the claim names."),
                        Field.text("reached", "Whether the claimed effect is reached.")
                                .oneOf(Arrays.stream(Reach.values())
                                        .map(Reach::word)
                                        .toList()),
                        Field.of("needed_per_group", INTEGER, "Specimens that would settle it."),
                        Field.of("seed", INTEGER, "Of everything drawn at random.")
                                .required()),
                List.of("answer"),
                List.of(TO_VERDICTS, Reference.to("methods", "method")),
                compared().stream().map(VerdictsAsTables::comparison).toList());
    }

    private static List<String> comparison(Compared compared) {
        Answer.Compared answer = compared.answer();
        Question question = answer.comparison().question();
        Found found = answer.comparison().found();
        boolean level = question.effect() == Effect.LEVEL;
        return List.of(
                compared.key(),
                answer.method(),
                answer.property().name(),
                answer.where().entrySet().stream()
                        .map(it -> it.getKey() + "=" + it.getValue())
                        .collect(Collectors.joining("; ")),
                found.kind().word(),
                found.kind().sizedInPercent() ? "" : answer.property().unit().symbol(),
                text(found.estimate()),
                text(found.low()),
                text(found.high()),
                Exact.of(found.level()),
                text(found.df()),
                text(found.p()),
                found.method(),
                question.expectation().word(),
                Exact.of(question.none()),
                level ? "" : Exact.of(question.worth()),
                question.claimed().isPresent() ? Exact.of(question.claimed().getAsDouble()) : "",
                answer.comparison().claimed().map(Reach::word).orElse(""),
                answer.comparison().needed() instanceof Needed.Specimens needed
                        ? Integer.toString(needed.perGroup())
                        : "",
                Long.toString(question.seed()));
    }

    private DataTable groups() {
        List<List<String>> rows = new ArrayList<>();
        for (Compared compared : compared()) {
            compared.comparison()
                    .control()
                    .ifPresent(it -> rows.add(group(compared.key(), "control", it)));
            rows.add(group(compared.key(), "treated", compared.comparison().treated()));
        }
        return new DataTable(
                "groups",
                "The groups that were compared, in the unit of the property.",
                List.of(
                        ANSWER,
                        Field.text("role", "Which it is.")
                                .required()
                                .oneOf(List.of("control", "treated")),
                        Field.text("group", "Its name.").required(),
                        Field.of("n", INTEGER, "Specimens that count.")
                                .required()
                                .atLeast(0),
                        Field.number("mean", "Their mean."),
                        Field.number("sd", "Standard deviation of one of them.").atLeast(0),
                        Field.number("median", "The middle value."),
                        Field.number("mean_low", "Lower end of the mean's own 95 % interval."),
                        Field.number("mean_high", "Upper end of the mean's own 95 % interval.")),
                List.of("answer", "role"),
                List.of(TO_VERDICTS),
                rows);
    }

    private static List<String> group(String key, String role, Group group) {
        return List.of(
                key,
                role,
                group.name(),
                Integer.toString(group.n()),
                text(group.mean()),
                text(group.sd()),
                text(group.median()),
                text(group.low()),
                text(group.high()));
    }

    private DataTable beside() {
        List<List<String>> rows = new ArrayList<>();
        for (Compared compared : compared()) {
            int number = 0;
            for (Beside beside : compared.comparison().beside()) {
                number++;
                rows.add(List.of(
                        compared.key(),
                        Integer.toString(number),
                        beside.interval(),
                        text(beside.estimate()),
                        text(beside.low()),
                        text(beside.high()),
                        beside.method()));
            }
        }
        return new DataTable(
                "beside",
                "Intervals that stand beside the default one; no verdict reads them.",
                List.of(
                        ANSWER,
                        Field.of("number", INTEGER, "Counts those of an answer.")
                                .required(),
                        Field.text("interval", "Its short name.").required(),
                        Field.number("estimate", "The effect as this way sees it."),
                        Field.number("low", "Lower end."),
                        Field.number("high", "Upper end."),
                        Field.text("method", "How it was calculated.")),
                List.of("answer", "number"),
                List.of(TO_VERDICTS),
                rows);
    }

    private DataTable conditions() {
        List<List<String>> rows = new ArrayList<>();
        for (Numbered numbered : answers) {
            if (numbered.answer() instanceof Answer.OffBench off) {
                int number = 0;
                for (Answer.Condition condition : off.conditions()) {
                    number++;
                    rows.add(List.of(
                            numbered.key(),
                            Integer.toString(number),
                            condition.text(),
                            condition.evidence(),
                            off.whoDecides()));
                }
            }
        }
        return new DataTable(
                "conditions",
                "What would have to hold where no home bench can give a verdict, and who decides.",
                List.of(
                        ANSWER,
                        Field.of("number", INTEGER, "Counts the conditions of an answer.")
                                .required(),
                        Field.text("condition", "What would have to hold.").required(),
                        Field.text("evidence", "What is known of it here."),
                        Field.text("decided_by", "Who must decide.").required()),
                List.of("answer", "number"),
                List.of(TO_VERDICTS),
                rows);
    }

    private DataTable findings() {
        List<List<String>> rows = new ArrayList<>();
        study.findings().forEach(it -> rows.add(finding(rows.size(), "", "", "", it)));
        study.specimens()
                .forEach(specimen -> specimen.result()
                        .findings()
                        .forEach(it -> rows.add(
                                finding(rows.size(), specimen.method(), specimen.code(), "", it))));
        compared()
                .forEach(compared -> compared.comparison()
                        .findings()
                        .forEach(it -> rows.add(finding(rows.size(), "", "", compared.key(), it))));
        return new DataTable(
                "findings",
                "What should be known of readings, results and comparisons: of a specimen or an"
                        + " answer where it says so, else of the study.",
                List.of(
                        Field.of("number", INTEGER, "Counts the findings.").required(),
                        Field.text("method", "The test of the specimen."),
                        Field.text("specimen", "The specimen that it concerns."),
                        Field.of("answer", INTEGER, "The answer that it concerns."),
                        Field.text("code", "What sort of thing was seen.").required(),
                        Field.text("level", "How much it weighs.")
                                .oneOf(Arrays.stream(Finding.Level.values())
                                        .map(Finding.Level::word)
                                        .toList()),
                        Field.text("text", "What was seen, why it matters, what to do.")),
                List.of("number"),
                List.of(TO_VERDICTS, Reference.to("specimens", "method", "specimen")),
                rows);
    }

    private static List<String> finding(
            int before, String method, String specimen, String answer, Finding finding) {
        return List.of(
                Integer.toString(before + 1),
                method,
                specimen,
                answer,
                finding.code(),
                finding.level().word(),
                finding.text());
    }

    private DataTable changes() {
        List<List<String>> rows = new ArrayList<>();
        for (Change change : study.history()) {
            rows.add(List.of(
                    Integer.toString(rows.size() + 1),
                    change.what(),
                    change.when().toOffsetDateTime().toString(),
                    change.who(),
                    change.why()));
        }
        return new DataTable(
                "changes",
                "Corrections and specimens left out or taken back, the oldest first.",
                List.of(
                        Field.of("number", INTEGER, "Counts the changes.").required(),
                        Field.text("what", "What was changed.").required(),
                        Field.of("at", DATETIME, "When, with the zone that it was made in."),
                        Field.text("who", "Who changed it."),
                        Field.text("why", "Their reason.")),
                List.of("number"),
                List.of(),
                rows);
    }

    private static String text(Amount amount) {
        return amount instanceof Amount.Known known ? Exact.of(known.value()) : "";
    }
}
