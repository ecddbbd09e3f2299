package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.twinbar.decision.Comparing;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Found;
import org.twinbar.decision.Material;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Question;
import org.twinbar.decision.QuestionException;
import org.twinbar.decision.Subject;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Basis;
import org.twinbar.specimen.SectionGain;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Source;

/**
 * Compares a property on each basis that it is counted on, so that a thicker part is told from a
 * better material.
 */
public final class PartAndMaterial {

    private static final List<Basis> IN_ORDER =
            List.of(Basis.PART, Basis.SECTION, Basis.SECTION_BEFORE, Basis.MASS);

    /** Ratios nearer than this are the same: no section changed. */
    private static final double SAME = 1e-6;

    private final List<JudgedSpecimen> specimens;
    private final Map<Basis, Property> siblings;
    private final Asked asked;

    private PartAndMaterial(
            List<JudgedSpecimen> specimens, Map<Basis, Property> siblings, Asked asked) {
        this.specimens = specimens;
        this.siblings = siblings;
        this.asked = asked;
    }

    /**
     * Returns the comparison with part set against material, where the property is counted per part
     * and otherwise, and the two tell different things.
     *
     * @param specimens those of the test
     * @param properties all of the method
     */
    public static Comparison beside(
            Comparison comparison,
            List<JudgedSpecimen> specimens,
            List<Property> properties,
            Property property,
            Asked asked) {
        Map<Basis, Property> siblings = new TreeMap<>();
        properties.stream()
                .filter(it -> it.family().equals(property.family()) && it.basis() != Basis.NONE)
                .forEach(it -> siblings.putIfAbsent(it.basis(), it));
        boolean told = comparison.found().kind() == Effect.RATIO
                && comparison.control().isPresent()
                && siblings.containsKey(Basis.PART)
                && siblings.size() > 1;
        return told
                ? new PartAndMaterial(specimens, siblings, asked)
                        .material(comparison)
                        .map(comparison::with)
                        .orElse(comparison)
                : comparison;
    }

    private Optional<Material> material(Comparison comparison) {
        List<Material.OnBasis> bases = new ArrayList<>();
        for (Basis basis : IN_ORDER) {
            Property sibling = siblings.get(basis);
            if (sibling != null) {
                found(comparison, sibling)
                        .ifPresent(it -> bases.add(new Material.OnBasis(words(basis), it)));
            }
        }
        boolean partKnown = !bases.isEmpty() && bases.get(0).words().equals(words(Basis.PART));
        double part = partKnown ? bases.get(0).found().estimate().orElse(0) : 0;
        boolean differ = bases.stream()
                .anyMatch(it -> Math.abs(it.found().estimate().orElse(part) - part) > SAME);
        return partKnown && differ
                ? Optional.of(Material.of(
                        bases.get(0), bases.subList(1, bases.size()), sectionGain(comparison)))
                : Optional.empty();
    }

    private Optional<Found> found(Comparison comparison, Property sibling) {
        Question question = comparison.question();
        Question same = question.about(
                new Subject(sibling.label(), sibling.unit(), question.subject().things()));
        List<Observation> observations = Observing.of(specimens, sibling, asked);
        try {
            Found found = Comparing.judge(
                            same,
                            observations,
                            comparison.control().orElseThrow().name(),
                            comparison.treated().name())
                    .found();
            return found.estimate().isKnown() ? Optional.of(found) : Optional.empty();
        } catch (QuestionException e) {
            return Optional.empty();
        }
    }

    static String words(Basis basis) {
        return switch (basis) {
            case PART -> "per part";
            case SECTION -> "per section as tested";
            case SECTION_BEFORE -> "per section before treatment";
            case MASS -> "per gram";
            case NONE -> throw new IllegalArgumentException("counted per nothing");
        };
    }

    /**
     * Returns how much larger the section became: as tested over before, treated over control, so
     * that what a caliper reads too large on both days cancels.
     *
     * <p>As if the coat carried as much per section as the part; the moduli of the two are not
     * known here.
     */
    private Optional<SectionGain> sectionGain(Comparison comparison) {
        Property tested = siblings.get(Basis.SECTION);
        Property before = siblings.get(Basis.SECTION_BEFORE);
        if (tested == null || before == null) {
            return Optional.empty();
        }
        Growth treated = growth(comparison.treated().name(), tested, before);
        Growth control = growth(comparison.control().orElseThrow().name(), tested, before);
        if (treated.count == 0 || control.count == 0) {
            return Optional.empty();
        }
        double ratio = StrictMath.exp(treated.mean() - control.mean());
        double variance = treated.varianceOfMean() + control.varianceOfMean();
        Map<String, Double> moves = new TreeMap<>(treated.moves());
        control.moves().forEach((source, move) -> moves.merge(source, -move, Double::sum));
        double squares = treated.squaresOverDf() + control.squaresOverDf();
        for (double move : moves.values()) {
            variance += move * move;
        }
        double df = squares > 0 ? variance * variance / squares : Double.POSITIVE_INFINITY;
        return Optional.of(new SectionGain(ratio, ratio * Math.sqrt(variance), df));
    }

    private Growth growth(String group, Property tested, Property before) {
        Growth growth = new Growth();
        for (JudgedSpecimen specimen : specimens) {
            Budget ofTested = specimen.result().budgets().get(tested);
            Budget ofBefore = specimen.result().budgets().get(before);
            boolean asked =
                    specimen.factors().entrySet().containsAll(this.asked.where().entrySet());
            if (asked
                    && specimen.counts()
                    && specimen.group().equals(group)
                    && ofTested != null
                    && ofBefore != null) {
                growth.add(ofTested, ofBefore);
            }
        }
        return growth;
    }

    /** Logarithms of section as tested over section before, of the specimens of one group. */
    private static final class Growth {
        private int count;
        private double sum;
        private double squares;
        private double ownVariance;
        private final Map<String, Double> moved = new TreeMap<>();

        /** Strength per section falls as the section grows: the sections stand upside down. */
        void add(Budget tested, Budget before) {
            double log = StrictMath.log(before.value() / tested.value());
            count++;
            sum += log;
            squares += log * log;
            Map<Source, Double> shifts = new java.util.LinkedHashMap<>();
            before.shifts()
                    .forEach((source, shift) ->
                            shifts.merge(source, shift / before.value(), Double::sum));
            tested.shifts()
                    .forEach((source, shift) ->
                            shifts.merge(source, -shift / tested.value(), Double::sum));
            shifts.forEach((source, shift) -> {
                if (source.reach() == Source.Reach.SHARED) {
                    moved.merge(source.identity(), shift, Double::sum);
                } else {
                    ownVariance += shift * shift;
                }
            });
        }

        double mean() {
            return sum / count;
        }

        /** The scatter, or what the readings' own errors allow where they allow more. */
        double varianceOfMean() {
            return Math.max(scatter(), ownVariance / count / count);
        }

        private double scatter() {
            return count < 2 ? 0 : Math.max(squares - sum * sum / count, 0) / (count - 1) / count;
        }

        /** Satterthwaite's part of this group; errors that are told are known. */
        double squaresOverDf() {
            double own = varianceOfMean();
            return scatter() >= own && count > 1 ? own * own / (count - 1) : 0;
        }

        Map<String, Double> moves() {
            Map<String, Double> means = new TreeMap<>();
            moved.forEach((source, total) -> means.put(source, total / count));
            return means;
        }
    }
}
