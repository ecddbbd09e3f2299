package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.twinbar.method.Property;
import org.twinbar.method.Yield;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;

/**
 * The share of untreated specimens that said yes, as earlier studies on this bench show it.
 *
 * @param yes how many did
 * @param all of so many
 * @param studies whose specimens they were
 */
public record EarlierShare(int yes, int all, List<String> studies) {

    private static final String YES = "yes";

    public EarlierShare {
        studies = List.copyOf(studies);
    }

    public static Optional<EarlierShare> of(
            List<JudgedStudy> studies, String method, Property property) {
        int yes = 0;
        int all = 0;
        List<String> names = new ArrayList<>();
        for (JudgedStudy study : studies) {
            int before = all;
            Set<String> controls = controls(study, method);
            for (JudgedSpecimen each : study.specimensOf(method)) {
                Yield yield = each.result().yields().get(property);
                if (each.counts()
                        && controls.contains(each.group())
                        && yield instanceof Yield.Word word) {
                    all++;
                    yes += word.word().equals(YES) ? 1 : 0;
                }
            }
            if (all > before) {
                names.add(study.name());
            }
        }
        return all > 0 ? Optional.of(new EarlierShare(yes, all, names)) : Optional.empty();
    }

    private static Set<String> controls(JudgedStudy study, String method) {
        return study.compared().stream()
                .filter(answer -> answer.method().equals(method))
                .flatMap(answer -> answer.comparison().control().stream())
                .map(control -> control.name())
                .collect(Collectors.toSet());
    }

    public double share() {
        return (double) yes / all;
    }
}
