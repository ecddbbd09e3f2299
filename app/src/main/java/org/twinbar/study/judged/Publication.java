package org.twinbar.study.judged;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.twinbar.decision.Amount;
import org.twinbar.decision.Found;
import org.twinbar.decision.Verdict;

/**
 * What was published of a study: kept as it was said, whatever is calculated later.
 *
 * @param when it was entered, with the zone
 * @param who as they named themselves
 * @param where it was published, such as the title of a video; may be empty
 * @param program that calculated it, name and version
 * @param said every verdict, in the study's order
 * @param methods the tests that gave them
 * @param files every file that was read, with its digest
 * @param readings SHA-256 of all readings that counted, corrections and left-out specimens included
 */
public record Publication(
        ZonedDateTime when,
        String who,
        String where,
        String program,
        List<Said> said,
        List<Method> methods,
        List<KeptFile> files,
        String readings) {

    /** Two numbers agree where they differ by no more than this share: twelve digits. */
    private static final double TWELVE_DIGITS = 1e-12;

    public Publication {
        said = List.copyOf(said);
        methods = List.copyOf(methods);
        files = List.copyOf(files);
    }

    /**
     * One verdict as it was published.
     *
     * @param verdict its word; none where there was no verdict yet
     * @param numbers estimate, low and high, as far as there were any
     */
    public record Said(
            String claim,
            String question,
            Optional<String> verdict,
            String sentence,
            Map<String, Double> numbers) {

        public Said {
            numbers = Ordered.copy(numbers);
        }

        /** Returns the verdict's word, or that there was none. */
        public String word() {
            return verdict.orElse("no verdict yet");
        }

        /** Returns everything that a study says now. */
        public static List<Said> all(JudgedStudy study) {
            List<Said> all = new ArrayList<>();
            for (JudgedClaim claim : study.claims()) {
                for (Answer answer : claim.answers()) {
                    Map<String, Double> numbers = new LinkedHashMap<>();
                    if (answer instanceof Answer.Compared compared) {
                        Found found = compared.comparison().found();
                        put(numbers, "estimate", found.estimate());
                        put(numbers, "low", found.low());
                        put(numbers, "high", found.high());
                    }
                    all.add(new Said(
                            claim.words(),
                            answer.question(),
                            answer.verdict().map(Verdict::word),
                            answer.sentence(),
                            numbers));
                }
            }
            return all;
        }

        private static void put(Map<String, Double> numbers, String name, Amount amount) {
            if (amount instanceof Amount.Known known) {
                numbers.put(name, known.value());
            }
        }

        private boolean agrees(Said other) {
            return verdict.equals(other.verdict)
                    && numbers.keySet().equals(other.numbers.keySet())
                    && numbers.entrySet().stream()
                            .allMatch(it -> agree(
                                    it.getValue(),
                                    Objects.requireNonNull(other.numbers.get(it.getKey()))));
        }

        private static boolean agree(double a, double b) {
            return Math.abs(a - b) <= TWELVE_DIGITS * Math.max(Math.abs(a), Math.abs(b));
        }
    }

    /**
     * A test as it was when its verdicts were published.
     *
     * @param instruments what is known of each, in words, by name
     */
    public record Method(
            String name,
            int version,
            Map<String, String> settings,
            Map<String, String> instruments) {
        public Method {
            settings = Ordered.copy(settings);
            instruments = Ordered.copy(instruments);
        }

        public static Method of(MethodUsed used) {
            Map<String, String> instruments = new LinkedHashMap<>();
            used.instruments()
                    .forEach(it -> instruments.put(
                            it.name(),
                            "step %s, gain u %s, zero u %s"
                                    .formatted(
                                            amount(it.resolution(), it.unit().symbol()),
                                            Exact.of(it.gainUncertainty()),
                                            amount(
                                                    it.zeroUncertainty(),
                                                    it.unit().symbol()))));
            return new Method(
                    used.name(), used.description().version(), used.settings(), instruments);
        }

        private static String amount(double value, String unit) {
            return Exact.of(value) + (unit.isEmpty() ? "" : " " + unit);
        }
    }

    /** A verdict that is no longer what was published, in its word or in its numbers. */
    public record Divergence(Said then, Said now) {

        /** Whether another verdict is given, rather than the same from other numbers. */
        public boolean verdict() {
            return !then.verdict().equals(now.verdict());
        }
    }

    /**
     * Returns what is judged otherwise now, by the place of its answer in the study, counted from
     * 0. Questions that came later were never published.
     */
    public Map<Integer, Divergence> against(JudgedStudy study) {
        Map<List<String>, Integer> met = new HashMap<>();
        Map<List<Object>, Said> then = new HashMap<>();
        said.forEach(it -> then.put(key(met, it), it));
        met.clear();
        Map<Integer, Divergence> differing = new LinkedHashMap<>();
        List<Said> now = Said.all(study);
        for (int at = 0; at < now.size(); at++) {
            Said before = then.get(key(met, now.get(at)));
            if (before != null && !before.agrees(now.get(at))) {
                differing.put(at, new Divergence(before, now.get(at)));
            }
        }
        return differing;
    }

    /** Two questions of one name are told apart by their order. */
    private static List<Object> key(Map<List<String>, Integer> met, Said said) {
        List<String> names = List.of(said.claim(), said.question());
        return List.of(names, met.merge(names, 1, Integer::sum));
    }

    /** Says what is other than it was, in sentences: readings, files, methods, the program. */
    public List<String> causes(JudgedStudy study) {
        List<String> causes = new ArrayList<>();
        study.history().stream()
                .filter(change -> change.when().isAfter(when))
                .forEach(change -> causes.add("%s (%s; %s, %s)."
                        .formatted(
                                change.what(),
                                change.why(),
                                change.who(),
                                CorrectionDraft.date(change.when()))));
        study.files().stream()
                .filter(file -> files.stream().noneMatch(it -> it.sha256().equals(file.sha256())))
                .forEach(file -> causes.add("The file %s was added.".formatted(file.name())));
        for (Method before : methods) {
            study.method(before.name()).map(Method::of).ifPresent(now -> {
                if (now.version() != before.version()) {
                    causes.add("The method '%s' was in version %s and is in version %s now."
                            .formatted(now.name(), before.version(), now.version()));
                }
                differing(
                        causes,
                        "The setting '%s' of %s",
                        now.name(),
                        before.settings(),
                        now.settings());
                differing(
                        causes,
                        "What is known of the instrument '%s' in %s",
                        now.name(),
                        before.instruments(),
                        now.instruments());
            });
        }
        if (!program.equals(study.maker().program())) {
            causes.add("%s calculated it, %s calculates it now."
                    .formatted(program, study.maker().program()));
        }
        return causes;
    }

    private static void differing(
            List<String> causes,
            String what,
            String method,
            Map<String, String> before,
            Map<String, String> now) {
        Map<String, String> all = new LinkedHashMap<>(before);
        now.forEach(all::putIfAbsent);
        for (String name : all.keySet()) {
            String old = before.getOrDefault(name, "as preset");
            String fresh = now.getOrDefault(name, "as preset");
            if (!old.equals(fresh)) {
                causes.add("%s was %s and is %s now."
                        .formatted(what.formatted(name, method), old, fresh));
            }
        }
    }

    /** Returns the words of a correction to post; none where all is judged as it was published. */
    public Optional<String> correction(JudgedStudy study) {
        return CorrectionDraft.of(this, study);
    }
}
