package org.twinbar.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.report.Gained;
import org.twinbar.report.kit.Palette;
import org.twinbar.study.Workspace;
import org.twinbar.study.archive.Archive;
import org.twinbar.study.archive.Filter;
import org.twinbar.study.archive.Gain;
import org.twinbar.study.archive.GroupMean;
import org.twinbar.study.archive.Paired;
import org.twinbar.study.archive.Together;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code twinbar archive}: what all studies of a workspace say, side by side. */
@Command(
        name = "archive",
        description = {
            "Lists what all studies of a workspace found: the gains of treatments, the largest first.",
            "Only like stands beside like, and what else differs is said.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class ArchiveCommand implements Callable<Integer> {

    private final Context context;

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(names = "--method", paramLabel = "NAME", description = "Of this test alone.")
    @Nullable
    String method;

    @Option(
            names = "--property",
            paramLabel = "NAME",
            description = "Of this property alone, such as strength.")
    @Nullable
    String property;

    @Option(
            names = "--group",
            paramLabel = "NAME",
            description = "Of this treatment alone, such as annealed; with --means of this group.")
    @Nullable
    String group;

    @Option(
            names = "--where",
            paramLabel = "FACTOR=VALUE",
            description = "Of specimens alike in this, such as orientation=upright.")
    List<String> where = new ArrayList<>();

    @Option(names = "--means", description = "The means of groups in place of gains.")
    boolean means;

    @Option(
            names = "--per",
            paramLabel = "FACTOR",
            description = "With --means: each value divided by this number of its specimen, such as"
                    + " its mass_g or its cost.")
    @Nullable
    String per;

    @Option(
            names = "--against",
            paramLabel = "NAME",
            description = "With --means: beside the property this other one of the same groups.")
    @Nullable
    String against;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "With --against: writes the one property against the other as SVG.")
    @Nullable
    Path out;

    @Option(
            names = "--scatter",
            description =
                    "The usual scatter from specimen to specimen on this bench, for planning.")
    boolean scatter;

    @Option(
            names = "--together",
            description = "Takes the gains together: fixed and random effect, and what differs.")
    boolean together;

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    ArchiveCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        requireOneKind();
        Filter filter = new Filter(
                Optional.ofNullable(method),
                Optional.ofNullable(property),
                Optional.ofNullable(group),
                Context.pairs("--where", where));
        try (Workspace open = context.openThere(workspace.folder);
                Bar bar = new Bar(context.terminal(), "studies")) {
            Archive archive = new Archive(open);
            ArchiveOutput writing = new ArchiveOutput(context.terminal().out(), json);
            if (scatter) {
                writing.scatter(archive.scatter(filter, bar));
            } else if (means) {
                means(archive, filter, bar, writing);
            } else {
                List<Gain> gains = archive.gains(filter, bar);
                if (together) {
                    writing.together(Together.of(gains));
                } else {
                    writing.gains(gains);
                }
            }
        }
        return Cli.DONE;
    }

    private void means(Archive archive, Filter filter, Bar bar, ArchiveOutput writing) {
        Optional<String> divided = Optional.ofNullable(per);
        List<GroupMean> found = archive.means(filter, divided, bar);
        Optional<List<Paired>> pairs = Optional.ofNullable(against)
                .map(other -> Paired.of(found, archive.means(filter.of(other), divided, bar)));
        if (out != null && pairs.isPresent()) {
            if (pairs.get().isEmpty()) {
                throw new UsageException("no group has both %s and %s, so there is nothing to draw"
                        .formatted(property, against));
            }
            List<Gain> gains = archive.gains(Filter.ALL, bar);
            Context.write(out, Palette.LIGHT.drawn(Gained.against(pairs.get(), gains, divided)));
        }
        writing.means(found, pairs, divided);
    }

    private void requireOneKind() {
        long kinds = List.of(means, scatter, together).stream().filter(it -> it).count();
        if (kinds > 1) {
            throw new UsageException("say one of --means, --scatter and --together");
        }
        if (!means && (per != null || against != null)) {
            throw new UsageException(
                    "%s goes with --means".formatted(per != null ? "--per" : "--against"));
        }
        if (out != null && against == null) {
            throw new UsageException("--out goes with --against");
        }
        if (against != null && property == null) {
            throw new UsageException("--against needs the --property that it stands beside");
        }
    }
}
