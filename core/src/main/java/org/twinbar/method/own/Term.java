package org.twinbar.method.own;

import java.util.List;
import java.util.stream.Collectors;

/** A parsed formula, made of nothing but what is listed here. */
sealed interface Term {

    /** Returns it as a person would write it, for messages. */
    String text();

    record Figure(double value) implements Term {
        @Override
        public String text() {
            boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
            return whole ? Long.toString((long) value) : Double.toString(value);
        }
    }

    /** An input, a setting, a step or a result that stands before. */
    record Variable(String name) implements Term {
        @Override
        public String text() {
            return name;
        }
    }

    record Negative(Term of) implements Term {
        @Override
        public String text() {
            return "-" + inner(of);
        }
    }

    record Operation(Operator operator, Term left, Term right) implements Term {
        @Override
        public String text() {
            return inner(left) + " " + operator.sign() + " " + inner(right);
        }
    }

    record Call(Function function, List<Term> of) implements Term {
        @Override
        public String text() {
            return of.stream()
                    .map(Term::text)
                    .collect(Collectors.joining(", ", function.word() + "(", ")"));
        }
    }

    /** A number that a curve gives. */
    record OfCurve(CurveFunction function, List<String> channels) implements Term {
        @Override
        public String text() {
            return function.word() + "(" + String.join(", ", channels) + ")";
        }
    }

    private static String inner(Term term) {
        boolean bare = !(term instanceof Operation) && !(term instanceof Negative);
        return bare ? term.text() : "(" + term.text() + ")";
    }
}
