package org.twinbar.study.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.time.DateTimeException;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.twinbar.decision.LeftOut;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Keys;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Plan;

/**
 * A study as a person writes it down in TOML: what is asked, which tables hold the readings, what
 * is claimed. A file of claims alone is one with the other parts left away. The keys are told in
 * docs/claims.md.
 *
 * @param head what the study is called and asks, where the file says so
 * @param tests the tests with their tables
 * @param claims in the order in which they are shown
 * @param leftOut specimens that don't count
 * @param plan how the specimens are to be made
 */
public record StudyFile(
        Optional<Head> head,
        List<Test> tests,
        List<Claim> claims,
        List<LeaveOut> leftOut,
        Optional<Plan> plan) {

    private static final Set<String> KEYS =
            Set.of("study", "question", "about", "invented", "test", "claim", "left_out", "plan");
    private static final Set<String> LEFT_OUT_KEYS =
            Set.of("method", "specimen", "who", "when", "why", "sight");
    private static final TomlMapper TOML = new TomlMapper();

    public StudyFile {
        tests = List.copyOf(tests);
        claims = List.copyOf(claims);
        leftOut = List.copyOf(leftOut);
    }

    /** Returns a study without a plan. */
    public StudyFile(
            Optional<Head> head, List<Test> tests, List<Claim> claims, List<LeaveOut> leftOut) {
        this(head, tests, claims, leftOut, Optional.empty());
    }

    /** What a study is called and asks. */
    public record Head(String name, String question, String about, JudgedStudy.Origin origin) {
        public Head {
            if (name.isBlank()) {
                throw new InputException("a study needs a name");
            }
        }
    }

    /**
     * A test with its table.
     *
     * @param specimens file with a row for each specimen, relative to the study file
     * @param curves folder of the curves, relative to it; where none is named, the table's folder
     */
    public record Test(TestSheet sheet, String specimens, Optional<String> curves) {}

    /** A specimen that doesn't count. */
    public record LeaveOut(String method, String specimen, LeftOut leftOut) {}

    /**
     * Reads a study file.
     *
     * @param name of the file, for messages
     * @throws InputException where it is no TOML, has a key that nobody knows, or lacks one
     */
    public static StudyFile parse(String name, String toml) {
        JsonNode root;
        try {
            root = TOML.readTree(toml);
        } catch (JsonProcessingException e) {
            throw new InputException("%s, line %s: is not TOML: %s"
                    .formatted(
                            name,
                            e.getLocation() == null ? 1 : e.getLocation().getLineNr(),
                            e.getOriginalMessage()));
        }
        Keys keys = Keys.of(name, root, KEYS);
        List<Test> tests = new ArrayList<>();
        keys.list("test").forEach(node -> tests.add(test(name, node)));
        List<Claim> claims = new ArrayList<>();
        keys.list("claim").forEach(node -> claims.add(Claim.read(name, node)));
        List<LeaveOut> leftOut = new ArrayList<>();
        keys.list("left_out").forEach(node -> leftOut.add(leaveOut(name, node)));
        Optional<Head> head = keys.optional("study")
                .map(study -> new Head(
                        study,
                        keys.optional("question").orElse(study),
                        keys.optional("about").orElse(""),
                        keys.yes("invented")
                                ? JudgedStudy.Origin.INVENTED
                                : JudgedStudy.Origin.MEASURED));
        Optional<Plan> plan = keys.node("plan").map(node -> PlanKeys.read(name, node));
        return new StudyFile(head, tests, claims, leftOut, plan);
    }

    private static Test test(String where, JsonNode node) {
        Set<String> known = new HashSet<>(TestSheet.KEYS);
        known.add("specimens");
        known.add("curves");
        Keys keys = Keys.of(where + ", test", node, known);
        return new Test(TestSheet.read(keys), keys.text("specimens"), keys.optional("curves"));
    }

    private static LeaveOut leaveOut(String where, JsonNode node) {
        Keys keys = Keys.of(where + ", left_out", node, LEFT_OUT_KEYS);
        String sight = keys.text("sight");
        LeftOut.Sight seen = switch (sight) {
            case "before" -> LeftOut.Sight.BEFORE_VALUE_WAS_SEEN;
            case "after" -> LeftOut.Sight.AFTER_VALUE_WAS_SEEN;
            default ->
                throw new InputException(
                        "%s, left_out: sight '%s' must be before or after, as its value was seen"
                                .formatted(where, sight));
        };
        return new LeaveOut(
                keys.text("method"),
                keys.text("specimen"),
                new LeftOut(
                        keys.text("who"), when(where, keys.text("when")), keys.text("why"), seen));
    }

    private static ZonedDateTime when(String where, String text) {
        try {
            return ZonedDateTime.parse(text);
        } catch (DateTimeException e) {
            throw new InputException(
                    "%s, left_out: '%s' is not a time such as 2026-05-04T10:00:00+02:00"
                            .formatted(where, text));
        }
    }
}
