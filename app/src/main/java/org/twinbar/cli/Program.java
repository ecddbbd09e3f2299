package org.twinbar.cli;

/** Name and version, as the jar's manifest gives them. */
public final class Program {

    public static final String NAME = "Twinbar " + version();

    private Program() {}

    private static String version() {
        String version = Program.class.getPackage().getImplementationVersion();
        return version == null ? "(unpacked)" : version;
    }
}
