package org.twinbar.treatment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.twinbar.finding.Finding;
import org.twinbar.finding.Finding.Kind;
import org.twinbar.treatment.Procedure.Step;

/** Where a treatment went otherwise than its recipe says. */
public final class Followed {

    /** A time that is off by less than this share is as the recipe says; common practice. */
    private static final double NEAR = 0.1;

    /** Nobody stops a clock closer than this (min); common practice. */
    private static final double NEAR_MINUTES = 1;

    /** Kitchen ovens swing by this much (°C) around what they are set to; common practice. */
    private static final double NEAR_CELSIUS = 5;

    private static final Kind SHORT = Kind.note(
            "step-short", "Step %s took %s min for %s, where the recipe says %s min or more.");
    private static final Kind LONG =
            Kind.note("step-long", "Step %s took %s min for %s, where the recipe says %s min.");
    private static final Kind LATE = Kind.warning(
            "step-late",
            "Step %s took %s min for %s, past the %s min after which the next coat no longer bonds by itself: it should have been washed and abraded first.");
    private static final Kind WARM = Kind.note(
            "step-temperature", "Step %s was at %s °C for %s, where the recipe says %s °C.");
    private static final Kind SKIPPED = Kind.warning(
            "step-skipped",
            "Step %s (%s) was not noted for %s, though a later one was: were they treated as the others?");

    private Followed() {}

    /**
     * A step as it was done.
     *
     * @param step of the recipe, counted from 0
     * @param specimens codes of those that it was done to
     * @param minutes how long it took, where it has ended
     * @param celsius temperature that was read, where one was
     */
    public record Went(
            int step, List<String> specimens, OptionalDouble minutes, OptionalDouble celsius) {
        public Went {
            specimens = List.copyOf(specimens);
        }
    }

    /** Returns what differed, step by step. */
    public static List<Finding> findings(Procedure recipe, List<Went> all) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < recipe.steps().size(); i++) {
            int step = i;
            Step meant = recipe.steps().get(i);
            all.stream().filter(went -> went.step() == step).forEach(went -> {
                time(meant, went, findings);
                temperature(meant, went, findings);
            });
            skipped(recipe, i, all, findings);
        }
        return findings;
    }

    private static void time(Step meant, Went went, List<Finding> findings) {
        if (meant.minutes().isEmpty() || went.minutes().isEmpty()) {
            return;
        }
        double took = went.minutes().getAsDouble();
        double wanted = meant.minutes().getAsDouble();
        double near = Math.max(NEAR_MINUTES, NEAR * wanted);
        if (took < wanted - near) {
            findings.add(time(SHORT, went, took, wanted));
        } else if (meant.mostMinutes().isPresent()) {
            double most = meant.mostMinutes().getAsDouble();
            if (took > most) {
                findings.add(time(LATE, went, took, most));
            }
        } else if (took > wanted + near) {
            findings.add(time(LONG, went, took, wanted));
        }
    }

    private static Finding time(Kind kind, Went went, double took, double wanted) {
        return kind.with(
                went.step() + 1,
                Amounts.written(took),
                String.join(", ", went.specimens()),
                Amounts.written(wanted));
    }

    private static void temperature(Step meant, Went went, List<Finding> findings) {
        if (meant.celsius().isEmpty() || went.celsius().isEmpty()) {
            return;
        }
        double was = went.celsius().getAsDouble();
        double wanted = meant.celsius().getAsDouble();
        if (!(Math.abs(was - wanted) < NEAR_CELSIUS)) {
            findings.add(WARM.with(
                    went.step() + 1,
                    Amounts.written(was),
                    String.join(", ", went.specimens()),
                    Amounts.written(wanted)));
        }
    }

    private static void skipped(
            Procedure recipe, int step, List<Went> all, List<Finding> findings) {
        Set<String> missing = new LinkedHashSet<>();
        all.stream()
                .filter(went -> went.step() > step)
                .forEach(went -> missing.addAll(went.specimens()));
        all.stream()
                .filter(went -> went.step() == step)
                .forEach(went -> went.specimens().forEach(missing::remove));
        if (!missing.isEmpty()) {
            findings.add(SKIPPED.with(
                    step + 1, recipe.steps().get(step).what(), String.join(", ", missing)));
        }
    }
}
