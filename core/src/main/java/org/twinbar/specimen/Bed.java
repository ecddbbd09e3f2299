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
     * Where a specimen lies.
     *
     * @param position counted from 1, row by row from the front
     * @param x its left side (mm)
     * @param y its front side (mm)
     * @param isTurned whether it lies turned by a quarter
     */
    public record Spot(int position, double x, double y, boolean isTurned) {}

    /**
     * Lays out equal specimens, turned by a quarter where only so all of them fit.
     *
     * @param length of one as it stands (mm)
     * @param width of one as it stands (mm)
     * @throws ShapeException where they do not fit, with the number that does
     */
    public List<Spot> lay(double length, double width, int count) {
        int asIs = columns(length) * rows(width);
        int turned = columns(width) * rows(length);
        boolean isTurned = asIs < count && turned > asIs;
        if (count > Math.max(asIs, turned)) {
            throw tooSmall(length, width, count, Math.max(asIs, turned));
        }
        double x = isTurned ? width : length;
        double y = isTurned ? length : width;
        int columns = columns(x);
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            spots.add(new Spot(
                    i + 1,
                    gap + (i % columns) * (x + gap),
                    gap + (i / columns) * (y + gap),
                    isTurned));
        }
        return spots;
    }

    private int columns(double size) {
        return (int) ((length - gap + SLACK) / (size + gap));
    }

    private int rows(double size) {
        return (int) ((width - gap + SLACK) / (size + gap));
    }

    private ShapeException tooSmall(double x, double y, int count, int most) {
        return new ShapeException(
                "A bed of %s by %s mm holds %s of the %s specimens, each %s by %s mm with %s mm around it: %s."
                        .formatted(
                                Sizes.text(length),
                                Sizes.text(width),
                                most == 0 ? "none" : Integer.toString(most),
                                count,
                                Sizes.text(x),
                                Sizes.text(y),
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
