package org.twinbar.web;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.twinbar.finding.Finding;
import org.twinbar.method.Channel;
import org.twinbar.report.Curves;
import org.twinbar.report.Figures;
import org.twinbar.report.Sign;
import org.twinbar.study.judged.Curve;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.judged.StudyName;

/**
 * All curves of a test over each other.
 *
 * @param picture the same for those without script, SVG; empty where no curve is there yet
 * @param across what runs across; empty where no curve is there yet
 * @param specimens that have a curve, in the order of the table
 * @param waiting how many specimens have none
 */
public record CurvesView(
        StudyName study,
        MethodUsed test,
        String picture,
        Optional<Channel> across,
        List<Traced> specimens,
        int waiting) {

    private static final JsonMapper JSON = new JsonMapper();

    /** Points of one curve among many; a screen shows no more. */
    private static final int POINTS = 300;

    private static final List<Sign> TREATED =
            List.of(Sign.FIRST, Sign.SECOND, Sign.THIRD, Sign.FOURTH);

    public CurvesView {
        specimens = List.copyOf(specimens);
    }

    /**
     * A specimen with its curve.
     *
     * @param control whether its group is what others are compared with
     * @param doubts what was noticed of it that a person should look at
     */
    public record Traced(
            JudgedSpecimen specimen, Curve curve, boolean control, List<String> doubts) {
        public Traced {
            doubts = List.copyOf(doubts);
        }
    }

    /** Returns the tests that curves belong to. */
    static List<MethodUsed> tests(JudgedStudy judged) {
        return judged.methods().stream()
                .filter(used -> !used.description().channels().isEmpty())
                .toList();
    }

    /** @param wanted a test; the first that has curves, or may have, where nothing is wanted */
    static Optional<CurvesView> of(StudyName study, JudgedStudy judged, Optional<String> wanted) {
        Optional<MethodUsed> test = tests(judged).stream()
                .filter(used -> wanted.map(used.name()::equals).orElse(true))
                .findFirst();
        return test.map(used -> of(study, judged, used));
    }

    private static CurvesView of(StudyName study, JudgedStudy judged, MethodUsed used) {
        List<Traced> traced = new ArrayList<>();
        List<JudgedSpecimen> all = judged.specimensOf(used.name());
        Optional<Channel> across = all.stream()
                .flatMap(it -> it.curve().stream())
                .map(Curve::across)
                .findFirst();
        for (JudgedSpecimen specimen : all) {
            specimen.curve()
                    .filter(curve -> across.equals(Optional.of(curve.across())))
                    .ifPresent(curve -> traced.add(new Traced(
                            specimen,
                            curve,
                            ShownSpecimen.isControl(judged, specimen),
                            doubts(specimen))));
        }
        return new CurvesView(
                study, used, picture(traced), across, traced, all.size() - traced.size());
    }

    private static List<String> doubts(JudgedSpecimen specimen) {
        List<String> doubts = new ArrayList<>();
        specimen.leftOut().ifPresent(out -> doubts.add("left out: " + out.why()));
        specimen.result().findings().stream()
                .filter(finding -> finding.level() != Finding.Level.NOTE)
                .map(Finding::text)
                .forEach(doubts::add);
        return doubts;
    }

    private static String picture(List<Traced> traced) {
        if (traced.isEmpty()) {
            return "";
        }
        Map<String, List<Curves.Curve>> groups = new LinkedHashMap<>();
        Map<String, Sign> signs = new LinkedHashMap<>();
        for (Traced each : traced) {
            String group = each.specimen().group();
            groups.computeIfAbsent(group, it -> new ArrayList<>())
                    .add(new Curves.Curve(
                            each.specimen().code(),
                            each.curve().x(),
                            each.curve().y(),
                            Optional.empty()));
            if (!signs.containsKey(group)) {
                long others =
                        signs.values().stream().filter(it -> it != Sign.CONTROL).count();
                signs.put(
                        group,
                        each.control() ? Sign.CONTROL : TREATED.get((int) others % TREATED.size()));
            }
        }
        List<Curves.Group> drawn = new ArrayList<>();
        groups.forEach((name, curves) ->
                drawn.add(new Curves.Group(name, signs.getOrDefault(name, Sign.FIRST), curves)));
        Curve first = traced.get(0).curve();
        return Figures.curves(Curves.of(
                ShownSpecimen.words(first.across()), ShownSpecimen.words(first.up()), drawn));
    }

    /** Returns the specimens that something was noticed of. */
    public List<Traced> doubted() {
        return specimens.stream().filter(it -> !it.doubts().isEmpty()).toList();
    }

    /** Returns the groups in the order of the table. */
    public List<String> groups() {
        return specimens.stream().map(it -> it.specimen().group()).distinct().toList();
    }

    /** Of each stretch the lowest and the highest row, so that no peak is lost. */
    private static List<Integer> shown(Curve curve) {
        int rows = curve.x().length;
        int step = Math.max(1, 2 * rows / POINTS);
        List<Integer> shown = new ArrayList<>();
        for (int from = 0; from < rows; from += step) {
            List<Integer> stretch = IntStream.range(from, Math.min(rows, from + step))
                    .filter(row -> Double.isFinite(curve.x()[row] + curve.y()[row]))
                    .boxed()
                    .sorted(Comparator.comparingDouble(row -> curve.y()[row]))
                    .toList();
            if (!stretch.isEmpty()) {
                int lowest = stretch.get(0);
                int highest = stretch.get(stretch.size() - 1);
                shown.add(Math.min(lowest, highest));
                if (lowest != highest) {
                    shown.add(Math.max(lowest, highest));
                }
            }
        }
        return shown;
    }

    /** Returns the curves as the drawing in the browser takes them. */
    String json() {
        ObjectNode json = JSON.createObjectNode();
        across.ifPresent(it -> CurveJson.channel(json.putObject("across"), it));
        if (!specimens.isEmpty()) {
            CurveJson.channel(json.putObject("up"), specimens.get(0).curve().up());
        }
        ArrayNode curves = json.putArray("curves");
        for (Traced each : specimens) {
            ObjectNode node = curves.addObject();
            node.put("code", each.specimen().code());
            node.put("group", each.specimen().group());
            node.put("control", each.control());
            node.put("doubted", !each.doubts().isEmpty());
            node.put("link", Links.specimen(study, each.specimen()));
            ArrayNode x = node.putArray("x");
            ArrayNode y = node.putArray("y");
            for (int row : shown(each.curve())) {
                x.add(each.curve().x()[row]);
                y.add(each.curve().y()[row]);
            }
        }
        return json.toString();
    }
}
