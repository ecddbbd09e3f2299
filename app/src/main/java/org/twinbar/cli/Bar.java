package org.twinbar.cli;

import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

import org.jspecify.annotations.Nullable;
import org.twinbar.study.calculation.Progress;

/** Shows on standard error how far long work has come; work of under a second shows nothing. */
final class Bar implements Progress, AutoCloseable {

    private static final long QUIET_NANOSECONDS = 1_000_000_000L;

    private final Terminal terminal;
    private final String things;
    private final long started = System.nanoTime();
    private @Nullable ProgressBar bar;
    private long said = started;

    Bar(Terminal terminal, String things) {
        this.terminal = terminal;
        this.things = things;
    }

    @Override
    public void done(int done, int of) {
        long now = System.nanoTime();
        if (now - started < QUIET_NANOSECONDS) {
            return;
        }
        if (terminal.kind() == Terminal.Kind.PROGRAM) {
            if (now - said > 5 * QUIET_NANOSECONDS) {
                said = now;
                terminal.say("%s of %s %s".formatted(done, of, things));
            }
            return;
        }
        if (bar == null) {
            bar = new ProgressBarBuilder()
                    .setTaskName(things)
                    .setInitialMax(of)
                    .setStyle(ProgressBarStyle.ASCII)
                    .setConsumer(new ConsoleProgressBarConsumer(System.err))
                    .build();
        }
        bar.stepTo(done);
    }

    @Override
    public void close() {
        if (bar != null) {
            bar.close();
            bar = null;
        }
    }
}
