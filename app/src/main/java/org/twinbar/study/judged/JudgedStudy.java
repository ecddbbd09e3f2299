package org.twinbar.study.judged;

import java.util.List;
import java.util.Optional;
import org.twinbar.finding.Finding;

/**
 * A study with its verdicts: all that a report or a page shows.
 *
 * @param name what it is called in its workspace
 * @param question what it asks, as a sentence
 * @param about what was treated with what, in a few sentences; may be empty
 * @param origin whether somebody measured the readings
 * @param claims what is said of the treatment, each with its answers, in the study's order
 * @param methods the tests that were made, in the study's order
 * @param specimens every specimen, the left-out ones included, in the order of the tables
 * @param findings what concerns the study as a whole
 * @param files every file that was read, with its digest
 * @param history corrections and specimens left out or taken back, the oldest first
 * @param making how the specimens came to be
 * @param published what was published of it, the oldest first
 * @param maker what calculated it
 */
public record JudgedStudy(
        String name,
        String question,
        String about,
        Origin origin,
        List<JudgedClaim> claims,
        List<MethodUsed> methods,
        List<JudgedSpecimen> specimens,
        List<Finding> findings,
        List<KeptFile> files,
        List<Change> history,
        Making making,
        List<Publication> published,
        Maker maker) {

    /** Whether somebody measured the readings. */
    public enum Origin {
        MEASURED,
        /** Made up, to show how Twinbar works. */
        INVENTED
    }

    public JudgedStudy {
        claims = List.copyOf(claims);
        methods = List.copyOf(methods);
        specimens = List.copyOf(specimens);
        findings = List.copyOf(findings);
        files = List.copyOf(files);
        history = List.copyOf(history);
        published = List.copyOf(published);
    }

    public boolean invented() {
        return origin == Origin.INVENTED;
    }

    /** Returns what was published last. */
    public Optional<Publication> lastPublished() {
        return published.isEmpty()
                ? Optional.empty()
                : Optional.of(published.get(published.size() - 1));
    }

    /** Returns the test of this method, where the study has one. */
    public Optional<MethodUsed> method(String method) {
        return methods.stream().filter(used -> used.name().equals(method)).findFirst();
    }

    /** Returns every answer that groups of specimens gave, in the order of the claims. */
    public List<Answer.Compared> compared() {
        return claims.stream()
                .flatMap(claim -> claim.answers().stream())
                .filter(Answer.Compared.class::isInstance)
                .map(Answer.Compared.class::cast)
                .toList();
    }

    /** Returns the specimens of one test, in the order of its table. */
    public List<JudgedSpecimen> specimensOf(String method) {
        return specimens.stream()
                .filter(specimen -> specimen.method().equals(method))
                .toList();
    }

    /**
     * What calculated a study.
     *
     * @param program name and version
     * @param seed of everything that was drawn at random
     */
    public record Maker(String program, long seed) {}
}
