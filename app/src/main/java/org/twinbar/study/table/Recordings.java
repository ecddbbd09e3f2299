package org.twinbar.study.table;

import java.util.List;
import java.util.Map;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Source;
import org.twinbar.finding.Finding;
import org.twinbar.method.Channel;
import org.twinbar.study.judged.Ordered;

/** The curves of a test, by the names that its table gives them. */
public interface Recordings {

    /**
     * Reads one curve.
     *
     * @param name as it stands in the table
     * @param from where it stands
     * @param wanted the channels that the method knows, of which a curve may have some
     * @throws org.twinbar.exchange.InputException where there is no such curve, or it can't be read
     */
    Recording read(String name, Place from, List<Channel> wanted);

    /**
     * A curve that was read.
     *
     * @param channels in the units of the method, all of one length
     * @param source what they were read from
     * @param findings what was wrong with some of its rows
     */
    record Recording(Map<Channel, double[]> channels, Source source, List<Finding> findings) {
        public Recording {
            channels = Ordered.copy(channels);
            findings = List.copyOf(findings);
        }

        public int rows() {
            return channels.values().stream()
                    .mapToInt(values -> values.length)
                    .max()
                    .orElse(0);
        }
    }
}
