package org.twinbar.cli;

import java.awt.Desktop;
import java.io.IOException;
import java.net.URI;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code twinbar serve}: the workspace as pages on this machine alone. */
@Command(
        name = "serve",
        description = "Serves the workspace as pages on this machine alone, until stopped.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class ServeCommand implements Callable<Integer> {

    private final Context context;

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "Port on the loopback address; any that is free unless said.")
    int port;

    @Option(names = "--open", description = "Opens the first page in the browser.")
    boolean open;

    ServeCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        try (Door.Open pages = context.door().open(workspace.folder, port)) {
            announce(context, pages);
            if (open) {
                show(pages.address());
            }
            untilStopped(pages);
        }
        return Cli.DONE;
    }

    static void announce(Context context, Door.Open pages) {
        context.terminal().out().println(pages.address());
        context.terminal().flush();
        context.terminal().say("Serving until stopped (Ctrl-C).");
    }

    static void untilStopped(Door.Open pages) {
        CountDownLatch forever = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(pages::close));
        try {
            forever.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void show(String address) {
        try {
            Desktop.getDesktop().browse(URI.create(address));
        } catch (IOException | UnsupportedOperationException e) {
            context.terminal().say("No browser could be opened; open " + address);
        }
    }
}
