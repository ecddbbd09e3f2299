package org.twinbar.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.twinbar.report.Sheet;

/** Sentences that pages have for themselves. */
final class Words {

    /** Who acts, where nobody says: the one person at this machine. */
    static final String WHO = "who was at the browser";

    private static final int LONGEST_NAME = 40;

    private Words() {}

    /** Returns what was wrong as a sentence of its own. */
    static String sentence(RuntimeException refusal) {
        return sentence(String.valueOf(refusal.getMessage()));
    }

    /** Returns a short name for a study, such as {@code at-least-10-stronger}. */
    static String slug(String words) {
        String slug = words.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        String cut = slug.length() > LONGEST_NAME ? slug.substring(0, LONGEST_NAME) : slug;
        return cut.isEmpty() ? "study" : cut;
    }

    static String sentence(String message) {
        // A message may begin with the name of a file, which stays as it is.
        String begun = message.matches("\\p{Ll}+[ ,:].*")
                ? message.substring(0, 1).toUpperCase(Locale.ROOT) + message.substring(1)
                : message;
        return begun.endsWith(".") || begun.endsWith("?") ? begun : begun + ".";
    }

    /** Returns how far a study is, such as {@code 5 questions: 2 supported, 3 open}. */
    static String state(Sheet sheet, int specimens) {
        if (sheet.claims().isEmpty()) {
            return count(specimens, "specimen") + ", no claim yet";
        }
        Map<String, Integer> verdicts = new LinkedHashMap<>();
        sheet.answers().forEach(answer -> verdicts.merge(answer.verdict(), 1, Integer::sum));
        List<String> counted = new ArrayList<>();
        verdicts.forEach((verdict, number) -> counted.add(number + " " + verdict));
        return "%s, %s: %s"
                .formatted(
                        count(specimens, "specimen"),
                        count(sheet.answers().size(), "question"),
                        String.join(", ", counted));
    }

    static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
