package org.twinbar.cli;

import org.jspecify.annotations.Nullable;

import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code twinbar completion}: a script that completes commands and options in bash and zsh. */
@Command(
        name = "completion",
        description = {
            "Prints a script that completes commands and options in bash and zsh:",
            "source <(twinbar completion)",
        },
        mixinStandardHelpOptions = true)
final class CompletionCommand implements Runnable {

    private final Context context;

    @Spec
    @Nullable
    CommandSpec spec;

    CompletionCommand(Context context) {
        this.context = context;
    }

    @Override
    public void run() {
        if (spec != null) {
            context.terminal()
                    .out()
                    .print(AutoComplete.bash("twinbar", spec.root().commandLine()));
        }
    }
}
