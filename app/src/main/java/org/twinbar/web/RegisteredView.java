package org.twinbar.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.report.paper.Drawings;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.Solid;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.Registered.Fate;
import org.twinbar.study.judged.Registered.Measured;
import org.twinbar.study.judged.Registered.Moment;
import org.twinbar.study.judged.Registered.Step;
import org.twinbar.study.judged.StudyName;

/** One specimen of a plan with what was done to it, as its page shows it. */
public final class RegisteredView {

    /** Where a shape has no places of its own; common practice, no source. */
    private static final int USUAL_PLACES = 3;

    private final StudyName study;
    private final Making making;
    private final Registered one;
    private final Form form;

    RegisteredView(StudyName study, Making making, Registered one, Form form) {
        this.study = study;
        this.making = making;
        this.one = one;
        this.form = form;
    }

    public StudyName study() {
        return study;
    }

    public Registered one() {
        return one;
    }

    public String link() {
        return Links.registered(study, one.code());
    }

    public String state() {
        return RegisterView.state(one);
    }

    /** Returns where it belongs, its group only where that may be known. */
    public String about() {
        return "%s; %s; tested as number %s%s."
                .formatted(
                        one.series().name(),
                        RegisterView.where(one),
                        one.placed().test(),
                        one.group()
                                .map(PlannedGroup::name)
                                .map("; group %s"::formatted)
                                .orElse(""));
    }

    public List<Step> steps() {
        return Arrays.asList(Step.values());
    }

    /** Returns the step that is most likely done next. */
    public Step likely() {
        return Arrays.stream(Step.values())
                .filter(it -> one.done(it).isEmpty())
                .findFirst()
                .orElse(Step.TESTED);
    }

    /** Returns what may become of it, a test left to its readings. */
    public List<Fate.Kind> fates() {
        return List.of(Fate.Kind.BROKEN, Fate.Kind.MISPRINTED, Fate.Kind.LOST);
    }

    public Moment moment() {
        return form.is("moment", Moment.AFTER.word()) ? Moment.AFTER : Moment.BEFORE;
    }

    /** Returns the drawing with the places where it is measured; empty where there is none. */
    public String picture() {
        return shape().map(Drawings::shape).orElse("");
    }

    public String legend() {
        return shape().map(Drawings::legend).orElse("");
    }

    private Optional<Shape> shape() {
        return PlanPlates.shape(one.series());
    }

    /**
     * A dimension or the mass.
     *
     * @param values that are typed or kept, one for each place
     * @param told mean, least and spread; empty where nothing is known
     * @param isKept whether it was measured before, so that a change needs a reason
     */
    public record Size(
            String name, String unit, List<String> values, String told, boolean isKept) {}

    public List<Size> sizes() {
        int places = shape().map(it -> it.places().size()).orElse(USUAL_PLACES);
        List<Size> sizes = new ArrayList<>();
        for (String name : names()) {
            sizes.add(size(name, places));
        }
        sizes.add(size(Measured.MASS, 1));
        return sizes;
    }

    /** What a caliper measures of it. */
    private List<String> names() {
        boolean isVessel =
                shape().filter(it -> it.solid() instanceof Solid.Vessel).isPresent();
        boolean isFlat = shape().filter(it -> it.section().isEmpty()).isPresent();
        return isVessel
                ? List.of("wall")
                : isFlat ? List.of("thickness") : List.of("width", "thickness");
    }

    private Size size(String name, int places) {
        Optional<Measured> kept = one.measured(name, moment());
        boolean isTyped = form.is("quantity", name);
        int fields = Math.max(places, kept.map(it -> it.values().size()).orElse(0));
        List<String> values = new ArrayList<>();
        for (int i = 0; i < fields; i++) {
            int at = i;
            values.add(
                    isTyped
                            ? form.text("v" + i)
                            : kept.filter(it -> at < it.values().size())
                                    .map(it -> Written.number(it.values().get(at), 8))
                                    .orElse(""));
        }
        return new Size(
                name,
                name.equals(Measured.MASS) ? "g" : "mm",
                values,
                kept.map(RegisteredView::told).orElse(""),
                kept.isPresent());
    }

    /**
     * Reads what was measured.
     *
     * @throws InputException where a value can't be read, or there is none
     */
    static Measured read(Form form, Moment moment) {
        String quantity = form.said("quantity")
                .orElseThrow(() -> new InputException("say what was measured"));
        Unit unit = Unit.of(quantity.equals(Measured.MASS) ? "g" : "mm");
        List<Double> values = new ArrayList<>();
        for (int i = 0; form.fields().containsKey("v" + i); i++) {
            String typed = form.text("v" + i);
            if (!typed.isEmpty()) {
                values.add(value(quantity, typed, unit));
            }
        }
        if (values.isEmpty()) {
            throw new InputException("type what the %s is".formatted(quantity));
        }
        return new Measured(quantity, moment, values);
    }

    private static double value(String quantity, String typed, Unit unit) {
        try {
            double value = Quantity.parse(typed, unit);
            if (!(value > 0)) {
                throw new InputException(
                        "the %s must be above zero, not '%s'".formatted(quantity, typed));
            }
            return value;
        } catch (QuantityException e) {
            throw new InputException("%s: %s".formatted(quantity, e.getMessage()));
        }
    }

    /** Returns mean, least and spread, or the one value that there is. */
    static String told(Measured measured) {
        String unit = "\u2009" + measured.unit();
        return measured.values().size() == 1
                ? Written.number(measured.mean(), 6) + unit
                : "mean %s, least %s, spread %s"
                        .formatted(
                                Written.number(measured.mean(), 5) + unit,
                                Written.number(measured.least(), 5) + unit,
                                Written.number(measured.spread(), 3) + unit);
    }

    /** Returns what it gained; empty where it was not weighed before and after. */
    public String gained() {
        return one.gained().isPresent()
                ? "It gained %s\u2009g.".formatted(Written.number(one.gained().getAsDouble(), 3))
                : "";
    }

    /** Returns its neighbours in the order of printing, the one before first. */
    public Optional<String> before() {
        return neighbour(-1);
    }

    public Optional<String> next() {
        return neighbour(1);
    }

    private Optional<String> neighbour(int step) {
        List<String> codes = making.made().stream()
                .sorted(Comparator.comparingInt((Registered it) -> it.placed().run())
                        .thenComparingInt(it -> it.placed().position()))
                .map(Registered::code)
                .toList();
        int at = codes.indexOf(one.code()) + step;
        return at >= 0 && at < codes.size() ? Optional.of(codes.get(at)) : Optional.empty();
    }
}
