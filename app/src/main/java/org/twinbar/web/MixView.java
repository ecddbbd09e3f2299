package org.twinbar.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.twinbar.finding.Finding;
import org.twinbar.report.Written;
import org.twinbar.study.MixSheet;
import org.twinbar.treatment.Batch;
import org.twinbar.treatment.MixFindings;
import org.twinbar.treatment.Pouring;
import org.twinbar.treatment.Recipe;
import org.twinbar.treatment.Scale;

/** A mix as its page shows it while it is weighed: what to pour next, then how it stands. */
public final class MixView {

    private final MixForm mix;
    private final Pouring pouring;
    private final Scale scale;

    MixView(MixForm mix) {
        this.mix = mix;
        this.pouring = mix.pouring();
        this.scale = pouring.scale();
    }

    /** How urgent a line is. */
    public enum Tone {
        PLAIN,
        GOOD,
        BAD
    }

    /** What a person is told, and how urgent it is. */
    public record Line(String text, Tone tone) {}

    /** A component of the batch as it is to be weighed. */
    public record Row(String name, String grams, String inCup, String still) {}

    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        List<Double> target = pouring.target().grams();
        for (int i = 0; i < target.size(); i++) {
            rows.add(new Row(
                    MixSheet.name(i),
                    grams(target.get(i)),
                    grams(pouring.grams(i)),
                    grams(pouring.still(i))));
        }
        return rows;
    }

    public String total() {
        return grams(pouring.target().total());
    }

    /** Returns the ratio by mass, such as {@code 100 : 42.6 by mass}. */
    public String perHundred() {
        Recipe recipe = pouring.meant().recipe();
        List<String> parts = new ArrayList<>(List.of("100"));
        for (int i = 1; i < recipe.components().size(); i++) {
            parts.add(Written.number(recipe.partsPerHundred(i), 3));
        }
        return String.join(" : ", parts) + " by mass";
    }

    /** Returns what to do now, in a sentence. */
    public Line next() {
        if (isWithin()) {
            return new Line(
                    "Enough of each: the ratio is within %s. Stir it well, and scrape the sides."
                            .formatted(Written.percent(mix.limit())),
                    Tone.GOOD);
        }
        if (pouring.next().isEmpty()) {
            return new Line(
                    "Enough of each, as far as this scale can tell. Stir it well, and scrape the sides.",
                    Tone.GOOD);
        }
        int component = pouring.next().getAsInt();
        String pour = "%s of %s, until the scale shows %s."
                .formatted(
                        grams(pouring.still(component)),
                        MixSheet.name(component),
                        grams(pouring.showsAt(component)));
        if (pouring.over().isPresent()) {
            int over = pouring.over().getAsInt();
            double excess = pouring.grams(over) - pouring.meant().grams().get(over);
            return new Line(
                    "There is %s too much of %s. To save it, pour %s The batch becomes %s."
                            .formatted(
                                    grams(excess),
                                    MixSheet.name(over),
                                    more(component) + pour,
                                    total()),
                    Tone.BAD);
        }
        return new Line("Pour " + more(component) + pour, Tone.PLAIN);
    }

    /** Returns the component that needs a field of its own to be poured again. */
    public OptionalInt again() {
        return pouring.hasAll() && !isWithin() ? pouring.next() : OptionalInt.empty();
    }

    private String more(int component) {
        return pouring.grams(component) > 0 ? "another " : "";
    }

    /** Whether it can be noted as it is, and stays within its limit. */
    public boolean isWithin() {
        return pouring.hasAll() && pouring.standing(mix.limit()) == Pouring.Standing.WITHIN;
    }

    public boolean isWhole() {
        return pouring.hasAll();
    }

    /** Returns how far each ratio in the cup is off. */
    public List<Line> reached() {
        List<Line> lines = new ArrayList<>();
        for (Pouring.Reached each : pouring.reached()) {
            lines.add(new Line(
                    "%s to %s is %s to 1 by mass, %s the recipe's %s."
                            .formatted(
                                    MixSheet.name(each.first()),
                                    MixSheet.name(each.second()),
                                    Written.number(each.ratio(), 3),
                                    off(each),
                                    Written.number(each.ratio() / (1 + each.error()), 3)),
                    Tone.PLAIN));
        }
        if (pouring.hasAll()) {
            lines.add(standing());
        }
        return lines;
    }

    private static String off(Pouring.Reached each) {
        String size = Written.value(100 * Math.abs(each.error()), 100 * each.uncertainty(), "%");
        return size + (each.error() < 0 ? " below" : " above");
    }

    private Line standing() {
        String limit = Written.percent(mix.limit());
        return switch (pouring.standing(mix.limit())) {
            case WITHIN -> new Line("That is within the limit of %s.".formatted(limit), Tone.GOOD);
            case BEYOND -> new Line("That is beyond the limit of %s.".formatted(limit), Tone.BAD);
            case UNSURE ->
                new Line(
                        "Whether that is within the limit of %s, steps of %s can't tell: a larger batch or a finer scale can."
                                .formatted(limit, grams(scale.step())),
                        Tone.BAD);
        };
    }

    /** Returns what the scale can hold, and how large a batch must be for it. */
    public String smallest() {
        Batch meant = pouring.meant();
        double worst = meant.onScale(scale).worstRatioError(scale);
        double least = scale.smallestBatch(meant.recipe(), mix.limit());
        return "Weighed exactly so, steps of %s hide up to %s %% of the ratio. Batches of %s and more keep it within %s on this scale."
                .formatted(
                        grams(scale.step()),
                        Written.number(100 * worst, 3),
                        Written.number(least, 3) + "\u2009g",
                        Written.percent(mix.limit()));
    }

    /** Returns how long it can be worked and in how many batches; nothing where nobody said. */
    public Optional<String> working() {
        return mix.working().map(work -> {
            String long_ = "At %s °C it can be worked for about %s min."
                    .formatted(
                            Written.number(work.temperature(), 3),
                            Written.number(work.minutes(), 2));
            int cups = pouring.target().split(work.largestBatch()).size();
            if (cups == 1) {
                return long_ + " This batch fits into that.";
            }
            Batch one = pouring.target().split(work.largestBatch()).get(0);
            return long_
                    + " At most %s are spread in that time: mix %s batches of %s, each when the one before is used up."
                            .formatted(
                                    Written.number(work.largestBatch(), 3) + "\u2009g",
                                    cups,
                                    grams(one.total()));
        });
    }

    public Optional<String> thinner() {
        return mix.thinned()
                .map(it -> "%s mL of thinner for the batch that was meant%s."
                        .formatted(
                                Written.number(it.part().millilitres(), 3),
                                it.grams().isPresent()
                                        ? ", %s\u2009g"
                                                .formatted(Written.number(
                                                        it.grams().getAsDouble(), 3))
                                        : ""));
    }

    /** Returns what a person should know of the batch, the heat in the cup first. */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(MixFindings.planned(pouring.target(), scale));
        mix.thinned().ifPresent(it -> findings.addAll(MixFindings.thinned(it.part())));
        return findings;
    }

    private String grams(double grams) {
        return Written.fixed(scale.nearest(grams), scale.decimals()) + "\u2009g";
    }
}
