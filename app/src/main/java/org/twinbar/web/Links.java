package org.twinbar.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.Photo;
import org.twinbar.study.judged.StudyName;

/** Where pages are. */
public final class Links {

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("d MMM, HH:mm", Locale.ENGLISH);

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

    static String specimen(StudyName study, String code, String method) {
        return specimens(study) + "/" + encoded(code) + "?test=" + encoded(method);
    }

    /** Returns where marks on a specimen's curve are moved. */
    public static String marks(StudyName study, JudgedSpecimen specimen) {
        return study(study) + "/marks/" + encoded(specimen.code());
    }

    public static String curve(StudyName study, JudgedSpecimen specimen) {
        return study(study) + "/curves/" + path(specimen);
    }

    /** Returns where treatments show how far they are, and what may be tested. */
    public static String treating(StudyName study) {
        return study(study) + "/treating";
    }

    /** Returns where a group's recipe is chosen. */
    public static String recipe(StudyName study, String group) {
        return study(study) + "/recipe?group=" + encoded(group);
    }

    /** Returns where the steps of a group's recipe are done. */
    public static String steps(StudyName study, String group) {
        return study(study) + "/steps?group=" + encoded(group);
    }

    /** Returns where a coat is reckoned. */
    public static String coat(StudyName study) {
        return study(study) + "/coat";
    }

    /** Returns where the conditions of claims stand that no bench can settle. */
    public static String conditions(StudyName study) {
        return study(study) + "/conditions";
    }

    /** Returns where it is said what a test was read on. */
    public static String readOn(StudyName study, String method) {
        return study(study) + "/read-on/" + encoded(method);
    }

    /** Returns where a mix is weighed out. */
    public static String weigh(StudyName study) {
        return study(study) + "/mix";
    }

    /** Returns where a mix that was noted shows how long it can be worked. */
    public static String mix(StudyName study, int number) {
        return study(study) + "/mixes/" + number;
    }

    /** Returns how a study's specimens are made. */
    public static String plan(StudyName study) {
        return study(study) + "/plan";
    }

    /** Returns what was done to the specimens of a study. */
    public static String register(StudyName study) {
        return study(study) + "/register";
    }

    /** Returns what was done to one of them. */
    public static String registered(StudyName study, String code) {
        return register(study) + "/" + encoded(code);
    }

    /** Returns where all curves of a test lie over each other. */
    public static String curves(StudyName study, String method) {
        return study(study) + "/curves?test=" + encoded(method);
    }

    public static String overlay(StudyName study, String method) {
        return study(study) + "/overlay?test=" + encoded(method);
    }

    public static String rig(StudyName study) {
        return study(study) + "/rig";
    }

    public static String rig(StudyName study, String method) {
        return rig(study) + "/" + encoded(method);
    }

    /** Returns where a specimen is measured on a picture or a film. */
    public static String picture(String rig, String code) {
        return rig + "/picture?specimen=" + encoded(code);
    }

    /** Returns where a photo is, by its digest. */
    public static String photo(String rig, Photo photo) {
        return rig + "/photos/" + photo.file().sha256();
    }

    /** Returns a time as a person says it: of the day, and which day. */
    public static String time(ZonedDateTime when) {
        return TIME.format(when);
    }

    /** Returns where a test at the rig shows one specimen. */
    public static String at(String rig, String code) {
        return rig + "?specimen=" + encoded(code);
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
