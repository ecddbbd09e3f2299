package org.twinbar.method.own;

import java.util.List;
import java.util.Map;
import org.twinbar.quantity.Dimension;
import org.twinbar.quantity.Unit;

/** Follows units through a formula before any number is put into it. */
final class UnitCheck {

    private static final int LARGEST_POWER = 8;
    private static final Kind ANGLE = Kind.of(Unit.of("rad"));

    private final Map<String, Kind> variables;
    private final Map<String, Kind> channels;

    UnitCheck(Map<String, Kind> variables, Map<String, Kind> channels) {
        this.variables = variables;
        this.channels = channels;
    }

    /**
     * Returns what a term measures.
     *
     * @throws FormulaException where its units don't go together
     */
    Kind of(Term term) {
        if (term instanceof Term.Figure) {
            return Kind.NUMBER;
        }
        if (term instanceof Term.Variable variable) {
            return known(variables, variable.name());
        }
        if (term instanceof Term.Negative negative) {
            return Kind.amount(of(negative.of()).dimension());
        }
        if (term instanceof Term.Operation operation) {
            return ofOperation(operation);
        }
        if (term instanceof Term.Call call) {
            return ofCall(call);
        }
        return ofCurve((Term.OfCurve) term);
    }

    private static Kind known(Map<String, Kind> kinds, String name) {
        Kind kind = kinds.get(name);
        if (kind == null) {
            throw new IllegalStateException(name + " was parsed but not declared");
        }
        return kind;
    }

    private Kind ofOperation(Term.Operation operation) {
        Kind left = of(operation.left());
        Kind right = of(operation.right());
        return switch (operation.operator()) {
            case PLUS -> sum(operation, left, right);
            case MINUS -> difference(operation, left, right);
            case TIMES -> Kind.amount(left.dimension().times(right.dimension()));
            case OVER -> Kind.amount(left.dimension().per(right.dimension()));
            case POWER -> power(operation, left, right);
        };
    }

    private static Kind sum(Term.Operation operation, Kind left, Kind right) {
        requireAlike(operation, "adds", left, right);
        if (left.isPlace() && right.isPlace()) {
            throw new FormulaException(
                    "'%s' adds two temperatures, of which only the difference means something"
                            .formatted(operation.text()));
        }
        return left.isPlace() ? left : right;
    }

    private static Kind difference(Term.Operation operation, Kind left, Kind right) {
        requireAlike(operation, "subtracts", left, right);
        return left.isPlace() && !right.isPlace() ? left : Kind.amount(left.dimension());
    }

    private static void requireAlike(Term term, String does, Kind left, Kind right) {
        if (!left.dimension().equals(right.dimension())) {
            String joint = does.equals("subtracts") ? "from" : "and";
            Kind first = does.equals("subtracts") ? right : left;
            Kind second = does.equals("subtracts") ? left : right;
            throw new FormulaException("'%s' %s %s %s %s"
                    .formatted(term.text(), does, first.describe(), joint, second.describe()));
        }
    }

    private Kind power(Term.Operation operation, Kind base, Kind exponent) {
        if (!exponent.equals(Kind.NUMBER)) {
            throw new FormulaException("'%s' has an exponent that is %s, must be a plain number"
                    .formatted(operation.text(), exponent.describe()));
        }
        if (base.dimension().equals(Dimension.NONE)) {
            return Kind.NUMBER;
        }
        double whole = figure(operation.right());
        if (!(whole == Math.rint(whole) && Math.abs(whole) <= LARGEST_POWER)) {
            throw new FormulaException(
                    "'%s' raises %s to a power that is no whole number from -%s to %s"
                            .formatted(
                                    operation.text(),
                                    base.describe(),
                                    LARGEST_POWER,
                                    LARGEST_POWER));
        }
        return Kind.amount(base.dimension().power((int) whole));
    }

    /** Returns the number that a term is by itself; NaN where it depends on something. */
    private static double figure(Term term) {
        if (term instanceof Term.Figure figure) {
            return figure.value();
        }
        return term instanceof Term.Negative negative ? -figure(negative.of()) : Double.NaN;
    }

    private Kind ofCall(Term.Call call) {
        List<Kind> kinds = call.of().stream().map(this::of).toList();
        Kind first = kinds.get(0);
        return switch (call.function()) {
            case ABS -> Kind.amount(first.dimension());
            case SQRT -> root(call, first);
            case EXP, LN, LOG10 -> plain(call, first, Kind.NUMBER);
            case ASIN, ACOS, ATAN -> plain(call, first, ANGLE);
            case SIN, COS, TAN, RADIANS ->
                first.equals(ANGLE) ? Kind.NUMBER : plain(call, first, Kind.NUMBER);
            case MIN, MAX -> alike(call, kinds);
        };
    }

    private static Kind plain(Term.Call call, Kind argument, Kind result) {
        if (!argument.equals(Kind.NUMBER)) {
            throw new FormulaException("'%s' is taken of %s, must be of a plain number"
                    .formatted(call.text(), argument.describe()));
        }
        return result;
    }

    private static Kind root(Term.Call call, Kind argument) {
        Dimension of = argument.dimension();
        Dimension half = new Dimension(
                of.length() / 2,
                of.mass() / 2,
                of.time() / 2,
                of.temperature() / 2,
                of.angle() / 2);
        if (!half.power(2).equals(of)) {
            throw new FormulaException("'%s' is the root of %s, which has no unit"
                    .formatted(call.text(), argument.describe()));
        }
        return Kind.amount(half);
    }

    private static Kind alike(Term.Call call, List<Kind> kinds) {
        Kind first = kinds.get(0);
        for (Kind kind : kinds) {
            requireAlike(call, "compares", first, kind);
            if (kind.isPlace() != first.isPlace()) {
                throw new FormulaException(
                        "'%s' compares a temperature and a difference of temperatures"
                                .formatted(call.text()));
            }
        }
        return first;
    }

    private Kind ofCurve(Term.OfCurve ofCurve) {
        Kind first = known(channels, ofCurve.channels().get(0));
        if (ofCurve.function() == CurveFunction.AREA) {
            Kind second = known(channels, ofCurve.channels().get(1));
            return Kind.amount(first.dimension().times(second.dimension()));
        }
        return first;
    }
}
