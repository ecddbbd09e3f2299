package org.twinbar.report.paper;

import java.util.Locale;

/** A size of paper; ISO 216 and ANSI/ASME Y14.1. */
public enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** Returns its shorter side (mm). */
    public double width() {
        return width;
    }

    /** Returns its longer side (mm). */
    public double height() {
        return height;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
