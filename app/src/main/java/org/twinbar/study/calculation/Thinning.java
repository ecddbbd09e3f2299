package org.twinbar.study.calculation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Mark;
import org.twinbar.study.judged.Curve;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.table.Recordings;

/**
 * Leaves of a curve what a drawing can show: of each stretch of rows the lowest and the highest, so
 * that no peak is cut off, and every marked row.
 */
final class Thinning {

    private static final int STRETCHES = 600;

    private Thinning() {}

    /**
     * Returns the first channel of the method that was recorded, over the next one that was.
     *
     * @param movedByHand names of the marks that a person put where they are
     * @return nothing where fewer than two channels were recorded, or the record has no row
     */
    static Optional<Curve> of(
            Description description,
            Recordings.Recording recording,
            Map<Mark, OptionalInt> marks,
            Set<String> movedByHand) {
        List<Channel> recorded = description.channels().stream()
                .filter(recording.channels()::containsKey)
                .toList();
        if (recorded.size() < 2 || recording.rows() == 0) {
            return Optional.empty();
        }
        Channel up = recorded.get(0);
        Channel across = recorded.get(1);
        double[] x = values(recording, across);
        double[] y = values(recording, up);
        int[] kept = rows(y, marks);
        Map<Mark, Integer> moved = new LinkedHashMap<>();
        for (Mark mark : description.marks()) {
            OptionalInt row = marks.getOrDefault(mark, OptionalInt.empty());
            row.ifPresent(it -> moved.put(mark, java.util.Arrays.binarySearch(kept, it)));
        }
        return Optional.of(new Curve(
                across,
                up,
                pick(x, kept),
                pick(y, kept),
                moved,
                moved.keySet().stream()
                        .filter(mark -> movedByHand.contains(mark.name()))
                        .collect(Collectors.toSet()),
                KeptFile.of(recording.source()),
                recording.rows()));
    }

    private static double[] values(Recordings.Recording recording, Channel channel) {
        double[] values = recording.channels().get(channel);
        if (values == null) {
            throw new IllegalStateException(channel.name() + " was not recorded");
        }
        return values;
    }

    private static int[] rows(double[] y, Map<Mark, OptionalInt> marks) {
        TreeSet<Integer> kept = new TreeSet<>(List.of(0, y.length - 1));
        marks.values().forEach(row -> row.ifPresent(kept::add));
        int stretches = y.length <= 2 * STRETCHES ? y.length : STRETCHES;
        for (int stretch = 0; stretch < stretches; stretch++) {
            int from = (int) ((long) stretch * y.length / stretches);
            int to = (int) ((long) (stretch + 1) * y.length / stretches);
            int lowest = from;
            int highest = from;
            for (int row = from; row < to; row++) {
                lowest = y[row] < y[lowest] || Double.isNaN(y[lowest]) ? row : lowest;
                highest = y[row] > y[highest] || Double.isNaN(y[highest]) ? row : highest;
            }
            kept.add(lowest);
            kept.add(highest);
        }
        return kept.stream().mapToInt(Integer::intValue).toArray();
    }

    private static double[] pick(double[] values, int[] rows) {
        double[] picked = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            picked[i] = values[rows[i]];
        }
        return picked;
    }
}
