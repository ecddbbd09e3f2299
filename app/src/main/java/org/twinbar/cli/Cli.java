package org.twinbar.cli;

import java.time.Clock;
import java.util.function.Supplier;
import org.twinbar.decision.QuestionException;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Methods;
import org.twinbar.planning.PlanException;
import org.twinbar.quantity.QuantityException;
import org.twinbar.specimen.ShapeException;
import org.twinbar.treatment.TreatmentException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Spec;

/** The command line: the root command, and what all commands have in common. */
public final class Cli {

    static final int DONE = 0;
    static final int OWN_FAILURE = 1;
    static final int WRONG_INPUT = 2;

    /** A check was done, and what it found is not as it was said. */
    static final int DIFFERS = 3;

    private final Terminal terminal;
    private final Supplier<Methods> methods;
    private final Clock clock;
    private final Door door;

    /**
     * @param methods those that come with Twinbar
     * @param clock tells when something is entered
     * @param door what serves pages
     */
    public Cli(Terminal terminal, Supplier<Methods> methods, Clock clock, Door door) {
        this.terminal = terminal;
        this.methods = methods;
        this.clock = clock;
        this.door = door;
    }

    /**
     * Runs one command and returns the exit status: 0 done, 2 wrong input, 3 a check found
     * something else than was said, 1 own failure.
     */
    public int run(String... arguments) {
        Context context = new Context(terminal, methods, clock, door);
        CommandLine line = new CommandLine(new Root(), new Made(context));
        line.setOut(terminal.out());
        line.setErr(terminal.err());
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(100);
        line.setUsageHelpAutoWidth(false);
        line.setExecutionExceptionHandler((failure, command, parsed) -> failed(failure));
        line.setParameterExceptionHandler((failure, parsed) -> misused(failure));
        int status = line.execute(arguments);
        terminal.flush();
        return status;
    }

    private int failed(Exception failure) {
        if (failure instanceof InputException
                || failure instanceof QuestionException
                || failure instanceof QuantityException
                || failure instanceof TreatmentException
                || failure instanceof PlanException
                || failure instanceof ShapeException
                || failure instanceof UsageException) {
            terminal.say("twinbar: " + failure.getMessage());
            return WRONG_INPUT;
        }
        terminal.say("twinbar failed: " + failure);
        failure.printStackTrace(terminal.err());
        return OWN_FAILURE;
    }

    private int misused(CommandLine.ParameterException failure) {
        String command = failure.getCommandLine().getCommandSpec().qualifiedName();
        String message = String.valueOf(failure.getMessage()).replaceAll("\\s*\\R\\s*", " ");
        terminal.say("twinbar: %s (see '%s --help')".formatted(message, command));
        return WRONG_INPUT;
    }

    /** Makes commands, handing each the context that it is built with. */
    private record Made(Context context) implements CommandLine.IFactory {
        @Override
        public <K> K create(Class<K> type) throws Exception {
            for (var constructor : type.getDeclaredConstructors()) {
                Class<?>[] wanted = constructor.getParameterTypes();
                if (wanted.length == 1 && wanted[0] == Context.class) {
                    return type.cast(constructor.newInstance(context));
                }
            }
            return CommandLine.defaultFactory().create(type);
        }
    }

    /** The root command. */
    @Command(
            name = "twinbar",
            description = "Tells whether a treatment really changed a printed part.",
            mixinStandardHelpOptions = true,
            versionProvider = Root.Version.class,
            sortOptions = false,
            subcommands = {
                CalculateCommand.class,
                CompareCommand.class,
                InstrumentCommand.class,
                GaugeCommand.class,
                DriftCommand.class,
                ReferenceCommand.class,
                ResolveCommand.class,
                SizeCommand.class,
                MixCommand.class,
                CoatCommand.class,
                ShapeCommand.class,
                SheetsCommand.class,
                StudyCommand.class,
                PlanCommand.class,
                RegisterCommand.class,
                TreatCommand.class,
                ReportCommand.class,
                VotesCommand.class,
                ArchiveCommand.class,
                ServeCommand.class,
                DemoCommand.class,
                CompletionCommand.class,
            })
    static final class Root implements Runnable {

        @Spec
        CommandLine.Model.@org.jspecify.annotations.Nullable CommandSpec spec;

        @Override
        public void run() {
            if (spec != null) {
                spec.commandLine().usage(spec.commandLine().getOut());
            }
        }

        static final class Version implements IVersionProvider {
            @Override
            public String[] getVersion() {
                return new String[] {Program.NAME};
            }
        }
    }
}
