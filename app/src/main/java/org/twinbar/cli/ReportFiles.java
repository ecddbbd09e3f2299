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
import java.util.function.Supplier;
import org.twinbar.report.Attachment;
import org.twinbar.report.Report;
import org.twinbar.report.Sheet;
import org.twinbar.report.kit.Kit;
import org.twinbar.report.kit.KitFile;
import org.twinbar.report.kit.Palette;
import org.twinbar.study.Still;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.judged.JudgedStudy;

/** Writes a study's report into a folder. */
final class ReportFiles {

    /** What can be written. */
    enum Form {
        HTML,
        PDF,
        KIT,
        PACKAGE
    }

    static final String PACKAGE_FILE = "package.zip";

    /**
     * What is to be published.
     *
     * @param zip its data package, which goes into the document too
     * @param stills photos of its specimens
     */
    record Published(JudgedStudy study, Supplier<byte[]> zip, List<Still> stills) {}

    private ReportFiles() {}

    /** Returns the files that were written. */
    static List<Path> write(Published published, Path folder, Set<Form> forms) {
        return write(
                published, folder, forms, List.of(Palette.LIGHT, Palette.DARK), Progress.SILENT);
    }

    /**
     * Returns the files that were written.
     *
     * @param palettes of the pictures of the kit
     * @param progress of those pictures
     */
    static List<Path> write(
            Published published,
            Path folder,
            Set<Form> forms,
            List<Palette> palettes,
            Progress progress) {
        Set<Form> wanted = forms.isEmpty() ? EnumSet.allOf(Form.class) : forms;
        JudgedStudy study = published.study();
        byte[] zip = wanted.contains(Form.PDF) || wanted.contains(Form.PACKAGE)
                ? published.zip().get()
                : new byte[0];
        List<Path> written = new ArrayList<>();
        if (wanted.contains(Form.HTML) || wanted.contains(Form.PDF)) {
            written.addAll(sheet(Report.sheet(study), zip, folder, wanted));
        }
        if (wanted.contains(Form.PACKAGE)) {
            Path file = folder.resolve(PACKAGE_FILE);
            Context.write(file, zip);
            written.add(file);
        }
        if (wanted.contains(Form.KIT)) {
            written.addAll(kit(published, folder.resolve("kit"), palettes, progress));
        }
        return written;
    }

    private static List<Path> sheet(Sheet sheet, byte[] zip, Path folder, Set<Form> wanted) {
        List<Path> written = new ArrayList<>();
        if (wanted.contains(Form.HTML)) {
            Path file = folder.resolve("report.html");
            Context.write(file, Report.html(sheet));
            written.add(file);
        }
        if (wanted.contains(Form.PDF)) {
            Path file = folder.resolve("report.pdf");
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            try {
                Report.pdf(sheet, List.of(Attachment.dataPackage(PACKAGE_FILE, zip)), pdf);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            Context.write(file, pdf.toByteArray());
            written.add(file);
        }
        return written;
    }

    private static List<Path> kit(
            Published published, Path folder, List<Palette> palettes, Progress progress) {
        List<KitFile> files = Kit.of(published.study(), palettes, published.stills());
        AtomicInteger done = new AtomicInteger();
        files.parallelStream().forEach(file -> {
            Context.write(folder.resolve(file.name()), file.content().get());
            progress.done(done.incrementAndGet(), files.size());
        });
        return files.stream().map(file -> folder.resolve(file.name())).toList();
    }
}
