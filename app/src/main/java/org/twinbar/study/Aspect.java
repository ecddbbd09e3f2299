package org.twinbar.study;

/** What an entry of the store says of a study. */
enum Aspect {
    STUDY("study"),
    TEST("test"),
    CLAIM("claim"),
    LEFT_OUT("left out"),
    READING("reading"),
    PHOTO("photo");

    private final String word;

    Aspect(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }
}
