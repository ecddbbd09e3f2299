package org.twinbar.study.calculation;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Expectation;
import org.twinbar.decision.IntervalKind;
import org.twinbar.decision.Level;
import org.twinbar.decision.Question;
import org.twinbar.decision.QuestionException;
import org.twinbar.decision.Subject;
import org.twinbar.method.Property.Scale;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;

/** Holds what a person asked against the property that it is asked of. */
public final class Asking {

    /** What is expected of a rate, in words that can't be taken for the time. */
    public static final String SLOWER = "slower";

    public static final String FASTER = "faster";

    /** Of a yes or no: the level that "yes" clears. */
    private static final double YES = 1;

    private final Asked asked;
    private final Subject subject;
    private final Scale scale;

    private Asking(Asked asked, Subject subject, Scale scale) {
        this.asked = asked;
        this.subject = subject;
        this.scale = scale;
    }

    /**
     * Returns the question.
     *
     * @throws QuestionException where a word is none that there is, a size can't be read in the
     *     unit of its effect, or the question makes no sense
     */
    public static Question question(Asked asked, Subject subject, Scale scale) {
        return new Asking(asked, subject, scale).question();
    }

    private Question question() {
        Effect effect = effect();
        Expectation expectation = expectation(effect);
        Question question;
        if (effect == Effect.LEVEL) {
            question = Question.level(subject, level(), expectation);
        } else if (expectation == Expectation.SAME) {
            String worth = asked.said(Term.WORTH)
                    .orElseThrow(() -> new QuestionException("A claim of no change needs the"
                            + " smallest change that would matter: say it as the worth."));
            question = Question.same(subject, effect, size(worth, effect));
        } else {
            question = Question.of(subject, effect, expectation);
        }
        return withDetails(question, effect, expectation);
    }

    private Question withDetails(Question bare, Effect effect, Expectation expectation) {
        Question question = bare;
        Optional<String> worth = asked.said(Term.WORTH);
        if (worth.isPresent() && expectation != Expectation.SAME) {
            question = question.withWorth(size(worth.get(), effect));
        }
        Optional<String> claimed = asked.said(Term.CLAIMED);
        if (claimed.isPresent()) {
            question = question.withClaimed(size(claimed.get(), effect));
        }
        Optional<String> resolution = asked.said(Term.RESOLUTION);
        if (resolution.isPresent()) {
            question = question.withResolution(difference(resolution.get()));
        }
        Optional<String> seed = asked.said(Term.SEED);
        if (seed.isPresent()) {
            question = question.withSeed(seed(seed.get()));
        }
        List<IntervalKind> beside =
                asked.intervals().stream().map(IntervalKind::parse).toList();
        return question.withBeside(beside);
    }

    private Effect effect() {
        Effect usual = asked.said(Term.AT).isPresent() || asked.said(Term.OF).isPresent()
                ? Effect.LEVEL
                : switch (scale) {
                    case RATIO -> Effect.RATIO;
                    case INTERVAL -> Effect.DIFFERENCE;
                    case YES_NO -> Effect.SHARE;
                    case TIME_TO_EVENT -> Effect.RATE;
                    case RANK -> Effect.RANK;
                };
        return word(Term.EFFECT, Effect.values(), Effect::word, usual);
    }

    /**
     * A rate is how fast it happens, so that parts which last longer have the lower one. That is
     * said in words of its own, and never left to a default.
     */
    private Expectation expectation(Effect effect) {
        if (effect == Effect.RATE) {
            String said = asked.said(Term.EXPECT)
                    .orElseThrow(() -> new QuestionException(
                            "A rate needs to be told what is expected of it: '%s' (or 'lower') where parts last longer, '%s' (or 'higher') where it comes sooner."
                                    .formatted(SLOWER, FASTER)));
            if (said.equals(SLOWER) || said.equals(FASTER)) {
                return said.equals(SLOWER) ? Expectation.LOWER : Expectation.HIGHER;
            }
        }
        return word(Term.EXPECT, Expectation.values(), Expectation::word, Expectation.HIGHER);
    }

    private <T> T word(Term term, T[] values, Function<T, String> words, T otherwise) {
        Optional<String> said = asked.said(term);
        if (said.isEmpty()) {
            return otherwise;
        }
        return Arrays.stream(values)
                .filter(value -> words.apply(value).equals(said.get()))
                .findFirst()
                .orElseThrow(() -> new QuestionException("The %s '%s' is none of %s."
                        .formatted(
                                term.key(),
                                said.get(),
                                String.join(
                                        ", ", Arrays.stream(values).map(words).toList()))));
    }

    private Level level() {
        double share = asked.said(Term.OF)
                .map(text -> read(text, Quantity::parseShare))
                .orElseThrow(() -> new QuestionException(
                        "A level needs the share of parts that must clear it, such as 90%."));
        if (scale == Scale.YES_NO) {
            return new Level(YES, share);
        }
        double value = asked.said(Term.AT)
                .map(text -> read(text, it -> Quantity.parse(it, subject.unit())))
                .orElseThrow(() -> new QuestionException(
                        "A level needs the value that parts must clear, such as 60 %s."
                                .formatted(subject.unit().symbol())));
        return new Level(value, share);
    }

    private double size(String text, Effect effect) {
        return effect.sizedInPercent() ? read(text, Quantity::parseShare) : difference(text);
    }

    /** A bare number is in the unit of the property. */
    private double difference(String text) {
        return read(text, it -> {
            Quantity quantity = Quantity.parse(it);
            return quantity.unit().equals(Unit.ONE)
                    ? quantity.value()
                    : quantity.differenceIn(subject.unit());
        });
    }

    private static double read(String text, Function<String, Double> reader) {
        try {
            return reader.apply(text);
        } catch (QuantityException e) {
            // A unit that stands first keeps its small letter, so the value leads in.
            String lead = e.getMessage().startsWith("'") ? "" : "'%s': ".formatted(text);
            throw new QuestionException(lead + e.getMessage() + ".");
        }
    }

    private static long seed(String text) {
        try {
            return Long.parseLong(text.strip());
        } catch (NumberFormatException e) {
            throw new QuestionException("The seed '%s' is not a whole number.".formatted(text));
        }
    }
}
