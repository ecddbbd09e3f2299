package org.twinbar.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/**
 * Where a command reads and writes: results to one side, progress and errors to the other.
 *
 * @param in standard input, for file arguments that are {@code -}
 * @param out results alone
 * @param err progress, explanations and errors
 * @param kind whether a person watches
 */
public record Terminal(InputStream in, PrintWriter out, PrintWriter err, Kind kind) {

    /** Who reads what is written. */
    public enum Kind {
        /** A person at a terminal: colour and progress are welcome. */
        PERSON,
        /** A file or another program. */
        PROGRAM
    }

    /** Returns the streams of this process; both are written as UTF-8. */
    public static Terminal standard() {
        return new Terminal(
                System.in,
                writer(System.out),
                writer(System.err),
                System.console() == null ? Kind.PROGRAM : Kind.PERSON);
    }

    public static PrintWriter writer(OutputStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), false);
    }

    public void flush() {
        out.flush();
        err.flush();
    }

    /** Writes one line to the side of progress and errors, at once. */
    public void say(String line) {
        out.flush();
        err.println(line);
        err.flush();
    }
}
