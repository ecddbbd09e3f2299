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
     */
    record Judged(Sample treated, Sample control, Layout layout, Found found, Verdict verdict) {}

    Judged judge(Sample treatedSpecimens, Sample controlSpecimens) {
        Sample treated = Units.named(treatedSpecimens);
        Sample control = Units.named(controlSpecimens);
        if (question.effect() == Effect.SHARE
                && treated.values().length + control.values().length > 0) {
            treated = treated.asNumbers();
            control = control.asNumbers();
        }
        Layout layout = Layout.of(treated, control);
        if (layout == Layout.SEPARATE) {
            treated = Units.byBlock(treated);
            control = Units.byBlock(control);
        } else if (layout == Layout.TREATED_IN_SEVERAL) {
            treated = Units.byBlock(treated);
        }
        Found found = calculation(layout, treated, control).found(treated, control);
        Verdict verdict = layout == Layout.CONFOUNDED
                ? Verdict.OPEN
                : VerdictRule.read(found.lowest(), found.highest(), question);
        return new Judged(treated, control, layout, found, verdict);
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
