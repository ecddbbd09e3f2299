package org.twinbar.method;

import java.util.List;

/** How properties are had from readings. */
public interface TestMethod {

    /** Returns what the method asks for and yields; always the same. */
    Description description();

    /**
     * Returns which claims it answers, so that a person finds it by what is said of a treatment;
     * none where it doesn't say.
     */
    default List<Answering> answering() {
        return List.of();
    }

    /**
     * Calculates every property of one specimen.
     *
     * <p>Pure: the same readings give the same outcome, and nothing else is read or changed. Bad
     * readings give missing properties and findings, not exceptions.
     */
    Outcome calculate(Readings readings);
}
