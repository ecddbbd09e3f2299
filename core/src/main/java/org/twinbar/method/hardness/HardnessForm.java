package org.twinbar.method.hardness;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Words;
import org.twinbar.method.conditioning.Conditioning;

/** What the hardness test asks for and yields. */
final class HardnessForm {

    static final Input HARDNESS = Input.of(
                    "hardness", "Shore D at each place", "HD", Kind.DUROMETER)
            .within(Limits.between(0, 100))
            .plausibly(20, 90);
    static final Input THICKNESS = Input.of(
                    "thickness", "Thickness below the cone, a stack's together", "mm", Kind.CALIPER)
            .plausibly(1, 50);
    static final Input PIECES = Input.of(
                    "stacked_pieces", "How many pieces are stacked", "", Kind.NONE)
            .within(Limits.between(1, 100));
    static final Input EDGE = Input.of(
                    "edge_distance",
                    "Distance of the outermost place from an edge",
                    "mm",
                    Kind.RULER)
            .within(Limits.ZERO_OR_MORE);
    static final Input FILM = Input.of("film", "Thickness of a film on it", "mm", Kind.CALIPER)
            .within(Limits.ZERO_OR_MORE)
            .plausibly(0, 3);
    static final Words READ_AFTER = new Words(
                    "read_after", "How long after contact it was read", List.of("1 s", "15 s"))
            .apart();

    static final Property MEAN = Property.of("shore_d", "Shore D hardness", "HD", Scale.INTERVAL);
    static final Property SOFTEST =
            Property.of("shore_d_softest", "Shore D of the softest place", "HD", Scale.INTERVAL);

    static final Description DESCRIPTION = new Description(
            "hardness",
            1,
            "Shore D hardness",
            "In the manner of ISO 868, held by hand; its limits on thickness, places and edges are"
                    + " taken from memory.",
            List.of(
                    Ask.required("How hard was each place?", List.of(HARDNESS)),
                    Ask.optional("How thick is it?", List.of(THICKNESS)),
                    Ask.optional("How many pieces are stacked?", List.of(PIECES)),
                    Ask.optional("How near to an edge was it read?", List.of(EDGE)),
                    Ask.optional("How thick a film lies on it?", List.of(FILM)),
                    Ask.optional("How long after contact was it read?", List.of(READ_AFTER)),
                    Conditioning.ASK),
            List.of(),
            List.of(),
            List.of(MEAN, SOFTEST),
            List.of(new Caution(
                    "The cone is sharp: keep fingers from under it, and put its cap back"
                            + " on.")));

    private HardnessForm() {}
}
