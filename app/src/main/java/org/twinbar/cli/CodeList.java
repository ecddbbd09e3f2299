package org.twinbar.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Codes of specimens as they are typed: {@code A01..A12}, or parted by commas. */
final class CodeList {

    private static final Pattern RANGE = Pattern.compile("(.*?)(\\d{1,9})\\.\\.(.*?)(\\d{1,9})");

    private CodeList() {}

    /** @throws UsageException where a range is none, a code stands twice, or there are too many */
    static List<String> parse(String typed, int most) {
        List<String> codes = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String part : typed.split("[,;]", -1)) {
            for (String code : range(part.strip(), most)) {
                if (code.isEmpty()) {
                    throw new UsageException("--codes '%s' has an empty code".formatted(typed));
                }
                if (!seen.add(code.toUpperCase(Locale.ROOT))) {
                    throw new UsageException("--codes names '%s' twice".formatted(code));
                }
                codes.add(code);
            }
        }
        if (codes.size() > most) {
            throw tooMany(codes.size(), most);
        }
        return codes;
    }

    private static List<String> range(String part, int most) {
        Matcher range = RANGE.matcher(part);
        if (!range.matches()) {
            if (part.contains("..")) {
                throw noRange(part);
            }
            return List.of(part);
        }
        int first = Integer.parseInt(range.group(2));
        int last = Integer.parseInt(range.group(4));
        boolean onePrefix = range.group(3).isEmpty() || range.group(3).equals(range.group(1));
        if (!onePrefix || first > last) {
            throw noRange(part);
        }
        if (last - first >= most) {
            throw tooMany(last - first + 1, most);
        }
        List<String> codes = new ArrayList<>();
        for (int number = first; number <= last; number++) {
            String digits = Integer.toString(number);
            int missing = Math.max(0, range.group(2).length() - digits.length());
            codes.add(range.group(1) + "0".repeat(missing) + digits);
        }
        return codes;
    }

    private static UsageException noRange(String part) {
        return new UsageException(
                "--codes: '%s' is no range from a code up to another, such as A01..A12"
                        .formatted(part));
    }

    private static UsageException tooMany(int number, int most) {
        return new UsageException(
                "--codes: %s codes are more than the limit of %s".formatted(number, most));
    }
}
