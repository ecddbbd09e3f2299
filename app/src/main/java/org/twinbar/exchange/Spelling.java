package org.twinbar.exchange;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds what a misspelt name may have meant. */
public final class Spelling {

    private Spelling() {}

    /**
     * Returns the name that is nearest to a misspelt one, at most a third of its letters away.
     *
     * <p>The distance is the least number of letters put in, left out, changed or swapped with
     * their neighbour; case, blanks and underscores play no part.
     */
    public static Optional<String> nearest(String misspelt, Collection<String> names) {
        String wanted = Column.key(misspelt);
        int limit = Math.max(1, wanted.length() / 3);
        return names.stream()
                .filter(name -> distance(wanted, Column.key(name)) <= limit)
                .min(Comparator.comparingInt(name -> distance(wanted, Column.key(name))));
    }

    /** Returns {@code "; did you mean 'width'?"}, or nothing where no name is near. */
    public static String hint(String misspelt, Collection<String> names) {
        return nearest(misspelt, names)
                .map(name -> "; did you mean '" + name + "'?")
                .orElse("");
    }

    static int distance(String a, String b) {
        int[][] table = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                table[i][j] = i == 0 || j == 0 ? i + j : cheapest(table, a, b, i, j);
            }
        }
        return table[a.length()][b.length()];
    }

    private static int cheapest(int[][] table, String a, String b, int i, int j) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(
                table[i - 1][j - 1] + change, 1 + Math.min(table[i - 1][j], table[i][j - 1]));
        boolean swapped = i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, 1 + table[i - 2][j - 2]) : least;
    }
}
