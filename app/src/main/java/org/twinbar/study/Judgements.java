package org.twinbar.study;

import java.util.List;
import java.util.UUID;
import org.twinbar.method.Methods;
import org.twinbar.store.Digest;
import org.twinbar.store.Store;
import org.twinbar.study.calculation.AlikeValues;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.judged.JudgedStudy;

/**
 * What the studies of a workspace come to, kept in memory as long as their entries and those of the
 * instruments are the same: nothing else is what a verdict is made from, since methods and program
 * stay as they are while a workspace is open, and a raw file goes by its digest.
 *
 * <p>The stamp is taken before the entries are read. What arrives in between is then calculated
 * with an older stamp, and once more at the next question; never the other way round.
 */
final class Judgements {

    /** Parts of the program's memory that may be held; together they leave half of it. */
    private static final int JUDGED = 3;

    private static final int STATES = 16;
    private static final int ROWS = 32;

    private final Store store;
    private final Instruments instruments;
    private final Methods methods;
    private final String program;

    private final Remembered<UUID, Stamp, State> states =
            new Remembered<>(Remembered.shareOfMemory(STATES), Weights::of);
    private final Remembered<UUID, Stamp, JudgedStudy> judged =
            new Remembered<>(Remembered.shareOfMemory(JUDGED), Weights::of);
    private final Remembered<UUID, Stamp, List<AlikeValues>> alike =
            new Remembered<>(Remembered.shareOfMemory(ROWS), Weights::ofValues);

    Judgements(Store store, Instruments instruments, Methods methods, String program) {
        this.store = store;
        this.instruments = instruments;
        this.methods = methods;
        this.program = program;
    }

    Stamp stamp(UUID study) {
        return new Stamp(store.lastAbout(study.toString()), instruments.stamp());
    }

    State state(UUID study) {
        return states.get(
                study, stamp(study), () -> State.of(store.about(study.toString()), instruments));
    }

    JudgedStudy judge(UUID study, Progress progress) {
        return judged.get(
                study,
                stamp(study),
                () -> Judging.judge(
                        state(study),
                        methods,
                        file -> store.files().read(new Digest(file.sha256())),
                        program,
                        progress));
    }

    /** Returns the values of specimens that were made alike, of all tests of a study. */
    List<AlikeValues> alike(UUID study) {
        return alike.get(study, stamp(study), () -> AlikeValues.of(judge(study, Progress.SILENT)));
    }
}
