package org.twinbar.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Table;
import org.twinbar.method.Methods;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;

/** Readings that were handed in and are kept nowhere yet, and what can be asked of them. */
public final class Trial {

    private static final String GROUP = "group";

    private final UUID id = UUID.randomUUID();
    private final Received received;
    private final Table table;
    private final Choices choices;

    private Trial(Received received, Table table, Choices choices) {
        this.received = received;
        this.table = table;
        this.choices = choices;
    }

    /** @throws InputException where the table can't be read, or holds nothing to be compared */
    static Trial of(Received received, Methods methods) {
        Table table = received.read();
        Choices choices = Choices.of(table, methods);
        if (choices.subjects().isEmpty()) {
            throw new InputException(
                    "%s has neither a column of numbers nor readings that a method asks for"
                            .formatted(table.name()));
        }
        if (choices.controls().isEmpty()) {
            throw new InputException(
                    "%s has no column that tells groups apart, such as 'group' with plain and coated"
                            .formatted(table.name()));
        }
        return new Trial(received, table, choices);
    }

    UUID id() {
        return id;
    }

    public String link() {
        return "/trials/" + id;
    }

    public Choices choices() {
        return choices;
    }

    /** Returns how the files were read, in a sentence. */
    public String read() {
        String curves = received.curves().isEmpty()
                ? ""
                : " With %s.".formatted(Words.count(received.curves().size(), "curve"));
        return table.explanation() + "." + curves;
    }

    /** Returns a name for the study that this may become. */
    public String name() {
        return Words.slug(table.name().replaceAll("\\.[A-Za-z]+$", ""));
    }

    /**
     * Judges it, and writes nothing.
     *
     * @throws InputException where the readings can't be calculated
     * @throws org.twinbar.decision.QuestionException where it can't be asked so
     */
    JudgedStudy judge(Workspace workspace, Form form) {
        return workspace.tryOut(study(form, name()), Handed.among(received.all()));
    }

    /** Keeps it as a study. */
    StudyName keep(Workspace workspace, Form form) {
        String name = form.said("name").orElse(name());
        return workspace.importStudy(
                new Act(id, Words.WHO), study(form, name), Handed.among(received.all()));
    }

    void remove() {
        received.remove();
    }

    private StudyFile study(Form form, String name) {
        String[] subject = subject(form);
        String[] control = pair(form, "control", "Choose the untreated group.");
        boolean given = subject[0].equals(TestSheet.OF_RESULTS);
        if (!given && !control[0].equalsIgnoreCase(GROUP)) {
            throw Refusal.badRequest("Calculated results are told apart by the column 'group', not"
                    + " by '%s'; rename the column, or choose a group of it."
                            .formatted(control[0]));
        }
        String label = choices.words(form.text("subject"));
        List<Claim.Question> questions = new ArrayList<>();
        if (form.said("by").isPresent()) {
            String by = form.text("by");
            for (String level : Choices.levels(table, column(by))) {
                questions.add(new Claim.Question(
                        label + ", " + level, subject[0], asked(form).where(by, level)));
            }
        } else {
            questions.add(new Claim.Question(label, subject[0], asked(form)));
        }
        return new StudyFile(
                Optional.of(new StudyFile.Head(
                        name, question(form, label, control[1]), "", JudgedStudy.Origin.MEASURED)),
                List.of(new StudyFile.Test(
                        TestSheet.of(subject[0])
                                .withSet(given ? Map.of(GROUP, control[0]) : set(form)),
                        table.name(),
                        Optional.empty())),
                List.of(new Claim(claim(form, label), "", questions, Optional.empty())),
                List.of());
    }

    private static String question(Form form, String label, String control) {
        String compared = switch (form.text("expect")) {
            case "lower" -> "lower than that";
            case "same" -> "the same as that";
            case "slower" -> "later than that";
            case "faster" -> "sooner than that";
            default -> "higher than that";
        };
        return "Is the %s %s of the %s ones?".formatted(small(label), compared, control);
    }

    private static String claim(Form form, String label) {
        String change = switch (form.text("expect")) {
            case "lower" -> "Lowers the %s";
            case "same" -> "Leaves the %s as it is";
            case "slower" -> "Puts off the %s";
            case "faster" -> "Brings the %s forward";
            default -> "Raises the %s";
        };
        return change.formatted(small(label));
    }

    private static String small(String label) {
        return label.isEmpty()
                ? label
                : label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }

    private Column column(String header) {
        return table.columns().stream()
                .filter(it -> it.header().equals(header))
                .findFirst()
                .orElseThrow(() ->
                        Refusal.badRequest("The table has no column '%s'.".formatted(header)));
    }

    private Asked asked(Form form) {
        Asked asked = Asked.of(subject(form)[1])
                .with(Term.CONTROL, pair(form, "control", "Choose the untreated group.")[1]);
        // What the form offers first is no answer where a time needs to be told which way.
        Optional<String> expect = form.said("expect").filter(word -> !word.equals("higher"));
        if (expect.isPresent()) {
            asked = asked.with(Term.EXPECT, expect.get());
        }
        if (form.said("worth").isPresent()) {
            asked = asked.with(Term.WORTH, form.text("worth"));
        }
        return form.said("claimed").isPresent()
                ? asked.with(Term.CLAIMED, form.text("claimed"))
                : asked;
    }

    private static String[] subject(Form form) {
        return pair(form, "subject", "Choose what is to be compared.");
    }

    private static String[] pair(Form form, String field, String otherwise) {
        String[] pair = form.text(field).split(Choices.SEPARATOR, 2);
        if (pair.length != 2) {
            throw Refusal.badRequest(otherwise);
        }
        return pair;
    }

    /** Reads what is the same for all specimens, a line each. */
    static Map<String, String> set(Form form) {
        Map<String, String> set = new LinkedHashMap<>();
        form.text("set")
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .forEach(line -> {
                    int equals = line.indexOf('=');
                    if (equals < 1) {
                        throw Refusal.badRequest(
                                "'%s' must be written as name = value, such as gauge_length = 25 mm."
                                        .formatted(line));
                    }
                    set.put(
                            line.substring(0, equals).strip(),
                            line.substring(equals + 1).strip());
                });
        return set;
    }
}
