package org.twinbar.web;

import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.twinbar.finding.Finding;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.study.Treating;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.StepDone;
import org.twinbar.study.judged.StudyName;
import org.twinbar.treatment.Procedure;
import org.twinbar.treatment.Waiting;

/** How far a study's treatments are, and what may be tested. */
public final class TreatView {

    /** Findings of treatments begin so; those of plans are told elsewhere. */
    private static final List<String> OURS = List.of("step-", "film-", "ratio-");

    private final StudyName study;
    private final Making making;
    private final List<Treating.Standing> clock;
    private final ZonedDateTime now;

    TreatView(StudyName study, Making making, List<Treating.Standing> clock, ZonedDateTime now) {
        this.study = study;
        this.making = making;
        this.clock = List.copyOf(clock);
        this.now = now;
    }

    static TreatView of(org.twinbar.study.Workspace workspace, StudyName study) {
        ZonedDateTime now = workspace.treating().now();
        return new TreatView(
                study,
                workspace.plans().forTreating(study),
                workspace.treating().clock(study, now.toInstant()),
                now);
    }

    public StudyName study() {
        return study;
    }

    public boolean isPlanned() {
        return making.plan().isPresent();
    }

    /** Specimens that wait for the same. */
    public record Waits(Waiting.For what, List<String> codes, String until) {}

    /** Returns what specimens wait for, what can be done now first. */
    public List<Waits> waits() {
        return Arrays.stream(Waiting.For.values())
                .sorted(Comparator.comparingInt(
                        it -> it == Waiting.For.NOTHING ? -1 : it.ordinal()))
                .map(this::waits)
                .filter(it -> !it.codes().isEmpty())
                .toList();
    }

    private Waits waits(Waiting.For what) {
        List<Treating.Standing> those =
                clock.stream().filter(it -> it.stand().waits() == what).toList();
        List<Instant> ends = those.stream()
                .flatMap(it -> it.stand().until().stream())
                .sorted()
                .toList();
        String until = ends.isEmpty()
                ? ""
                : ends.get(0).equals(ends.get(ends.size() - 1))
                        ? "until " + time(ends.get(0))
                        : "the first until %s, the last until %s"
                                .formatted(time(ends.get(0)), time(ends.get(ends.size() - 1)));
        return new Waits(what, those.stream().map(it -> it.specimen().code()).toList(), until);
    }

    private String time(Instant when) {
        return Links.time(when.atZone(now.getZone()));
    }

    /** Returns what can be done today, in a sentence. */
    public String today() {
        List<String> parts = new ArrayList<>();
        for (Waits each : waits()) {
            String number = Words.count(each.codes().size(), "specimen");
            switch (each.what()) {
                case NOTHING -> parts.add(number + " may be tested today");
                case TREATMENT ->
                    parts.add(number + (each.codes().size() == 1 ? " waits" : " wait")
                            + " to be treated");
                case CURE -> parts.add("%s still curing, %s".formatted(number, each.until()));
                case CONDITION ->
                    parts.add("%s still conditioning, %s".formatted(number, each.until()));
                case PRINT -> parts.add(number + " to be printed");
                case TESTED -> parts.add(number + " tested");
            }
        }
        return parts.isEmpty() ? "No specimen is planned yet." : String.join("; ", parts) + ".";
    }

    /** Whether there is something that a person can do today. */
    public boolean hasWork() {
        return waits().stream()
                .anyMatch(it ->
                        it.what() == Waiting.For.NOTHING || it.what() == Waiting.For.TREATMENT);
    }

    public boolean mayTest() {
        return waits().stream().anyMatch(it -> it.what() == Waiting.For.NOTHING);
    }

    /** A group that something is done to. */
    public record Treated(
            String name,
            String treatment,
            int specimens,
            Optional<Procedure> recipe,
            String state) {

        public boolean hasRecipe() {
            return recipe.isPresent();
        }
    }

    public List<Treated> groups() {
        return making.plan().stream()
                .flatMap(plan -> plan.allocation().design().groups().stream())
                .filter(group -> group.role() != PlannedGroup.Role.CONTROL)
                .map(this::treated)
                .toList();
    }

    private Treated treated(PlannedGroup group) {
        Optional<Procedure> recipe = Optional.ofNullable(making.recipes().get(group.name()));
        int specimens = (int) making.specimens().stream()
                .filter(each -> each.placed().group().equals(group.name()))
                .count();
        return new Treated(
                group.name(),
                group.treatment(),
                specimens,
                recipe,
                recipe.map(it -> state(group.name(), it)).orElse("no recipe yet"));
    }

    private String state(String group, Procedure recipe) {
        List<StepDone> steps = making.steps().stream()
                .filter(each -> each.group().equals(group))
                .toList();
        String all = "%s, %s"
                .formatted(recipe.sort().word(), Words.count(recipe.steps().size(), "step"));
        List<String> going = steps.stream()
                .filter(each -> each.ended().isEmpty())
                .map(each -> Integer.toString(each.step() + 1))
                .distinct()
                .toList();
        if (!going.isEmpty()) {
            return "%s; step %s goes on".formatted(all, String.join(" and ", going));
        }
        int last = steps.stream().mapToInt(StepDone::step).max().orElse(-1) + 1;
        return last == 0 ? all + "; not begun" : "%s; step %s is done".formatted(all, last);
    }

    public Making making() {
        return making;
    }

    /** Returns the number of the next mix. */
    public int nextMix() {
        return making.mixes().stream().mapToInt(mix -> mix.number()).max().orElse(0) + 1;
    }

    /** Returns what differed from recipes, in films and in mixes. */
    public List<Finding> findings() {
        return making.findings().stream()
                .filter(it -> OURS.stream().anyMatch(it.code()::startsWith))
                .toList();
    }

    /** Returns how far treating is, in a line for the study's sheet. */
    public String state() {
        if (!isPlanned()) {
            int mixes = making.mixes().size();
            return mixes == 0
                    ? "nothing is planned, nothing was mixed"
                    : (mixes == 1 ? "1 mix" : mixes + " mixes") + " noted, no plan";
        }
        String without = groups().stream()
                .filter(group -> !group.hasRecipe())
                .map(Treated::name)
                .collect(Collectors.joining(", "));
        return (without.isEmpty() ? "" : "no recipe for %s; ".formatted(without)) + today();
    }

    /** Returns the words and the place of the next useful thing. */
    public Next next() {
        String treating = Links.treating(study);
        if (!isPlanned()) {
            return new Next("Weigh out a mix", Links.weigh(study));
        }
        for (Treated group : groups()) {
            if (!group.hasRecipe()) {
                return new Next(
                        "Choose how '%s' is treated".formatted(group.name()),
                        Links.recipe(study, group.name()));
            }
        }
        for (Treated group : groups()) {
            if (waiting(group.name())) {
                return new Next(
                        "Treat '%s'".formatted(group.name()), Links.steps(study, group.name()));
            }
        }
        return new Next("What may be tested", treating);
    }

    private boolean waiting(String group) {
        return clock.stream()
                .filter(it -> it.stand().waits() == Waiting.For.TREATMENT)
                .map(Treating.Standing::specimen)
                .map(Registered::placed)
                .anyMatch(placed -> placed.group().equals(group));
    }

    /** What is to be done next, and where. */
    public record Next(String words, String link) {}

    /** Returns how long it is from a moment to another, as a person says it. */
    static String span(Duration span) {
        long minutes = Math.max(0, (span.toSeconds() + 30) / 60);
        if (minutes < 120) {
            return minutes + "\u2009min";
        }
        return minutes < 48 * 60
                ? "%s\u2009h %s\u2009min".formatted(minutes / 60, minutes % 60)
                : "%s\u2009d %s\u2009h".formatted(minutes / 1440, minutes % 1440 / 60);
    }
}
