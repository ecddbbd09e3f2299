package org.twinbar.web;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.twinbar.study.Act;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;

/** The club's cleats, planned and printed but not yet treated. */
final class Cleats {

    private static final String STUDY = """
            study = "cleats"
            question = "Does the coat make cleats stronger?"
            [plan]
            seed = 7
            mixes = 1
            [[plan.group]]
            name = "plain"
            role = "control"
            [[plan.group]]
            name = "coated"
            treatment = "two coats of clear resin"
            together = ["mix"]
            [[plan.series]]
            name = "flat bars"
            method = "tensile"
            shape = "iso527-1ba"
            per_group = 3
            scatter = "6%"
            scatter_from = "common practice"
            expected = "15%"
            [[claim]]
            words = "15 % stronger"
            [[claim.question]]
            name = "strength"
            method = "tensile"
            property = "strength"
            control = "plain"
            worth = "5%"
            [[claim]]
            words = "Fit for drinking water"
            decided_by = "An accredited laboratory, under the local rules."
            [[claim.condition]]
            text = "Nothing harmful migrates into the water."
            evidence = "none yet"
            """;

    private Cleats() {}

    static StudyName in(Served served) {
        StudyName study = served.workspace()
                .importStudy(
                        Act.by("the club"),
                        StudyFile.parse("cleats.toml", STUDY),
                        Handed.nothing());
        List<String> codes = served.workspace().plans().forTreating(study).specimens().stream()
                .map(Registered::code)
                .toList();
        served.workspace()
                .register()
                .done(
                        Act.by("the club"),
                        study,
                        codes,
                        Registered.Step.PRINTED,
                        Optional.of(ZonedDateTime.parse("2026-05-01T12:00:00+02:00")),
                        "");
        return study;
    }
}
