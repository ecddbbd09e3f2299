package org.twinbar.app;

import java.nio.file.Path;
import java.time.Clock;
import java.util.function.Supplier;
import org.twinbar.cli.Door;
import org.twinbar.cli.Program;
import org.twinbar.method.Methods;
import org.twinbar.study.Workspace;
import org.twinbar.web.WebServer;

/** Hands the pages to the command line: the one place that knows both doors. */
record Serving(Supplier<Methods> methods, Clock clock) implements Door {

    @Override
    public Open open(Path folder, int port) {
        Workspace workspace = Workspace.open(folder, methods.get(), clock, Program.NAME);
        try {
            return new Pages(WebServer.start(workspace, workspace.methods(), port), workspace);
        } catch (RuntimeException e) {
            workspace.close();
            throw e;
        }
    }

    private record Pages(WebServer server, Workspace workspace) implements Open {

        @Override
        public String address() {
            return server.address().toString();
        }

        @Override
        public void close() {
            server.close();
            workspace.close();
        }
    }
}
