package org.twinbar.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.twinbar.study.Act;
import org.twinbar.study.TypedTest;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

/** A served workspace with a tensile test that is typed at the rig. */
record Rig(Served served, StudyName study) implements AutoCloseable {

    private static final String BLANK =
            "specimen,group,width_mm,thickness_mm,peak_force_N,broke_at\n"
                    + "P1,plain,,,,\nC1,coated,,,,\nP2,plain,,,,\nC2,coated,,,,\n";

    static Rig in(Path folder) {
        // The loopback address stands for one of the local network.
        Served served = Served.in(folder, List.of("127.0.0.1"));
        Act act = Act.by("the club");
        StudyName study = served.workspace()
                .create(
                        act,
                        new StudyFile.Head(
                                "cleats",
                                "Are coated cleats stronger?",
                                "",
                                JudgedStudy.Origin.INVENTED));
        served.workspace()
                .addTest(
                        Act.by("the club"),
                        study,
                        new StudyFile.Test(TestSheet.of("tensile"), "cleats.csv", Optional.empty()),
                        Handed.among(List.of(Upload.of("cleats.csv", BLANK.getBytes(UTF_8)))));
        return new Rig(served, study);
    }

    String path() {
        return Links.rig(study, "tensile");
    }

    TypedTest test() {
        return served.workspace().typing().test(study, "tensile");
    }

    TypedTest.Cell cell(String specimen, String column) {
        return test().specimen(specimen).orElseThrow().cells().get(column);
    }

    String text(String specimen, String column) {
        return cell(specimen, column).text();
    }

    @Override
    public void close() {
        served.close();
    }
}
