package org.twinbar.method.own;

import java.util.Locale;

/** The functions of numbers that a formula may use; angles in radians. */
enum Function {
    SQRT(Arguments.ONE),
    ABS(Arguments.ONE),
    EXP(Arguments.ONE),
    LN(Arguments.ONE),
    LOG10(Arguments.ONE),
    SIN(Arguments.ONE),
    COS(Arguments.ONE),
    TAN(Arguments.ONE),
    ASIN(Arguments.ONE),
    ACOS(Arguments.ONE),
    ATAN(Arguments.ONE),
    /** An angle as a plain number, as for the length of an arc. */
    RADIANS(Arguments.ONE),
    MIN(Arguments.SEVERAL),
    MAX(Arguments.SEVERAL);

    /** How many arguments a function takes. */
    enum Arguments {
        ONE,
        SEVERAL
    }

    private final Arguments arguments;

    Function(Arguments arguments) {
        this.arguments = arguments;
    }

    Arguments arguments() {
        return arguments;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    double apply(double[] of) {
        double first = of[0];
        return switch (this) {
            case SQRT -> Math.sqrt(first);
            case ABS -> Math.abs(first);
            case EXP -> StrictMath.exp(first);
            case LN -> StrictMath.log(first);
            case LOG10 -> StrictMath.log10(first);
            case SIN -> StrictMath.sin(first);
            case COS -> StrictMath.cos(first);
            case TAN -> StrictMath.tan(first);
            case ASIN -> StrictMath.asin(first);
            case ACOS -> StrictMath.acos(first);
            case ATAN -> StrictMath.atan(first);
            case RADIANS -> first;
            case MIN -> extreme(of, -1);
            case MAX -> extreme(of, 1);
        };
    }

    private static double extreme(double[] of, int side) {
        double found = of[0];
        for (double value : of) {
            found = side > 0 ? Math.max(found, value) : Math.min(found, value);
        }
        return found;
    }
}
