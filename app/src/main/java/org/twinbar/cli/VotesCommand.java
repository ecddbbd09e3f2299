package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.twinbar.exchange.Table;
import org.twinbar.report.Voted;
import org.twinbar.report.Written;
import org.twinbar.study.Votes;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar votes FILE}: opens what viewers voted on the kit's blind sheet. */
@Command(
        name = "votes",
        description = {
            "Opens what viewers voted on the blind sheet of a kit, by its key: which group was rated",
            "higher, and how often chance alone would do that. Each specimen counts once, however many",
            "vote.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class VotesCommand implements Callable<Integer> {

    private final Context context;

    @Parameters(
            paramLabel = "FILE",
            description = "Table with a row for each vote: still, vote from 1 to 5, and who voted"
                    + " (voter) where that was written down; - for standard input.")
    String file = "";

    @Option(
            names = "--key",
            required = true,
            paramLabel = "FILE",
            description = "The kit's blind-key.csv.")
    String key = "";

    @Option(
            names = "--between",
            split = ",",
            paramLabel = "A,B",
            description = "Two groups, where the sheet shows more.")
    List<String> between = new ArrayList<>();

    @Mixin
    ReadingOptions reading = new ReadingOptions();

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    VotesCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Table votes = Table.read(context.source(file), reading.readAs());
        Table opened = Table.read(context.source(key), org.twinbar.exchange.ReadAs.found());
        Votes found = Votes.of(votes, opened, between);
        if (json) {
            Json.write(
                    context.terminal().out(),
                    it -> it.put("voters", found.voters())
                            .put("votes", found.votes())
                            .put("pairs", found.pairs())
                            .put("higher", found.second().group())
                            .put("pairsHigher", found.secondHigher())
                            .put("p", found.p())
                            .put("smallestP", found.smallestP())
                            .list("specimens", list -> {
                                for (Votes.Rated rated : List.of(found.first(), found.second())) {
                                    for (var each : rated.medians().entrySet()) {
                                        list.object(one -> one.put("specimen", each.getKey())
                                                .put("group", rated.group())
                                                .put("median", each.getValue()));
                                    }
                                }
                            })
                            .put("says", Voted.sentence(found)));
            return Cli.DONE;
        }
        Aligned rows = new Aligned().row("group", "specimen", "median vote");
        for (Votes.Rated rated : List.of(found.first(), found.second())) {
            rated.medians()
                    .forEach((code, median) ->
                            rows.row(rated.group(), code, Written.number(median, 3)));
        }
        context.terminal().out().print(rows);
        context.terminal().out().print(ComparisonsText.wrapped(Voted.sentence(found), ""));
        return Cli.DONE;
    }
}
