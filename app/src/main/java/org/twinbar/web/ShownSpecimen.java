package org.twinbar.web;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.finding.Finding;
import org.twinbar.method.Channel;
import org.twinbar.report.Curves;
import org.twinbar.report.Figures;
import org.twinbar.report.Report;
import org.twinbar.report.Sign;
import org.twinbar.report.Written;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.Curve;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;

/**
 * What a page shows of one specimen.
 *
 * @param about group and factors, in a line
 * @param values each property with its value, or why there is none
 * @param files what it was read from, each once
 * @param picture its curve for those without script, SVG
 * @param marks the places on it, numbered as the drawing numbers them
 * @param before the specimen before it in the table, for a link
 */
public record ShownSpecimen(
        String about,
        List<Named> values,
        List<Finding> findings,
        List<KeptFile> files,
        Optional<String> picture,
        List<Marked> marks,
        Optional<JudgedSpecimen> before,
        Optional<JudgedSpecimen> after) {

    public ShownSpecimen {
        values = List.copyOf(values);
        findings = List.copyOf(findings);
        files = List.copyOf(files);
        marks = List.copyOf(marks);
    }

    /**
     * A mark on the curve.
     *
     * @param name of the mark
     * @param label what people call it
     * @param where it stands, both ways
     * @param along where it stands along what runs across, as a person would type it
     * @param moved whether a person put it there
     */
    public record Marked(String name, String label, String where, String along, boolean moved) {}

    /** A value by its name. */
    public record Named(String name, String value) {}

    static ShownSpecimen of(JudgedStudy study, JudgedSpecimen specimen) {
        List<String> about = new ArrayList<>(List.of(specimen.group()));
        specimen.factors().forEach((factor, level) -> {
            if (!level.isBlank()) {
                about.add(factor.replace('_', ' ') + " " + level);
            }
        });
        List<Named> values = specimen.result().yields().keySet().stream()
                .map(it -> new Named(it.label(), Report.value(specimen.result(), it)))
                .toList();
        Set<KeptFile> files = new LinkedHashSet<>();
        specimen.readings().forEach(reading -> files.add(reading.file()));
        specimen.curve().ifPresent(curve -> files.add(curve.file()));
        List<JudgedSpecimen> all = study.specimensOf(specimen.method());
        int at = all.indexOf(specimen);
        return new ShownSpecimen(
                String.join(" · ", about),
                values,
                specimen.result().findings(),
                List.copyOf(files),
                specimen.curve().map(curve -> picture(study, specimen, curve)),
                specimen.curve().map(ShownSpecimen::marks).orElse(List.of()),
                at > 0 ? Optional.of(all.get(at - 1)) : Optional.empty(),
                at + 1 < all.size() ? Optional.of(all.get(at + 1)) : Optional.empty());
    }

    /** Whether some question of the study takes a specimen's group as its control. */
    static boolean isControl(JudgedStudy study, JudgedSpecimen specimen) {
        return study.claims().stream()
                .flatMap(claim -> claim.answers().stream())
                .filter(Answer.Compared.class::isInstance)
                .map(Answer.Compared.class::cast)
                .filter(answer -> answer.method().equals(specimen.method()))
                .flatMap(answer -> answer.comparison().control().stream())
                .anyMatch(control -> control.name().equals(specimen.group()));
    }

    private static String picture(JudgedStudy study, JudgedSpecimen specimen, Curve curve) {
        Sign sign = isControl(study, specimen) ? Sign.CONTROL : Sign.FIRST;
        Optional<Integer> marked = curve.marks().entrySet().stream()
                .filter(mark -> mark.getKey().name().equals("peak"))
                .map(Map.Entry::getValue)
                .findFirst();
        return Figures.curves(Curves.of(
                words(curve.across()),
                words(curve.up()),
                List.of(new Curves.Group(
                        specimen.code(),
                        sign,
                        List.of(new Curves.Curve(
                                specimen.code(), curve.x(), curve.y(), marked))))));
    }

    private static List<Marked> marks(Curve curve) {
        List<Marked> marks = new ArrayList<>();
        curve.marks()
                .forEach((mark, row) -> marks.add(new Marked(
                        mark.name(),
                        mark.label(),
                        "%s, %s"
                                .formatted(
                                        at(curve.up(), curve.y()[row]),
                                        at(curve.across(), curve.x()[row])),
                        at(curve.across(), curve.x()[row]),
                        curve.moved().contains(mark))));
        return marks;
    }

    private static String at(Channel channel, double value) {
        return (Written.number(value, 4) + "\u2009" + channel.unit().symbol()).strip();
    }

    static String words(Channel channel) {
        String unit = channel.unit().symbol();
        return channel.label() + (unit.isEmpty() ? "" : " in " + unit);
    }
}
