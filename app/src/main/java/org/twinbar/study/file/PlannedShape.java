package org.twinbar.study.file;

import java.util.List;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Spelling;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;

/** The shape that a plan names: a standard one by its one name, or a person's own. */
public final class PlannedShape {

    private PlannedShape() {}

    /**
     * Returns the name as it is kept.
     *
     * @throws InputException where it has the figures of a standard shape and nearly its letters,
     *     so that a slip of the pen would pass for a shape of one's own
     */
    public static String named(String text) {
        Optional<Shape> standard = StandardShapes.named(text);
        if (standard.isPresent()) {
            return standard.get().name();
        }
        List<String> names = StandardShapes.all().stream().map(Shape::name).toList();
        boolean slip = Spelling.nearest(text, names)
                .filter(name -> figures(name).equals(figures(text)))
                .isPresent();
        if (slip) {
            throw new InputException("there is no standard shape '%s'%s"
                    .formatted(text, Spelling.hint(text, names)));
        }
        return text;
    }

    private static String figures(String text) {
        return text.replaceAll("[^0-9]+", " ").strip();
    }
}
