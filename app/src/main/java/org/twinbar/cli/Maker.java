package org.twinbar.cli;

import java.util.Optional;
import org.twinbar.specimen.Mesh;
import org.twinbar.specimen.PrintOrientation;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.Solid;

/** Makes meshes of one shape, each with its code. */
record Maker(Shape shape, Solid.Relief relief, PrintOrientation orientation, double chordError) {

    /**
     * A specimen as it stands on the bed.
     *
     * @param solid with its code where it has one
     */
    record Made(Shape shape, Solid solid, PrintOrientation orientation, Mesh mesh) {

        /** Returns the code as it is drawn; empty where there is none. */
        Optional<Solid.Lettered> lettered() {
            return solid instanceof Solid.Lettered it ? Optional.of(it) : Optional.empty();
        }

        String title() {
            return lettered()
                    .map(it -> it.lettering().code() + ", " + shape.title())
                    .orElse(shape.title());
        }
    }

    Made make(Optional<String> code) {
        Solid solid = code.isPresent() ? shape.lettered(code.get(), relief) : shape.solid();
        return new Made(shape, solid, orientation, orientation.turn(solid.mesh(chordError)));
    }
}
