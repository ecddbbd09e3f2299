package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Clock;
import org.twinbar.method.Methods;

/** One run of a command that plans or makes specimens. */
record MakeRun(int status, String out, String err) {

    static MakeRun of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(new byte[0]),
                new PrintWriter(out),
                new PrintWriter(err),
                Terminal.Kind.PROGRAM);
        Door door = (workspace, port) -> {
            throw new IllegalStateException("nothing is served here");
        };
        int status = new Cli(terminal, Methods::builtIn, Clock.systemUTC(), door).run(arguments);
        return new MakeRun(status, out.toString(), err.toString());
    }

    /** The JSON of a command that must have succeeded. */
    static JsonNode json(String... arguments) {
        String[] all = java.util.Arrays.copyOf(arguments, arguments.length + 1);
        all[arguments.length] = "--json";
        MakeRun run = of(all);
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        try {
            return new ObjectMapper().readTree(run.out());
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Asserts that a command refuses with exit status 2 and one line that says this. */
    static void refuses(String says, String... arguments) {
        MakeRun run = of(arguments);
        assertThat(run.err()).contains(says);
        assertThat(run.err().strip().lines()).hasSize(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.status()).isEqualTo(2);
    }
}
