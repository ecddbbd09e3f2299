package org.twinbar.web;

import java.util.List;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Instrument;
import org.twinbar.planning.resolving.Resolution;
import org.twinbar.report.Figures;
import org.twinbar.report.Parts;
import org.twinbar.report.Resolved;
import org.twinbar.study.bench.BenchAnswer;

/** What a bench can resolve, as its page shows it. */
public final class BenchView {

    private final BenchAnswer answer;

    private BenchView(BenchAnswer answer) {
        this.answer = answer;
    }

    static BenchView of(BenchAnswer answer) {
        return new BenchView(answer);
    }

    public String sentence() {
        return Resolved.sentence(answer);
    }

    public String alike() {
        return Resolved.smallest(answer.resolution().fromInstruments(), answer.resolution());
    }

    public String scattering() {
        return Resolved.smallest(answer.resolution().withScatter(), answer.resolution());
    }

    public String scatter() {
        return Resolved.scatter(answer.resolution());
    }

    /** Returns the shares of what stays in a comparison; nothing where nothing does. */
    public String limits() {
        List<Parts.Part> parts = answer.resolution().limits().stream()
                .map(it -> new Parts.Part(it.name(), it.share()))
                .toList();
        return parts.isEmpty()
                ? ""
                : Figures.parts(new Parts("What stays in a comparison of two groups", parts));
    }

    /** One line of a table. */
    public record Row(String words, String alike, String scattering) {}

    public List<Row> levers() {
        Resolution found = answer.resolution();
        return found.levers().stream()
                .map(it -> new Row(
                        it.change() + Resolved.doubts(it),
                        Resolved.smallest(it.fromInstruments(), found),
                        Resolved.smallest(it.withScatter(), found)))
                .toList();
    }

    public List<String> cancelling() {
        return answer.resolution().cancelling().stream()
                .map(it -> it.name() + ", " + Resolved.amount(it.u(), answer.resolution()))
                .toList();
    }

    public List<String> instruments() {
        return answer.instruments().stream()
                .filter(it -> it.origin() != Instrument.Origin.ASSUMED || it.resolution() > 0)
                .map(Resolved::instrument)
                .toList();
    }

    public List<Finding> findings() {
        return answer.findings();
    }
}
