package org.twinbar.report.paper;

import java.util.List;
import java.util.Optional;

/**
 * A sheet to be filled in by pen.
 *
 * @param title what is done
 * @param study whose it is
 * @param about what a reader must know first
 * @param head what is filled in once
 * @param cautions dangers of the step
 * @param parts tables of specimens
 * @param foot how it goes on
 */
public record Form(
        String title,
        String study,
        List<String> about,
        List<Field> head,
        List<String> cautions,
        List<Part> parts,
        String foot) {

    public Form {
        about = List.copyOf(about);
        head = List.copyOf(head);
        cautions = List.copyOf(cautions);
        parts = List.copyOf(parts);
    }

    /**
     * A table of specimens, with what stands above it.
     *
     * @param title of it; empty where there is one part only
     * @param head what is filled in once for the part
     * @param picture where it is measured, as SVG
     * @param legend what the picture shows
     * @param facts headers of what is printed of each specimen
     * @param fields what is written of each
     */
    public record Part(
            String title,
            List<Field> head,
            Optional<String> picture,
            String legend,
            List<String> facts,
            List<Field> fields,
            List<Line> lines) {

        public Part {
            head = List.copyOf(head);
            facts = List.copyOf(facts);
            fields = List.copyOf(fields);
            lines = List.copyOf(lines);
        }
    }

    /**
     * A specimen.
     *
     * @param code that stands on it
     * @param facts what is printed of it, one for each header
     */
    public record Line(String code, List<String> facts) {
        public Line {
            facts = List.copyOf(facts);
        }
    }
}
