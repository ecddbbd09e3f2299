package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.finding.Finding;
import org.twinbar.treatment.Batch;
import org.twinbar.treatment.MixFindings;
import org.twinbar.treatment.Scale;
import org.twinbar.treatment.Thinner;
import org.twinbar.treatment.WorkingLife;

/** All that was asked of one mix, gathered for either form of output. */
final class Mixed {

    /** A scale as the targets look on it. */
    record OnScale(Scale scale, Batch shown, double worstError) {}

    /** What must be kept to, and the batch from which on a scale keeps it. */
    record Within(double limit, double smallestGrams) {}

    /** A thinner's part and, where its density is known, its mass. */
    record Thinned(Thinner part, OptionalDouble grams) {}

    /** How long it can be worked, and the cups that fit into that. */
    record Worked(double minutes, List<Batch> cups) {}

    private final Batch batch;
    private final List<Finding> findings = new ArrayList<>();
    private Optional<OnScale> onScale = Optional.empty();
    private Optional<Within> within = Optional.empty();
    private Optional<Batch> poured = Optional.empty();
    private Optional<Thinned> thinned = Optional.empty();
    private Optional<Worked> worked = Optional.empty();

    Mixed(Batch batch) {
        this.batch = batch;
    }

    void weighOn(Scale scale) {
        Batch shown = batch.onScale(scale);
        onScale = Optional.of(new OnScale(scale, shown, shown.worstRatioError(scale)));
    }

    void keepWithin(double limit) {
        Scale scale = onScale.map(OnScale::scale)
                .orElseThrow(() -> new UsageException("--limit needs --scale, such as 0.1g"));
        within = Optional.of(new Within(limit, scale.smallestBatch(batch.recipe(), limit)));
    }

    void poured(List<Double> grams) {
        Batch cup = new Batch(batch.recipe(), grams);
        poured = Optional.of(cup);
        findings.addAll(MixFindings.weighed(cup));
    }

    void thin(double share, OptionalDouble density) {
        Thinner part = batch.thinner(share);
        thinned = Optional.of(new Thinned(
                part,
                density.isPresent()
                        ? OptionalDouble.of(part.grams(density.getAsDouble()))
                        : OptionalDouble.empty()));
        findings.addAll(MixFindings.thinned(part));
    }

    void work(WorkingLife life, double temperature, OptionalDouble gramsPerMinute) {
        double most = gramsPerMinute.isPresent()
                ? life.largestBatch(temperature, gramsPerMinute.getAsDouble())
                : Batch.MOST_IN_A_CUP;
        worked = Optional.of(new Worked(life.minutesAt(temperature), batch.split(most)));
    }

    Batch batch() {
        return batch;
    }

    Optional<OnScale> onScale() {
        return onScale;
    }

    Optional<Within> within() {
        return within;
    }

    Optional<Batch> poured() {
        return poured;
    }

    Optional<Thinned> thinned() {
        return thinned;
    }

    Optional<Worked> worked() {
        return worked;
    }

    /** Returns what there is to say of the batch, then of what was poured and added. */
    List<Finding> findings() {
        List<Finding> all = new ArrayList<>(
                onScale.isPresent()
                        ? MixFindings.planned(batch, onScale.get().scale())
                        : MixFindings.heat(batch));
        all.addAll(findings);
        return all;
    }
}
