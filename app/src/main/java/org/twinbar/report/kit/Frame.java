package org.twinbar.report.kit;

/**
 * The shape of a picture, at 4K. What is 24 pixels high when the shorter side has 1080 is
 * {@value #SMALLEST_TEXT} units high here; no text may be smaller.
 */
enum Frame {
    WIDE("16x9", 3840, 2160),
    SQUARE("1x1", 2160, 2160),
    TALL("9x16", 2160, 3840);

    static final double SMALLEST_TEXT = 48;
    static final int MARGIN = 130;

    private final String word;
    private final int width;
    private final int height;

    Frame(String word, int width, int height) {
        this.word = word;
        this.width = width;
        this.height = height;
    }

    String word() {
        return word;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }
}
