package org.twinbar.report.paper;

import java.util.Locale;
import org.twinbar.report.Pdf;

/** How large a drawing of ours is set, and in which letters. */
enum Size {
    /** In millimetres, since a PDF has no style sheet for it. */
    OF_PAPER {
        @Override
        String attributes(double width, double height) {
            return String.format(
                    Locale.ROOT,
                    " style=\"width:%.2fmm;height:%.2fmm\" font-family=\"%s\"",
                    width,
                    height,
                    Pdf.FAMILY);
        }
    },
    /** As the page's style sheet says, which forbids any other style. */
    OF_PAGE {
        @Override
        String attributes(double width, double height) {
            return " class=\"drawn\" role=\"img\"";
        }
    };

    /** Returns the attributes of the drawing, with a blank before them. */
    abstract String attributes(double width, double height);
}
