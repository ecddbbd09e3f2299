package org.twinbar.method.own;

/** What may stand between two terms. */
enum Operator {
    PLUS("+"),
    MINUS("-"),
    TIMES("*"),
    OVER("/"),
    POWER("^");

    private final String sign;

    Operator(String sign) {
        this.sign = sign;
    }

    String sign() {
        return sign;
    }

    double apply(double left, double right) {
        return switch (this) {
            case PLUS -> left + right;
            case MINUS -> left - right;
            case TIMES -> left * right;
            case OVER -> left / right;
            case POWER -> StrictMath.pow(left, right);
        };
    }
}
