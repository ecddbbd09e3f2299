package org.twinbar.web;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.twinbar.report.kit.Kit;
import org.twinbar.report.kit.KitFile;
import org.twinbar.report.kit.Palette;
import org.twinbar.study.Still;
import org.twinbar.study.judged.JudgedStudy;

/** Kits that are being drawn, one after the other, and those that are ready to be taken. */
final class Kits implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(Kits.class);

    /** So many pictures are drawn side by side; a 4K picture takes 30 MB while it is drawn. */
    private static final int TOGETHER = 4;

    /** The same study gives the same zip. */
    private static final FileTime EPOCH = FileTime.from(Instant.parse("1980-01-01T12:00:00Z"));

    private final Map<UUID, Job> jobs = new HashMap<>();
    private final ExecutorService drawing = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "kits");
        thread.setDaemon(true);
        return thread;
    });

    /** A kit from the moment in which it was asked for. */
    static final class Job {
        private final JudgedStudy study;
        private final AtomicInteger done = new AtomicInteger();
        private volatile int of;
        private volatile State state = State.DRAWING;
        private volatile Path zip = Path.of("");

        private Job(JudgedStudy study) {
            this.study = study;
        }

        /** How a kit stands. */
        enum State {
            DRAWING,
            READY,
            FAILED
        }

        State state() {
            return state;
        }

        /** Returns whether the study is still the one that it was drawn of. */
        boolean isOf(JudgedStudy now) {
            return study.equals(now);
        }

        int done() {
            return done.get();
        }

        int of() {
            return of;
        }

        Path zip() {
            return zip;
        }
    }

    synchronized Optional<Job> of(UUID study) {
        return Optional.ofNullable(jobs.get(study));
    }

    /** Begins to draw the kit of a study, unless it is being drawn or ready as it stands. */
    synchronized void draw(UUID id, JudgedStudy study, List<Still> stills) {
        Job before = jobs.get(id);
        if (before != null && before.isOf(study) && before.state() != Job.State.FAILED) {
            return;
        }
        Job job = new Job(study);
        jobs.put(id, job);
        drawing.execute(() -> {
            if (before != null) {
                remove(before);
            }
            try {
                job.zip = zip(job, Kit.of(study, List.of(Palette.LIGHT, Palette.DARK), stills));
                job.state = Job.State.READY;
            } catch (RuntimeException e) {
                LOG.error("a kit could not be drawn", e);
                job.state = Job.State.FAILED;
            }
        });
    }

    private static Path zip(Job job, List<KitFile> files) {
        job.of = files.size();
        try {
            Path kept = Files.createTempFile("twinbar-kit", ".zip");
            try (ZipOutputStream zip =
                    new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(kept)))) {
                for (int from = 0; from < files.size(); from += TOGETHER) {
                    List<KitFile> some =
                            files.subList(from, Math.min(files.size(), from + TOGETHER));
                    List<byte[]> drawn = some.parallelStream()
                            .map(file -> {
                                byte[] content = file.content().get();
                                job.done.incrementAndGet();
                                return content;
                            })
                            .toList();
                    for (int i = 0; i < some.size(); i++) {
                        ZipEntry entry = new ZipEntry("kit/" + some.get(i).name());
                        entry.setLastModifiedTime(EPOCH);
                        zip.putNextEntry(entry);
                        zip.write(drawn.get(i));
                        zip.closeEntry();
                    }
                }
            }
            return kept;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void remove(Job job) {
        if (job.state() == Job.State.READY) {
            try {
                Files.deleteIfExists(job.zip());
            } catch (IOException e) {
                LOG.warn("{} can't be removed", job.zip());
            }
        }
    }

    @Override
    public synchronized void close() {
        drawing.shutdownNow();
        jobs.values().forEach(Kits::remove);
        jobs.clear();
    }
}
