package org.twinbar.web;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.twinbar.report.Report;
import org.twinbar.report.Sheet;
import org.twinbar.study.JudgedStudy;
import org.twinbar.study.Progress;
import org.twinbar.study.StudyName;
import org.twinbar.study.Workspace;

/**
 * Studies as they were last judged, since a person who reads asks for many pages of one state; a
 * study that was changed since, here or by another program, is judged anew.
 */
final class Judged {

    private static final int MOST = 16;

    private final Workspace workspace;
    private final Map<UUID, Of> last = new ConcurrentHashMap<>();

    Judged(Workspace workspace) {
        this.workspace = workspace;
    }

    /**
     * A study in one state.
     *
     * @param entries how many made it; they are only ever added to
     */
    record Of(int entries, JudgedStudy study, Sheet sheet) {}

    Of of(StudyName name) {
        int entries = workspace.entries(name);
        Optional<Of> known =
                Optional.ofNullable(last.get(name.id())).filter(it -> it.entries() == entries);
        return known.orElseGet(() -> {
            JudgedStudy study = workspace.judge(name, Progress.SILENT);
            Of judged = new Of(entries, study, Report.sheet(study));
            if (last.size() >= MOST) {
                last.clear();
            }
            last.put(name.id(), judged);
            return judged;
        });
    }
}
