package org.twinbar.study;

import java.util.Arrays;

/** What an entry of the store says of a study, or of an instrument. */
public enum Aspect {
    STUDY("study"),
    TEST("test"),
    CURVE("curve"),
    READ_ON("read on"),
    CLAIM("claim"),
    LEFT_OUT("left out"),
    READING("reading"),
    MARK("mark"),
    PLAN("plan"),
    SEAL("seal"),
    KEY("key"),
    PILOT("pilot"),
    DONE("done"),
    MEASURED("measured"),
    SPECIMEN_PHOTO("specimen photo"),
    FATE("fate"),
    MIX("mix"),
    FILM("film"),
    WAITING("waiting"),
    EVIDENCE("evidence"),
    RECIPE("recipe"),
    STEP("treatment step"),
    KEPT_RECIPE("kept recipe"),
    PUBLISHED("published"),
    INSTRUMENT("instrument"),
    CALIBRATION("calibration"),
    ZERO_CHECK("zero check"),
    REFERENCE("reference"),
    REFERENCE_VALUE("reference value");

    private final String word;

    Aspect(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    static boolean isOfInstrument(String word) {
        return Instruments.ASPECTS.stream().anyMatch(it -> it.word.equals(word));
    }

    /** Whether some version of Twinbar that this one understands writes such entries. */
    static boolean isKnown(String word) {
        return Arrays.stream(values()).anyMatch(it -> it.word.equals(word));
    }
}
