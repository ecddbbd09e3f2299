package org.twinbar.app;

import java.time.Clock;
import org.twinbar.cli.Cli;
import org.twinbar.cli.Door;
import org.twinbar.cli.Terminal;
import org.twinbar.method.Methods;

/** Starts Twinbar from the command line. */
public final class Main {

    private Main() {}

    public static void main(String[] arguments) {
        Terminal terminal = Terminal.standard();
        Clock clock = Clock.systemDefaultZone();
        Door door = new Serving(Methods::builtIn, clock);
        Cli cli = new Cli(terminal, Methods::builtIn, clock, door);
        int status = cli.run(arguments);
        terminal.flush();
        System.exit(status);
    }
}
