package org.twinbar.exchange;

/** Whether numbers of a thousand and more have a mark between their groups of three digits. */
public enum Thousands {
    PLAIN,
    /** By the mark that is not the decimal mark: {@code 1,234.5} or {@code 1.234,5}. */
    GROUPED
}
