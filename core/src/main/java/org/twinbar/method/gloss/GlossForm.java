package org.twinbar.method.gloss;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Description;
import org.twinbar.method.Property;
import org.twinbar.method.Words;

/** What the gloss test asks for and yields. */
final class GlossForm {

    static final String FLAT = "flat";
    static final String CURVED = "curved";
    static final String RIDGED = "ridged";
    static final String METALLIC = "metallic";
    static final Words SURFACE = new Words(
            "surface", "What the surface is like", List.of(FLAT, RIDGED, CURVED, METALLIC));
    static final String OPEN = "no";
    static final Words COVERED = new Words(
            "window_covered",
            "Whether the surface covered the meter's window",
            List.of("yes", OPEN));

    static final Description DESCRIPTION = new Description(
            "gloss",
            1,
            "Gloss at 20°, 60° and 85°",
            "In the manner of ISO 2813 and ASTM D523, which hold for flat coats that are not"
                    + " metallic; on ridges compare only what was read in one direction.",
            List.of(
                    new Ask("How glossy is it at 60°?", Ask.Need.REQUIRED, Geometry.AT_60.ways()),
                    new Ask(
                            "How glossy is it at 20°, where it reads above 70 at 60°?",
                            Ask.Need.OPTIONAL,
                            Geometry.AT_20.ways()),
                    new Ask(
                            "How glossy is it at 85°, where it reads below 10 at 60°?",
                            Ask.Need.OPTIONAL,
                            Geometry.AT_85.ways()),
                    Ask.optional("What is the surface like?", List.of(SURFACE)),
                    Ask.optional("Did it cover the meter's window?", List.of(COVERED))),
            List.of(),
            List.of(),
            properties(),
            List.of(
                    new Caution("Do not look into the meter's window while its lamp is lit."),
                    new Caution("A coat that is not cured sticks to the meter and to skin: wait"
                            + " until it is dry, and wear gloves.")));

    private GlossForm() {}

    private static List<Property> properties() {
        List<Property> properties = new ArrayList<>();
        Geometry.ALL.forEach(geometry -> properties.add(geometry.alongYielded()));
        Geometry.ALL.forEach(geometry -> properties.add(geometry.acrossYielded()));
        return properties;
    }
}
