package org.twinbar.cli;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Publication;

/** What was published of a study, and whether it still stands, for a person. */
final class PublishedText {

    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private PublishedText() {}

    /** Returns nothing where nothing was published. */
    static String of(JudgedStudy study) {
        return study.lastPublished().map(it -> of(it, study)).orElse("");
    }

    private static String of(Publication published, JudgedStudy study) {
        String when = "\nPublished on %s by %s%s"
                .formatted(
                        day(published.when()),
                        published.who(),
                        published.where().isBlank() ? "" : " (" + published.where() + ")");
        StringBuilder text = new StringBuilder();
        published
                .correction(study)
                .ifPresentOrElse(
                        draft -> {
                            text.append(when).append(", and judged otherwise since. To post:\n\n");
                            for (String paragraph : draft.split("\n\n")) {
                                text.append(ComparisonsText.wrapped(paragraph, "  "))
                                        .append('\n');
                            }
                        },
                        () -> text.append(when).append("; all of it still stands.\n"));
        return text.toString();
    }

    private static String day(ZonedDateTime when) {
        return DAY.format(when);
    }
}
