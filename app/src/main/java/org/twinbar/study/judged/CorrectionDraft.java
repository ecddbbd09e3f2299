package org.twinbar.study.judged;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Words for a person who published something that is judged otherwise now. */
final class CorrectionDraft {

    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private CorrectionDraft() {}

    static String date(ZonedDateTime when) {
        return DAY.format(when);
    }

    /** Returns paragraphs parted by an empty line; none where nothing differs. */
    static Optional<String> of(Publication published, JudgedStudy now) {
        Collection<Publication.Divergence> differing = published.against(now).values();
        if (differing.isEmpty()) {
            return Optional.empty();
        }
        StringBuilder text = new StringBuilder();
        text.append("Correction to what we published on ")
                .append(date(published.when()))
                .append(published.where().isBlank() ? "" : " (%s)".formatted(published.where()))
                .append(now.invented() ? ". The data are invented.\n\n" : ".\n\n");
        for (Publication.Divergence each : differing) {
            text.append(paragraph(each)).append("\n\n");
        }
        List<String> causes = published.causes(now);
        text.append("What is other than it was: ")
                .append(
                        causes.isEmpty()
                                ? "nothing that Twinbar keeps; check the two calculations."
                                : String.join(" ", causes))
                .append(
                        "\n\nThe readings and what was published then are in the study's data package.");
        return Optional.of(text.toString());
    }

    private static String paragraph(Publication.Divergence each) {
        String about = "“%s” (%s)".formatted(each.then().claim(), each.then().question());
        String opening = each.verdict()
                ? "We said of the claim %s: %s. It must read: %s."
                        .formatted(about, each.then().word(), each.now().word())
                : "Of the claim %s the verdict stays: %s. Its numbers are others."
                        .formatted(about, each.now().word());
        return "%s Then: %s Now: %s"
                .formatted(opening, each.then().sentence(), each.now().sentence());
    }
}
