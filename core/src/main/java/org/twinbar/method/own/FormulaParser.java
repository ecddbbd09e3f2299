package org.twinbar.method.own;

import com.ezylang.evalex.Expression;
import com.ezylang.evalex.config.ExpressionConfiguration;
import com.ezylang.evalex.config.MapBasedFunctionDictionary;
import com.ezylang.evalex.config.MapBasedOperatorDictionary;
import com.ezylang.evalex.operators.OperatorIfc;
import com.ezylang.evalex.operators.arithmetic.InfixDivisionOperator;
import com.ezylang.evalex.operators.arithmetic.InfixMinusOperator;
import com.ezylang.evalex.operators.arithmetic.InfixMultiplicationOperator;
import com.ezylang.evalex.operators.arithmetic.InfixPlusOperator;
import com.ezylang.evalex.operators.arithmetic.InfixPowerOfOperator;
import com.ezylang.evalex.operators.arithmetic.PrefixMinusOperator;
import com.ezylang.evalex.operators.arithmetic.PrefixPlusOperator;
import com.ezylang.evalex.parser.ASTNode;
import com.ezylang.evalex.parser.ParseException;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads a formula into a {@link Term}: the library finds its structure, and only what stands on the
 * lists of this package is taken over.
 */
final class FormulaParser {

    private static final int LONGEST = 500;
    private static final int DEEPEST = 40;
    private static final int MOST_SIGNS = 200;
    private static final String PI = "pi";

    private static final Map<String, Function> FUNCTIONS = new HashMap<>();
    private static final Map<String, CurveFunction> CURVE_FUNCTIONS = new HashMap<>();

    static {
        for (Function function : Function.values()) {
            FUNCTIONS.put(function.word(), function);
        }
        for (CurveFunction function : CurveFunction.values()) {
            CURVE_FUNCTIONS.put(function.word(), function);
        }
    }

    private static final ExpressionConfiguration GRAMMAR = grammar();

    private final String formula;
    private final Set<String> variables;
    private final Set<String> channels;
    private int signs;

    private FormulaParser(String formula, Set<String> variables, Set<String> channels) {
        this.formula = formula;
        this.variables = variables;
        this.channels = channels;
    }

    static boolean isReserved(String name) {
        return name.equals(PI) || FUNCTIONS.containsKey(name) || CURVE_FUNCTIONS.containsKey(name);
    }

    /**
     * Reads a formula.
     *
     * @param variables the names that stand for numbers
     * @param channels the names that stand for channels of the curve
     * @throws FormulaException where it can't be read, holds what is on no list, or is longer than
     *     500 characters, deeper than 40 or larger than 200 parts
     */
    static Term parse(String formula, Set<String> variables, Set<String> channels) {
        FormulaParser parser = new FormulaParser(formula.strip(), variables, channels);
        return parser.term(parser.structure(), 1);
    }

    private ASTNode structure() {
        if (formula.isEmpty()) {
            throw new FormulaException("the formula is empty");
        }
        if (formula.length() > LONGEST) {
            throw new FormulaException("the formula has %s characters, at most %s are allowed"
                    .formatted(formula.length(), LONGEST));
        }
        try {
            return new Expression(plain(), GRAMMAR).getAbstractSyntaxTree();
        } catch (ParseException e) {
            throw new FormulaException("%s can't be read at '%s', place %s%s"
                    .formatted(quoted(), e.getTokenString(), e.getStartPosition(), hint()));
        } catch (RuntimeException e) {
            // The library ends some broken formulas with exceptions that name no place.
            throw new FormulaException(quoted() + " can't be read" + hint());
        }
    }

    /** Signs of print mean what those of a keyboard do. */
    private String plain() {
        return formula.replace('·', '*')
                .replace('×', '*')
                .replace('÷', '/')
                .replace('−', '-')
                .replace("²", "^2")
                .replace("³", "^3")
                .replace("π", PI);
    }

    private String hint() {
        if (formula.matches("(?s).*\\d,\\d.*")) {
            return "; a formula needs the decimal point, its comma parts arguments";
        }
        return formula.matches("(?s).*\\^\\s*[-−].*")
                ? "; a negative exponent needs brackets, as in x^(-1)"
                : "";
    }

    private Term term(ASTNode node, int depth) {
        if (depth > DEEPEST) {
            throw new FormulaException("%s is nested deeper than %s".formatted(quoted(), DEEPEST));
        }
        if (++signs > MOST_SIGNS) {
            throw new FormulaException("%s has more than %s parts".formatted(quoted(), MOST_SIGNS));
        }
        String word = node.getToken().getValue();
        return switch (node.getToken().getType()) {
            case NUMBER_LITERAL -> figure(word);
            case VARIABLE_OR_CONSTANT -> variable(word);
            case PREFIX_OPERATOR -> {
                Term of = term(node.getParameters().get(0), depth + 1);
                yield word.equals("-") ? new Term.Negative(of) : of;
            }
            case INFIX_OPERATOR ->
                new Term.Operation(
                        operator(word),
                        term(node.getParameters().get(0), depth + 1),
                        term(node.getParameters().get(1), depth + 1));
            case FUNCTION -> call(word.toLowerCase(Locale.ROOT), node, depth);
            default ->
                throw new FormulaException(
                        "%s has '%s', which a formula may not have".formatted(quoted(), word));
        };
    }

    private Term figure(String word) {
        try {
            double value = Double.parseDouble(word);
            if (Double.isFinite(value)) {
                return new Term.Figure(value);
            }
        } catch (NumberFormatException e) {
            // Falls through to the same sentence: the library also reads figures to base 16.
        }
        throw new FormulaException(
                "%s has '%s', which is no decimal number".formatted(quoted(), word));
    }

    private Term variable(String word) {
        if (word.equals(PI)) {
            return new Term.Figure(Math.PI);
        }
        if (channels.contains(word)) {
            throw new FormulaException(
                    "%s names the channel '%s' by itself; say which number of it, such as peak(%s)"
                            .formatted(quoted(), word, word));
        }
        if (!variables.contains(word)) {
            throw new FormulaException("%s names '%s', which is none of what stands before it: %s"
                    .formatted(quoted(), word, list(variables)));
        }
        return new Term.Variable(word);
    }

    private static Operator operator(String sign) {
        return Arrays.stream(Operator.values())
                .filter(operator -> operator.sign().equals(sign))
                .findFirst()
                .orElseThrow();
    }

    private Term call(String word, ASTNode node, int depth) {
        CurveFunction ofCurve = CURVE_FUNCTIONS.get(word);
        if (ofCurve != null) {
            return ofCurve(ofCurve, node);
        }
        List<Term> arguments = new ArrayList<>();
        for (ASTNode argument : node.getParameters()) {
            arguments.add(term(argument, depth + 1));
        }
        return new Term.Call(Objects.requireNonNull(FUNCTIONS.get(word), word), arguments);
    }

    private Term ofCurve(CurveFunction function, ASTNode node) {
        List<String> named = new ArrayList<>();
        for (ASTNode argument : node.getParameters()) {
            String word = argument.getToken().getValue();
            if (!argument.getParameters().isEmpty() || !channels.contains(word)) {
                throw new FormulaException(
                        "%s: %s() takes a channel of the curve, which '%s' is not; channels are: %s"
                                .formatted(quoted(), function.word(), word, list(channels)));
            }
            named.add(word);
        }
        return new Term.OfCurve(function, named);
    }

    private static String list(Set<String> names) {
        return names.isEmpty() ? "none" : String.join(", ", new TreeSet<>(names));
    }

    private String quoted() {
        return "'" + formula.replaceAll("\\s+", " ") + "'";
    }

    private static ExpressionConfiguration grammar() {
        MapBasedFunctionDictionary functions = new MapBasedFunctionDictionary();
        FUNCTIONS.forEach((word, function) -> functions.addFunction(
                word,
                function.arguments() == Function.Arguments.ONE
                        ? Signature.of(1)
                        : Signature.ofSeveral()));
        CURVE_FUNCTIONS.forEach(
                (word, function) -> functions.addFunction(word, Signature.of(function.channels())));
        MapBasedOperatorDictionary operators = new MapBasedOperatorDictionary();
        operators.addOperator("+", new PrefixPlusOperator());
        operators.addOperator("-", new PrefixMinusOperator());
        operators.addOperator("+", new InfixPlusOperator());
        operators.addOperator("-", new InfixMinusOperator());
        operators.addOperator("*", new InfixMultiplicationOperator());
        operators.addOperator("/", new InfixDivisionOperator());
        operators.addOperator("^", new InfixPowerOfOperator());
        return ExpressionConfiguration.builder()
                .functionDictionary(functions)
                .operatorDictionary(operators)
                .arraysAllowed(false)
                .structuresAllowed(false)
                .binaryAllowed(false)
                .implicitMultiplicationAllowed(false)
                .singleQuoteStringLiteralsAllowed(false)
                // As in mathematics, -x^2 is -(x^2).
                .powerOfPrecedence(OperatorIfc.OPERATOR_PRECEDENCE_POWER_HIGHER)
                .locale(Locale.ROOT)
                .zoneId(ZoneOffset.UTC)
                .build();
    }
}
