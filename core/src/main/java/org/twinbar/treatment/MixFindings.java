package org.twinbar.treatment;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.finding.Finding;
import org.twinbar.finding.Finding.Kind;

/** What a person should know of a batch before it is poured, and of one that was. */
public final class MixFindings {

    /**
     * Errors of the ratio past this are worth a look, past the second the mix is lost: METHODS.md
     * G.
     */
    public static final double DOUBTFUL = 0.02;

    static final double LOST = 0.05;

    /** Makers that allow thinner at all allow up to this; common practice, METHODS.md G. */
    static final double MOST_THINNER = 0.10;

    private static final Kind COARSE_SCALE = Kind.warning(
            "scale-too-coarse",
            "The scale's steps allow the ratio to be off by %s %%, more than the 2 %% that common practice allows: mix more, or take a finer scale.");
    private static final Kind OFF = Kind.warning(
            "ratio-off",
            "The ratio in the cup is off by %s %%, more than 2 %%: pour the rest that is named, or ask the data sheet.");
    private static final Kind REJECT = Kind.serious(
            "ratio-lost",
            "The ratio in the cup is off by %s %%, more than 5 %%: resin mixed so stays soft or brittle, so correct it or throw it away unless the data sheet allows it.");
    private static final Kind HEAT = Kind.warning(
            "cup-too-full",
            "%s g in one cup may heat itself until it smokes: split it into %s batches of at most 100 g and spread each out in a shallow tray (common practice).");
    private static final Kind THIN = Kind.warning(
            "much-thinner",
            "%s %% of thinner is more than the 10 %% that makers allow at most: it weakens the film, and counts as a treatment of its own.");
    private static final Kind THINNER = Kind.note(
            "thinner-control",
            "Thinned resin is a treatment of its own: keep a control that sees the thinner without the resin.");

    private MixFindings() {}

    /** Returns what there is to say of a batch that is planned on a scale. */
    public static List<Finding> planned(Batch batch, Scale scale) {
        List<Finding> findings = new ArrayList<>(heat(batch));
        double worst = batch.onScale(scale).worstRatioError(scale);
        if (worst > DOUBTFUL) {
            findings.add(COARSE_SCALE.with(Amounts.written(100 * worst)));
        }
        return findings;
    }

    /** Returns what there is to say of the heat in a cup. */
    public static List<Finding> heat(Batch batch) {
        if (batch.total() <= Batch.MOST_IN_A_CUP) {
            return List.of();
        }
        int cups = batch.split(Batch.MOST_IN_A_CUP).size();
        return List.of(HEAT.with(Amounts.written(batch.total()), cups));
    }

    /** Returns what there is to say of what was weighed into the cup. */
    public static List<Finding> weighed(Batch cup) {
        double error = cup.ratioError();
        if (error > LOST) {
            return List.of(REJECT.with(Amounts.written(100 * error)));
        }
        return error > DOUBTFUL ? List.of(OFF.with(Amounts.written(100 * error))) : List.of();
    }

    public static List<Finding> thinned(Thinner thinner) {
        List<Finding> findings = new ArrayList<>(List.of(THINNER.with()));
        if (thinner.share() > MOST_THINNER) {
            findings.add(THIN.with(Amounts.written(100 * thinner.share())));
        }
        return findings;
    }
}
