package org.twinbar.method.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.twinbar.quantity.Unit;

class OwnMethodLawsTest {

    private static final Map<String, Kind> VARIABLES = Map.of(
            "a", Kind.of(Unit.of("mm")),
            "b", Kind.of(Unit.of("mm")),
            "m", Kind.of(Unit.of("g")),
            "t", Kind.of(Unit.of("s")),
            "n", Kind.NUMBER);

    private static final List<String> NAMES = List.of("a", "b", "m", "t", "n");

    /**
     * What the check of units lets pass means the same in any system of units: with the metre, the
     * kilogram and the second made smaller, a result grows as its dimension says.
     */
    @Test
    void acceptedFormulasDoNotDependOnTheSizeOfUnits() {
        Random random = new Random(77);
        double length = 3;
        double mass = 0.7;
        double time = 1.9;
        int accepted = 0;
        int refused = 0;
        for (int run = 0; run < 20_000; run++) {
            Term term = anyTerm(random, 4);
            Kind kind;
            try {
                kind = new UnitCheck(VARIABLES, Map.of()).of(term);
            } catch (FormulaException e) {
                refused++;
                continue;
            }
            double before = value(term, 1, 1, 1);
            double after = value(term, length, mass, time);
            if (!Double.isFinite(before) || !Double.isFinite(after) || Math.abs(before) < 1e-6) {
                continue;
            }
            double factor = StrictMath.pow(length, kind.dimension().length())
                    * StrictMath.pow(mass, kind.dimension().mass())
                    * StrictMath.pow(time, kind.dimension().time());
            assertThat(after / (factor * before))
                    .as("%s, seed 77 run %s", term.text(), run)
                    .isCloseTo(1, within(1e-6));
            accepted++;
        }
        assertThat(accepted).isGreaterThan(1000);
        assertThat(refused).isGreaterThan(1000);
    }

    private static double value(Term term, double length, double mass, double time) {
        Evaluation evaluation = new Evaluation(Planned.specimen().build(), Map.of());
        evaluation.put("a", 1.3 * length);
        evaluation.put("b", 0.6 * length);
        evaluation.put("m", 0.9 * mass);
        evaluation.put("t", 2.3 * time);
        evaluation.put("n", 1.7);
        return evaluation.of(term);
    }

    /** A formula that is written out and read again is the same formula. */
    @Test
    void whatIsWrittenOutIsReadTheSame() {
        Random random = new Random(78);
        for (int run = 0; run < 2000; run++) {
            Term term = anyTerm(random, 3);
            if (term.text().length() <= 500) {
                Term again = FormulaParser.parse(term.text(), Set.copyOf(NAMES), Set.of());
                assertThat(again).as("seed 78 run %s: %s", run, term.text()).isEqualTo(term);
            }
        }
    }

    private static Term anyTerm(Random random, int depth) {
        int choice = depth == 0 ? random.nextInt(2) : random.nextInt(11);
        return switch (choice) {
            case 0 -> new Term.Figure(1 + random.nextInt(3));
            case 1 -> new Term.Variable(NAMES.get(random.nextInt(NAMES.size())));
            case 2 -> new Term.Negative(anyTerm(random, depth - 1));
            case 3 -> new Term.Call(Function.SQRT, List.of(anyTerm(random, depth - 1)));
            case 4 ->
                new Term.Call(
                        random.nextBoolean() ? Function.MIN : Function.MAX,
                        List.of(anyTerm(random, depth - 1), anyTerm(random, depth - 1)));
            case 5 ->
                new Term.Call(
                        Function.values()[random.nextInt(12)], List.of(anyTerm(random, depth - 1)));
            default ->
                new Term.Operation(
                        Operator.values()[random.nextInt(Operator.values().length)],
                        anyTerm(random, depth - 1),
                        anyTerm(random, depth - 1));
        };
    }
}
