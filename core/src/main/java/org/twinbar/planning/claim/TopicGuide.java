package org.twinbar.planning.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Input;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.planning.AllClear;
import org.twinbar.planning.PlanException;
import org.twinbar.planning.claim.ClaimGuide.Way;
import org.twinbar.planning.claim.Prompt.Kind;
import org.twinbar.planning.claim.Prompt.Need;
import org.twinbar.planning.claim.Prompt.Option;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.specimen.PrintOrientation;

/** The guide within one topic: which test, of what, in which direction, by how much. */
final class TopicGuide {

    private static final String COMPARED = "compared";
    private static final String LEVEL = "level";
    private static final String USUAL_SHARE = "90%";

    /** Beyond this a bench at home hardly comes; common practice, no source. */
    private static final int MANY_PARTS = 20;

    private final String topic;
    private final List<Way> ways;
    private final SaidSizes said;
    private final Answers given;
    private final List<Prompt> prompts = new ArrayList<>();
    private final List<Proposal> proposals = new ArrayList<>();
    private final List<String> advice = new ArrayList<>();

    TopicGuide(String topic, List<Way> ways, SaidSizes said, Answers given) {
        this.topic = topic;
        this.ways = ways;
        this.said = said;
        this.given = given;
        ask();
    }

    List<Prompt> prompts() {
        return prompts;
    }

    List<Proposal> proposals() {
        return proposals;
    }

    List<String> advice() {
        return advice;
    }

    private void ask() {
        List<Option> options = ways.stream()
                .map(way -> new Option(
                        way.value(),
                        way.answering().how(),
                        "gives the %s, by the test '%s'"
                                .formatted(
                                        PropertyWords.label(way.answering().property()),
                                        way.description().title())))
                .toList();
        Optional<String> only =
                options.size() == 1 ? Optional.of(options.get(0).value()) : Optional.empty();
        Optional<String> how = choice(
                "how",
                "How is it to be shown?",
                "Each way answers another question.",
                options,
                only);
        how.flatMap(value ->
                        ways.stream().filter(way -> way.value().equals(value)).findFirst())
                .ifPresent(this::ask);
    }

    private void ask(Way way) {
        Answering answering = way.answering();
        Property property = property(way);
        List<Optional<PrintOrientation>> orientations = orientations(answering);
        String kind = kind(property);
        Map<String, String> stated = stated(answering);
        Optional<Proposal.Level> level = kind.equals(LEVEL) ? level(property) : Optional.empty();
        String expect = answering.better().word();
        Optional<String> claimed = Optional.empty();
        Optional<String> worth = Optional.empty();
        if (kind.equals(COMPARED)) {
            expect = expected(answering);
            if (!expect.equals(Better.UNCHANGED.word())) {
                claimed = size(
                        "claimed",
                        "Which size does the claim name?",
                        "The same interval then says whether that size is reached.",
                        property,
                        property.scale() == Scale.RATIO ? said.change() : Optional.empty(),
                        Need.OPTIONAL);
            }
            worth = worth(property, expect);
        }
        if (prompts.stream().noneMatch(Prompt::waits)) {
            for (Optional<PrintOrientation> orientation : orientations) {
                proposals.add(new Proposal(
                        topic,
                        PropertyWords.name(property, orientation),
                        way.description().name(),
                        property,
                        expect,
                        claimed,
                        worth,
                        level,
                        orientation,
                        stated,
                        answering.shape(),
                        property.equals(answering.property())
                                        || property.scale()
                                                == answering.property().scale()
                                ? answering.usualScatter()
                                : java.util.OptionalDouble.empty(),
                        PropertyWords.looksLike(property, level, worth)));
            }
        }
    }

    /** Part or material: the same thing may be counted per part, per section or per gram. */
    private Property property(Way way) {
        Property main = way.answering().property();
        List<Property> siblings = way.description().properties().stream()
                .filter(it -> it.family().equals(main.family()))
                .toList();
        if (siblings.size() < 2) {
            return main;
        }
        List<Option> options = siblings.stream()
                .map(it -> new Option(
                        it.name(),
                        PropertyWords.basis(it.basis()),
                        "gives the " + PropertyWords.label(it)))
                .toList();
        Optional<String> chosen = choice(
                "per",
                "Is the part to be better, or the material?",
                "A coated part may carry more because it is thicker, or because it is better.",
                options,
                Optional.empty());
        return siblings.stream()
                .filter(it -> it.name().equals(chosen.orElse("")))
                .findFirst()
                .orElse(main);
    }

    private List<Optional<PrintOrientation>> orientations(Answering answering) {
        if (answering.wayUp() == Answering.WayUp.ANY) {
            return List.of(Optional.empty());
        }
        List<Option> options = List.of(
                new Option("flat", "lying flat", "a load runs along the layers"),
                new Option("edge", "standing on their edge", "a load runs along the layers"),
                new Option(
                        "upright",
                        "standing upright",
                        "a load pulls the layers apart, and their lines show on every side"));
        Prompt prompt = new Prompt(
                key("orientation"),
                "How are the specimens printed: flat or upright?",
                "A treatment may help between layers and not along them; each is a question.",
                options,
                given.of(key("orientation")),
                Need.NEEDED,
                Kind.CHOICES);
        Answers.requireOption(prompt);
        prompts.add(prompt);
        return prompt.answer().stream()
                .flatMap(it -> List.of(it.split("\\s*,\\s*")).stream())
                .map(word -> Optional.of(PrintOrientation.valueOf(word.toUpperCase(Locale.ROOT))))
                .toList();
    }

    private String kind(Property property) {
        if (property.scale() == Scale.RANK || property.scale() == Scale.TIME_TO_EVENT) {
            return COMPARED;
        }
        boolean named = property.scale() == Scale.YES_NO
                || said.in(property.unit()).isPresent()
                        && !property.unit().symbol().equals("%");
        return choice(
                        "kind",
                        "Better than untreated parts, or good enough by itself?",
                        "A level needs no control, and shows what a stated share of parts reaches.",
                        List.of(
                                new Option(
                                        COMPARED,
                                        "better than untreated parts",
                                        "treated and untreated parts are compared"),
                                new Option(
                                        LEVEL,
                                        "good enough: it clears a stated level",
                                        "a tolerance limit is held against the level")),
                        Optional.of(named ? LEVEL : COMPARED))
                .orElse(COMPARED);
    }

    private Map<String, String> stated(Answering answering) {
        Map<String, String> stated = new LinkedHashMap<>();
        for (Answering.Stated each : answering.stated()) {
            List<Option> typical = each.typical().stream()
                    .map(it -> new Option(it.value(), it.words(), ""))
                    .toList();
            boolean number = each.named() instanceof Input;
            Optional<String> inWords = each.named() instanceof Input input
                    ? said.in(input.unit())
                    : Optional.of(typical.get(0).value());
            Prompt prompt = new Prompt(
                    key(each.named().name()),
                    each.question(),
                    "The answer holds for this alone.",
                    typical,
                    given.of(key(each.named().name())).or(() -> inWords),
                    Need.NEEDED,
                    number ? Kind.SIZE : Kind.WORDS);
            if (each.named() instanceof Input input) {
                requireInput(prompt, input);
            }
            prompts.add(prompt);
            prompt.answer().ifPresent(answer -> stated.put(each.named().name(), answer));
        }
        return stated;
    }

    private static void requireInput(Prompt prompt, Input input) {
        prompt.answer().ifPresent(answer -> {
            double value = read(prompt.key(), answer, it -> Quantity.parse(it, input.unit()));
            if (!input.limits().allow(value)) {
                throw new PlanException("The %s is %s, must be %s."
                        .formatted(
                                input.name().replace('_', ' '),
                                answer,
                                input.limits().describe(input.unit())));
            }
        });
    }

    private Optional<Proposal.Level> level(Property property) {
        Optional<String> at = Optional.empty();
        if (property.scale() != Scale.YES_NO) {
            at = size(
                    "at",
                    "Which level must a part clear?",
                    "The lower limit of what parts reach is held against it.",
                    property,
                    said.in(property.unit()),
                    Need.NEEDED);
        }
        Prompt share = new Prompt(
                key("of"),
                "How many of all such parts must clear it?",
                "The larger the share, the more specimens show it.",
                List.of(
                        new Option("90%", "nine in ten", ""),
                        new Option("95%", "nineteen in twenty", "")),
                given.of(key("of")).or(() -> Optional.of(USUAL_SHARE)),
                Need.NEEDED,
                Kind.SIZE);
        prompts.add(share);
        String of = share.answer().orElse(USUAL_SHARE);
        double asShare = read(share.key(), of, Quantity::parseShare);
        if (property.scale() == Scale.YES_NO) {
            adviseOnShares(property, of, asShare);
        }
        return Optional.of(new Proposal.Level(at, of));
    }

    /** Shares take many parts; a rate that can be measured takes few. */
    private void adviseOnShares(Property property, String of, double share) {
        int parts = AllClear.parts(share, AllClear.USUAL_CONFIDENCE);
        List<String> others = ways.stream()
                .filter(way -> way.answering().property().scale() == Scale.RATIO)
                .map(way -> "the %s (how = %s)"
                        .formatted(PropertyWords.label(way.answering().property()), way.value()))
                .toList();
        String wayOut = parts > MANY_PARTS && !others.isEmpty()
                ? "; %s answers with far fewer".formatted(String.join(", or ", others))
                : "";
        advice.add("To show that %s of parts pass '%s' takes %s of them, all of which pass%s."
                .formatted(of, PropertyWords.label(property), parts, wayOut));
    }

    private String expected(Answering answering) {
        return choice(
                        "expect",
                        "Which way does the claim point?",
                        "The other way would contradict it.",
                        List.of(
                                new Option("higher", "it is higher", ""),
                                new Option("lower", "it is lower", ""),
                                new Option(
                                        "same",
                                        "it does not change",
                                        "needs the smallest change that would matter")),
                        Optional.of(answering.better().word()))
                .orElse(answering.better().word());
    }

    private Optional<String> worth(Property property, String expect) {
        boolean same = expect.equals(Better.UNCHANGED.word());
        return size(
                "worth",
                same ? "Which change would matter?" : "Which change would be worth having?",
                same
                        ? "No data can show that there is none at all."
                        : "A change that is real may still be too small to take the trouble.",
                property,
                Optional.empty(),
                same ? Need.NEEDED : Need.OPTIONAL);
    }

    private Optional<String> size(
            String name,
            String question,
            String why,
            Property property,
            Optional<String> usual,
            Need need) {
        boolean relative = property.scale() != Scale.INTERVAL;
        boolean level = name.equals("at");
        Prompt prompt = new Prompt(
                key(name),
                question,
                why
                        + (level
                                ? ""
                                : relative
                                        ? " In per cent."
                                        : " In " + PropertyWords.unit(property) + "."),
                List.of(),
                given.of(key(name)).or(() -> usual),
                need,
                Kind.SIZE);
        prompts.add(prompt);
        prompt.answer()
                .ifPresent(answer -> read(
                        prompt.key(),
                        answer,
                        it -> level
                                ? Quantity.parse(it, property.unit())
                                : relative ? Quantity.parseShare(it) : difference(it, property)));
        return prompt.answer();
    }

    /** A bare number is in the unit of the property. */
    private static double difference(String text, Property property) {
        Quantity quantity = Quantity.parse(text);
        return quantity.unit().equals(Unit.ONE)
                ? quantity.value()
                : quantity.differenceIn(property.unit());
    }

    private static double read(
            String key, String text, java.util.function.Function<String, Double> reader) {
        try {
            return reader.apply(text);
        } catch (QuantityException e) {
            throw new PlanException("%s: %s.".formatted(key, e.getMessage()));
        }
    }

    private Optional<String> choice(
            String name,
            String question,
            String why,
            List<Option> options,
            Optional<String> usual) {
        Prompt prompt = new Prompt(
                key(name),
                question,
                why,
                options,
                given.of(key(name)).or(() -> usual),
                Need.NEEDED,
                Kind.CHOICE);
        Answers.requireOption(prompt);
        prompts.add(prompt);
        return prompt.answer();
    }

    private String key(String name) {
        return topic.replace(' ', '-') + "." + name;
    }
}
