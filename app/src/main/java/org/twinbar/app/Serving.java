package org.twinbar.app;

import java.nio.file.Path;
import org.twinbar.cli.Door;
import org.twinbar.exchange.InputException;

/** Hands the pages to the command line. */
final class Serving {

    private Serving() {}

    static Door.Open start(Path workspace, int port) {
        throw new InputException("the pages of %s can't be served yet".formatted(workspace));
    }
}
