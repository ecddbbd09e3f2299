package org.twinbar.method;

/** How properties are had from readings. */
public interface TestMethod {

    /** Returns what the method asks for and yields; always the same. */
    Description description();

    /**
     * Calculates every property of one specimen.
     *
     * <p>Pure: the same readings give the same outcome, and nothing else is read or changed. Bad
     * readings give missing properties and findings, not exceptions.
     */
    Outcome calculate(Readings readings);
}
