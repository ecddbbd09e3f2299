package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.twinbar.method.Property;
import org.twinbar.report.Sheet.Block;
import org.twinbar.report.Sheet.Picture;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Source;

/** Where the uncertainty of one specimen's value comes from, group by group. */
final class Budgets {

    private Budgets() {}

    static List<Block> of(JudgedStudy study) {
        List<Block> blocks = new ArrayList<>();
        for (MethodUsed used : study.methods()) {
            List<Picture> pictures = new ArrayList<>();
            mainProperty(study, used)
                    .ifPresent(property -> byGroup(study.specimensOf(used.name()))
                            .forEach((group, members) ->
                                    picture(property, group, members).ifPresent(pictures::add)));
            if (!pictures.isEmpty()) {
                blocks.add(new Block.Heading(used.description().title()));
                blocks.add(new Block.Pictures(pictures));
            }
        }
        if (!blocks.isEmpty()) {
            blocks.add(
                    0,
                    new Block.Paragraph(
                            "Shares of the variance of one specimen's value, on average over a group."
                                    + " The scatter from specimen to specimen is not in it; that is in"
                                    + " the intervals."));
        }
        return blocks;
    }

    private static Optional<Property> mainProperty(JudgedStudy study, MethodUsed used) {
        return used.description().properties().stream()
                .filter(property -> study.specimensOf(used.name()).stream()
                        .anyMatch(s -> Cells.u(s.result(), property) > 0))
                .findFirst();
    }

    static Map<String, List<JudgedSpecimen>> byGroup(List<JudgedSpecimen> specimens) {
        Map<String, List<JudgedSpecimen>> groups = new LinkedHashMap<>();
        specimens.forEach(
                s -> groups.computeIfAbsent(s.group(), g -> new ArrayList<>()).add(s));
        return groups;
    }

    /** Returns the sources of one property in one group, where any value of it has a budget. */
    static Optional<Picture> picture(
            Property property, String group, List<JudgedSpecimen> members) {
        Map<String, Double> shares = new LinkedHashMap<>();
        int counted = 0;
        for (JudgedSpecimen member : members) {
            Budget budget = member.result().budgets().get(property);
            if (budget == null || budget.u() == 0) {
                continue;
            }
            counted++;
            for (Source source : budget.shifts().keySet()) {
                shares.merge(kind(source, member.code()), budget.share(source), Double::sum);
            }
        }
        if (counted == 0) {
            return Optional.empty();
        }
        List<Parts.Part> parts = new ArrayList<>();
        for (Map.Entry<String, Double> share : shares.entrySet()) {
            parts.add(new Parts.Part(share.getKey(), share.getValue() / counted));
        }
        String what = "Where the uncertainty of one specimen's value comes from: %s, %s"
                .formatted(property.label().toLowerCase(Locale.ROOT), group);
        return Optional.of(new Picture(Figures.parts(new Parts(what, parts)), what + "."));
    }

    /** A source of one specimen's own is named after it; the group is told of its kind. */
    static String kind(Source source, String specimen) {
        String identity = source.identity();
        return source.reach() == Source.Reach.OWN && identity.startsWith(specimen + " ")
                ? identity.substring(specimen.length() + 1)
                : identity;
    }
}
