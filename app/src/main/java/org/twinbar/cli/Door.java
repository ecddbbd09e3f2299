package org.twinbar.cli;

import java.nio.file.Path;

/** Serves a workspace as pages; handed in by the main class, since neither door knows the other. */
@FunctionalInterface
public interface Door {

    /**
     * Starts serving on the loopback address.
     *
     * @param port 0 for any that is free
     */
    Open open(Path workspace, int port);

    /** Pages that are being served. */
    interface Open extends AutoCloseable {

        /** Returns the address to open in a browser. */
        String address();

        @Override
        void close();
    }
}
