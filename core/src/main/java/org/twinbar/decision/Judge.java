package org.twinbar.decision;

import java.util.Optional;

/**
 * From the specimens that count to a verdict: what was repeated, its default interval, and the
 * rule.
 *
 * <p>It is asked again for every other way of looking at the same readings.
 */
record Judge(Question question, double step) {

    /**
     * What the specimens come to.
     *
     * @param treated what was repeated, after specimens that share a treatment became one
     * @param control likewise
     * @param repeats specimens behind each of what was repeated
     */
    record Judged(
            Sample treated,
            Sample control,
            Layout layout,
            Repeats repeats,
            Found found,
            Verdict verdict) {}

    Judged judge(Sample treatedSpecimens, Sample controlSpecimens) {
        Sample treated = Units.named(treatedSpecimens, question);
        Sample control = Units.named(controlSpecimens, question);
        Repeats repeats = Repeats.of(
                treatedSpecimens.size() + controlSpecimens.size(),
                treated.size() + control.size(),
                "unit");
        if (question.effect() == Effect.SHARE
                && treated.values().length + control.values().length > 0) {
            treated = treated.asNumbers();
            control = control.asNumbers();
        }
        Layout layout = Layout.of(treated, control);
        if (!layout.countsBlocks() || question.effect() == Effect.RATE) {
            Found found = calculation(layout, treated, control).found(treated, control);
            return new Judged(treated, control, layout, repeats, found, verdict(layout, found));
        }
        Sample ours = Units.byBlock(treated, question);
        Sample others = layout == Layout.SEPARATE ? Units.byBlock(control, question) : control;
        Found found = withinMixes(layout, treated, control)
                ? new WithinMixes(question, step).found(treated, control)
                : calculation(layout, ours, others).found(ours, others);
        repeats = Repeats.of(treated.size(), ours.size(), Layout.kind(treated));
        return new Judged(ours, others, layout, repeats, found, verdict(layout, found));
    }

    private boolean withinMixes(Layout layout, Sample treated, Sample control) {
        boolean means = question.effect() == Effect.RATIO || question.effect() == Effect.DIFFERENCE;
        return means
                && layout == Layout.TREATED_IN_SEVERAL
                && WithinMixes.fits(question, treated, control);
    }

    private Verdict verdict(Layout layout, Found found) {
        return layout == Layout.CONFOUNDED
                ? Verdict.OPEN
                : VerdictRule.read(found.lowest(), found.highest(), question);
    }

    private Calculation calculation(Layout layout, Sample treated, Sample control) {
        return switch (question.effect()) {
            case RATIO, DIFFERENCE ->
                layout == Layout.CROSSED && WithinBlocks.fits(question, treated, control)
                        ? new WithinBlocks(question, step)
                        : new Means(question, step);
            case SHARE ->
                treated.values().length + control.values().length > 0
                        ? new Means(question, 0)
                        : new Shares(question);
            case RANK -> new Ranks(question);
            case RATE -> new Rates(question);
            case LEVEL ->
                throw new QuestionException("An effect of kind '%s' cannot be compared here."
                        .formatted(question.effect().word()));
        };
    }

    /** Returns whether the claimed size is reached, where the claim names one. */
    Optional<Reach> reach(Found found) {
        return question.claimed().isPresent()
                ? Optional.of(VerdictRule.reach(found.lowest(), found.highest(), question))
                : Optional.empty();
    }
}
