package org.twinbar.study.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.twinbar.exchange.Curves;
import org.twinbar.exchange.Problem;
import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Source;
import org.twinbar.finding.Finding;
import org.twinbar.method.Channel;

/** Reads a curve from what was handed in. */
public final class CurveFile {

    static final Finding.Kind ROWS_UNREAD = Finding.Kind.warning(
            "rows-unread", "In %s, %s from line %s on: %s; those rows were passed over.");

    private CurveFile() {}

    public static Recordings.Recording read(Upload upload, ReadAs as, List<Channel> wanted) {
        Source source = upload.source().atHand();
        Curves.Read read = Curves.read(
                source,
                as,
                wanted.stream()
                        .map(it -> new Curves.Wanted(it.name(), it.unit()))
                        .toList());
        Map<Channel, double[]> channels = new LinkedHashMap<>();
        for (Channel channel : wanted) {
            double[] values = read.values().get(channel.name());
            if (values != null) {
                channels.put(channel, values);
            }
        }
        List<Finding> findings = new ArrayList<>();
        for (Problem problem : read.problems()) {
            findings.add(ROWS_UNREAD.with(
                    problem.first().file(),
                    problem.rows() == 1 ? "1 row" : problem.rows() + " rows",
                    problem.first().line().orElse(0),
                    problem.sentence()));
        }
        return new Recordings.Recording(channels, source, findings);
    }
}
