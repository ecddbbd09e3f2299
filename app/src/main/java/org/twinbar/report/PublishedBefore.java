package org.twinbar.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.twinbar.report.Sheet.Block;
import org.twinbar.report.Sheet.Column;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Publication;

/** What was published of a study, beside what is judged now. */
final class PublishedBefore {

    private final JudgedStudy study;
    private final Map<Integer, Publication.Divergence> differing;

    PublishedBefore(JudgedStudy study) {
        this.study = study;
        this.differing = study.lastPublished().map(it -> it.against(study)).orElse(Map.of());
    }

    /**
     * Returns the answer with what was published in its place, where that was another one.
     *
     * @param at place of the answer in the study, counted from 0
     */
    Sheet.Answer beside(Sheet.Answer answer, int at) {
        Publication.Divergence divergence = differing.get(at);
        if (divergence == null) {
            return answer;
        }
        Publication last = study.lastPublished().orElseThrow();
        List<Sheet.Item> items = new ArrayList<>();
        items.add(Sheet.Item.of(
                "Published otherwise",
                "%s %s: %s. %s"
                        .formatted(
                                Cells.time(last.when()),
                                divergence.verdict()
                                        ? "another verdict was published"
                                        : "the same verdict was published, from other numbers",
                                divergence.then().word(),
                                divergence.then().sentence()),
                "What is other than it was, and the words of a correction, stand under"
                        + " “What was published”."));
        items.addAll(answer.items());
        return answer.with(items);
    }

    /** Returns every publication, and the words of a correction where one is due. */
    List<Block> blocks() {
        if (study.published().isEmpty()) {
            return List.of();
        }
        List<List<String>> rows = new ArrayList<>();
        for (Publication each : study.published()) {
            int others = each.against(study).size();
            rows.add(List.of(
                    Cells.time(each.when()),
                    each.who(),
                    each.where().isBlank() ? "not said" : each.where(),
                    each.program(),
                    others == 0
                            ? "all of it"
                            : "all but " + others + " of " + each.said().size()));
        }
        List<Block> blocks = new ArrayList<>();
        study.lastPublished().flatMap(it -> it.correction(study)).ifPresent(draft -> {
            blocks.add(new Block.Sentences(
                    List.of("This study is judged otherwise than it was published."),
                    Sheet.Weight.ATTENTION));
            blocks.add(new Block.Heading("A correction to post"));
            for (String paragraph : draft.split("\n\n")) {
                blocks.add(new Block.Paragraph(paragraph));
            }
        });
        blocks.add(new Block.Table(
                "What was published stays as it was said, the oldest first",
                List.of(
                        Column.text("When"),
                        Column.text("Who"),
                        Column.text("Where"),
                        Column.text("Calculated by"),
                        Column.text("Still judged so")),
                rows));
        return blocks;
    }
}
