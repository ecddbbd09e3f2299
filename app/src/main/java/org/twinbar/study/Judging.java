package org.twinbar.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Question;
import org.twinbar.decision.QuestionException;
import org.twinbar.decision.Subject;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.finding.Finding;
import org.twinbar.method.Description;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Words;
import org.twinbar.method.Yield;
import org.twinbar.study.MakingState.For;
import org.twinbar.study.bench.KeptCalibration;
import org.twinbar.study.bench.KeptReference;
import org.twinbar.study.calculation.Apart;
import org.twinbar.study.calculation.Asking;
import org.twinbar.study.calculation.Calculated;
import org.twinbar.study.calculation.Calculation;
import org.twinbar.study.calculation.Comparisons;
import org.twinbar.study.calculation.GivenResults;
import org.twinbar.study.calculation.Observing;
import org.twinbar.study.calculation.PartAndMaterial;
import org.twinbar.study.calculation.Planned;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.JudgedClaim;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Presets;
import org.twinbar.study.table.TableFile;
import org.twinbar.study.table.Upload;

/** From the state of a study to its verdicts. */
final class Judging {

    static final Finding.Kind ONE_BATCH = Finding.Kind.warning(
            "one-batch",
            "Every specimen of '%s' comes from one %s (%s), so the verdicts are about that one;"
                    + " another may differ.");

    /** Factors whose levels are made together, so that one of them alone is no repeat. */
    private static final Set<String> BATCHES = Set.of("mix", "ovenload", "batch", "spool");

    private final State state;
    private final Methods methods;
    private final Function<KeptFile, byte[]> files;
    private final Progress progress;
    private final List<MethodUsed> used = new ArrayList<>();
    private final List<JudgedSpecimen> specimens = new ArrayList<>();
    private final Set<Finding> findings = new LinkedHashSet<>();
    private final Map<String, List<Finding>> drifted = new LinkedHashMap<>();
    private final List<KeptFile> read = new ArrayList<>();

    private Judging(
            State state, Methods methods, Function<KeptFile, byte[]> files, Progress progress) {
        this.state = state;
        this.methods = methods;
        this.files = files;
        this.progress = progress;
    }

    /**
     * Judges a study.
     *
     * @param files gives what a kept file holds
     */
    static JudgedStudy judge(
            State state,
            Methods methods,
            Function<KeptFile, byte[]> files,
            String program,
            Progress progress) {
        Judging judging = new Judging(state, methods, files, progress);
        state.tests().forEach(judging::calculate);
        judging.lookForSingleBatches();
        judging.read.addAll(state.making().treating().files());
        List<JudgedClaim> claims = state.claims().stream().map(judging::judge).toList();
        StudyFile.Head head = state.head();
        return new JudgedStudy(
                head.name(),
                head.question(),
                head.about(),
                head.origin(),
                claims,
                judging.used,
                judging.specimens,
                List.copyOf(judging.findings),
                judging.read,
                state.history(),
                state.making().making(For.WHOEVER_READS, withReadings(judging.specimens)),
                state.published(),
                new JudgedStudy.Maker(program, 1));
    }

    /**
     * Tries a study with new claims.
     *
     * @throws InputException where a test can't be calculated, or a question of the new claims
     *     can't be asked of the readings that are here
     */
    static void requireAskable(
            State state, Methods methods, Function<KeptFile, byte[]> files, List<Claim> claims) {
        Judging judging = new Judging(state, methods, files, Progress.SILENT);
        state.tests().forEach(judging::calculate);
        for (Claim claim : claims) {
            for (Claim.Question question : claim.questions()) {
                try {
                    judging.answer(question);
                } catch (QuestionException e) {
                    throw new InputException("claim '%s', question '%s': %s"
                            .formatted(claim.words(), question.name(), e.getMessage()));
                }
            }
        }
    }

    private void calculate(State.KeptTest test) {
        Table table = TableFile.read(Upload.of(test.table().name(), files.apply(test.table())));
        read.add(test.table());
        read.addAll(test.curves().values());
        read.addAll(calibrations(test.sheet()));
        Calculated calculated = test.sheet().isOfResults()
                ? GivenResults.of(
                        table,
                        test.table(),
                        test.sheet(),
                        state.corrections(test.id()),
                        asked(test.sheet().method()))
                : Calculation.of(methods, test.sheet())
                        .with(state.shelf())
                        .with((Handed) (name, from) -> curve(test, name))
                        .with(state.corrections(test.id()))
                        .with((Calculation.Marks) code -> state.moved().of(test.id(), code))
                        .with(progress)
                        .run(table, test.table());
        used.add(calculated.used());
        findings.addAll(calculated.findings());
        List<Finding> bench = KeptReference.at(test.sheet(), state.shelf());
        drifted.put(test.sheet().method(), bench);
        findings.addAll(bench);
        Making making = state.making().making(For.WHOEVER_READS, Set.of());
        for (JudgedSpecimen specimen : calculated.specimens()) {
            Planned planned = Planned.of(specimen, making);
            specimens.add(new JudgedSpecimen(
                    specimen.code(),
                    specimen.method(),
                    planned.group(),
                    planned.factors(),
                    specimen.readings(),
                    specimen.result(),
                    specimen.curve(),
                    state.leftOut(test.id(), specimen.code())
                            .or(() -> state.making().pilot(specimen.code()))));
        }
    }

    /** Returns the codes of the specimens that have a result of any kind. */
    static Set<String> withReadings(List<JudgedSpecimen> specimens) {
        return specimens.stream()
                .filter(each -> each.result().yields().values().stream()
                        .anyMatch(yield -> !(yield instanceof Yield.Missing)))
                .map(JudgedSpecimen::code)
                .collect(Collectors.toSet());
    }

    /** Returns the properties that questions ask of a test. */
    private Set<String> asked(String method) {
        return state.claims().stream()
                .flatMap(claim -> claim.questions().stream())
                .filter(question -> question.method().equals(method))
                .map(question -> question.asked().property())
                .collect(Collectors.toSet());
    }

    /** Returns the tables that the instruments of a test were calibrated by. */
    private List<KeptFile> calibrations(TestSheet sheet) {
        return sheet.instrument().values().stream()
                .distinct()
                .flatMap(name -> state.shelf().find(name).stream())
                .flatMap(instrument -> instrument.calibrations().stream())
                .map(KeptCalibration::table)
                .filter(table -> !read.contains(table))
                .toList();
    }

    private Upload curve(State.KeptTest test, String name) {
        KeptFile file = test.curves().get(name);
        if (file == null) {
            throw new IllegalStateException("the curve '%s' was not kept".formatted(name));
        }
        return Upload.of(name, files.apply(file));
    }

    private void lookForSingleBatches() {
        Map<List<String>, Set<String>> levels = new LinkedHashMap<>();
        for (JudgedSpecimen specimen : specimens) {
            specimen.factors().forEach((factor, level) -> {
                if (BATCHES.contains(Presets.key(factor)) && !level.isBlank()) {
                    levels.computeIfAbsent(List.of(specimen.group(), factor), it -> new TreeSet<>())
                            .add(level);
                }
            });
        }
        levels.forEach((groupAndFactor, names) -> {
            if (names.size() == 1) {
                findings.add(ONE_BATCH.with(
                        groupAndFactor.get(0),
                        groupAndFactor.get(1).replace('_', ' '),
                        names.iterator().next()));
            }
        });
    }

    private JudgedClaim judge(Claim claim) {
        List<Answer> answers = new ArrayList<>();
        for (Claim.Question question : claim.questions()) {
            try {
                answers.addAll(answer(question));
            } catch (QuestionException e) {
                answers.add(new Answer.Unanswered(question.name(), e.getMessage()));
            }
        }
        claim.offBench()
                .map(off -> state.making().treating().withEvidence(claim.words(), off))
                .ifPresent(answers::add);
        if (answers.isEmpty()) {
            answers.add(new Answer.Unanswered(
                    claim.words(), "The claim has no question yet that readings could answer."));
        }
        return new JudgedClaim(claim.words(), claim.saidBy(), answers);
    }

    private List<Answer> answer(Claim.Question question) {
        Optional<State.KeptTest> test = state.test(question.method());
        if (test.isEmpty()) {
            return List.of(withoutReadings(question));
        }
        Property property = property(question.method(), question.asked().property());
        List<JudgedSpecimen> tested = specimens.stream()
                .filter(it -> it.method().equals(question.method()))
                .toList();
        if (tested.stream().anyMatch(it -> it.group().equals(Planned.KEY_CLOSED))) {
            return List.of(new Answer.Unanswered(question.name(), Planned.WHY_CLOSED));
        }
        Asked asked = Planned.layout(
                question.asked(), tested, state.making().making(For.WHOEVER_READS, Set.of()));
        Subject subject = new Subject(
                property.label(), property.unit(), test.get().sheet().things());
        Question measurable = Asking.question(asked, subject, property.scale());
        Description description = description(question.method());
        Apart apart = Comparisons.averages(measurable)
                ? Observing.apart(words(description, property), tested, property, asked)
                : Apart.NOTHING;
        Asked within = apart.part(asked);
        Comparisons.Outcome outcome = Comparisons.of(
                measurable,
                property.column(),
                Observing.parts(tested, property, within),
                within,
                apart);
        return answers(question, property, asked, tested, apart, outcome);
    }

    private List<Answer> answers(
            Claim.Question question,
            Property property,
            Asked asked,
            List<JudgedSpecimen> tested,
            Apart apart,
            Comparisons.Outcome outcome) {
        List<Property> properties = description(question.method()).properties();
        long treated = outcome.comparisons().stream()
                .map(it -> it.comparison().treated().name())
                .distinct()
                .count();
        List<Answer> answers = new ArrayList<>();
        for (Comparisons.Parted parted : outcome.comparisons()) {
            Asked here = asked.where(parted.by());
            List<Finding> bench = drifted.getOrDefault(question.method(), List.of());
            Comparison comparison = PartAndMaterial.beside(
                            parted.comparison(), tested, properties, property, here)
                    .doubted(bench, KeptReference.doubt(bench));
            answers.add(new Answer.Compared(
                    name(
                            question,
                            apart.inWords(parted.by()),
                            treated > 1 ? comparison.treated().name() : ""),
                    question.method(),
                    property,
                    here.where(),
                    comparison));
        }
        for (Comparisons.Lined lined : outcome.lines()) {
            answers.add(new Answer.Lined(
                    name(
                            question,
                            apart.inWords(lined.by()),
                            "over " + lined.trend().amount().label()),
                    question.method(),
                    property,
                    asked.where(lined.by()).where(),
                    asked.said(Asked.Term.CONTROL),
                    lined.trend()));
        }
        outcome.unmade()
                .forEach(it -> answers.add(new Answer.Unanswered(
                        name(question, apart.inWords(it.by()), ""), it.reason())));
        return answers;
    }

    private Answer withoutReadings(Claim.Question question) {
        if (!question.method().equals(TestSheet.OF_RESULTS)) {
            OwnMethods.named(methods, question.method());
        }
        return new Answer.Unanswered(
                question.name(),
                "No readings of the %s test are here yet.".formatted(question.method()));
    }

    /** Results that came as a table are told what they are by their column alone. */
    private List<Words> words(Description description, Property property) {
        return description.name().equals(TestSheet.OF_RESULTS)
                ? Apart.ofColumn(methods, property.column())
                : description.words();
    }

    private Description description(String method) {
        return used.stream()
                .map(MethodUsed::description)
                .filter(it -> it.name().equals(method))
                .findFirst()
                .orElseThrow();
    }

    private static String name(Claim.Question question, Map<String, String> by, String more) {
        return Stream.of(Stream.of(question.name()), by.values().stream(), Stream.of(more))
                .flatMap(words -> words)
                .filter(words -> !words.isBlank())
                .collect(Collectors.joining(", "));
    }

    private Property property(String method, String name) {
        Description description = description(method);
        return description.property(name).orElseThrow(() -> {
            List<String> names =
                    description.properties().stream().map(Property::column).toList();
            return new QuestionException("The %s test yields no '%s'%s It yields %s."
                    .formatted(
                            method,
                            name,
                            Spelling.nearest(name, names)
                                    .map("; did you mean '%s'?"::formatted)
                                    .orElse("."),
                            String.join(", ", names)));
        });
    }
}
