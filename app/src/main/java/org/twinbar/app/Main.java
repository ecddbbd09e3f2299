package org.twinbar.app;

import java.time.Clock;
import org.twinbar.cli.Cli;
import org.twinbar.cli.Terminal;
import org.twinbar.method.Methods;

/** Starts Twinbar from the command line. */
public final class Main {

    private Main() {}

    public static void main(String[] arguments) {
        Terminal terminal = Terminal.standard();
        Cli cli = new Cli(terminal, Methods::builtIn, Clock.systemDefaultZone(), Serving::start);
        int status = cli.run(arguments);
        terminal.flush();
        System.exit(status);
    }
}
