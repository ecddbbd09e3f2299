package org.twinbar.method.roughness;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Channel;
import org.twinbar.method.Choice;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Setting;
import org.twinbar.method.Words;
import org.twinbar.quantity.Unit;

/** What the roughness test asks for, sets and yields. */
final class RoughnessForm {

    static final Channel POSITION =
            Channel.of("position", "Place along the trace", "mm", Kind.NONE);
    static final Channel HEIGHT =
            Channel.of("height", "Height of the profile", "µm", Kind.PROFILOMETER);
    static final Input LAYER_HEIGHT = Input.of(
                    "layer_height", "Distance of the layer lines", "mm", Kind.NONE)
            .plausibly(0.02, 1);
    static final String ACROSS = "across";
    static final String ALONG = "along";
    static final Words TRACED = new Words(
                    "traced",
                    "How the trace ran to the layer lines",
                    List.of(ACROSS, ALONG, "no lines"))
            .apart();

    static final Setting CUTOFF = new Setting(
            "cutoff",
            "Cut-off of the mean line, which is one sampling length",
            Unit.of("mm"),
            2.5,
            Limits.between(0.08, 25));
    static final Setting SHORT_CUTOFF = new Setting(
            "short_cutoff",
            "Cut-off below which waves are taken for noise; 0 for none",
            Unit.of("µm"),
            0,
            Limits.between(0, 80));
    static final Setting SECTIONS = new Setting(
            "sections", "Most sampling lengths to use", Unit.of(""), 5, Limits.between(1, 50));
    static final Choice FORM =
            new Choice("form", "What is taken off as form", formNames(), FormRemoval.LINE.word());
    static final String LEFT_OUT = "left_out";
    static final String KEPT = "kept";
    static final Choice ENDS = new Choice(
            "ends",
            "Half a cut-off at each end, where the mean line is one-sided: left out, or kept",
            List.of(LEFT_OUT, KEPT),
            LEFT_OUT);

    static final Property RA = height("ra", "Ra, mean height");
    static final Property RQ = height("rq", "Rq, root mean square height");
    static final Property RZ = height("rz", "Rz, mean peak to valley of a sampling length");
    static final Property RT = height("rt", "Rt, highest peak to deepest valley");

    static final Description DESCRIPTION = new Description(
            "roughness",
            1,
            "Roughness of a profile",
            "In the manner of ISO 21920 (before it ISO 4287 and 4288) with the Gaussian filter of"
                    + " ISO 16610-21; one trace is one place, and 3 to 5 traces make a face.",
            List.of(
                    Ask.required("Which profile was traced?", List.of(POSITION, HEIGHT)),
                    Ask.optional("How far apart are the layer lines?", List.of(LAYER_HEIGHT))
                            .once(),
                    Ask.optional("How did the trace run to the layer lines?", List.of(TRACED))
                            .once()),
            List.of(CUTOFF, SHORT_CUTOFF, SECTIONS, FORM, ENDS),
            List.of(),
            List.of(RA, RQ, RZ, RT),
            List.of(
                    new Caution("A stylus scratches a soft film, and its tip breaks on an edge: let"
                            + " coats cure, and lower it slowly."),
                    new Caution("Where light does the tracing, do not look into its beam, nor at"
                            + " what a glossy coat throws back of it.")));

    private RoughnessForm() {}

    private static List<String> formNames() {
        return List.of(
                FormRemoval.LINE.word(), FormRemoval.PARABOLA.word(), FormRemoval.NONE.word());
    }

    private static Property height(String name, String label) {
        return Property.of(name, label, "µm", Scale.RATIO);
    }
}
