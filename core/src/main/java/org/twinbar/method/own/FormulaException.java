package org.twinbar.method.own;

/** Says in one sentence why a method of one's own, or a formula of it, can't be taken. */
public final class FormulaException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public FormulaException(String message) {
        super(message);
    }
}
