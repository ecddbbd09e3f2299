package org.twinbar.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.twinbar.exchange.Curves;
import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Source;
import org.twinbar.quantity.Unit;

/**
 * Writes a folder of invented curves with its table of specimens, and measures how long they take
 * to read.
 *
 * <p>Arguments: the folder, and the number of curves (2,000 of 100 kB unless said). It is filled
 * once, from a fixed seed; then all curves are read with all cores, five times, and wall and
 * processor time are printed for each. For the whole job from a cold start, run {@code twinbar
 * calculate tensile --specimens FOLDER/specimens.csv} on the same folder.
 */
public final class CurveFolder {

    private static final int ROWS = 3700;
    private static final int ROUNDS = 5;
    private static final long SEED = 20260101;

    private static final List<Curves.Wanted> WANTED = List.of(
            new Curves.Wanted("time", Unit.of("s")),
            new Curves.Wanted("force", Unit.of("N")),
            new Curves.Wanted("displacement", Unit.of("mm")));

    private CurveFolder() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        int curves = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 2000;
        if (!Files.exists(folder.resolve("specimens.csv"))) {
            fill(folder, curves);
        }
        for (int round = 1; round <= ROUNDS; round++) {
            AtomicLong processor = new AtomicLong();
            AtomicLong rows = new AtomicLong();
            long start = System.nanoTime();
            IntStream.range(0, curves).parallel().forEach(i -> {
                long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                rows.addAndGet(read(folder.resolve(name(i))));
                long after = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                processor.addAndGet(after - before);
            });
            System.out.printf(
                    "round %d: %d curves, %d rows, %.2f s, %.2f s of processor time%n",
                    round,
                    curves,
                    rows.get(),
                    (System.nanoTime() - start) / 1e9,
                    processor.get() / 1e9);
        }
    }

    private static int read(Path file) {
        try {
            Source source = Source.of(file.toString(), Files.readAllBytes(file));
            return Curves.read(source, ReadAs.found(), WANTED).rows();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void fill(Path folder, int curves) throws IOException {
        Files.createDirectories(folder);
        Random random = new Random(SEED);
        StringBuilder table =
                new StringBuilder("specimen,group,width_mm,thickness_mm,curve_file\n");
        for (int i = 0; i < curves; i++) {
            table.append("S%04d,%s,10.0,4.0,%s\n"
                    .formatted(i, i % 2 == 0 ? "plain" : "coated", name(i)));
            Files.writeString(folder.resolve(name(i)), curve(random), StandardCharsets.US_ASCII);
        }
        Files.writeString(folder.resolve("specimens.csv"), table);
    }

    /** An invented pull: it bends off towards its greatest force, and breaks near the end. */
    private static String curve(Random random) {
        double strongest = 900 + 40 * random.nextGaussian();
        StringBuilder text = new StringBuilder("time_s,force_N,displacement_mm\n");
        for (int row = 0; row < ROWS; row++) {
            double displacement = 4.0 * row / ROWS;
            double held = displacement > 3.9 ? 0.1 : 1;
            double force = held * strongest * (1 - StrictMath.exp(-1.3 * displacement))
                    + random.nextGaussian();
            text.append(row / 100.0)
                    .append(',')
                    .append(StrictMath.rint(1e6 * force) / 1e6)
                    .append(',')
                    .append(StrictMath.rint(1e9 * displacement) / 1e9)
                    .append('\n');
        }
        return text.toString();
    }

    private static String name(int number) {
        return "curve-%04d.csv".formatted(number);
    }
}
