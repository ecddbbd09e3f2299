package org.twinbar.exchange;

import java.util.Locale;

/** What stands between the whole and the broken part of a number. */
public enum DecimalMark {
    POINT('.'),
    COMMA(',');

    private final char sign;

    DecimalMark(char sign) {
        this.sign = sign;
    }

    public char sign() {
        return sign;
    }

    /** Returns the word for it, as {@code --decimal} takes it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads the value of {@code --decimal}.
     *
     * @throws InputException where it is neither point nor comma
     */
    public static DecimalMark parse(String text) {
        for (DecimalMark mark : values()) {
            if (text.equals(mark.word()) || text.equals("" + mark.sign)) {
                return mark;
            }
        }
        throw new InputException("--decimal %s: write point or comma".formatted(Place.quote(text)));
    }
}
