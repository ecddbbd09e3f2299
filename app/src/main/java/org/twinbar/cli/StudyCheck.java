package org.twinbar.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import org.twinbar.study.Recheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar study check PACKAGE}: a stranger's re-run. */
@Command(
        name = "check",
        description = {
            "Calculates the study of a data package again from its raw files and lists every",
            "difference. Ends with status 3 where something differs but the version.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class StudyCheck implements Callable<Integer> {

    /** So many differences tell a person what is wrong; JSON has all. */
    private static final int MOST_SHOWN = 40;

    private final Context context;

    @Parameters(paramLabel = "PACKAGE", description = "A zip, or the folder of one.")
    String file = "";

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    StudyCheck(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Recheck recheck = context.packageAt(
                file, open -> Recheck.of(open, context.methods().get(), Program.NAME));
        if (json) {
            write(recheck);
        } else {
            context.terminal().out().print(text(recheck));
        }
        return recheck.same() ? Cli.DONE : Cli.DIFFERS;
    }

    private String text(Recheck recheck) {
        Recheck.Counted counted = recheck.counted();
        StringBuilder text = new StringBuilder();
        text.append(ComparisonsText.wrapped(
                "The study '%s', packaged by %s, was calculated again by %s: %s, %s, %s."
                        .formatted(
                                recheck.study(),
                                recheck.packagedBy(),
                                recheck.program(),
                                count(counted.files(), "file"),
                                count(counted.values(), "number"),
                                count(counted.verdicts(), "verdict")),
                ""));
        List<Recheck.Difference> differences = recheck.differences();
        if (differences.isEmpty()) {
            return text.append("Nothing differs: numbers agree to 12 digits.\n").toString();
        }
        text.append(
                recheck.same()
                        ? "Another version calculated it; nothing else differs.\n\n"
                        : count(differences.size(), "difference") + ":\n\n");
        Aligned rows = new Aligned().row("differs", "where", "package", "now");
        differences.stream()
                .limit(MOST_SHOWN)
                .forEach(it -> rows.row(it.kind().word(), it.where(), it.packaged(), it.now()));
        text.append(rows);
        if (differences.size() > MOST_SHOWN) {
            text.append("… and %s more; --json lists all.\n"
                    .formatted(differences.size() - MOST_SHOWN));
        }
        return text.toString();
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    private void write(Recheck recheck) {
        Json.write(
                context.terminal().out(),
                body -> body.put("package", file)
                        .put("study", recheck.study())
                        .object(
                                "program",
                                it -> it.put("packaged", recheck.packagedBy())
                                        .put("now", recheck.program()))
                        .object(
                                "compared",
                                it -> it.put("files", recheck.counted().files())
                                        .put("values", recheck.counted().values())
                                        .put("verdicts", recheck.counted().verdicts()))
                        .put("same", recheck.same())
                        .list("differences", list -> {
                            for (Recheck.Difference each : recheck.differences()) {
                                list.object(it -> difference(it, each));
                            }
                        }));
    }

    private static void difference(Json json, Recheck.Difference each) throws IOException {
        json.put("kind", each.kind().word()).put("where", each.where());
        if (each.kind() == Recheck.Kind.VALUE) {
            side(json, "packaged", each.packaged());
            side(json, "now", each.now());
        } else {
            json.put("packaged", each.packaged()).put("now", each.now());
        }
    }

    private static void side(Json json, String name, String text) throws IOException {
        try {
            json.put(name, Double.parseDouble(text));
        } catch (NumberFormatException e) {
            json.reason(name, text);
        }
    }
}
