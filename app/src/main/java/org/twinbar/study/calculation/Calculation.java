package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Table;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Instrument;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Mark;
import org.twinbar.method.Methods;
import org.twinbar.method.Mixed;
import org.twinbar.method.Named;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.TestMethod;
import org.twinbar.method.conditioning.Conditioning;
import org.twinbar.study.bench.Shelf;
import org.twinbar.study.bench.TestBench;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.table.Columns;
import org.twinbar.study.table.Corrections;
import org.twinbar.study.table.CurveFile;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Presets;
import org.twinbar.study.table.Recordings;
import org.twinbar.study.table.SpecimenRow;
import org.twinbar.uncertainty.MonteCarlo;

/**
 * From a table of specimens and their curves to results; needs no store.
 *
 * <p>Specimens are worked through on all cores, each one's curve read, calculated and let go of;
 * the results and the first refusal are the same on any number of threads.
 */
public final class Calculation {

    /** Of numbers that bend, for which worlds of errors are drawn: 200,000 at most. */
    private static final MonteCarlo WORLDS = MonteCarlo.of(20_250_101).withBlocks(3, 20);

    static final Finding.Kind INSTRUMENT_ASSUMED = Finding.Kind.note(
            "instrument-assumed",
            "Nothing was said of the %s, so the usual one is assumed: steps of %s, a gain known to"
                    + " %s %% and a zero known to %s (standard uncertainties).");

    /** Where a person put marks. */
    public interface Marks {
        /** Returns the rows of a specimen's moved marks, by the mark's name. */
        Map<String, Integer> of(String specimen);
    }

    /** Whether curves are kept, thinned, for drawing. */
    public enum Drawing {
        KEEP_CURVES,
        RESULTS_ALONE
    }

    private final TestMethod method;
    private final TestSheet sheet;
    private final Recordings recordings;
    private final Shelf shelf;
    private final Corrections corrections;
    private final Marks marks;
    private final Drawing drawing;
    private final Progress progress;

    private Calculation(
            TestMethod method,
            TestSheet sheet,
            Recordings recordings,
            Shelf shelf,
            Corrections corrections,
            Marks marks,
            Drawing drawing,
            Progress progress) {
        this.method = method;
        this.sheet = sheet;
        this.shelf = shelf;
        this.recordings = recordings;
        this.corrections = corrections;
        this.marks = marks;
        this.drawing = drawing;
        this.progress = progress;
    }

    /**
     * Returns a calculation that keeps curves for drawing and knows none yet.
     *
     * @throws InputException where no method has the name that the sheet gives
     */
    public static Calculation of(Methods methods, TestSheet sheet) {
        return new Calculation(
                OwnMethods.named(methods, sheet.method()),
                sheet,
                (name, from, wanted) -> {
                    throw from.refuse("the curve '%s' is not here".formatted(name));
                },
                Shelf.EMPTY,
                Corrections.NONE,
                code -> Map.of(),
                Drawing.KEEP_CURVES,
                Progress.SILENT);
    }

    /** Returns the calculation that finds its curves here. */
    public Calculation with(Handed curves) {
        return with(curves, ReadAs.found());
    }

    /** Returns the calculation that finds its curves here and reads them as a person said. */
    public Calculation with(Handed curves, ReadAs as) {
        return new Calculation(
                method,
                sheet,
                (name, from, wanted) -> CurveFile.read(curves.find(name, from), as, wanted),
                shelf,
                corrections,
                marks,
                drawing,
                progress);
    }

    /** Returns the calculation that finds the instruments that its sheet names here. */
    public Calculation with(Shelf instruments) {
        return new Calculation(
                method, sheet, recordings, instruments, corrections, marks, drawing, progress);
    }

    public Calculation with(Corrections cells) {
        return new Calculation(method, sheet, recordings, shelf, cells, marks, drawing, progress);
    }

    public Calculation with(Marks moved) {
        return new Calculation(
                method, sheet, recordings, shelf, corrections, moved, drawing, progress);
    }

    public Calculation with(Drawing newDrawing) {
        return new Calculation(
                method, sheet, recordings, shelf, corrections, marks, newDrawing, progress);
    }

    public Calculation with(Progress newProgress) {
        return new Calculation(
                method, sheet, recordings, shelf, corrections, marks, drawing, newProgress);
    }

    /**
     * Calculates every specimen of a table.
     *
     * @param file what the table was read from
     * @throws InputException where the table, a cell or a curve can't be read as the method needs
     *     it
     */
    public Calculated run(Table table, KeptFile file) {
        Description description = method.description();
        Presets presets = Presets.of(description, sheet.set());
        TestBench named = TestBench.of(sheet, description, shelf);
        Bench bench = named.bench();
        Columns columns = Columns.of(table, description, presets);
        List<SpecimenRow> rows = new ArrayList<>();
        for (Row row : table.rows()) {
            rows.add(new SpecimenRow(table, columns, row, corrections));
        }
        requireOneOfEach(rows);
        Set<Channel> recorded = ConcurrentHashMap.newKeySet();
        List<JudgedSpecimen> specimens =
                inParallel(rows, row -> specimen(row, file, bench, presets, recorded));
        List<Named> read = read(columns, presets, recorded);
        List<Bench> benches = rows.stream()
                .filter(SpecimenRow::isBegun)
                .map(row -> row.on(bench, description))
                .distinct()
                .toList();
        List<Instrument> instruments =
                instruments(read, benches.isEmpty() ? List.of(bench) : benches);
        List<Finding> findings = new ArrayList<>(columns.findings());
        findings.addAll(named.findings(read));
        findings.addAll(Mixed.among(
                description,
                rows.stream()
                        .map(row -> new Mixed.Noted(row.group(), row.factors()))
                        .toList()));
        instruments.stream()
                .filter(it -> it.origin() == Instrument.Origin.ASSUMED)
                .map(Calculation::assumed)
                .forEach(findings::add);
        if (!read.contains(Conditioning.HOURS)) {
            Conditioning.unknown(description).ifPresent(findings::add);
        }
        return new Calculated(
                new MethodUsed(description, sheet.date(), sheet.set(), instruments),
                specimens,
                findings);
    }

    private static void requireOneOfEach(List<SpecimenRow> rows) {
        Map<String, Integer> codes = new HashMap<>();
        Map<String, Integer> curves = new HashMap<>();
        for (SpecimenRow row : rows) {
            Integer before = codes.put(row.code(), row.line());
            if (before != null) {
                throw row.codePlace()
                        .refuse("specimen '%s' stands in line %s already"
                                .formatted(row.code(), before));
            }
            row.curve().ifPresent(name -> {
                Integer other = curves.put(name, row.line());
                if (other != null) {
                    throw row.curvePlace()
                            .refuse("the curve '%s' is named in line %s already"
                                    .formatted(name, other));
                }
            });
        }
    }

    private JudgedSpecimen specimen(
            SpecimenRow row, KeptFile file, Bench bench, Presets presets, Set<Channel> recorded) {
        Description description = method.description();
        Readings.Builder builder = Readings.of(row.code(), row.group(), row.on(bench, description));
        presets.into(builder);
        List<Finding> findings = new ArrayList<>(row.into(builder));
        Optional<Recordings.Recording> recording = description.channels().isEmpty()
                ? Optional.empty()
                : row.curve().map(name -> record(description, name, row.curvePlace()));
        recording.ifPresent(it -> {
            it.channels().forEach(builder::channel);
            recorded.addAll(it.channels().keySet());
            findings.addAll(it.findings());
        });
        Map<String, Integer> moved = marks.of(row.code());
        for (Mark mark : description.marks()) {
            Integer to = moved.get(mark.name());
            if (to != null) {
                builder.mark(mark, to);
            }
        }
        Readings readings = builder.build();
        Result result = Result.of(method, readings).whereItBends(method, readings, WORLDS);
        findings.addAll(0, result.findings());
        Result whole = result.withFindings(findings);
        return new JudgedSpecimen(
                row.code(),
                description.name(),
                row.group(),
                row.factors(),
                row.asTheyCame(file),
                whole,
                drawing == Drawing.KEEP_CURVES
                        ? recording.flatMap(
                                it -> Thinning.of(description, it, result.marks(), moved.keySet()))
                        : Optional.empty(),
                Optional.empty());
    }

    private Recordings.Recording record(Description description, String name, Place from) {
        Recordings.Recording recording = recordings.read(name, from, description.channels());
        if (recording.channels().isEmpty()) {
            throw from.refuse("the curve '%s' has none of the columns %s"
                    .formatted(
                            name,
                            String.join(
                                    ", ",
                                    description.channels().stream()
                                            .map(Channel::column)
                                            .toList())));
        }
        return recording;
    }

    private List<Named> read(Columns columns, Presets presets, Set<Channel> recorded) {
        return method.description().asked().stream()
                .filter(named -> named instanceof Channel channel
                        ? recorded.contains(channel)
                        : columns.readings().containsKey(named) || presets.has(named))
                .toList();
    }

    /** @param benches the usual one, and those of specimens that were measured on pictures */
    private static List<Instrument> instruments(List<Named> read, List<Bench> benches) {
        List<Instrument> instruments = new ArrayList<>();
        for (Named named : read) {
            for (Bench bench : benches) {
                if (named instanceof Input input) {
                    instruments.add(bench.of(input.name(), input.instrument(), input.unit()));
                } else if (named instanceof Channel channel) {
                    instruments.add(bench.of(channel.name(), channel.instrument(), channel.unit()));
                }
            }
        }
        String none = Kind.NONE.word();
        return instruments.stream()
                .filter(it -> !it.name().equals(none))
                .distinct()
                .toList();
    }

    private static Finding assumed(Instrument instrument) {
        String unit = " " + instrument.unit().symbol();
        return INSTRUMENT_ASSUMED.with(
                instrument.name(),
                Figures.two(instrument.resolution()) + unit,
                Figures.two(100 * instrument.gainUncertainty()),
                Figures.two(instrument.zeroUncertainty()) + unit);
    }

    private interface Work {
        JudgedSpecimen of(SpecimenRow row);
    }

    private List<JudgedSpecimen> inParallel(List<SpecimenRow> rows, Work work) {
        int threads = Math.min(rows.size(), Runtime.getRuntime().availableProcessors());
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            Counter counter = new Counter(progress, rows.size());
            List<Future<JudgedSpecimen>> futures = new ArrayList<>();
            for (SpecimenRow row : rows) {
                futures.add(pool.submit(() -> counter.count(work.of(row))));
            }
            List<JudgedSpecimen> specimens = new ArrayList<>();
            for (Future<JudgedSpecimen> future : futures) {
                specimens.add(future.get());
            }
            return specimens;
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException ours) {
                throw ours;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the calculation was interrupted", e);
        } finally {
            pool.shutdownNow();
        }
    }

    private static final class Counter {
        private final Progress progress;
        private final int of;
        private int done;

        Counter(Progress progress, int of) {
            this.progress = progress;
            this.of = of;
        }

        synchronized JudgedSpecimen count(JudgedSpecimen specimen) {
            progress.done(++done, of);
            return specimen;
        }
    }
}
