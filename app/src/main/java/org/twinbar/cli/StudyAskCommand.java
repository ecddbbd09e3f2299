package org.twinbar.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.planning.claim.ClaimGuide;
import org.twinbar.planning.claim.Guided;
import org.twinbar.planning.claim.OffBench;
import org.twinbar.planning.claim.Prompt;
import org.twinbar.planning.claim.Proposal;
import org.twinbar.study.Act;
import org.twinbar.study.GuidedClaim;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Claim;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar study ask}: leads from a claim in words to its questions. */
@Command(
        name = "ask",
        description = {
            "Leads from a claim in words to questions that a bench can answer.",
            "Prints what is asked; give answers with --answer until nothing is left to ask.",
            "With --study the claim is then kept in it.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class StudyAskCommand implements Callable<Integer> {

    private final Context context;

    @Parameters(arity = "1..*", paramLabel = "WORDS", description = "The claim as it was made.")
    List<String> words = new ArrayList<>();

    @Option(
            names = "--answer",
            paramLabel = "KEY=VALUE",
            description = "Answers what is asked; may be repeated.")
    List<String> answers = new ArrayList<>();

    @Option(names = "--study", paramLabel = "STUDY", description = "Keeps the claim in a study.")
    @Nullable
    String study;

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(names = "--said-by", paramLabel = "WHO", description = "Who says it.")
    String saidBy = "";

    @Option(
            names = "--control",
            paramLabel = "NAME",
            description = "The untreated group; plain unless said.")
    String control = "plain";

    @Option(
            names = "--treated",
            paramLabel = "NAME",
            description = "The group that the claim is about; all but the control unless said.")
    List<String> treated = new ArrayList<>();

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    StudyAskCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (study == null) {
            write(ClaimGuide.to(context.methods().get().all()).guide(claim(), said()));
        } else {
            try (Workspace open = context.openThere(workspace.folder)) {
                Guided guided = ClaimGuide.to(open.methods().all()).guide(claim(), said());
                Claim whole = GuidedClaim.of(guided, saidBy, control, treated);
                open.addClaim(Act.by(StudyCommand.WHO), open.study(study), whole);
                write(guided);
            }
        }
        return Cli.DONE;
    }

    private String claim() {
        return String.join(" ", words);
    }

    private Map<String, String> said() {
        return new LinkedHashMap<>(Context.pairs("--answer", answers));
    }

    private void write(Guided guided) {
        if (json) {
            Json.write(context.terminal().out(), out -> json(out, guided));
        } else {
            context.terminal().out().print(text(guided));
        }
    }

    private static void json(Json out, Guided guided) throws IOException {
        out.put("words", guided.words()).put("whole", guided.isWhole());
        out.list("prompts", list -> {
            for (Prompt prompt : guided.prompts()) {
                list.object(one -> prompt(one, prompt));
            }
        });
        out.list("questions", list -> {
            for (Proposal proposal : guided.proposals()) {
                list.object(one -> proposal(one, proposal));
            }
        });
        out.list("offBench", list -> {
            for (OffBench off : guided.offBench()) {
                list.object(one -> one.put("topic", off.topic())
                        .put("whoDecides", off.whoDecides())
                        .list("conditions", conditions -> {
                            for (OffBench.Condition each : off.conditions()) {
                                conditions.object(it -> it.put("text", each.text())
                                        .put("evidence", each.evidence()));
                            }
                        }));
            }
        });
        out.texts("advice", guided.advice());
    }

    private static void prompt(Json one, Prompt prompt) throws IOException {
        one.put("key", prompt.key())
                .put("question", prompt.question())
                .put("why", prompt.why())
                .put("needed", prompt.need() == Prompt.Need.NEEDED)
                .put("kind", prompt.kind().name().toLowerCase(Locale.ROOT));
        if (prompt.answer().isPresent()) {
            one.put("answer", prompt.answer().get());
        }
        one.list("options", list -> {
            for (Prompt.Option option : prompt.options()) {
                list.object(it -> it.put("value", option.value())
                        .put("label", option.label())
                        .put("leads", option.leads()));
            }
        });
    }

    private static void proposal(Json one, Proposal proposal) throws IOException {
        one.put("name", proposal.name())
                .put("method", proposal.method())
                .put("property", proposal.property().column())
                .put("expect", proposal.expect());
        if (proposal.claimed().isPresent()) {
            one.put("claimed", proposal.claimed().get());
        }
        if (proposal.worth().isPresent()) {
            one.put("worth", proposal.worth().get());
        }
        if (proposal.level().isPresent()) {
            Proposal.Level level = proposal.level().get();
            one.object("level", it -> {
                if (level.at().isPresent()) {
                    it.put("at", level.at().get());
                }
                it.put("of", level.of());
            });
        }
        if (proposal.orientation().isPresent()) {
            one.put("orientation", proposal.orientation().get().word());
        }
        one.object("stated", it -> it.texts(proposal.stated()));
        one.put("shape", proposal.shape()).put("looksLike", proposal.looksLike());
    }

    private static String text(Guided guided) {
        StringBuilder text = new StringBuilder();
        for (Prompt prompt : guided.prompts()) {
            text.append(prompt.waits() ? "? " : "  ").append(prompt.question());
            text.append("  (").append(prompt.key()).append(")\n");
            if (prompt.answer().isPresent()) {
                text.append("    ").append(prompt.answer().get()).append('\n');
            } else {
                text.append(ComparisonsText.wrapped(
                        prompt.why() + (prompt.waits() ? "" : " May be left open."), "    "));
                Aligned options = new Aligned();
                prompt.options()
                        .forEach(it -> options.row(
                                "    " + it.value(),
                                it.label() + (it.leads().isEmpty() ? "" : ": " + it.leads())));
                text.append(options);
            }
        }
        for (Proposal each : guided.proposals()) {
            text.append("\nquestion: ").append(each.name()).append(", by the test ");
            text.append(each.method()).append('\n');
            text.append(ComparisonsText.wrapped(each.looksLike(), "  "));
        }
        for (OffBench off : guided.offBench()) {
            text.append("\nnot for this bench: ").append(off.topic()).append('\n');
            off.conditions()
                    .forEach(it -> text.append(ComparisonsText.wrapped(
                            "- " + it.text() + " Shown by: " + it.evidence() + ".", "  ")));
            text.append(ComparisonsText.wrapped(off.whoDecides(), "  "));
        }
        guided.advice().forEach(it -> text.append('\n').append(ComparisonsText.wrapped(it, "")));
        if (!guided.isWhole()) {
            Prompt first = guided.waiting().get(0);
            text.append("\nnext: --answer ").append(first.key()).append("=…\n");
        }
        return text.toString();
    }
}
