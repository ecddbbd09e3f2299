package org.twinbar.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process that writes is killed again and again; what it said was written is there. */
class KilledWriterTest {

    private static final int KILLS = 6;
    private static final long SEED = 20261125;

    @TempDir
    Path folder;

    @Test
    void losesNothingThatWasAcknowledged() throws Exception {
        Random random = new Random(SEED);
        List<String> acknowledged = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            acknowledged.addAll(writeUntilKilled(1 + random.nextInt(60)));
        }
        try (Store store = Store.open(folder)) {
            Set<String> entered = new HashSet<>();
            for (Entry entry : store.of("width")) {
                entered.add(entry.id().toString());
            }
            for (String line : acknowledged) {
                String[] parts = line.split(" ", -1);
                assertThat(entered).as("seed %s", SEED).contains(parts[0]);
                assertThat(store.files().read(new Digest(parts[1]))).hasSizeGreaterThan(36);
            }
        }
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(KILLS);
    }

    private List<String> writeUntilKilled(int after) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<String> lines = new ArrayList<>();
        try (BufferedReader out = process.inputReader(UTF_8)) {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                lines.add(line);
                if (lines.size() == after) {
                    process.toHandle().destroyForcibly();
                }
            }
        }
        process.waitFor();
        String last = lines.get(lines.size() - 1);
        return last.split(" ", -1).length == 2 && last.length() == 36 + 1 + 64
                ? lines
                : lines.subList(0, lines.size() - 1);
    }

    /** Writes entries and files as fast as it can, and says so for each one once it is kept. */
    static final class Writer {
        private Writer() {}

        public static void main(String[] arguments) {
            try (Store store = Store.open(Path.of(arguments[0]))) {
                while (true) {
                    UUID id = UUID.randomUUID();
                    byte[] bytes = ("force of " + id).getBytes(UTF_8);
                    Digest digest = store.files().keep(bytes).digest();
                    store.append(List.of(Entries.said(id, "A03", "\"" + digest + "\"")));
                    System.out.println(id + " " + digest);
                }
            }
        }
    }
}
