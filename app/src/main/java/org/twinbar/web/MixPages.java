package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.twinbar.exchange.InputException;
import org.twinbar.instrument.Kind;
import org.twinbar.report.Written;
import org.twinbar.study.FieldException;
import org.twinbar.study.Filled;
import org.twinbar.study.MixSheet;
import org.twinbar.study.RecipeKind;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.MixMade;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.StudyName;
import org.twinbar.treatment.Component;
import org.twinbar.treatment.Recipe;
import org.twinbar.treatment.TreatmentException;

/**
 * Weighing out a mix.
 *
 * <p>"How much of each goes into the cup?": from a recipe to what the scale must show, then, while
 * it is poured, how much more of which and how to save a cup; decided there: when it is enough.
 * "How long can the mix be worked?": the time that is left, and what is coated from it.
 */
public final class MixPages {

    private static final String NUMBER = "number";
    private static final int MOST_MIXES = 999;

    private final Workspace workspace;
    private final StudyPages studies;

    MixPages(Workspace workspace, StudyPages studies) {
        this.workspace = workspace;
        this.studies = studies;
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}/mix", this::weigh);
        routes.post("/studies/{study}/mix", this::note);
        routes.get("/studies/{study}/mixes/{number}", this::made);
    }

    private void weigh(Context request) {
        StudyName study = studies.find(request);
        Form form = Form.asked(request);
        Optional<MixMade> alike = form.said("like").flatMap(it -> mix(study, it));
        if (alike.isPresent()) {
            form = like(alike.get(), form.text(NUMBER));
        }
        show(request, study, withMore(fromRecipe(form)), Amiss.NOTHING);
    }

    private Form fromRecipe(Form form) {
        return workspace.recipes().all(RecipeKind.MIX).stream()
                .filter(each -> form.is("recipe", each.id().toString()))
                .findFirst()
                .map(each -> RecipePages.filled(form, each.sheet()).with("recipe", ""))
                .orElse(form);
    }

    /** Gives a component that is poured again a field of its own. */
    private static Form withMore(Form form) {
        return form.said("pour_again")
                .map(component -> form.with(
                                MixForm.AGAIN,
                                form.said(MixForm.AGAIN)
                                        .map(before -> before + "," + component)
                                        .orElse(component))
                        .with("pour_again", ""))
                .orElse(form);
    }

    /** Shows the page, or the part of it that follows what is typed. */
    private void show(Context request, StudyName study, Form form, Amiss refused) {
        Making making = workspace.plans().forTreating(study);
        Form shown = form.said(NUMBER).isPresent()
                ? form
                : form.with(NUMBER, Integer.toString(nextMix(making)));
        if (shown.said(MixForm.STEP).isEmpty() && form.fields().isEmpty()) {
            shown = withScale(shown);
        }
        Optional<MixView> view = Optional.empty();
        Amiss amiss = refused;
        try {
            view = isBegun(form)
                    ? Optional.of(new MixView(MixForm.of(new Filled(form.fields()))))
                    : Optional.empty();
        } catch (FieldException | TreatmentException e) {
            request.status(400);
            amiss = amiss.sentence().isEmpty() ? Amiss.of(e) : amiss;
        }
        int components = components(form);
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("study", study);
        with.put("form", shown);
        with.put("amiss", amiss);
        with.put("view", view);
        with.put("poured", MixForm.poured(new Filled(form.fields()), components));
        with.put("act", UUID.randomUUID().toString());
        with.put("kept", workspace.recipes().all(RecipeKind.MIX));
        with.put("noted", isNoted(making, shown.text(NUMBER)));
        Pages.show(request, Pages.isPart(request) ? "mix-cup" : "mix", with);
    }

    /** Puts in the step of the scale that the workspace has, where it has one. */
    private Form withScale(Form form) {
        return workspace.instruments().all().stream()
                .filter(each -> each.sheet().kind().equals(Kind.SCALE.word()))
                .findFirst()
                .map(each -> form.with(MixForm.STEP, plain(each.resolution())))
                .orElse(form);
    }

    private static boolean isBegun(Form form) {
        return Stream.of(MixSheet.PARTS + 1, MixForm.TOTAL, MixForm.STEP)
                .anyMatch(field -> form.said(field).isPresent());
    }

    private static int components(Form form) {
        return (int) (2
                + IntStream.range(2, MixSheet.MOST_COMPONENTS)
                        .takeWhile(i -> form.said(MixSheet.PARTS + i).isPresent())
                        .count());
    }

    /** Returns the first mix of the plan that wasn't noted, else the one after the last. */
    private static int nextMix(Making making) {
        List<Integer> noted = making.mixes().stream().map(MixMade::number).toList();
        return IntStream.rangeClosed(1, MOST_MIXES)
                .filter(number -> !noted.contains(number))
                .findFirst()
                .orElse(MOST_MIXES);
    }

    private static boolean isNoted(Making making, String number) {
        return making.mixes().stream()
                .anyMatch(mix -> Integer.toString(mix.number()).equals(number));
    }

    /** Returns a form that asks for a mix like one that was made. */
    private static Form like(MixMade mix, String number) {
        Recipe recipe = mix.meant().recipe();
        Form form = Form.EMPTY
                .with(MixSheet.BY, recipe.by().word())
                .with(MixForm.TOTAL, plain(mix.meant().total()));
        for (int i = 0; i < recipe.components().size(); i++) {
            Component each = recipe.components().get(i);
            form = form.with(MixSheet.PARTS + i, plain(each.parts()));
            if (each.density().isPresent()) {
                form = form.with(MixSheet.DENSITY + i, plain(each.density().getAsDouble()));
            }
        }
        return number.isEmpty() ? form : form.with(NUMBER, number);
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private void note(Context request) {
        StudyName study = studies.find(request);
        Form form = Form.of(request);
        try {
            Filled filled = new Filled(form.fields());
            int number = filled.whole(NUMBER, 1, MOST_MIXES)
                    .orElseThrow(() -> new FieldException(NUMBER, "write down which mix it is"));
            MixForm mix = MixForm.of(filled);
            requireWhole(mix);
            workspace
                    .register()
                    .mixed(
                            Acts.by(form),
                            study,
                            new MixMade(
                                    number,
                                    mix.pouring().meant(),
                                    mix.pouring().cup().grams(),
                                    mix.celsius(),
                                    mix.working()
                                            .map(it -> OptionalDouble.of(it.minutes()))
                                            .orElse(OptionalDouble.empty()),
                                    noted(form, mix),
                                    workspace.treating().now(),
                                    Words.WHO),
                            form.said("why"));
            request.redirect(Links.mix(study, number), HttpStatus.SEE_OTHER);
        } catch (FieldException | TreatmentException | InputException e) {
            request.status(400);
            show(request, study, form, Amiss.of(e));
        }
    }

    private static void requireWhole(MixForm mix) {
        for (int i = 0; i < mix.pouring().meant().grams().size(); i++) {
            if (!(mix.pouring().grams(i) > 0)) {
                throw new FieldException(
                        MixForm.SHOWN + i,
                        "write down what the scale showed of %s before the mix is noted"
                                .formatted(MixSheet.name(i)));
            }
        }
    }

    private static String noted(Form form, MixForm mix) {
        List<String> noted = new ArrayList<>();
        form.said("noted").ifPresent(noted::add);
        mix.thinned()
                .ifPresent(it -> noted.add("thinned with %s mL"
                        .formatted(Written.number(it.part().millilitres(), 3))));
        return String.join("; ", noted);
    }

    /**
     * A mix that was noted.
     *
     * @param left seconds for which it can still be worked, where that is known; 0 where that is
     *     over
     * @param specimens codes of those that the plan coats from it
     */
    public record Made(
            MixMade mix,
            Optional<Long> left,
            List<String> ratio,
            List<Registered> specimens,
            int next) {}

    /** Returns a time that is left, in minutes where there are less than two hours. */
    public static String left(long seconds) {
        long minutes = (seconds + 30) / 60;
        if (seconds == 0) {
            return "Its working life is over: what is left hardens in the cup.";
        }
        return minutes < 120 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    private void made(Context request) {
        StudyName study = studies.find(request);
        MixMade mix = mix(study, request.pathParam("number"))
                .orElseThrow(() -> Refusal.notFound("The study has no such mix."));
        Making making = workspace.plans().forTreating(study);
        Pages.show(
                request,
                "mixed",
                Map.of(
                        "study",
                        study,
                        "made",
                        made(mix, making, workspace.treating().now())));
    }

    private static Made made(MixMade mix, Making making, ZonedDateTime now) {
        Optional<Long> left = mix.workableUntil()
                .map(until -> Math.max(0, Duration.between(now, until).toSeconds()));
        List<String> weighed = new ArrayList<>();
        for (int i = 0; i < mix.weighed().size(); i++) {
            weighed.add("%s\u2009g of %s"
                    .formatted(Written.number(mix.weighed().get(i), 4), MixSheet.name(i)));
        }
        weighed.add("the ratio is off by %s"
                .formatted(Written.percent(Math.abs(mix.cup().ratioError()))));
        return new Made(
                mix,
                left,
                weighed,
                making.specimens().stream()
                        .filter(each -> each.placed().mix().isPresent()
                                && each.placed().mix().getAsInt() == mix.number())
                        .toList(),
                nextMix(making));
    }

    private Optional<MixMade> mix(StudyName study, String number) {
        return workspace.plans().forTreating(study).mixes().stream()
                .filter(mix -> Integer.toString(mix.number()).equals(number))
                .findFirst();
    }
}
