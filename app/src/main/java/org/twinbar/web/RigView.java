package org.twinbar.web;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.twinbar.finding.Finding;
import org.twinbar.method.Limits;
import org.twinbar.method.Property;
import org.twinbar.method.Yield;
import org.twinbar.report.Report;
import org.twinbar.study.TypedTest;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;

/**
 * A test as somebody at the rig sees it: all its specimens, one of them shown, so that going to the
 * next one needs no connection.
 *
 * @param shown number of the specimen that is shown, from 1
 * @param trouble what was wrong with what was looked for; empty where all is well
 */
public record RigView(
        StudyName study,
        String method,
        TypedTest test,
        List<RigSpecimen> specimens,
        int shown,
        String trouble) {

    public RigView {
        specimens = List.copyOf(specimens);
    }

    /**
     * @param wanted code or number of the specimen, or what its label says; the first that isn't
     *     done where it is empty
     * @param result of the one that is shown
     */
    static RigView of(
            StudyName study,
            String method,
            TypedTest test,
            String wanted,
            Function<TypedTest.Specimen, RigSpecimen.Result> result) {
        Optional<LabelAddress> label = LabelAddress.read(wanted);
        Optional<TypedTest.Specimen> found = label.map(it -> it.isOf(study)
                        ? find(test, it.code())
                        : Optional.<TypedTest.Specimen>empty())
                .orElseGet(() -> find(test, wanted));
        TypedTest.Specimen shown = found.orElseGet(() -> test.specimens().stream()
                .filter(specimen -> !specimen.isDone())
                .findFirst()
                .orElse(test.specimens().get(0)));
        String rig = Links.rig(study, method);
        // Each looks at every reading of the test, so that it is asked for once.
        Map<TypedTest.Field, Optional<Limits>> usual =
                test.fields().stream().collect(Collectors.toMap(it -> it, test::usual));
        return new RigView(
                study,
                method,
                test,
                test.specimens().stream()
                        .map(specimen -> RigSpecimen.of(
                                rig,
                                test,
                                usual,
                                specimen,
                                specimen.equals(shown)
                                        ? result.apply(specimen)
                                        : RigSpecimen.Result.NONE))
                        .toList(),
                shown.number(),
                wanted.isBlank() || found.isPresent()
                        ? ""
                        : trouble(study, label, wanted, test.specimens().size()));
    }

    private static String trouble(
            StudyName study, Optional<LabelAddress> label, String wanted, int specimens) {
        if (label.isPresent() && !label.get().isOf(study)) {
            return "That is the label of a specimen of another study, '%s'."
                    .formatted(label.get().code());
        }
        return "The test has no specimen '%s'; its numbers go from 1 to %s."
                .formatted(label.map(LabelAddress::code).orElse(wanted), specimens);
    }

    /** A code goes before a number, since codes may be numbers. */
    private static Optional<TypedTest.Specimen> find(TypedTest test, String wanted) {
        String key = wanted.strip().toLowerCase(Locale.ROOT);
        return test.specimens().stream()
                .filter(it -> it.code().toLowerCase(Locale.ROOT).equals(key))
                .findFirst()
                .or(() -> test.specimens().stream()
                        .filter(it -> Integer.toString(it.number()).equals(key))
                        .findFirst());
    }

    /** The first property that there is, and what was noticed; else why there is none. */
    static RigSpecimen.Result result(JudgedSpecimen judged) {
        List<Property> properties = List.copyOf(judged.result().yields().keySet());
        Property property = properties.stream()
                .filter(it -> !(judged.result().yields().get(it) instanceof Yield.Missing))
                .findFirst()
                .orElse(properties.get(0));
        return new RigSpecimen.Result(
                property.label(),
                !(judged.result().yields().get(property) instanceof Yield.Missing),
                Report.value(judged.result(), property),
                judged.result().findings().stream()
                        .filter(it -> it.level() != Finding.Level.NOTE)
                        .map(Finding::text)
                        .toList());
    }

    /** Returns the specimen that is shown. */
    RigSpecimen one() {
        return specimens.get(shown - 1);
    }

    /** Returns the page with a field of the shown specimen as it is asked about. */
    RigView with(RigField asked) {
        return new RigView(
                study,
                method,
                test,
                specimens.stream().map(it -> isShown(it) ? it.with(asked) : it).toList(),
                shown,
                trouble);
    }

    public String rig() {
        return Links.rig(study, method);
    }

    public String progress() {
        return test.progress();
    }

    public boolean isShown(RigSpecimen specimen) {
        return specimen.number() == shown;
    }

    public Optional<RigSpecimen> before(RigSpecimen specimen) {
        return specimen.number() == 1
                ? Optional.empty()
                : Optional.of(specimens.get(specimen.number() - 2));
    }

    public Optional<RigSpecimen> after(RigSpecimen specimen) {
        return specimen.number() == specimens.size()
                ? Optional.empty()
                : Optional.of(specimens.get(specimen.number()));
    }

    public boolean invented() {
        return study.origin() == JudgedStudy.Origin.INVENTED;
    }
}
