package org.twinbar.report;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;

/** The colour space that PDF/A wants named. */
final class ColourProfile {

    private ColourProfile() {}

    /** Returns the sRGB profile that comes with the JDK. */
    static byte[] sRgb() {
        return ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    }
}
