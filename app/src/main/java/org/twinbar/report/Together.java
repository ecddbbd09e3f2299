package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.twinbar.decision.Amount;
import org.twinbar.decision.Claims;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Family;
import org.twinbar.report.Sheet.Block;
import org.twinbar.report.Sheet.Column;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.JudgedStudy;

/** What several comparisons come to when they are taken together. */
final class Together {

    private final List<Answer.Compared> compared;

    private Together(List<Answer.Compared> compared) {
        this.compared = compared;
    }

    static List<Block> of(JudgedStudy study) {
        Together together = new Together(study.compared());
        List<Block> blocks = new ArrayList<>(together.claims());
        blocks.addAll(together.groups());
        blocks.addAll(Elsewhere.of(study.compared()));
        return blocks;
    }

    /** Each claim keeps its own error rate; beside it stands Holm's. */
    private List<Block> claims() {
        List<Claims.Together> all = Claims.together(
                compared.stream().map(Answer.Compared::comparison).toList());
        long asked = all.stream().filter(it -> it.p().isKnown()).count();
        if (asked < 2) {
            return List.of();
        }
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Claims.Together one = all.get(i);
            Comparison comparison = one.comparison();
            rows.add(List.of(
                    Answers.capital(compared.get(i).question()),
                    new Shown(comparison).found(comparison.found()),
                    p(comparison.found().p()),
                    p(one.p()),
                    one.p().isKnown() ? one.together() ? "yes" : "no" : "not asked"));
        }
        return List.of(
                new Block.Heading("Several claims"),
                new Block.Paragraph("Each verdict keeps its own error rate of %s, whatever else was"
                                .formatted(Written.percent(
                                        all.get(0).comparison().question().errorRate()))
                        + " asked. Who wants all %s to be right together needs more: the last column"
                                .formatted(all.size())
                        + " says whether a change is still told from none then (Holm's adjustment;"
                        + " for reference only, no verdict reads it)."),
                new Block.Table(
                        "Claims one by one and all together",
                        List.of(
                                Column.name("Asked of"),
                                Column.text("Effect with its interval"),
                                Column.number("p alone"),
                                Column.number("p together"),
                                Column.text("Change still told")),
                        rows));
    }

    private static String p(Amount p) {
        return p instanceof Amount.Known known
                ? Written.p(known.value()).replace("= ", "")
                : "none";
    }

    /** Every two groups of a question that held several against one control. */
    private List<Block> groups() {
        List<Block> blocks = new ArrayList<>();
        Set<Family> shown = new LinkedHashSet<>();
        for (Answer.Compared one : compared) {
            Optional<Family> family = one.comparison().context().family();
            if (family.isPresent() && shown.add(family.get())) {
                blocks.add(pairs(one, family.get()));
            }
        }
        if (!blocks.isEmpty()) {
            blocks.add(0, new Block.Heading("Every two groups"));
            blocks.add(
                    1,
                    new Block.Paragraph(
                            "These intervals are as wide as they must be to hold the true"
                                    + " values all together, however the pair was chosen. No verdict reads"
                                    + " them."));
        }
        return blocks;
    }

    private static Block pairs(Answer.Compared one, Family family) {
        Shown shown = new Shown(one.comparison());
        List<List<String>> rows = new ArrayList<>();
        for (Family.Pair pair : family.pairs()) {
            rows.add(List.of(pair.one() + " against " + pair.other(), shown.found(pair.found())));
        }
        List<String> about = new ArrayList<>(List.of(one.property().label()));
        about.addAll(one.where().values());
        return new Block.Table(
                "%s: %s"
                        .formatted(
                                String.join(", ", about),
                                family.pairs().get(0).found().method()),
                List.of(Column.name("Groups"), Column.text("Effect with its interval")),
                rows);
    }
}
