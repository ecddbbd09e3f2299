package org.twinbar.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.datapackage.DataTable;
import org.twinbar.exchange.datapackage.Field;
import org.twinbar.exchange.datapackage.OpenPackage;
import org.twinbar.exchange.datapackage.Resource;
import org.twinbar.method.Methods;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.packed.CalculatedTables;

/**
 * A stranger's re-run of a package: what it says, against what its raw files give here.
 *
 * @param study the study's name
 * @param packagedBy what wrote the package
 * @param program what calculated it again
 * @param counted how much was compared
 * @param differences in the order of the package; none where all is the same
 */
public record Recheck(
        String study,
        String packagedBy,
        String program,
        Counted counted,
        List<Difference> differences) {

    /** Two numbers agree where they differ by no more than this share: twelve digits. */
    private static final double TWELVE_DIGITS = 1e-12;

    private static final String NOTHING = "nothing";

    public Recheck {
        differences = List.copyOf(differences);
    }

    /** How many files were held against their digests, and how many numbers and verdicts. */
    public record Counted(int files, int values, int verdicts) {}

    /**
     * One thing that is not as the package says.
     *
     * @param where such as {@code results: tensile, A3, strength, value}
     * @param packaged what the package says
     * @param now what was found
     */
    public record Difference(Kind kind, String where, String packaged, String now) {}

    /** What sort of thing differs. */
    public enum Kind {
        /** A file's bytes are not those that the package tells of. */
        DIGEST("digest"),
        /** Another version of the program or of a method calculated it; no fault by itself. */
        VERSION("version"),
        VERDICT("verdict"),
        VALUE("value"),
        TEXT("text"),
        /** A row, a column or a table is on one side alone. */
        ROW("row");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Whether the re-run gave the same; that another version ran it changes nothing. */
    public boolean same() {
        return differences.stream().allMatch(it -> it.kind() == Kind.VERSION);
    }

    /**
     * Calculates the study of a package again and compares; nothing is written.
     *
     * @throws InputException where the package holds no study that can be calculated
     */
    public static Recheck of(OpenPackage open, Methods methods, String program) {
        if (!PackagedStudy.is(open)) {
            throw new InputException(
                    "%s holds no verdicts of Twinbar that could be checked; import it instead"
                            .formatted(open.place()));
        }
        PackagedStudy packaged = PackagedStudy.of(open);
        Run run = new Run(open);
        run.digests(packaged);
        JudgedStudy judged = Judging.judge(
                packaged.state(),
                packaged.among(methods, Map.of()),
                packaged::bytes,
                program,
                Progress.SILENT);
        run.add(Kind.VERSION, "program", packaged.program(), program);
        CalculatedTables.of(judged).forEach(run::table);
        return new Recheck(
                judged.name(),
                packaged.program(),
                program,
                new Counted(run.files, run.values, run.verdicts),
                run.differences);
    }

    /** One comparison, under way. */
    private static final class Run {
        private final OpenPackage open;
        private final List<Difference> differences = new ArrayList<>();
        private int files;
        private int values;
        private int verdicts;

        Run(OpenPackage open) {
            this.open = open;
        }

        void add(Kind kind, String where, String packaged, String now) {
            if (!packaged.equals(now)) {
                differences.add(new Difference(
                        kind,
                        where,
                        packaged.isEmpty() ? NOTHING : packaged,
                        now.isEmpty() ? NOTHING : now));
            }
        }

        void digests(PackagedStudy packaged) {
            for (Resource resource : open.resources()) {
                files++;
                open.damage(resource)
                        .ifPresent(words -> differences.add(new Difference(
                                Kind.DIGEST, resource.path(), "as it was written", words)));
            }
            for (KeptFile file : packaged.files()) {
                KeptFile found = KeptFile.of(packaged.source(file));
                boolean listed = differences.stream()
                        .anyMatch(it -> it.where().equals(packaged.source(file).name()));
                if (!listed) {
                    add(Kind.DIGEST, file.name(), file.sha256(), found.sha256());
                }
            }
        }

        void table(DataTable now) {
            Optional<Resource> there = open.resource(now.name());
            if (there.isEmpty()) {
                differences.add(new Difference(Kind.ROW, now.name(), NOTHING, "a table"));
                return;
            }
            List<String> columns = there.get().columns();
            List<String> known = now.fields().stream().map(Field::name).toList();
            if (!columns.containsAll(now.key())) {
                differences.add(new Difference(
                        Kind.ROW,
                        now.name(),
                        "the columns " + String.join(", ", columns),
                        "the columns " + String.join(", ", known)));
                return;
            }
            Map<List<String>, List<String>> before = new LinkedHashMap<>();
            for (List<String> row : open.rows(there.get())) {
                before.put(
                        now.key().stream().map(columns::indexOf).map(row::get).toList(), row);
            }
            Map<List<String>, List<String>> after = new HashMap<>();
            now.rows().forEach(row -> after.put(now.keyOf(row), row));
            Set<List<String>> keys = new LinkedHashSet<>(before.keySet());
            now.rows().forEach(row -> keys.add(now.keyOf(row)));
            for (List<String> key : keys) {
                String where = now.name() + ": " + String.join(", ", key);
                List<String> old = before.get(key);
                List<String> fresh = after.get(key);
                if (old == null || fresh == null) {
                    add(
                            Kind.ROW,
                            where,
                            old == null ? NOTHING : "a row",
                            fresh == null ? NOTHING : "a row");
                } else {
                    for (Field field : now.fields()) {
                        int at = columns.indexOf(field.name());
                        String cell = at < 0 ? "" : old.get(at);
                        cell(now, field, where, cell, fresh.get(known.indexOf(field.name())));
                    }
                }
            }
        }

        private void cell(DataTable table, Field field, String where, String before, String now) {
            String place = where + ", " + field.name();
            boolean number = field.type() == Field.Type.NUMBER;
            values += number && !now.isEmpty() ? 1 : 0;
            boolean verdict = field.name().equals("verdict");
            verdicts += verdict && !now.isEmpty() ? 1 : 0;
            if (number && agree(before, now)) {
                return;
            }
            boolean version = table.name().equals("methods") && field.name().equals("version");
            add(
                    version
                            ? Kind.VERSION
                            : verdict ? Kind.VERDICT : number ? Kind.VALUE : Kind.TEXT,
                    place,
                    before,
                    now);
        }

        private static boolean agree(String before, String now) {
            if (before.equals(now)) {
                return true;
            }
            try {
                double a = Double.parseDouble(before);
                double b = Double.parseDouble(now);
                return Math.abs(a - b) <= TWELVE_DIGITS * Math.max(Math.abs(a), Math.abs(b));
            } catch (NumberFormatException e) {
                return false;
            }
        }
    }
}
