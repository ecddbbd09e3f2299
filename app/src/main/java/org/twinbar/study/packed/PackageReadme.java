package org.twinbar.study.packed;

import java.util.List;
import java.util.Optional;
import org.twinbar.decision.Verdict;
import org.twinbar.exchange.datapackage.DataTable;
import org.twinbar.exchange.datapackage.Licence;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.JudgedClaim;
import org.twinbar.study.judged.JudgedStudy;

/** What a person reads who opens a package. */
public final class PackageReadme {

    private static final String INVENTED =
            "**The data in this package are invented.** Nobody measured them.";

    private PackageReadme() {}

    public static String description(JudgedStudy study) {
        return (study.invented() ? INVENTED + " " : "") + study.about().strip();
    }

    public static String of(JudgedStudy study, Optional<Licence> licence, List<DataTable> tables) {
        StringBuilder text = new StringBuilder();
        paragraph(text, "# " + line(study.question().isBlank() ? study.name() : study.question()));
        if (study.invented()) {
            paragraph(text, INVENTED);
        }
        if (!study.about().isBlank()) {
            paragraph(text, study.about().strip());
        }
        paragraph(
                text,
                "Calculated by %s, seed %s, from the readings in `raw/`."
                        .formatted(study.maker().program(), study.maker().seed()));
        paragraph(text, "## Verdicts");
        text.append("| claim | asked of | verdict |\n|---|---|---|\n");
        for (JudgedClaim claim : study.claims()) {
            for (Answer answer : claim.answers()) {
                text.append("| ")
                        .append(cell(claim.words()))
                        .append(" | ")
                        .append(cell(answer.question()))
                        .append(" | ")
                        .append(answer.verdict().map(Verdict::word).orElse("not asked yet"))
                        .append(" |\n");
            }
        }
        paragraph(
                text,
                "\nEach verdict is about these specimens on this bench, and certifies nothing. What it"
                        + " rests on, and what limits it, stands in `data/verdicts.csv`,"
                        + " `data/comparisons.csv` and `data/findings.csv`.");
        paragraph(text, "## What lies here");
        text.append("| file | what it holds |\n|---|---|\n");
        for (DataTable table : tables) {
            text.append("| `")
                    .append(table.path())
                    .append("` | ")
                    .append(cell(table.says()))
                    .append(" |\n");
        }
        text.append("| `raw/` | The files that were read, byte for byte as they came. |\n");
        paragraph(
                text,
                "\n`datapackage.json` tells of every column, with its unit, and of every file, with its"
                        + " SHA-256. It is a Frictionless Data Package.");
        paragraph(text, "## Check it");
        paragraph(text, "    ./twinbar study check FILE.zip");
        paragraph(
                text,
                "calculates everything again from `data/entries.csv` and `raw/`, and lists every"
                        + " difference. `./twinbar study import --package FILE.zip` brings the"
                        + " study into a workspace.");
        paragraph(text, "## Licence");
        text.append(
                        licence.map(it -> "%s (%s).".formatted(it.title(), it.identifier()))
                                .orElse(
                                        "Nobody said under which licence this may be used: ask who made it."))
                .append('\n');
        return text.toString();
    }

    private static void paragraph(StringBuilder text, String words) {
        text.append(words).append("\n\n");
    }

    private static String line(String words) {
        return words.replaceAll("\\s+", " ").strip();
    }

    private static String cell(String words) {
        return line(words).replace("|", "\\|");
    }
}
