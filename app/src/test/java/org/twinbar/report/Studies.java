package org.twinbar.report;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.twinbar.decision.Comparing;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Expectation;
import org.twinbar.decision.LeftOut;
import org.twinbar.decision.Level;
import org.twinbar.decision.Material;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Observed;
import org.twinbar.decision.Question;
import org.twinbar.decision.Subject;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Instrument;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Channel;
import org.twinbar.method.Input;
import org.twinbar.method.Mark;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Unit;
import org.twinbar.specimen.SectionGain;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.Curve;
import org.twinbar.study.judged.JudgedClaim;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.judged.Reading;
import org.twinbar.uncertainty.Source;

/**
 * Judged studies to make reports of, from invented readings: bars of a sailing club's cleats, plain
 * and coated, of which the coated ones are thicker.
 */
public final class Studies {

    static final TestMethod PULL = Methods.builtIn().named("tensile").orElseThrow();
    private static final ZonedDateTime NOON =
            ZonedDateTime.of(2026, 5, 12, 12, 0, 0, 0, ZoneOffset.ofHours(2));

    private Studies() {}

    public static JudgedStudy pulled(int perGroup, int rows) {
        Random random = new Random(7);
        List<JudgedSpecimen> specimens = new ArrayList<>();
        for (int i = 1; i <= perGroup; i++) {
            specimens.add(bar("P" + i, "plain", 4.0, 41 + random.nextGaussian(), rows, i));
        }
        for (int i = 1; i <= perGroup; i++) {
            specimens.add(bar("C" + i, "coated", 4.42, 41.4 + random.nextGaussian(), rows, i));
        }
        List<KeptFile> files = new ArrayList<>();
        files.add(file("bars.csv"));
        specimens.forEach(specimen -> files.add(specimen.curve().orElseThrow().file()));
        Change change = new Change(
                "width of P2: 1.004 → 10.04",
                NOON,
                "Ida",
                "the decimal point was written in the wrong place");
        return new JudgedStudy(
                "clear coat",
                "Does the clear coat do what its leaflet says?",
                "Two-part clear coat on printed cleats",
                JudgedStudy.Origin.INVENTED,
                List.of(
                        new JudgedClaim(
                                "At least 10\u2009% stronger", "leaflet", answers(specimens)),
                        new JudgedClaim("Safe for drinking water", "leaflet", List.of(offBench()))),
                List.of(new MethodUsed(
                        PULL.description(), Map.of("grip_distance", "115 mm"), instruments())),
                specimens,
                List.of(),
                files,
                List.of(change),
                org.twinbar.study.judged.Making.NONE,
                List.of(),
                new JudgedStudy.Maker("Twinbar 0.1.0", 1));
    }

    private static List<Answer> answers(List<JudgedSpecimen> specimens) {
        return List.of(
                withMaterial(
                        compared(
                                "largest force, flat",
                                "peak_force",
                                "bars",
                                specimens,
                                Expectation.HIGHER),
                        compared(
                                "tensile strength, flat",
                                "strength",
                                "bars",
                                specimens,
                                Expectation.HIGHER)),
                compared(
                        "tensile strength, flat",
                        "strength",
                        "bars",
                        specimens,
                        Expectation.HIGHER),
                level(specimens),
                new Answer.Unanswered("energy to break", "no group has two values of it"));
    }

    /** The film of 0.21 mm on both sides explains a gain of a tenth. */
    private static Answer withMaterial(Answer.Compared part, Answer.Compared section) {
        Comparison force = part.comparison();
        Material material = Material.of(
                new Material.OnBasis("per part", force.found()),
                List.of(new Material.OnBasis(
                        "per section as tested", section.comparison().found())),
                Optional.of(SectionGain.of(1.105, 0.05, 0.05, 0.03)));
        return new Answer.Compared(
                part.question(),
                part.method(),
                part.property(),
                part.where(),
                force.with(material));
    }

    private static Answer level(List<JudgedSpecimen> specimens) {
        Property force = PULL.description().property("peak_force").orElseThrow();
        Question asked = Question.level(
                new Subject("largest force", force.unit(), "bars"),
                new Level(1500, 0.9),
                Expectation.HIGHER);
        return new Answer.Compared(
                "nine in ten carry 1500\u2009N",
                "tensile",
                force,
                Map.of(),
                Comparing.level(
                        asked,
                        specimens.stream()
                                .map(specimen -> observation(specimen, force))
                                .toList(),
                        "coated"));
    }

    static Answer.Compared compared(
            String question,
            String property,
            String things,
            List<JudgedSpecimen> specimens,
            Expectation expectation) {
        Property compared = PULL.description().property(property).orElseThrow();
        Question asked = Question.of(
                        new Subject(
                                compared.label().toLowerCase(Locale.ROOT), compared.unit(), things),
                        Effect.RATIO,
                        expectation)
                .withWorth(0.05)
                .withClaimed(0.10);
        List<Observation> observations = specimens.stream()
                .map(specimen -> observation(specimen, compared))
                .toList();
        return new Answer.Compared(
                question,
                "tensile",
                compared,
                Map.of("orientation", "flat"),
                Comparing.of(asked, observations, "plain", "coated"));
    }

    private static Observation observation(JudgedSpecimen specimen, Property property) {
        Map<String, Double> moves = new HashMap<>();
        specimen.result().budgets().get(property).shifts().forEach((source, shift) -> {
            if (source.reach() == Source.Reach.SHARED) {
                moves.put(source.identity(), shift);
            }
        });
        Observation observation = Observation.of(
                        specimen.code(),
                        specimen.group(),
                        Cells.number(specimen.result(), property).orElseThrow())
                .withMoves(moves);
        return specimen.leftOut().map(observation::leftOut).orElse(observation);
    }

    static Answer.OffBench offBench() {
        return new Answer.OffBench(
                "drinking water",
                List.of(
                        new Answer.Condition(
                                "Nothing may pass into the water beyond the limits of the local rules.",
                                "nothing is known of it."),
                        new Answer.Condition(
                                "The coat must stay whole over the time of use.",
                                "no coat came off in 24\u2009h.")),
                "Who sells parts for drinking water needs migration tests by an accredited laboratory"
                        + " under the local rules.");
    }

    private static List<Instrument> instruments() {
        return List.of(
                Kind.LOAD_CELL.usual(Unit.of("N")),
                Kind.CALIPER.usual(Unit.of("mm")).withResolution(0.01));
    }

    private static JudgedSpecimen bar(
            String code, String group, double thickness, double strength, int rows, int number) {
        double peak = strength * 40;
        double[] travel = new double[rows];
        double[] force = new double[rows];
        for (int i = 0; i < rows; i++) {
            travel[i] = 3.6 * i / (rows - 1);
            double t = travel[i] / 2.9;
            boolean broken = travel[i] > 3.3;
            force[i] = broken ? 8 : peak * (thickness / 4.0) * t * Math.exp(1 - t);
        }
        Readings readings = Readings.of(code, group, Bench.usual())
                .number(input("width"), 10.02, 10.04, 10.03)
                .number(input("thickness"), thickness, thickness + 0.01)
                .channel(channel("force"), force)
                .channel(channel("displacement"), travel)
                .build();
        Result result = Result.of(PULL, readings);
        Map<Mark, Integer> marks = new HashMap<>();
        result.marks().forEach((mark, row) -> {
            if (row.isPresent()) {
                marks.put(mark, row.getAsInt());
            }
        });
        KeptFile table = file("bars.csv");
        Map<String, String> factors = new LinkedHashMap<>();
        factors.put("orientation", "flat");
        factors.put("print_run", "R" + (1 + number % 4));
        Optional<LeftOut> out = code.equals("C3")
                ? Optional.of(new LeftOut(
                        "Ida", NOON, "slipped in the grips", LeftOut.Sight.AFTER_VALUE_WAS_SEEN))
                : Optional.empty();
        return new JudgedSpecimen(
                code,
                "tensile",
                group,
                factors,
                List.of(
                        Reading.inFile("width_1_mm", "10.02", table, number + 1, Optional.empty()),
                        Reading.inFile(
                                "thickness_1_mm",
                                Written.fixed(thickness, 2),
                                table,
                                number + 1,
                                Optional.empty())),
                result,
                Optional.of(new Curve(
                        channel("displacement"),
                        channel("force"),
                        travel,
                        force,
                        marks,
                        java.util.Set.of(),
                        file(code + ".csv"),
                        rows)),
                out);
    }

    private static Input input(String name) {
        return input(PULL, name);
    }

    private static Input input(TestMethod method, String name) {
        return method.description().inputs().stream()
                .filter(input -> input.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Channel channel(String name) {
        return PULL.description().channels().stream()
                .filter(channel -> channel.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static KeptFile file(String name) {
        String digest =
                String.format(java.util.Locale.ROOT, "%08x", name.hashCode()).repeat(8);
        return new KeptFile(name, digest, 48_213);
    }

    /** Cups under water, looked at now and then: four of five plain ones leak, no coated one. */
    static JudgedStudy watertight() {
        TestMethod leak = Methods.builtIn().named("leak").orElseThrow();
        List<JudgedSpecimen> cups = new ArrayList<>();
        double[][] looks = {{1, 2}, {4, 6}, {24, -1}, {8, 9}, {8, 9}};
        for (int i = 0; i < looks.length; i++) {
            cups.add(cup(leak, "P" + (i + 1), "plain", looks[i][0], looks[i][1]));
        }
        for (int i = 0; i < looks.length; i++) {
            cups.add(cup(leak, "C" + (i + 1), "coated", i == 4 ? 20 : 24, -1));
        }
        Property dry = leak.description().property("leak_free").orElseThrow();
        List<Answer> answers = List.of(new Answer.Compared(
                "dry for 24\u2009h under 120\u2009mm of water",
                "leak",
                dry,
                Map.of(),
                Comparing.of(
                        Question.of(
                                new Subject("dry for 24\u2009h", dry.unit(), "cups"),
                                Effect.SHARE,
                                Expectation.HIGHER),
                        observed(cups, dry),
                        "plain",
                        "coated")));
        return new JudgedStudy(
                "cups",
                "Does the clear coat keep water in?",
                "Printed bailer cups, one coat",
                JudgedStudy.Origin.INVENTED,
                List.of(new JudgedClaim("Watertight", "leaflet", answers)),
                List.of(new MethodUsed(leak.description(), Map.of(), List.of())),
                cups,
                List.of(),
                List.of(),
                List.of(),
                org.twinbar.study.judged.Making.NONE,
                List.of(),
                new JudgedStudy.Maker("Twinbar 0.1.0", 1));
    }

    private static List<Observation> observed(List<JudgedSpecimen> cups, Property property) {
        List<Observation> all = new ArrayList<>();
        for (JudgedSpecimen cup : cups) {
            Yield yield = cup.result().yields().get(property);
            Observed observed = yield instanceof Yield.Word word
                    ? new Observed.YesNo(word.word().equals("yes"))
                    : yield instanceof Yield.AtLeast bound
                            ? new Observed.AtLeast(bound.bound())
                            : yield instanceof Yield.Between between
                                    ? new Observed.Between(between.from(), between.to())
                                    : new Observed.Unknown("the test ended early");
            all.add(Observation.of(cup.code(), cup.group(), observed));
        }
        return all;
    }

    private static JudgedSpecimen cup(
            TestMethod leak, String code, String group, double dry, double wet) {
        Readings.Builder readings = Readings.of(code, group, Bench.usual())
                .number(input(leak, "dry_until"), dry)
                .number(input(leak, "claim_time"), 24);
        if (wet > 0) {
            readings.number(input(leak, "wet_at"), wet);
        }
        return new JudgedSpecimen(
                code,
                "leak",
                group,
                Map.of(),
                List.of(),
                Result.of(leak, readings.build()),
                Optional.empty(),
                Optional.empty());
    }
}
