package org.twinbar.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.decision.Alike;
import org.twinbar.decision.Amount;
import org.twinbar.decision.Beside;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Expectation;
import org.twinbar.decision.Found;
import org.twinbar.decision.Ground;
import org.twinbar.decision.Group;
import org.twinbar.decision.Material;
import org.twinbar.decision.Needed;
import org.twinbar.decision.Standing;
import org.twinbar.finding.Finding;
import org.twinbar.report.Sheet.Item;
import org.twinbar.report.Sheet.Picture;
import org.twinbar.statistics.LeftOver;

/** What a report says of a question that was answered by comparing groups. */
final class ComparedAnswer {

    private final Compared compared;
    private final Comparison comparison;
    private final Shown shown;

    private ComparedAnswer(Compared compared) {
        this.compared = compared;
        this.comparison = compared.comparison();
        this.shown = new Shown(comparison);
    }

    static Sheet.Answer of(Compared compared, String anchor) {
        ComparedAnswer answer = new ComparedAnswer(compared);
        return new Sheet.Answer(
                anchor,
                Answers.capital(compared.question()),
                compared.question(),
                compared.comparison().verdict().word(),
                Optional.of(answer.mark()),
                String.join(" ", compared.comparison().reasons()),
                String.join(" ", firstTwo(compared.comparison().reasons())),
                answer.pictures(),
                answer.items());
    }

    private static List<String> firstTwo(List<String> reasons) {
        return reasons.subList(0, Math.min(2, reasons.size()));
    }

    private String mark() {
        Found found = comparison.found();
        OptionalDouble estimate = found.estimate() instanceof Amount.Known known
                ? OptionalDouble.of(known.value())
                : OptionalDouble.empty();
        VerdictMark mark = new VerdictMark(
                shown.noneValue(),
                shown.worthValues(),
                estimate,
                found.low().orElse(Double.NEGATIVE_INFINITY),
                found.high().orElse(Double.POSITIVE_INFINITY));
        List<String> words = new ArrayList<>(List.of(shown.found(found)));
        words.add(shown.none().words());
        shown.worth().forEach(level -> words.add(level.words()));
        return Figures.mark(mark, comparison.verdict().word() + ": " + String.join(", ", words));
    }

    private List<Picture> pictures() {
        List<Picture> pictures = new ArrayList<>();
        GroupPictures groups = new GroupPictures(compared);
        groups.values().ifPresent(pictures::add);
        effect().ifPresent(pictures::add);
        bases().ifPresent(pictures::add);
        if (compared.curves() == Compared.Curves.SHOWN_HERE) {
            groups.curves().ifPresent(pictures::add);
        }
        if (pictures.size() % 2 == 1) {
            groups.budget().ifPresent(pictures::add);
        }
        return pictures;
    }

    private Optional<Picture> effect() {
        if (!(comparison.found().estimate() instanceof Amount.Known)) {
            return Optional.empty();
        }
        List<Effect.Row> rows = new ArrayList<>();
        rows.add(row("measured ", Effect.Kind.MEASURED, comparison.found()));
        boolean ratio = comparison.question().effect() == org.twinbar.decision.Effect.RATIO;
        if (ratio) {
            expected().ifPresent(rows::add);
        }
        return Optional.of(new Picture(Figures.effect(figure(shown.label(), rows)), legend()));
    }

    private String legend() {
        List<String> lines = new ArrayList<>();
        lines.add("plain line: " + shown.none().words());
        if (!shown.worth().isEmpty()) {
            boolean same = comparison.question().expectation() == Expectation.SAME;
            lines.add("dotted: " + (same ? "what counts as no change" : "what is worth having"));
        }
        boolean claimed =
                shown.claimed().filter(size -> !shown.worth().contains(size)).isPresent();
        if (claimed && comparison.question().worthSize().isPresent()) {
            lines.add("dashed: what is claimed");
        }
        String pattern = level()
                ? "What was found, with its %s limits; %s."
                : "Effect with its %s interval; %s.";
        return pattern.formatted(
                Written.percent(comparison.found().level()), String.join("; ", lines));
    }

    private Effect figure(String label, List<Effect.Row> rows) {
        return new Effect(
                label,
                shown.axisUnit(),
                shown.signed() ? Effect.Signs.CHANGE : Effect.Signs.VALUE,
                shown.none(),
                shown.worth(),
                shown.claimed(),
                rows);
    }

    private Effect.Row row(String words, Effect.Kind kind, Found found) {
        return row(words, kind, found.estimate(), found.low(), found.high());
    }

    private Effect.Row row(
            String words, Effect.Kind kind, Amount estimate, Amount low, Amount high) {
        return new Effect.Row(
                words + shown.found(estimate, low, high),
                kind,
                shown.at(estimate.orElse(shown.noneValue())),
                shown.at(low.orElse(Double.NEGATIVE_INFINITY)),
                shown.at(high.orElse(Double.POSITIVE_INFINITY)));
    }

    private Optional<Effect.Row> expected() {
        return comparison
                .material()
                .flatMap(Material::expected)
                .map(gain -> row(
                        "added section alone ",
                        Effect.Kind.EXPECTED,
                        new Amount.Known(gain.ratio()),
                        gain.low(),
                        gain.high()));
    }

    /** The same gain counted per part, per section and per gram, where it is known on several. */
    private Optional<Picture> bases() {
        if (comparison.material().isEmpty()
                || comparison.material().get().bases().isEmpty()) {
            return Optional.empty();
        }
        List<Effect.Row> rows = new ArrayList<>();
        for (Material.OnBasis basis : comparison.material().get().bases()) {
            if (basis.found().estimate().isKnown()) {
                rows.add(row(basis.words() + " ", Effect.Kind.MEASURED, basis.found()));
            }
        }
        expected().ifPresent(rows::add);
        return rows.size() < 2
                ? Optional.empty()
                : Optional.of(new Picture(
                        Figures.effect(figure("Change, part and material", rows)),
                        "The same readings counted per part and per what it is made of."));
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        items.add(
                level()
                        ? Item.of("Why this verdict", rule())
                        : Item.of("Why this verdict", rule(), Ruling.of(comparison)));
        comparison
                .material()
                .ifPresent(material -> items.add(Item.of("Part or material", material.words())));
        if (!comparison.findings().isEmpty()) {
            items.add(new Item(
                    "What limits it",
                    comparison.findings().stream()
                            .map(Finding::text)
                            .map(Answers::capital)
                            .distinct()
                            .toList()));
        }
        alike().ifPresent(items::add);
        standing().ifPresent(items::add);
        needed().ifPresent(items::add);
        grounds().ifPresent(items::add);
        items.add(new Item("How it was calculated", calculation()));
        return items;
    }

    private boolean level() {
        return comparison.question().effect() == org.twinbar.decision.Effect.LEVEL;
    }

    private String rule() {
        Found found = comparison.found();
        List<String> lines = new ArrayList<>();
        lines.add(level() ? shown.none().words() : "no change at " + shown.one(shown.noneValue()));
        shown.worth().forEach(level -> lines.add(level.words()));
        String interval = found.low().isKnown() || found.high().isKnown()
                ? "The interval is " + shown.range(found.low(), found.high())
                : "There is no interval";
        return interval + "; " + String.join(", ", lines) + ".";
    }

    private Optional<Item> standing() {
        Standing standing = comparison.standing();
        if (standing.views().isEmpty()) {
            return Optional.empty();
        }
        List<String> paragraphs = new ArrayList<>(List.of(standing.words()));
        if (standing.falling().isEmpty()) {
            paragraphs.add(Answers.capital(words(standing.views())) + ".");
        }
        return Optional.of(new Item("Does it stand", paragraphs));
    }

    private static String words(List<Standing.View> views) {
        return String.join(", ", views.stream().map(Standing.View::words).toList());
    }

    /** What the other levels of a factor say of the same treatment. */
    private Optional<Item> alike() {
        List<Alike> alike = comparison.context().alike();
        return alike.isEmpty()
                ? Optional.empty()
                : Optional.of(new Item(
                        "Does it act alike elsewhere",
                        alike.stream().map(Alike::words).toList()));
    }

    /** What is doubted stands among the limits already. */
    private Optional<Item> grounds() {
        List<String> words = comparison.context().grounds().stream()
                .filter(ground -> ground.doubt().isEmpty())
                .map(Ground::words)
                .toList();
        return words.isEmpty()
                ? Optional.empty()
                : Optional.of(new Item("What was taken for granted", words));
    }

    private Optional<Item> needed() {
        boolean settled = switch (comparison.verdict()) {
            case SUPPORTED, TOO_SMALL, CONTRADICTED -> true;
            case BETTER_SIZE_OPEN, OPEN, NOT_FOR_THIS_BENCH -> false;
        };
        if (settled) {
            return Optional.empty();
        }
        List<String> lines = new ArrayList<>();
        if (comparison.needed() instanceof Needed.Specimens specimens) {
            lines.add(enough(specimens));
        } else if (comparison.needed() instanceof Needed.None none
                && comparison.reasons().stream().noneMatch(r -> r.contains(none.reason()))) {
            lines.add(none.reason());
        }
        comparison.needed().ifClaimHolds().ifPresent(more -> lines.add(enough(more)));
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new Item("What would settle it", lines));
    }

    private String enough(Needed.Specimens specimens) {
        return "About %s would end in \"supported\" with a chance of %s (%s), %s."
                        .formatted(
                                level() ? specimens.perGroup() + " specimens" : specimens.words(),
                                chance(specimens.power()),
                                specimens.method(),
                                specimens.assuming())
                + specimens.simulated().map(drawn -> " " + drawn.words()).orElse("");
    }

    /** A chance is never a certainty. */
    private static String chance(double power) {
        return power > 0.99 ? "more than " + Written.percent(0.99) : Written.percent(power);
    }

    private String beside(Beside beside) {
        if (beside.unit().isEmpty()) {
            return shown.found(beside.estimate(), beside.low(), beside.high());
        }
        String unit = Written.behind(beside.unit().get().symbol());
        double half = (beside.high().orElse(0) - beside.low().orElse(0)) / 2;
        return Written.rounded(beside.estimate().orElse(0), half)
                + unit
                + " ("
                + Written.rounded(beside.low().orElse(0), half)
                + " to "
                + Written.rounded(beside.high().orElse(0), half)
                + unit
                + ")";
    }

    /** Returns the share of a group that it has not happened to yet, with its pointwise limits. */
    private static Optional<String> leftOver(Group group) {
        return group.leftOver().filter(curve -> !curve.falls().isEmpty()).map(curve -> {
            List<String> falls = new ArrayList<>();
            for (LeftOver.Fall fall : curve.falls()) {
                String from = fall.after() == fall.until()
                        ? ""
                        : Written.number(fall.after(), 4) + " to ";
                falls.add("%s%s: %s (%s to %s)"
                        .formatted(
                                from,
                                Written.number(fall.until(), 4),
                                Written.percent(fall.left()),
                                Written.fixed(100 * fall.low(), 0),
                                Written.fixed(100 * fall.high(), 0)));
            }
            return "Left over of %s after each fall, with pointwise limits, at %s."
                    .formatted(group.name(), String.join("; ", falls));
        });
    }

    private List<String> calculation() {
        Found found = comparison.found();
        List<String> lines = new ArrayList<>();
        String df = found.df() instanceof Amount.Known known
                ? ", " + Written.number(known.value(), 3) + " degrees of freedom"
                : "";
        lines.add(Answers.capital(found.method()) + df + ": " + shown.found(found) + ".");
        comparison.context().family().ifPresent(family -> {
            Found held = family.of(comparison.treated().name()).found();
            lines.add(Answers.capital(held.method()) + ": " + shown.found(held) + ".");
        });
        for (Beside beside : comparison.beside()) {
            lines.add("Beside it, " + beside.method() + ": " + beside(beside) + ".");
        }
        comparison
                .context()
                .tests()
                .forEach(test -> lines.add(
                        test.words() + " For reference only: p " + Written.p(test.p()) + "."));
        comparison.control().flatMap(ComparedAnswer::leftOver).ifPresent(lines::add);
        leftOver(comparison.treated()).ifPresent(lines::add);
        if (found.p() instanceof Amount.Known p) {
            lines.add("For reference only: p " + Written.p(p.value()) + "; no verdict reads it.");
        }
        return lines;
    }
}
