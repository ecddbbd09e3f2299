package org.twinbar.web;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.twinbar.method.Property;
import org.twinbar.method.Yield;
import org.twinbar.report.Report;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.judged.StudyName;

/**
 * The specimens of one test as a list shows them: each with what the test is chiefly about.
 *
 * @param title of the test
 * @param factors headers of what tells specimens apart
 * @param property what the last column holds
 */
public record SpecimenList(String title, List<String> factors, String property, List<Row> rows) {

    public SpecimenList {
        factors = List.copyOf(factors);
        rows = List.copyOf(rows);
    }

    /** One specimen. */
    public record Row(
            String code,
            String link,
            String group,
            List<String> factors,
            String value,
            String state) {
        public Row {
            factors = List.copyOf(factors);
        }
    }

    static List<SpecimenList> of(StudyName study, JudgedStudy judged) {
        List<SpecimenList> lists = new ArrayList<>();
        for (MethodUsed used : judged.methods()) {
            List<JudgedSpecimen> specimens = judged.specimensOf(used.name());
            Property property = chief(used, specimens);
            Set<String> factors = new LinkedHashSet<>();
            specimens.forEach(it -> factors.addAll(it.factors().keySet()));
            lists.add(new SpecimenList(
                    used.description().title(),
                    factors.stream().map(it -> it.replace('_', ' ')).toList(),
                    property.label(),
                    specimens.stream()
                            .map(it -> row(study, it, List.copyOf(factors), property))
                            .toList()));
        }
        return lists;
    }

    /** The first property that some specimen has. */
    private static Property chief(MethodUsed used, List<JudgedSpecimen> specimens) {
        List<Property> properties = used.description().properties();
        return properties.stream()
                .filter(property -> specimens.stream()
                        .anyMatch(it ->
                                !(it.result().yields().get(property) instanceof Yield.Missing)))
                .findFirst()
                .orElse(properties.get(0));
    }

    private static Row row(
            StudyName study, JudgedSpecimen specimen, List<String> factors, Property property) {
        int findings = specimen.result().findings().size();
        return new Row(
                specimen.code(),
                Links.specimen(study, specimen),
                specimen.group(),
                factors.stream()
                        .map(it -> specimen.factors().getOrDefault(it, ""))
                        .map(it -> it.isBlank() ? "none" : it)
                        .toList(),
                Report.value(specimen.result(), property),
                specimen.counts()
                        ? findings == 0 ? "counts" : "counts, " + Words.count(findings, "finding")
                        : "left out");
    }
}
