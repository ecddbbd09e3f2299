package org.twinbar.cli;

import java.io.IOException;
import org.twinbar.decision.Trend;
import org.twinbar.study.calculation.Comparisons;

/** A line over amounts as JSON. */
final class LinesJson {

    private LinesJson() {}

    static void line(Json json, Comparisons.Lined lined) throws IOException {
        Trend trend = lined.trend();
        json.put("value", lined.value())
                .object("by", it -> it.texts(lined.by()))
                .object(
                        "amount",
                        it -> it.put("name", trend.amount().label())
                                .put("unit", trend.amount().unit().symbol()))
                .put("n", trend.points().size())
                .object("slope", it -> ComparisonsJson.found(it, trend.slope()))
                .object("fromLeastToMost", it -> ComparisonsJson.found(it, trend.overAll()))
                .put("expect", trend.question().expectation().word())
                .put("verdict", trend.verdict().word())
                .texts("reasons", trend.reasons())
                .findings(trend.findings());
    }
}
