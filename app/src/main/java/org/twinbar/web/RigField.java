package org.twinbar.web;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.study.TypedTest;

/**
 * One field of a specimen as a page shows it.
 *
 * @param rig where the forms are sent
 * @param id of the element that a script puts anew
 * @param specimen code that the field belongs to
 * @param field what is typed
 * @param text what stands there, or what was typed and is asked about
 * @param seen the entry that the form saw; empty where there was none
 * @param state what became of it, in a few words
 * @param others what other specimens have there, the nearest first
 * @param usual what nobody is asked about
 * @param ask what is to be answered before it is kept
 */
public record RigField(
        String rig,
        String id,
        String specimen,
        TypedTest.Field field,
        String text,
        String seen,
        String state,
        List<String> others,
        Optional<Limits> usual,
        Ask ask) {

    private static final int OTHERS_SHOWN = 3;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    public RigField {
        others = List.copyOf(others);
    }

    /**
     * Something to answer before what was typed is kept.
     *
     * @param sentence what is asked or refused
     * @param before what stands in the cell, where that is the question
     * @param confirmed whether an unusual value was asked about already
     */
    public record Ask(Kind kind, String sentence, String before, boolean confirmed) {

        /** What is asked. */
        public enum Kind {
            NOTHING,
            REFUSED,
            DOUBTED,
            WHY,
            CONFLICT
        }

        static final Ask NOTHING = new Ask(Kind.NOTHING, "", "", false);
    }

    /** @param usual what nobody is asked about, which is the same for all specimens */
    static RigField of(
            String rig,
            TypedTest test,
            TypedTest.Specimen specimen,
            TypedTest.Field field,
            Optional<Limits> usual) {
        TypedTest.Cell cell = specimen.cell(field);
        return new RigField(
                rig,
                id(test, specimen, field),
                specimen.code(),
                field,
                cell.text(),
                cell.entry().map(UUID::toString).orElse(""),
                state(cell),
                others(test, specimen, field),
                usual,
                Ask.NOTHING);
    }

    static String id(TypedTest test, TypedTest.Specimen specimen, TypedTest.Field field) {
        return "f-%s-%s".formatted(specimen.number(), test.fields().indexOf(field));
    }

    private static String state(TypedTest.Cell cell) {
        if (cell.when().isEmpty()) {
            return cell.isBlank() ? "" : "from the table";
        }
        String who =
                cell.who().filter(it -> !it.equals(Words.WHO)).map(", "::concat).orElse("");
        String seen =
                cell.picture().map(picture -> ", measured on " + picture.file()).orElse("");
        return (cell.isBlank() ? "taken away " : "saved ")
                + TIME.format(cell.when().get())
                + who
                + seen;
    }

    private static List<String> others(
            TypedTest test, TypedTest.Specimen specimen, TypedTest.Field field) {
        List<String> others = new ArrayList<>();
        int most = test.specimens().size();
        for (int away = 1; away < most && others.size() < OTHERS_SHOWN; away++) {
            for (int number : new int[] {specimen.number() - away, specimen.number() + away}) {
                if (number >= 1 && number <= most && others.size() < OTHERS_SHOWN) {
                    String text = test.specimens().get(number - 1).cell(field).text();
                    if (!text.isBlank()) {
                        others.add(text);
                    }
                }
            }
        }
        return others;
    }

    /** Returns the field with what was typed still in it, and what is to be answered. */
    RigField asking(String typed, Optional<UUID> sees, Ask newAsk) {
        return new RigField(
                rig,
                id,
                specimen,
                field,
                typed,
                sees.map(UUID::toString).orElse(seen),
                "",
                others,
                usual,
                newAsk);
    }

    public String label() {
        return field.label();
    }

    public String unit() {
        return field.unit().symbol();
    }

    /** Returns the instrument that it is read on; empty where it is none. */
    public String instrument() {
        return field.named() instanceof Input input && input.instrument() != Kind.NONE
                ? input.instrument().word()
                : "";
    }

    /** Returns which keys a phone shows; its keypad for numbers has no minus. */
    public String keypad() {
        return field.named() instanceof Input input && input.limits().lowest() >= 0
                ? "decimal"
                : "text";
    }

    /** Returns the words that may stand there; empty where anything may be typed. */
    public List<String> allowed() {
        return field.named() instanceof org.twinbar.method.Words words
                ? words.allowed()
                : List.of();
    }

    public boolean isAsking() {
        return ask.kind() != Ask.Kind.NOTHING;
    }

    public boolean canBeUndone() {
        return !seen.isEmpty() && !isAsking();
    }

    /** Returns the lower end of what is usual as a script reads it; empty where there is none. */
    public String low() {
        return usual.map(Limits::lowest)
                .filter(Double::isFinite)
                .map(String::valueOf)
                .orElse("");
    }

    /** Returns the upper end as a script reads it; empty where there is none. */
    public String high() {
        return usual.map(Limits::highestInclusive)
                .filter(Double::isFinite)
                .map(String::valueOf)
                .orElse("");
    }

    /** Returns a new identity for what the form sends, so that sending it twice does it once. */
    public String act() {
        return UUID.randomUUID().toString();
    }
}
