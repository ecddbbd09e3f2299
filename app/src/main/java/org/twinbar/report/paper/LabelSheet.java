package org.twinbar.report.paper;

import org.twinbar.exchange.InputException;

/**
 * How labels lie on paper, counted row by row from the top left.
 *
 * @param pageWidth (mm)
 * @param pageHeight (mm)
 * @param columns labels beside each other
 * @param rows labels below each other
 * @param width of a label (mm)
 * @param height of a label (mm)
 * @param gapAcross between columns (mm)
 * @param gapDown between rows (mm)
 */
public record LabelSheet(
        double pageWidth,
        double pageHeight,
        int columns,
        int rows,
        double width,
        double height,
        double gapAcross,
        double gapDown) {

    /** Lower labels have squares that no telephone reads (mm); tried, no source. */
    static final double LEAST_HEIGHT = 8;

    private static final double LEAST_WIDTH = 18;
    private static final double MOST_HEIGHT = 150;

    /** @throws InputException where the labels do not fit on the page, or are too small */
    public LabelSheet {
        if (columns < 1 || columns > 20 || rows < 1 || rows > 60) {
            throw new InputException(
                    "a sheet has 1 to 20 columns and 1 to 60 rows of labels, not %s and %s"
                            .formatted(columns, rows));
        }
        if (!(height >= LEAST_HEIGHT && height <= MOST_HEIGHT && width >= LEAST_WIDTH)) {
            throw new InputException(
                    "a label of %s by %s mm can't be read: it is at least %s mm wide and %s to %s mm high"
                            .formatted(
                                    plain(width),
                                    plain(height),
                                    plain(LEAST_WIDTH),
                                    plain(LEAST_HEIGHT),
                                    plain(MOST_HEIGHT)));
        }
        double across = columns * width + (columns - 1) * gapAcross;
        double down = rows * height + (rows - 1) * gapDown;
        if (!(gapAcross >= 0
                && gapDown >= 0
                && across <= pageWidth + 0.01
                && down <= pageHeight + 0.01)) {
            throw new InputException("%s × %s labels take %s by %s mm, and the page has %s by %s mm"
                    .formatted(
                            columns,
                            rows,
                            plain(across),
                            plain(down),
                            plain(pageWidth),
                            plain(pageHeight)));
        }
    }

    /**
     * Returns the sheet of so many labels: in the size that such sheets are sold in (common
     * practice, no source), or else sharing out the page.
     */
    public static LabelSheet of(Paper paper, int columns, int rows) {
        String sold = paper + " " + columns + "x" + rows;
        return switch (sold) {
            case "A4 3x8" -> of(paper, columns, rows, 70, 37, 0, 0);
            case "A4 3x7" -> of(paper, columns, rows, 63.5, 38.1, 2.5, 0);
            case "A4 2x7" -> of(paper, columns, rows, 99.1, 38.1, 2.5, 0);
            case "A4 4x10" -> of(paper, columns, rows, 48.5, 25.4, 0, 0);
            case "A4 5x13" -> of(paper, columns, rows, 38.1, 21.2, 2.5, 0);
            case "LETTER 3x10" -> of(paper, columns, rows, 66.675, 25.4, 3.175, 0);
            case "LETTER 2x10" -> of(paper, columns, rows, 101.6, 25.4, 4.76, 0);
            case "LETTER 2x5" -> of(paper, columns, rows, 101.6, 50.8, 4.76, 0);
            default ->
                of(
                        paper,
                        columns,
                        rows,
                        paper.width() / Math.max(1, columns),
                        paper.height() / Math.max(1, rows),
                        0,
                        0);
        };
    }

    /** Returns a sheet with the labels in the middle of the page. */
    public static LabelSheet of(
            Paper paper,
            int columns,
            int rows,
            double width,
            double height,
            double gapAcross,
            double gapDown) {
        return new LabelSheet(
                paper.width(), paper.height(), columns, rows, width, height, gapAcross, gapDown);
    }

    /** Returns a strip: every label is a page, as printers of tape cut them. */
    public static LabelSheet strip(double width, double height) {
        return new LabelSheet(width, height, 1, 1, width, height, 0, 0);
    }

    /** Returns how many labels a page has. */
    public int perPage() {
        return columns * rows;
    }

    /** Returns how far a label lies from the left edge, counted from 0 (mm). */
    public double left(int place) {
        double margin = (pageWidth - columns * width - (columns - 1) * gapAcross) / 2;
        return margin + place % columns * (width + gapAcross);
    }

    /** Returns how far a label lies from the upper edge, counted from 0 (mm). */
    public double top(int place) {
        double margin = (pageHeight - rows * height - (rows - 1) * gapDown) / 2;
        return margin + place / columns * (height + gapDown);
    }

    private static String plain(double value) {
        return org.twinbar.report.Written.number(value, 4);
    }
}
