package org.twinbar.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.twinbar.exchange.InputException;
import org.twinbar.planning.Allocation;
import org.twinbar.planning.Controls;
import org.twinbar.planning.Design;
import org.twinbar.planning.PlanException;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.planning.PlannedGroup.Role;
import org.twinbar.planning.PlannedGroup.Together;
import org.twinbar.planning.Series;
import org.twinbar.specimen.ShapeException;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.StudyName;

/**
 * The form that a plan is made by: what was typed, what is wrong with it and beside which field,
 * and the plan that it makes.
 */
public final class PlanForm {

    static final String YES = "yes";

    /** Which tells a form that was sent from a page that is opened. */
    private static final String SENT = "sort";

    private final StudyName study;
    private final Form form;
    private final List<PlanKind> kinds;
    private final Map<String, String> troubles = new LinkedHashMap<>();
    private final Map<String, String> wanted = new LinkedHashMap<>();

    private PlanForm(StudyName study, Form form, List<PlanKind> kinds) {
        this.study = study;
        this.form = form;
        this.kinds = List.copyOf(kinds);
    }

    /**
     * Returns the form as it was sent, or as it is begun.
     *
     * @param begun what its fields hold where nothing was sent
     */
    static PlanForm of(StudyName study, Form sent, Form begun, List<PlanKind> kinds) {
        return new PlanForm(study, isSent(sent) ? sent : begun.withAll(sent), kinds);
    }

    static boolean isSent(Form form) {
        return form.fields().containsKey(SENT);
    }

    public StudyName study() {
        return study;
    }

    public List<PlanKind> kinds() {
        return kinds;
    }

    public String text(String field) {
        return form.text(field);
    }

    public boolean is(String field, String value) {
        return form.is(field, value);
    }

    /** Returns what is wrong with a field; empty where nothing is. */
    public String trouble(String field) {
        return troubles.getOrDefault(field, "");
    }

    public boolean isTroubled() {
        return !troubles.isEmpty();
    }

    void trouble(String field, String sentence) {
        troubles.putIfAbsent(field, Words.sentence(sentence));
    }

    /** A plan may be made without what nobody typed; what was typed must be right. */
    void missing(String field, String sentence) {
        if (form.text(field).isEmpty()) {
            wanted.putIfAbsent(field, Words.sentence(sentence));
        } else {
            trouble(field, sentence);
        }
    }

    /** Returns what a field should say so that more can be told; empty where nothing is missing. */
    public String wanted(String field) {
        return wanted.getOrDefault(field, "");
    }

    /** Returns the sorts of treatment that there are. */
    public List<String> sorts() {
        return Arrays.stream(Controls.Treatment.values())
                .map(Controls.Treatment::word)
                .toList();
    }

    /** Returns the controls that people forget of the treatment that is chosen. */
    public List<Controls.Offered> offered() {
        return Controls.offeredFor(sort());
    }

    /** Returns the field that takes an offered control. */
    public static String field(Controls.Offered offered) {
        return "with." + offered.group().name().replace(' ', '_');
    }

    private Controls.Treatment sort() {
        try {
            return Controls.Treatment.parse(form.text(SENT));
        } catch (PlanException e) {
            return Controls.Treatment.COATING;
        }
    }

    /** Returns the plan; empty where something is wrong, which is then said beside its field. */
    Optional<Plan> plan(List<Plan.NumberReason> reasons) {
        List<PlannedGroup> groups = groups();
        List<Series> series = series();
        Optional<Design.Batches> batches = batches();
        if (!troubles.isEmpty() || batches.isEmpty()) {
            return Optional.empty();
        }
        Optional<Allocation> dealt = tried(
                "runs",
                () -> Allocation.of(
                        new Design(groups, series, changes(), batches.get()), number("seed", 1)));
        Set<String> kept = Set.copyOf(series.stream().map(Series::name).toList());
        return dealt.flatMap(it -> tried(
                "reasons",
                () -> new Plan(
                        it,
                        is("blinding", "open") ? Plan.Blinding.OPEN : Plan.Blinding.BLIND,
                        leavingOut(),
                        reasons.stream()
                                .filter(reason -> kept.contains(reason.series()))
                                .toList())));
    }

    /** Returns the groups, the control first. */
    List<PlannedGroup> groups() {
        List<PlannedGroup> groups = new ArrayList<>();
        tried("control", () -> PlannedGroup.control(form.text("control"))).ifPresent(groups::add);
        treated("treated", form.text("treated"), form.text("treated_words")).ifPresent(groups::add);
        lines("more").forEach((name, words) -> treated("more", name, words).ifPresent(groups::add));
        for (Controls.Offered each : offered()) {
            if (is(field(each), YES)) {
                groups.add(each.group());
            }
        }
        lines("further")
                .forEach((name, words) -> tried("further", () -> PlannedGroup.further(name, words))
                        .ifPresent(groups::add));
        return groups;
    }

    private Optional<PlannedGroup> treated(String field, String name, String words) {
        EnumSet<Together> together = EnumSet.noneOf(Together.class);
        if (is("mix", YES)) {
            together.add(Together.MIX);
        }
        if (is("oven_load", YES)) {
            together.add(Together.OVEN_LOAD);
        }
        return tried(field, () -> new PlannedGroup(name, Role.TREATED, words, together));
    }

    /** Reads lines such as {@code two coats = coated twice}. */
    private Map<String, String> lines(String field) {
        Map<String, String> lines = new LinkedHashMap<>();
        form.text(field).lines().map(String::strip).filter(it -> !it.isEmpty()).forEach(line -> {
            String[] parts = line.split("\\s*=\\s*", 2);
            lines.put(parts[0], parts.length == 2 ? parts[1] : "");
        });
        return lines;
    }

    /** Returns the kinds of specimens that are made; one of which there are none is left out. */
    List<Series> series() {
        List<Series> series = new ArrayList<>();
        for (PlanKind kind : kinds) {
            if (number(kind.field("n"), 6) > 0) {
                series(kind).ifPresent(series::add);
            }
        }
        return series;
    }

    Optional<Series> series(PlanKind kind) {
        Optional<String> shape = tried(kind.field("sizes"), () -> kind.shape(form));
        return shape.flatMap(it -> tried(
                kind.field("n"),
                () -> new Series(
                        kind.name(form),
                        kind.series().method(),
                        it,
                        kind.orientation(form),
                        Math.toIntExact(number(kind.field("n"), 6)),
                        Math.toIntExact(number(kind.field("pilots"), 0)))));
    }

    private Optional<Design.Batches> batches() {
        return tried(
                "runs",
                () -> new Design.Batches(
                        Math.toIntExact(number("runs", 1)),
                        Math.toIntExact(number("mixes", 1)),
                        Math.toIntExact(number("loads", 1))));
    }

    Design.Changes changes() {
        return is("changes", Design.Changes.BETWEEN_RUNS.word())
                ? Design.Changes.BETWEEN_RUNS
                : Design.Changes.WITHIN_RUNS;
    }

    private Plan.LeavingOut leavingOut() {
        return new Plan.LeavingOut(
                form.text("reasons")
                        .lines()
                        .map(String::strip)
                        .filter(it -> !it.isEmpty())
                        .toList(),
                Plan.LeavingOut.Sight.BEFORE);
    }

    /** Returns the whole number that a field holds, which is wrong where it holds another. */
    long number(String field, long otherwise) {
        String text = form.text(field);
        if (text.isEmpty()) {
            return otherwise;
        }
        if (!text.matches("\\d{1,9}")) {
            trouble(field, "'%s' is not a whole number of 0 or more".formatted(text));
            return otherwise;
        }
        return Long.parseLong(text);
    }

    private <T> Optional<T> tried(String field, Supplier<T> made) {
        try {
            return Optional.of(made.get());
        } catch (InputException | PlanException | ShapeException | ArithmeticException e) {
            trouble(field, String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    Form form() {
        return form;
    }

    /** Returns what the fields hold of a plan that there is, or of claims alone. */
    static Form begun(Optional<Plan> plan, List<PlanKind> kinds, String control) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("control", control);
        fields.put("treated", "coated");
        fields.put("mix", YES);
        fields.put("runs", "1");
        fields.put("mixes", "2");
        fields.put("seed", "1");
        fields.put("reasons", String.join("\n", Plan.LeavingOut.USUAL.reasons()));
        plan.ifPresent(it -> fields.putAll(fields(it)));
        kinds.forEach(kind -> fields.putAll(kind.begun(plan.stream()
                .flatMap(it -> it.reasons().stream())
                .filter(it -> it.series().equals(kind.series().name()))
                .findFirst())));
        return new Form(fields);
    }

    private static Map<String, String> fields(Plan plan) {
        Design design = plan.allocation().design();
        Map<String, String> fields = new LinkedHashMap<>();
        boolean mixed = takes(design, Together.MIX);
        fields.put("control", design.control().name());
        fields.put("mix", mixed ? YES : "no");
        fields.put("oven_load", takes(design, Together.OVEN_LOAD) ? YES : "no");
        fields.put(SENT, sort(design, mixed).word());
        List<PlannedGroup> treated = of(design, Role.TREATED);
        if (!treated.isEmpty()) {
            fields.put("treated", treated.get(0).name());
            fields.put("treated_words", treated.get(0).treatment());
            fields.put("more", lines(treated.subList(1, treated.size())));
        }
        List<Controls.Offered> offered = Controls.offeredFor(sort(design, mixed));
        List<PlannedGroup> own = new ArrayList<>(of(design, Role.FURTHER_CONTROL));
        for (Controls.Offered each : offered) {
            if (own.remove(each.group())) {
                fields.put(field(each), YES);
            }
        }
        fields.put("further", lines(own));
        fields.put("changes", design.changes().word());
        fields.put("runs", Integer.toString(design.batches().runs()));
        fields.put("mixes", Integer.toString(design.batches().mixes()));
        fields.put("loads", Integer.toString(design.batches().loads()));
        fields.put("seed", Long.toString(plan.allocation().seed()));
        fields.put("blinding", plan.blinding().word());
        fields.put("reasons", String.join("\n", plan.leavingOut().reasons()));
        return fields;
    }

    private static boolean takes(Design design, Together kind) {
        return of(design, Role.TREATED).stream().anyMatch(it -> it.together().contains(kind));
    }

    private static Controls.Treatment sort(Design design, boolean mixed) {
        return mixed
                ? Controls.Treatment.COATING
                : takes(design, Together.OVEN_LOAD)
                        ? Controls.Treatment.ANNEALING
                        : design.changes() == Design.Changes.BETWEEN_RUNS
                                ? Controls.Treatment.PRINT_SETTING
                                : Controls.Treatment.SANDING;
    }

    private static List<PlannedGroup> of(Design design, Role role) {
        return design.groups().stream().filter(it -> it.role() == role).toList();
    }

    private static String lines(List<PlannedGroup> groups) {
        StringBuilder lines = new StringBuilder();
        groups.forEach(it ->
                lines.append(it.name()).append(" = ").append(it.treatment()).append('\n'));
        return lines.toString().strip();
    }

    /** Returns a heading of a word, such as {@code Print setting}. */
    public static String heading(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
