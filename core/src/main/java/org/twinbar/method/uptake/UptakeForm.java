package org.twinbar.method.uptake;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Words;

/** What the uptake of water asks for and yields. */
final class UptakeForm {

    static final Input DRY = mass("mass_dry", "Mass, dried and before immersion");
    static final Input WET = mass("mass_wet", "Mass after immersion, wiped");
    static final Input REDRIED = mass("mass_redried", "Mass after immersion, dried again");
    static final Input SATURATED = mass("mass_saturated", "Mass when it gained no more, wiped");
    static final Input IMMERSED =
            Input.of("immersed", "Time in the water", "h", Kind.TIMER).plausibly(0.5, 5000);
    static final Input THICKNESS =
            Input.of("thickness", "Thickness", "mm", Kind.CALIPER).plausibly(0.3, 20);

    static final String YES = "yes";
    static final String NO = "no";
    static final Words DRIED = new Words(
                    "dried", "Whether it was dried to constant mass before", List.of(YES, NO))
            .apart();

    static final Property UPTAKE =
            Property.of("uptake", "Water taken up, voids included", "%", Scale.RATIO);
    static final Property SATURATION =
            Property.of("saturated_uptake", "Water taken up in the end", "%", Scale.RATIO);
    static final Property DIFFUSION =
            Property.of("diffusion", "Diffusion coefficient", "mm²/s", Scale.RATIO);

    static final Description DESCRIPTION = new Description(
            "uptake",
            2,
            "Water uptake",
            "ISO 62: dried, weighed, immersed, wiped and weighed; it departs in that prints have"
                    + " voids, whose filling counts as uptake.",
            asks(),
            List.of(),
            List.of(),
            List.of(UPTAKE, SATURATION, DIFFUSION),
            List.of(
                    new Caution("Where the water boils, lower the parts in with tongs, and keep"
                            + " the steam off your arms."),
                    new Caution("What a part takes up it may give back: uptake says nothing of"
                            + " whether water that stood in it may be drunk.")));

    private UptakeForm() {}

    private static List<Ask> asks() {
        return List.of(
                Ask.required("What did it weigh dry and wet?", List.of(DRY, WET)),
                Ask.optional("What did it weigh dried again?", List.of(REDRIED)),
                Ask.optional("Was it dried before?", List.of(DRIED)),
                Ask.optional(
                        "How fast does the water come in?",
                        List.of(SATURATED, IMMERSED, THICKNESS),
                        List.of(SATURATED)));
    }

    private static Input mass(String name, String label) {
        return Input.of(name, label, "g", Kind.SCALE);
    }
}
