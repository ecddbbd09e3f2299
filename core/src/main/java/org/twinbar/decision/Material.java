package org.twinbar.decision;

import java.util.List;
import java.util.Optional;
import org.twinbar.specimen.SectionGain;
import org.twinbar.statistics.StudentT;

/**
 * The same gain counted per part and per material: a coated bar carries more because it is thicker,
 * or because it is better.
 *
 * @param bases the gain on each basis that was asked
 * @param expected what the added section alone would give, as a ratio; where it is known
 * @param excess what was measured per part over what the added section explains, as a ratio
 * @param words both, in sentences
 */
public record Material(
        List<OnBasis> bases, Optional<Gain> expected, Optional<Gain> excess, String words) {

    /**
     * The gain on one basis.
     *
     * @param words the basis, such as {@code per part} or {@code per section as tested}
     */
    public record OnBasis(String words, Found found) {}

    /** A ratio with its interval. */
    public record Gain(double ratio, Amount low, Amount high) {}

    public Material {
        bases = List.copyOf(bases);
    }

    /**
     * Returns part against material.
     *
     * <p>The excess is X = r/R, r the ratio measured on the first basis and R the expected one; its
     * ends are X·exp(∓√(a² + b²)), a the distance of ln r to its own end and b = t·u(R)/R. Source:
     * METHODS.md H (excess factor); distances to ends combined as for a difference of two estimates
     * (G. Y. Zou, A. Donner, Construction of confidence limits about effect measures, 2008,
     * doi:10.1002/sim.3095).
     *
     * @param part the comparison per part, or per section before treatment; a ratio
     * @param others siblings of the same property on other bases
     * @param expected what the added section alone should give, where it is known
     * @throws QuestionException unless all are compared by ratio
     */
    public static Material of(OnBasis part, List<OnBasis> others, Optional<SectionGain> expected) {
        List<OnBasis> bases = new java.util.ArrayList<>(List.of(part));
        bases.addAll(others);
        for (OnBasis basis : bases) {
            if (basis.found().kind() != Effect.RATIO) {
                throw new QuestionException(
                        "Part and material are told apart by ratios; '%s' is compared by %s."
                                .formatted(basis.words(), basis.found().kind().word()));
            }
        }
        double level = part.found().level();
        Optional<Gain> section = expected.map(gain -> gain(gain, reach(gain, level)));
        Optional<Gain> excess = expected.filter(gain -> part.found().estimate().isKnown())
                .map(gain -> excess(part.found(), gain, reach(gain, level)));
        return new Material(bases, section, excess, words(bases, section, excess));
    }

    private static double reach(SectionGain gain, double level) {
        return new StudentT(gain.degreesOfFreedom()).twoSided(level);
    }

    private static Gain gain(SectionGain expected, double t) {
        double half = t * expected.standardUncertainty();
        return new Gain(
                expected.ratio(),
                Amount.of(expected.ratio() - half),
                Amount.of(expected.ratio() + half));
    }

    private static Gain excess(Found part, SectionGain expected, double t) {
        double measured = part.estimate().orElse(1);
        double ratio = measured / expected.ratio();
        double b = t * expected.standardUncertainty() / expected.ratio();
        return new Gain(
                ratio,
                end(part.low(), measured, ratio, b, -1),
                end(part.high(), measured, ratio, b, 1));
    }

    private static Amount end(Amount end, double measured, double ratio, double b, int side) {
        if (!(end instanceof Amount.Known known) || !(known.value() > 0)) {
            return Amount.none(Wording.NO_BOUND);
        }
        double a = StrictMath.log(known.value() / measured);
        return Amount.of(ratio * StrictMath.exp(side * Math.sqrt(a * a + b * b)));
    }

    private static String words(
            List<OnBasis> bases, Optional<Gain> expected, Optional<Gain> excess) {
        StringBuilder text = new StringBuilder();
        for (OnBasis basis : bases) {
            Found found = basis.found();
            text.append(Sentence.ON_BASIS.with(
                            "basis",
                            basis.words(),
                            "gain",
                            Written.change(found.estimate(), found.low(), found.high())))
                    .append(' ');
        }
        if (expected.isPresent() && excess.isPresent()) {
            Gain section = expected.get();
            Gain beyond = excess.get();
            text.append(Sentence.SECTION_EXPLAINS.with(
                            "gain",
                            Written.change(
                                    Amount.of(section.ratio()), section.low(), section.high())))
                    .append(' ')
                    .append(conclusion(beyond));
        }
        return text.toString().strip();
    }

    private static String conclusion(Gain beyond) {
        if (beyond.low().orElse(0) > 1) {
            return Sentence.BEYOND_SECTION.with(
                    "interval", Written.changes(beyond.low(), beyond.high()));
        }
        return beyond.high().orElse(Double.POSITIVE_INFINITY) < 1
                ? Sentence.SHORT_OF_SECTION.with(
                        "interval",
                        Written.changes(shortfall(beyond.high()), shortfall(beyond.low())))
                : Sentence.NOTHING_BEYOND_SECTION.with(
                        "interval", Written.changes(beyond.low(), beyond.high()));
    }

    /** What is 10 % less falls short by 10 %. */
    private static Amount shortfall(Amount end) {
        return end instanceof Amount.Known known ? Amount.of(2 - known.value()) : end;
    }
}
