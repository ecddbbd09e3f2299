package org.twinbar.web;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.twinbar.finding.Finding;
import org.twinbar.report.Written;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.StepDone;
import org.twinbar.treatment.Followed;
import org.twinbar.treatment.Procedure;

/** The steps of one group's recipe, each with what was done of it. */
public final class StepView {

    private final String group;
    private final Procedure recipe;
    private final List<Registered> specimens;
    private final List<StepDone> done;
    private final ZonedDateTime now;

    StepView(String group, Procedure recipe, Making making, ZonedDateTime now) {
        this.group = group;
        this.recipe = recipe;
        this.specimens = making.specimens().stream()
                .filter(each -> each.placed().group().equals(group))
                .toList();
        this.done = making.steps().stream()
                .filter(each -> each.group().equals(group))
                .toList();
        this.now = now;
    }

    public String group() {
        return group;
    }

    public List<String> cautions() {
        return recipe.cautions();
    }

    public String sort() {
        return recipe.sort().word();
    }

    /** Specimens that go through it together: a mix, an oven load, or all. */
    public record Batch(String heading, List<Registered> specimens) {}

    public List<Batch> batches() {
        Map<Integer, List<Registered>> byNumber = new TreeMap<>();
        boolean mixes = specimens.stream().anyMatch(each -> each.placed().mix().isPresent());
        for (Registered each : specimens) {
            int number =
                    mixes ? each.placed().mix().orElse(0) : each.placed().load().orElse(0);
            byNumber.computeIfAbsent(number, it -> new ArrayList<>()).add(each);
        }
        List<Batch> batches = new ArrayList<>();
        byNumber.forEach((number, those) -> batches.add(
                new Batch(number == 0 ? "" : (mixes ? "Mix " : "Oven load ") + number, those)));
        return batches;
    }

    /** A step of the recipe. */
    public record Shown(
            int number,
            String what,
            String meant,
            boolean takesTime,
            boolean hasTemperature,
            boolean isNext,
            String state,
            List<Going> going,
            List<String> done) {}

    /**
     * A step that goes on.
     *
     * @param left seconds until its time is up, where it has a time
     * @param since seconds since it began
     * @param words for whoever has no script
     */
    public record Going(
            StepDone step, Optional<Long> left, long since, String words, String window) {}

    public List<Shown> steps() {
        List<Shown> shown = new ArrayList<>();
        int next = next();
        for (int i = 0; i < recipe.steps().size(); i++) {
            Procedure.Step step = recipe.steps().get(i);
            List<Going> going = going(i, step);
            shown.add(new Shown(
                    i + 1,
                    step.what(),
                    meant(step),
                    step.minutes().isPresent(),
                    step.celsius().isPresent(),
                    i == next,
                    state(i, going),
                    going,
                    ended(i)));
        }
        return shown;
    }

    /** Returns the first step that some specimen has still before it. */
    private int next() {
        for (int i = 0; i < recipe.steps().size(); i++) {
            if (count(i) < specimens.size()) {
                return i;
            }
        }
        return recipe.steps().size();
    }

    public boolean isThrough() {
        return next() == recipe.steps().size();
    }

    private long count(int step) {
        return done.stream()
                .filter(each -> each.step() == step && each.ended().isPresent())
                .flatMap(each -> each.specimens().stream())
                .distinct()
                .count();
    }

    private String state(int step, List<Going> going) {
        if (!going.isEmpty()) {
            return "goes on";
        }
        long count = count(step);
        return count == 0
                ? "to do"
                : count == specimens.size()
                        ? "done"
                        : "%s of %s done".formatted(count, specimens.size());
    }

    private static String meant(Procedure.Step step) {
        List<String> parts = new ArrayList<>();
        step.minutes().ifPresent(it -> parts.add(minutes(it)));
        step.celsius().ifPresent(it -> parts.add("at " + Written.number(it, 3) + "\u2009°C"));
        return String.join(" ", parts);
    }

    private static String minutes(double minutes) {
        return TreatView.span(Duration.ofSeconds(Math.round(60 * minutes)));
    }

    private List<Going> going(int number, Procedure.Step step) {
        List<Going> going = new ArrayList<>();
        for (StepDone each : done) {
            if (each.step() != number || each.ended().isPresent()) {
                continue;
            }
            long since = Math.max(0, Duration.between(each.began(), now).toSeconds());
            Optional<Long> left = step.minutes().isPresent()
                    ? Optional.of(
                            Math.max(0, Math.round(60 * step.minutes().getAsDouble()) - since))
                    : Optional.empty();
            String words = left.map(it -> it == 0
                            ? "its time is up"
                            : TreatView.span(Duration.ofSeconds(it)) + " left")
                    .orElse(TreatView.span(Duration.ofSeconds(since)));
            going.add(new Going(each, left, since, words, window(step, each.began())));
        }
        return going;
    }

    /** Returns from when to when a wait may end, as on a clock. */
    private static String window(Procedure.Step step, ZonedDateTime began) {
        if (step.minutes().isEmpty()) {
            return "";
        }
        ZonedDateTime from = began.plusSeconds(Math.round(60 * step.minutes().getAsDouble()));
        return step.mostMinutes().isEmpty()
                ? "until " + Links.time(from)
                : "the next coat from %s to %s"
                        .formatted(
                                Links.time(from),
                                Links.time(began.plusSeconds(
                                        Math.round(60 * step.mostMinutes().getAsDouble()))));
    }

    private List<String> ended(int number) {
        return done.stream()
                .filter(each -> each.step() == number && each.ended().isPresent())
                .map(StepView::ended)
                .toList();
    }

    private static String ended(StepDone step) {
        StringBuilder text = new StringBuilder(
                "%s: %s".formatted(Links.time(step.began()), String.join(", ", step.specimens())));
        step.minutes().ifPresent(it -> {
            if (it > 0) {
                text.append(", ").append(minutes(it));
            }
        });
        step.celsius()
                .ifPresent(
                        it -> text.append(" at ").append(Written.number(it, 3)).append("\u2009°C"));
        if (!step.noted().isBlank()) {
            text.append(": ").append(step.noted());
        }
        return text.toString();
    }

    /** Returns who is treated, and since when. */
    public List<String> treated() {
        Map<ZonedDateTime, List<String>> since = new TreeMap<>();
        for (Registered each : specimens) {
            each.done(Registered.Step.TREATED)
                    .ifPresent(step -> since.computeIfAbsent(step.when(), it -> new ArrayList<>())
                            .add(each.code()));
        }
        List<String> lines = new ArrayList<>();
        since.forEach((when, codes) ->
                lines.add("Treated %s: %s".formatted(Links.time(when), String.join(", ", codes))));
        return lines;
    }

    /** Returns what differed from the recipe. */
    public List<Finding> differences() {
        return Followed.findings(
                recipe,
                done.stream()
                        .map(each -> new Followed.Went(
                                each.step(), each.specimens(), each.minutes(), each.celsius()))
                        .toList());
    }

    public List<Registered> specimens() {
        return specimens;
    }
}
