package org.twinbar.web;

import java.util.UUID;
import org.twinbar.report.Report;
import org.twinbar.report.Sheet;
import org.twinbar.study.Remembered;
import org.twinbar.study.Stamp;
import org.twinbar.study.Workspace;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;

/** Studies with the sheets that are set from them, since a person asks for many pages of one. */
final class Judged {

    /** Part of the program's memory that sheets may hold. */
    private static final int SHARE = 8;

    private static final long SHEET = 100_000;

    private final Workspace workspace;
    private final Remembered<UUID, Stamp, Of> sheets =
            new Remembered<>(Remembered.shareOfMemory(SHARE), Of::bytes);

    private final Remembered<UUID, Stamp, String> reports =
            new Remembered<>(Remembered.shareOfMemory(SHARE), it -> 2L * it.length());

    Judged(Workspace workspace) {
        this.workspace = workspace;
    }

    /** A study in one state. */
    record Of(JudgedStudy study, Sheet sheet) {

        private long bytes() {
            return SHEET
                    + sheet.answers().stream()
                            .flatMap(answer -> answer.pictures().stream())
                            .mapToLong(picture -> picture.toString().length())
                            .sum();
        }
    }

    Of of(StudyName name) {
        return sheets.get(name.id(), workspace.stamp(name), () -> {
            JudgedStudy study = workspace.judge(name, Progress.SILENT);
            return new Of(study, Report.sheet(study));
        });
    }

    /** Returns the report as one page. */
    String report(StudyName name) {
        return reports.get(name.id(), workspace.stamp(name), () -> Report.html(of(name).sheet()));
    }
}
