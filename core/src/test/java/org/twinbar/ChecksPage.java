package org.twinbar;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The page of outside checks: every value that a test compared with one from elsewhere.
 *
 * <p>It is made from what {@link Checks} kept while the tests ran. A page that was made earlier is
 * out of date where a check was added, lost or changed, or agrees by fewer digits than before; our
 * own last digits may differ.
 */
final class ChecksPage {

    /** What a later page may lose: a tenth is how digits are rounded, the rest is a last bit. */
    private static final double DIGITS_THAT_MAY_GO = 0.5;

    private static final MathContext DIGITS_SHOWN = new MathContext(12);

    private static final String HEAD = """
            # Outside checks

            Every row is a value from outside Twinbar (a standard, a handbook, another program, a worked
            example) and what Twinbar calculates from the same inputs. Digits are matching decimal digits,
            at most 15; a source with few printed digits allows few. The tests fail where a value leaves its
            tolerance. This page is made by `./check --update`.
            """;

    private static final String COLUMNS = """

            | id | quantity | inputs | expected | ours | digits | source |
            |---|---|---|---:|---:|---:|---|
            """;

    private final SortedMap<String, List<List<String>>> byPackage;

    private ChecksPage(SortedMap<String, List<List<String>>> byPackage) {
        this.byPackage = byPackage;
    }

    /** The page of the rows that were kept for each package, as {@link Checks} writes them. */
    static ChecksPage of(Map<String, String> keptByPackage) {
        SortedMap<String, List<List<String>>> rows = new TreeMap<>();
        keptByPackage.forEach((name, kept) -> {
            List<List<String>> table = Checks.table(kept);
            rows.put(name, table.subList(1, table.size()));
        });
        return new ChecksPage(rows);
    }

    String markdown() {
        StringBuilder page = new StringBuilder(HEAD);
        byPackage.forEach((name, rows) -> {
            page.append("\n## ").append(name).append('\n').append(COLUMNS);
            for (List<String> row : rows) {
                page.append(line(row)).append('\n');
            }
        });
        return page.toString();
    }

    /** In what an earlier page is out of date, one sentence each; empty where it still holds. */
    List<String> missedBy(String earlierPage) {
        Map<String, String> earlier = new LinkedHashMap<>();
        String section = "";
        for (String line : earlierPage.lines().toList()) {
            if (line.startsWith("## ")) {
                section = line.substring(3);
            } else if (line.startsWith("| ") && !line.startsWith("| id |")) {
                earlier.put(section + " " + cells(line).get(0), line);
            }
        }
        List<String> missed = new ArrayList<>();
        byPackage.forEach((name, rows) -> {
            for (List<String> row : rows) {
                String key = name + " " + row.get(0);
                String before = earlier.remove(key);
                if (before == null) {
                    missed.add(key + " was added.");
                } else {
                    compare(key, cells(before), cells(line(row)), missed);
                }
            }
        });
        earlier.keySet().forEach(key -> missed.add(key + " is gone."));
        return missed;
    }

    private static void compare(
            String key, List<String> before, List<String> now, List<String> missed) {
        double lost = Double.parseDouble(before.get(5)) - Double.parseDouble(now.get(5));
        if (lost > DIGITS_THAT_MAY_GO) {
            missed.add("%s agreed by %s digits and now by %s."
                    .formatted(key, before.get(5), now.get(5)));
        } else if (!before.subList(0, 4).equals(now.subList(0, 4))
                || !before.get(6).equals(now.get(6))) {
            missed.add(key + " was changed.");
        }
    }

    private static String line(List<String> row) {
        List<String> shown = List.of(
                row.get(0),
                row.get(1),
                row.get(2),
                row.get(3),
                rounded(row.get(6)),
                row.get(7),
                row.get(5));
        return "| " + String.join(" | ", shown.stream().map(ChecksPage::escaped).toList()) + " |";
    }

    private static String rounded(String number) {
        double value = Double.parseDouble(number);
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return number;
        }
        BigDecimal shown = new BigDecimal(value).round(DIGITS_SHOWN).stripTrailingZeros();
        boolean whole = shown.scale() < 0 && Math.abs(value) < 1e9;
        return whole || shown.signum() == 0 ? shown.toPlainString() : shown.toString();
    }

    private static String escaped(String cell) {
        return cell.replace("|", "\\|");
    }

    private static List<String> cells(String line) {
        return List.of(line.substring(2, line.length() - 2).split(" (?<!\\\\)\\| ", -1));
    }
}
