package org.twinbar.method.own;

import com.ezylang.evalex.Expression;
import com.ezylang.evalex.data.EvaluationValue;
import com.ezylang.evalex.functions.FunctionIfc;
import com.ezylang.evalex.functions.FunctionParameterDefinition;
import com.ezylang.evalex.parser.Token;

import java.util.Collections;
import java.util.List;

/** What the library needs of a function to parse it: how many arguments it takes. */
record Signature(List<FunctionParameterDefinition> parameters, boolean hasVarArgs)
        implements FunctionIfc {

    static Signature of(int arguments) {
        return new Signature(Collections.nCopies(arguments, parameter(false)), false);
    }

    static Signature ofSeveral() {
        return new Signature(List.of(parameter(true)), true);
    }

    private static FunctionParameterDefinition parameter(boolean several) {
        return FunctionParameterDefinition.builder()
                .name("value")
                .isVarArg(several)
                .build();
    }

    @Override
    public List<FunctionParameterDefinition> getFunctionParameterDefinitions() {
        return parameters;
    }

    /** Formulas are calculated by {@link Evaluation}, never by the library. */
    @Override
    public EvaluationValue evaluate(
            Expression expression, Token token, EvaluationValue... arguments) {
        throw new IllegalStateException(token.getValue() + " is only parsed here");
    }

    @Override
    public void validatePreEvaluation(Token token, EvaluationValue... arguments) {
        throw new IllegalStateException(token.getValue() + " is only parsed here");
    }
}
