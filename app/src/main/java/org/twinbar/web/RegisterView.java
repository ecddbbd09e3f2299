package org.twinbar.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.Registered.Step;
import org.twinbar.study.judged.StudyName;

/** The specimens of a plan with what was done to each, as their list shows them. */
public final class RegisterView {

    /** What a step is noted of, where single specimens are ticked. */
    static final String TICKED = "ticked";

    private static final String ALL = "all";
    private static final String PILOTS = "the pilots";
    private static final String RUN = "run ";
    private static final String MIX = "mix ";
    private static final String LOAD = "oven load ";
    private static final String GROUP = "group ";

    private final StudyName study;
    private final Making making;
    private final Form form;

    RegisterView(StudyName study, Making making, Form form) {
        this.study = study;
        this.making = making;
        this.form = form;
    }

    public StudyName study() {
        return study;
    }

    public Form form() {
        return form;
    }

    public boolean isPlanned() {
        return making.plan().isPresent();
    }

    public String state() {
        return PlanState.of(making, 1).words();
    }

    public List<Step> steps() {
        return Arrays.asList(Step.values());
    }

    /** Returns what a step may be noted of at once, such as {@code run 1}. */
    public List<String> several() {
        List<String> several = new ArrayList<>(List.of(ALL));
        if (!making.pilotSpecimens().isEmpty()) {
            several.add(PILOTS);
        }
        making.plan().map(it -> it.allocation().design()).ifPresent(design -> {
            number(several, RUN, design.batches().runs());
            if (takes(PlannedGroup.Together.MIX)) {
                number(several, MIX, design.batches().mixes());
            }
            if (takes(PlannedGroup.Together.OVEN_LOAD)) {
                number(several, LOAD, design.batches().loads());
            }
            design.groups().forEach(it -> several.add(GROUP + it.name()));
        });
        return several;
    }

    private boolean takes(PlannedGroup.Together kind) {
        return making.plan().orElseThrow().allocation().design().groups().stream()
                .anyMatch(it -> it.together().contains(kind));
    }

    private static void number(List<String> several, String what, int most) {
        for (int number = 1; number <= most; number++) {
            several.add(what + number);
        }
    }

    /** Returns whether a specimen is among those that are chosen at once. */
    static boolean isOf(Registered one, String which) {
        if (one.placed().isPilot()) {
            return which.equals(ALL) || which.equals(PILOTS);
        }
        return which.equals(ALL)
                || which.equals(RUN + one.placed().run())
                || which.equals(MIX + text(one.placed().mix()))
                || which.equals(LOAD + text(one.placed().load()))
                || which.equals(GROUP + one.group().map(PlannedGroup::name).orElse(""));
    }

    private static String text(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }

    /**
     * One specimen.
     *
     * @param where its place
     * @param state what was done to it, in words
     */
    public record Row(String code, String kind, String where, String state, String link) {}

    public List<Row> rows() {
        return making.made().stream()
                .map(it -> new Row(
                        it.code(),
                        it.series().name(),
                        where(it),
                        state(it),
                        Links.registered(study, it.code())))
                .toList();
    }

    static String where(Registered one) {
        return one.placed().isPilot()
                ? "pilot " + one.placed().position()
                : "run %s, place %s".formatted(one.placed().run(), one.placed().position());
    }

    /** Returns how far a specimen is, in words. */
    static String state(Registered one) {
        if (!one.fate().kind().waits() && one.done(Step.TESTED).isEmpty()) {
            return one.fate().kind().word()
                    + (one.fate().why().isEmpty() ? "" : ": " + one.fate().why());
        }
        List<String> words = new ArrayList<>();
        for (Step step : Step.values()) {
            one.done(step).ifPresent(it -> words.add(step.word() + " " + Links.time(it.when())));
        }
        if (!one.measured().isEmpty()) {
            words.add("measured");
        }
        if (!one.photos().isEmpty()) {
            words.add(Words.count(one.photos().size(), "photo"));
        }
        return words.isEmpty() ? one.fate().kind().word() : String.join("; ", words);
    }
}
