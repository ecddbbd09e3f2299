package org.twinbar.web;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.twinbar.method.Channel;
import org.twinbar.study.judged.Curve;

/** A curve as the drawing in the browser takes it. */
final class CurveJson {

    private static final JsonMapper JSON = new JsonMapper();

    private CurveJson() {}

    /**
     * Returns rows from left to right, which the drawing asks for; a row whose reading is no number
     * is a gap.
     */
    static String of(Curve curve, boolean control) {
        ObjectNode json = JSON.createObjectNode();
        channel(json.putObject("across"), curve.across());
        channel(json.putObject("up"), curve.up());
        json.put("control", control);
        json.put("rows", curve.rowsRead());
        ArrayNode x = json.putArray("x");
        ArrayNode y = json.putArray("y");
        IntStream.range(0, curve.x().length)
                .filter(row -> Double.isFinite(curve.x()[row]))
                .boxed()
                .sorted(Comparator.comparingDouble(row -> curve.x()[row]))
                .forEach(row -> {
                    x.add(curve.x()[row]);
                    if (Double.isFinite(curve.y()[row])) {
                        y.add(curve.y()[row]);
                    } else {
                        y.addNull();
                    }
                });
        ArrayNode marks = json.putArray("marks");
        AtomicInteger number = new AtomicInteger();
        curve.marks().forEach((mark, row) -> {
            number.incrementAndGet();
            if (Double.isFinite(curve.x()[row]) && Double.isFinite(curve.y()[row])) {
                ObjectNode each = marks.addObject();
                each.put("number", number.get());
                each.put("label", mark.label());
                each.put("x", curve.x()[row]);
                each.put("y", curve.y()[row]);
            }
        });
        return json.toString();
    }

    static void channel(ObjectNode json, Channel channel) {
        json.put("label", channel.label());
        json.put("unit", channel.unit().symbol());
    }
}
