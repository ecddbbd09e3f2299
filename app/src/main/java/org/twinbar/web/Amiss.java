package org.twinbar.web;

import org.twinbar.study.FieldException;

/**
 * What is wrong with a form that was sent.
 *
 * @param field that it is about, nothing where it is about the whole form
 * @param sentence nothing where all is well
 */
public record Amiss(String field, String sentence) {

    static final Amiss NOTHING = new Amiss("", "");

    /** Returns that nothing is. */
    public static Amiss none() {
        return NOTHING;
    }

    static Amiss of(RuntimeException refusal) {
        String field = refusal instanceof FieldException about ? about.field() : "";
        return new Amiss(field, Words.sentence(refusal));
    }

    /** Returns what stands beside a field. */
    public String beside(String name) {
        return field.equals(name) ? sentence : "";
    }

    /** Returns what stands above the form. */
    public String above() {
        return field.isEmpty() ? sentence : "";
    }
}
