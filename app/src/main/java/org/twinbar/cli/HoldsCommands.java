package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A command that only holds others: typed alone, it asks for one of them by name. */
abstract class HoldsCommands implements Runnable {

    @Spec
    @Nullable
    CommandSpec spec;

    /** Returns the verb of what is asked. */
    String verb() {
        return "do";
    }

    @Override
    public void run() {
        if (spec != null) {
            List<String> names = new ArrayList<>(spec.subcommands().keySet());
            String last = names.remove(names.size() - 1);
            throw new CommandLine.ParameterException(
                    spec.commandLine(),
                    "say what to %s: %s or %s".formatted(verb(), String.join(", ", names), last));
        }
    }
}
