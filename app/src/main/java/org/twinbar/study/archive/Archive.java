package org.twinbar.study.archive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Property;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Numbers;
import org.twinbar.quantity.QuantityException;
import org.twinbar.statistics.Summary;
import org.twinbar.study.Remembered;
import org.twinbar.study.Stamp;
import org.twinbar.study.Workspace;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.JudgedClaim;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.judged.StudyName;

/**
 * All results of a workspace. What a study gave is kept in memory until the study changes, so that
 * the second question is answered at once.
 */
public final class Archive {

    /** Part of the program's memory that it may hold. */
    private static final int SHARE = 8;

    private final Workspace workspace;
    private final Remembered<UUID, Stamp, Of> known =
            new Remembered<>(Remembered.shareOfMemory(SHARE), Of::bytes);

    public Archive(Workspace workspace) {
        this.workspace = workspace;
    }

    /** One study in one state. */
    private record Of(List<Gain> gains, List<Specimens> specimens) {

        private long bytes() {
            long members =
                    specimens.stream().mapToLong(it -> it.members().size()).sum();
            return 20_000L * gains.size() + 500L * specimens.size() + 50 * members;
        }
    }

    /** The numbers of one group, for whatever they are counted per. */
    private record Specimens(
            StudyName study,
            String method,
            Property property,
            String group,
            Map<String, String> alike,
            List<Member> members) {}

    /** A specimen that has a number, without its curve and readings, of which there are many. */
    private record Member(String code, double value, Map<String, String> factors) {}

    /** Returns the gains that fit, the largest first, each kind of effect by itself. */
    public List<Gain> gains(Filter filter, Progress progress) {
        return all(progress).stream()
                .flatMap(of -> of.gains().stream())
                .filter(filter::fits)
                .sorted(Comparator.comparing(Gain::kind)
                        .thenComparing(it -> -it.estimate().orElse(Double.NEGATIVE_INFINITY)))
                .toList();
    }

    /**
     * Returns the means of the groups that fit, the highest first.
     *
     * @param per a factor whose number each value is divided by, such as a cost; nothing for none
     * @throws InputException where the factor of a specimen is no number above zero
     */
    public List<GroupMean> means(Filter filter, Optional<String> per, Progress progress) {
        List<GroupMean> means = new ArrayList<>();
        for (Of of : all(progress)) {
            for (Specimens group : of.specimens()) {
                if (filter.fits(group.method(), group.property(), group.group(), group.alike())) {
                    mean(group, per).ifPresent(means::add);
                }
            }
        }
        means.sort(Comparator.comparing((GroupMean it) -> it.property().name())
                .thenComparing(it -> -it.mean()));
        return means;
    }

    /**
     * Returns the usual scatter from specimen to specimen of each method and property that fits, by
     * material where one is named, from all groups of two and more.
     */
    public List<UsualScatter> scatter(Filter filter, Progress progress) {
        Map<List<String>, List<GroupMean>> alike = new LinkedHashMap<>();
        for (GroupMean mean : means(filter, Optional.empty(), progress)) {
            if (mean.n() >= 2 && mean.property().scale() == Property.Scale.RATIO) {
                alike.computeIfAbsent(
                                List.of(
                                        mean.method(),
                                        mean.property().column(),
                                        mean.alike().getOrDefault("material", "")),
                                it -> new ArrayList<>())
                        .add(mean);
            }
        }
        return alike.values().stream()
                .map(UsualScatter::of)
                .flatMap(Optional::stream)
                .toList();
    }

    private List<Of> all(Progress progress) {
        List<StudyName> studies = workspace.studies();
        List<Of> all = new ArrayList<>();
        for (StudyName study : studies) {
            all.add(known.get(
                    study.id(),
                    workspace.stamp(study),
                    () -> of(study, workspace.judge(study, Progress.SILENT))));
            progress.done(all.size(), studies.size());
        }
        return all;
    }

    private static Of of(StudyName name, JudgedStudy study) {
        List<Gain> gains = new ArrayList<>();
        for (JudgedClaim claim : study.claims()) {
            for (Answer answer : claim.answers()) {
                if (answer instanceof Answer.Compared compared) {
                    study.method(compared.method())
                            .ifPresent(used -> gains.add(gain(name, study, claim, compared, used)));
                }
            }
        }
        return new Of(gains, specimens(name, study));
    }

    private static Gain gain(
            StudyName name,
            JudgedStudy study,
            JudgedClaim claim,
            Answer.Compared compared,
            MethodUsed used) {
        List<JudgedSpecimen> specimens =
                study.specimens().stream().filter(compared::about).toList();
        return new Gain(
                name,
                claim.words(),
                compared.method(),
                used.description().version(),
                used.settings(),
                compared.property(),
                shared(specimens),
                compared.comparison());
    }

    /** Groups are told apart by orientation and material too: they are not alike. */
    private static List<Specimens> specimens(StudyName name, JudgedStudy study) {
        List<Specimens> groups = new ArrayList<>();
        for (MethodUsed used : study.methods()) {
            Map<List<String>, List<JudgedSpecimen>> members = new LinkedHashMap<>();
            for (JudgedSpecimen specimen : study.specimensOf(used.name())) {
                if (specimen.counts()) {
                    members.computeIfAbsent(
                                    List.of(
                                            specimen.group(),
                                            specimen.factors().getOrDefault("orientation", ""),
                                            specimen.factors().getOrDefault("material", "")),
                                    it -> new ArrayList<>())
                            .add(specimen);
                }
            }
            members.forEach((key, specimens) -> used.description()
                    .properties()
                    .forEach(property -> groups.add(new Specimens(
                            name,
                            used.name(),
                            property,
                            key.get(0),
                            shared(specimens),
                            numbers(specimens, property)))));
        }
        return groups;
    }

    private static Map<String, String> shared(List<JudgedSpecimen> specimens) {
        Map<String, String> shared = new LinkedHashMap<>();
        if (!specimens.isEmpty()) {
            shared.putAll(specimens.get(0).factors());
            specimens.forEach(it -> shared.entrySet()
                    .removeIf(factor ->
                            !factor.getValue().equals(it.factors().get(factor.getKey()))));
            shared.values().removeIf(String::isBlank);
        }
        return shared;
    }

    private static List<Member> numbers(List<JudgedSpecimen> specimens, Property property) {
        List<Member> numbers = new ArrayList<>();
        for (JudgedSpecimen specimen : specimens) {
            Yield yield = specimen.result().yields().get(property);
            if (yield instanceof Yield.Value value) {
                numbers.add(new Member(specimen.code(), value.value(), specimen.factors()));
            } else if (yield instanceof Yield.Fitted fitted) {
                numbers.add(new Member(specimen.code(), fitted.value(), specimen.factors()));
            }
        }
        return numbers;
    }

    private static Optional<GroupMean> mean(Specimens group, Optional<String> per) {
        if (group.members().isEmpty()) {
            return Optional.empty();
        }
        double[] values = group.members().stream()
                .mapToDouble(it -> per.isEmpty() ? it.value() : it.value() / divisor(it, per.get()))
                .toArray();
        Summary summary = Summary.of(values);
        return Optional.of(new GroupMean(
                group.study(),
                group.method(),
                group.property(),
                group.group(),
                group.alike(),
                values.length,
                summary.mean(),
                values.length < 2 ? 0 : Math.sqrt(summary.variance())));
    }

    private static double divisor(Member specimen, String factor) {
        String text = specimen.factors().getOrDefault(factor, "");
        try {
            double number = Numbers.parse(text, text.indexOf(',') >= 0 ? ',' : '.');
            if (number > 0) {
                return number;
            }
        } catch (QuantityException e) {
            // It is said below, with the specimen that it stands at.
        }
        throw new InputException("specimen %s has '%s' for its %s, must be a number above zero"
                .formatted(specimen.code(), text, factor));
    }
}
