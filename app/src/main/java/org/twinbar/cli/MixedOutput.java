package org.twinbar.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import org.twinbar.report.Written;
import org.twinbar.treatment.Batch;
import org.twinbar.treatment.Cautions;
import org.twinbar.treatment.Recipe;

/** A mix as JSON, and as a table to weigh by. */
final class MixedOutput {

    private static final String NO_SCALE = "say the scale's smallest step with --scale";

    private MixedOutput() {}

    static void json(Mixed mixed, PrintWriter out) {
        Json.write(out, json -> {
            Recipe recipe = mixed.batch().recipe();
            json.put("massRatio", recipe.massRatio(1));
            for (int i = 1; i < recipe.components().size(); i++) {
                json.put(
                        "parts%sPer100A".formatted(MixCommand.letter(i)),
                        recipe.partsPerHundred(i));
            }
            grams(json, mixed.batch().grams());
            json.put("total_g", mixed.batch().total());
            scale(json, mixed);
            poured(json, mixed);
            thinned(json, mixed);
            worked(json, mixed);
            json.findings(mixed.findings()).texts("cautions", Cautions.MIXING);
        });
    }

    private static void scale(Json json, Mixed mixed) throws IOException {
        if (mixed.onScale().isPresent()) {
            Mixed.OnScale onScale = mixed.onScale().get();
            json.object("onScale", it -> grams(it, onScale.shown().grams()))
                    .put("worstRatioError_percent", 100 * onScale.worstError());
        } else {
            json.reason("onScale", NO_SCALE).reason("worstRatioError_percent", NO_SCALE);
        }
        if (mixed.within().isPresent()) {
            json.put("limit_percent", 100 * mixed.within().get().limit())
                    .put("smallestBatch_g", mixed.within().get().smallestGrams());
        }
    }

    private static void poured(Json json, Mixed mixed) throws IOException {
        if (mixed.poured().isPresent()) {
            Batch cup = mixed.poured().get();
            json.object("weighed", it -> {
                grams(it, cup.grams());
                it.put("massRatio", cup.grams().get(0) / cup.grams().get(1))
                        .put("ratioError_percent", 100 * cup.ratioError())
                        .object("stillToPour", rest -> grams(rest, cup.stillToPour()));
            });
        }
    }

    private static void thinned(Json json, Mixed mixed) throws IOException {
        if (mixed.thinned().isPresent()) {
            Mixed.Thinned thinned = mixed.thinned().get();
            json.put("thinner_mL", thinned.part().millilitres());
            if (thinned.grams().isPresent()) {
                json.put("thinner_g", thinned.grams().getAsDouble());
            } else {
                json.reason("thinner_g", "say the thinner's density with --thinner-density");
            }
        }
    }

    private static void worked(Json json, Mixed mixed) throws IOException {
        if (mixed.worked().isPresent()) {
            Mixed.Worked worked = mixed.worked().get();
            json.put("workingLife_min", worked.minutes())
                    .put("batches", worked.cups().size())
                    .object("eachBatch", it -> grams(it, worked.cups().get(0).grams()));
        }
    }

    private static void grams(Json json, List<Double> grams) throws IOException {
        for (int i = 0; i < grams.size(); i++) {
            json.put("part%s_g".formatted(MixCommand.letter(i)), grams.get(i));
        }
    }

    static String text(Mixed mixed) {
        Recipe recipe = mixed.batch().recipe();
        Aligned rows = new Aligned();
        for (int i = 0; i < recipe.components().size(); i++) {
            rows.row(
                    recipe.components().get(i).name(),
                    shown(mixed, i),
                    i == 0
                            ? "100 parts by mass"
                            : three(recipe.partsPerHundred(i)) + " parts by mass");
        }
        StringBuilder text = new StringBuilder(rows.toString());
        text.append("in all ").append(figure(mixed.batch().total())).append(" g\n");
        mixed.onScale()
                .ifPresent(it -> text.append("worst ratio error on this scale %s %%\n"
                        .formatted(three(100 * it.worstError()))));
        mixed.within()
                .ifPresent(it -> text.append("from %s g on every batch keeps within %s %%\n"
                        .formatted(three(it.smallestGrams()), three(100 * it.limit()))));
        mixed.poured().ifPresent(it -> text.append(poured(it)));
        mixed.thinned().ifPresent(it -> text.append(thinned(it)));
        mixed.worked()
                .ifPresent(it -> text.append("working life about %s min: %s %s of %s g\n"
                        .formatted(
                                three(it.minutes()),
                                it.cups().size(),
                                it.cups().size() == 1 ? "batch" : "batches",
                                three(it.cups().get(0).total()))));
        mixed.findings()
                .forEach(it -> text.append(
                        ComparisonsText.wrapped(it.level().word() + ": " + it.text(), "")));
        Cautions.MIXING.forEach(it -> text.append(ComparisonsText.wrapped("caution: " + it, "")));
        return text.toString();
    }

    private static String shown(Mixed mixed, int component) {
        return mixed.onScale()
                .map(it -> Written.fixed(
                                it.shown().grams().get(component), it.scale().decimals())
                        + " g")
                .orElseGet(() -> figure(mixed.batch().grams().get(component)) + " g");
    }

    private static String poured(Batch cup) {
        StringBuilder text = new StringBuilder(
                "in the cup the ratio is off by %s %%".formatted(three(100 * cup.ratioError())));
        List<Double> rest = cup.stillToPour();
        for (int i = 0; i < rest.size(); i++) {
            if (rest.get(i) > 0) {
                text.append("; pour %s g more of %s"
                        .formatted(
                                three(rest.get(i)),
                                cup.recipe().components().get(i).name()));
            }
        }
        return text.append('\n').toString();
    }

    private static String thinned(Mixed.Thinned thinned) {
        return "thinner %s mL%s\n"
                .formatted(
                        three(thinned.part().millilitres()),
                        thinned.grams().isPresent()
                                ? ", %s g".formatted(three(thinned.grams().getAsDouble()))
                                : "");
    }

    private static String figure(double grams) {
        return Written.number(grams, 5);
    }

    private static String three(double value) {
        return Written.number(value, 3);
    }
}
