package org.twinbar.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.twinbar.study.JudgedSpecimen;
import org.twinbar.study.StudyName;

/** Where pages are. */
public final class Links {

    private Links() {}

    public static String study(StudyName study) {
        return "/studies/" + study.id();
    }

    public static String specimens(StudyName study) {
        return study(study) + "/specimens";
    }

    /** Returns the page of a specimen; its code may be another test's as well. */
    public static String specimen(StudyName study, JudgedSpecimen specimen) {
        return specimens(study) + "/" + path(specimen);
    }

    public static String curve(StudyName study, JudgedSpecimen specimen) {
        return study(study) + "/curves/" + path(specimen);
    }

    private static String path(JudgedSpecimen specimen) {
        return encoded(specimen.code()) + "?test=" + encoded(specimen.method());
    }

    /** A slash in a code stays one: servers refuse it where it is encoded. */
    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8)
                .replace("+", "%20")
                .replace("%2F", "/");
    }
}
