package org.twinbar.specimen;

import java.util.ArrayList;
import java.util.List;

/**
 * A printer's bed, on which specimens are laid out in rows from the front left corner.
 *
 * @param length left to right (mm)
 * @param width front to back (mm)
 * @param gap between specimens, and to the edge of the bed (mm)
 */
public record Bed(double length, double width, double gap) {

    /** Two nozzles and a brim pass between specimens so far apart; common practice, no source. */
    public static final double USUAL_GAP = 5;

    private static final double MOST = 2000;

    /** Rounding must not push a specimen off a bed that just holds it (mm). */
    private static final double SLACK = 1e-9;

    /** @throws ShapeException unless 0 < sides ≤ 2000 mm and 0 < gap ≤ 200 mm */
    public Bed {
        requireWithin(length, MOST, "length of the bed");
        requireWithin(width, MOST, "width of the bed");
        requireWithin(gap, MOST / 10, "gap between specimens");
    }

    /**
     * The rectangle that a specimen covers as it stands.
     *
     * @param length left to right (mm)
     * @param width front to back (mm)
     */
    public record Footprint(double length, double width) {
        private Footprint turned() {
            return new Footprint(width, length);
        }
    }

    /**
     * Where a specimen lies.
     *
     * @param position counted from 1, row by row from the front
     * @param x its left side (mm)
     * @param y its front side (mm)
     * @param isTurned whether it lies turned by a quarter
     */
    public record Spot(int position, double x, double y, boolean isTurned) {}

    /**
     * Lays out specimens in their order, a row as deep as the deepest in it; all are turned by a
     * quarter where only so they fit.
     *
     * @throws ShapeException where they do not fit, with the number that does
     */
    public List<Spot> lay(List<Footprint> specimens) {
        List<Spot> asIs = rows(specimens, false);
        if (asIs.size() == specimens.size()) {
            return asIs;
        }
        List<Spot> turned = rows(specimens.stream().map(Footprint::turned).toList(), true);
        if (turned.size() == specimens.size()) {
            return turned;
        }
        throw tooSmall(specimens, Math.max(asIs.size(), turned.size()));
    }

    /** Returns spots up to the first specimen that has no room. */
    private List<Spot> rows(List<Footprint> specimens, boolean isTurned) {
        List<Spot> spots = new ArrayList<>();
        double x = gap;
        double y = gap;
        double deepest = 0;
        for (Footprint one : specimens) {
            if (x > gap && x + one.length() + gap > length + SLACK) {
                x = gap;
                y += deepest + gap;
                deepest = 0;
            }
            if (x + one.length() + gap > length + SLACK || y + one.width() + gap > width + SLACK) {
                return spots;
            }
            spots.add(new Spot(spots.size() + 1, x, y, isTurned));
            x += one.length() + gap;
            deepest = Math.max(deepest, one.width());
        }
        return spots;
    }

    private ShapeException tooSmall(List<Footprint> specimens, int most) {
        Footprint next = specimens.get(most);
        return new ShapeException(
                "A bed of %s by %s mm holds %s of the %s specimens; the next is %s by %s mm with %s mm around it: %s."
                        .formatted(
                                Sizes.text(length),
                                Sizes.text(width),
                                most == 0 ? "none" : Integer.toString(most),
                                specimens.size(),
                                Sizes.text(next.length()),
                                Sizes.text(next.width()),
                                Sizes.text(gap),
                                most == 0
                                        ? "try another orientation"
                                        : "print them in runs of at most " + most));
    }

    private static void requireWithin(double value, double most, String name) {
        if (!(value > 0 && value <= most)) {
            throw new ShapeException("The %s must lie above 0 mm and up to %s mm, not at %s mm."
                    .formatted(name, Sizes.text(most), value));
        }
    }
}
