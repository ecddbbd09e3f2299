package org.twinbar.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.twinbar.planning.Design;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.planning.PlannedGroup.Together;
import org.twinbar.planning.Series;
import org.twinbar.report.Written;
import org.twinbar.report.paper.Drawings;
import org.twinbar.specimen.ShapeException;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.StudyName;

/** A plan that was dealt, as its page shows it. */
public final class PlanView {

    private final StudyName study;
    private final Making making;
    private final Form form;
    private final UnaryOperator<String> title;

    /** @param title of a method by its name */
    PlanView(StudyName study, Making making, Form form, UnaryOperator<String> title) {
        this.study = study;
        this.making = making;
        this.form = form;
        this.title = title;
    }

    public Making making() {
        return making;
    }

    public Plan plan() {
        return making.plan().orElseThrow();
    }

    public List<PlannedGroup> groups() {
        return plan().allocation().design().groups();
    }

    /** A kind of specimens in words. */
    public record Kind(String name, String words, String why) {}

    public List<Kind> kinds() {
        return plan().series().stream()
                .map(it -> new Kind(it.name(), words(it), why(it)))
                .toList();
    }

    private String words(Series series) {
        return "%s in each group, %s, printed %s, for %s%s"
                .formatted(
                        series.perGroup(),
                        PlanPlates.shape(series)
                                .map(it -> it.title() + " (" + it.name() + ")")
                                .orElse("a shape of your own"),
                        series.orientation().word(),
                        title.apply(series.method()),
                        series.pilots() == 0
                                ? ""
                                : ", and %s first"
                                        .formatted(Words.count(series.pilots(), "pilot")));
    }

    private String why(Series series) {
        return plan().reasons().stream()
                .filter(it -> it.series().equals(series.name()))
                .map(it -> "Found with a chance of %s, reckoned with: %s."
                        .formatted(Written.percent(it.power()), it.words()))
                .findFirst()
                .orElse("");
    }

    /** Returns in what they are made. */
    public String batches() {
        Design design = plan().allocation().design();
        List<String> parts = new ArrayList<>();
        parts.add("%s, each with %s"
                .formatted(
                        Words.count(design.batches().runs(), "print run"),
                        design.changes() == Design.Changes.WITHIN_RUNS
                                ? "part of every group"
                                : "one group alone"));
        if (takes(Together.MIX)) {
            int mixes = design.batches().mixes();
            parts.add(mixes + (mixes == 1 ? " mix" : " mixes"));
        }
        if (takes(Together.OVEN_LOAD)) {
            parts.add(Words.count(design.batches().loads(), "oven load"));
        }
        return String.join(", ", parts) + "; dealt from seed "
                + plan().allocation().seed() + ".";
    }

    private boolean takes(Together kind) {
        return groups().stream().anyMatch(it -> it.together().contains(kind));
    }

    public String blinding() {
        if (!plan().blind()) {
            return "Whoever reads the instruments may know the groups.";
        }
        return making.keyOpened()
                .map(it -> "It was blind; the key was opened %s.".formatted(Links.time(it.when())))
                .orElse("Blind: whoever reads the instruments sees codes alone, until the key is"
                        + " opened.");
    }

    /**
     * A print run.
     *
     * @param picture of the bed; empty where it can't be drawn
     * @param trouble why it can't
     */
    public record Run(int number, String codes, String picture, String trouble) {}

    public List<Run> runs() {
        TreeMap<Integer, List<Registered>> byRun = new TreeMap<>();
        making.made()
                .forEach(it -> byRun.computeIfAbsent(it.placed().run(), run -> new ArrayList<>())
                        .add(it));
        List<Run> runs = new ArrayList<>();
        byRun.forEach((number, specimens) -> {
            specimens.sort(Comparator.comparingInt(it -> it.placed().position()));
            String codes =
                    String.join(", ", specimens.stream().map(Registered::code).toList());
            try {
                runs.add(new Run(
                        number,
                        codes,
                        Drawings.bed(PlanPlates.plate(
                                making, number, PlanPlates.bed(form), PlanPlates.TO_SEE)),
                        ""));
            } catch (ShapeException e) {
                runs.add(new Run(number, codes, "", Words.sentence(e)));
            } catch (Refusal e) {
                runs.add(new Run(number, codes, "", Words.sentence(e)));
            }
        });
        return runs;
    }

    /** One specimen in the table. */
    public record Row(
            String code,
            String kind,
            String test,
            String run,
            String place,
            String group,
            String mix,
            String load,
            String fate,
            String link) {}

    public List<Row> rows() {
        return making.made().stream()
                .map(it -> new Row(
                        it.code(),
                        it.series().name(),
                        Integer.toString(it.placed().test()),
                        it.placed().isPilot()
                                ? "pilot"
                                : Integer.toString(it.placed().run()),
                        Integer.toString(it.placed().position()),
                        it.group().map(PlannedGroup::name).orElse("hidden"),
                        number(it, it.placed().mix()),
                        number(it, it.placed().load()),
                        it.fate().kind().word(),
                        Links.registered(study, it.code())))
                .toList();
    }

    /** A mix tells the group of what is coated. */
    private static String number(Registered one, OptionalInt number) {
        return one.group().isPresent() && number.isPresent()
                ? Integer.toString(number.getAsInt())
                : "–";
    }

    /** Returns what pilots told, a sentence for each set. */
    public List<String> pilots() {
        return making.pilots().stream()
                .map(it -> {
                    var told = it.told();
                    return "%s, %s: mean %s, standard deviation %s. Plan with %s (%s of the mean): so few tell a scatter badly, and in four of five such sets it is no larger than that."
                            .formatted(
                                    it.series(),
                                    it.what(),
                                    Written.number(told.mean(), 4),
                                    Written.number(told.scatter(), 3),
                                    Written.number(told.cautious(), 3),
                                    Written.percent(told.relative()));
                })
                .toList();
    }

    public Optional<Making.Seal> seal() {
        return making.seal();
    }

    /** Returns the text that was sealed; nothing while it would tell groups. */
    public String sealedText() {
        return making.keyClosed() ? "" : making.seal().map(Making.Seal::text).orElse("");
    }

    public int waiting() {
        return (int) making.specimens().stream()
                .filter(it -> it.fate().kind().waits())
                .count();
    }
}
