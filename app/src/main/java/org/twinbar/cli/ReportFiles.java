package org.twinbar.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.twinbar.report.Report;
import org.twinbar.report.kit.Kit;
import org.twinbar.report.kit.KitFile;
import org.twinbar.report.kit.Palette;
import org.twinbar.study.JudgedStudy;
import org.twinbar.study.Progress;

/** Writes a study's report into a folder. */
final class ReportFiles {

    /** What can be written. */
    enum Form {
        HTML,
        PDF,
        KIT
    }

    private ReportFiles() {}

    /** Returns the files that were written. */
    static List<Path> write(JudgedStudy study, Path folder, Set<Form> forms) {
        return write(study, folder, forms, List.of(Palette.LIGHT, Palette.DARK), Progress.SILENT);
    }

    /**
     * Returns the files that were written.
     *
     * @param palettes of the pictures of the kit
     * @param progress of those pictures
     */
    static List<Path> write(
            JudgedStudy study,
            Path folder,
            Set<Form> forms,
            List<Palette> palettes,
            Progress progress) {
        Set<Form> wanted = forms.isEmpty() ? EnumSet.allOf(Form.class) : forms;
        List<Path> written = new ArrayList<>();
        if (wanted.contains(Form.HTML)) {
            Path file = folder.resolve("report.html");
            Context.write(file, Report.html(study));
            written.add(file);
        }
        if (wanted.contains(Form.PDF)) {
            Path file = folder.resolve("report.pdf");
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            try {
                Report.pdf(study, pdf);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            Context.write(file, pdf.toByteArray());
            written.add(file);
        }
        if (wanted.contains(Form.KIT)) {
            written.addAll(kit(study, folder.resolve("kit"), palettes, progress));
        }
        return written;
    }

    private static List<Path> kit(
            JudgedStudy study, Path folder, List<Palette> palettes, Progress progress) {
        List<KitFile> files = Kit.of(study, palettes);
        AtomicInteger done = new AtomicInteger();
        files.parallelStream().forEach(file -> {
            Context.write(folder.resolve(file.name()), file.content().get());
            progress.done(done.incrementAndGet(), files.size());
        });
        return files.stream().map(file -> folder.resolve(file.name())).toList();
    }
}
