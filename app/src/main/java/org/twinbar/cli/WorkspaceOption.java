package org.twinbar.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The workspace folder. */
final class WorkspaceOption {

    @Option(
            names = "--workspace",
            paramLabel = "DIR",
            description = "The workspace folder; 'twinbar-workspace' unless said.")
    Path folder = Path.of("twinbar-workspace");
}
