package org.twinbar.report.paper;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Named;
import org.twinbar.method.Words;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.study.ReadOn;
import org.twinbar.study.bench.KeptInstrument;

/**
 * What a test asks for, as fields: what is answered once, and what is read on each specimen.
 *
 * @param once for all specimens
 * @param each of every specimen
 * @param instruments that are read
 */
record Asked(List<Field> once, List<Field> each, List<String> instruments) {

    private static final String BEFORE = "_before";
    private static final Field CURVE = Field.words("Curve file");

    /**
     * Chooses the first way of everything that is asked, since it is the best.
     *
     * @param known names of what needs no field, being said already
     * @param wanted names of what is to be read on each specimen; empty for the usual
     * @param places at how many places a section is measured
     * @param readOn instruments, as far as somebody chose them
     */
    static Asked of(
            Description method, Set<String> known, Set<String> wanted, int places, ReadOn readOn) {
        Set<Named> once = new LinkedHashSet<>();
        Set<Named> each = new LinkedHashSet<>();
        for (Ask ask : method.asks()) {
            List<Named> way = ask.ways().get(0);
            if (wanted.isEmpty() && (ask.times() == Ask.Times.ONCE || isUsual(ask, way))) {
                (ask.times() == Ask.Times.ONCE ? once : each).addAll(way);
            }
        }
        method.asked().stream().filter(it -> wanted.contains(key(it.name()))).forEach(each::add);
        once.removeIf(it -> known.contains(key(it.name())));
        each.removeIf(it -> known.contains(key(it.name())) || once.contains(it));
        return new Asked(
                fields(once, 1, readOn),
                fields(each, places, readOn),
                instruments(once, each, readOn));
    }

    /** What was so before treatment is written on the sheet of the treatment. */
    private static boolean isUsual(Ask ask, List<Named> way) {
        boolean isBefore = way.stream().allMatch(it -> it.name().endsWith(BEFORE));
        boolean isRead = way.stream()
                .anyMatch(it -> it instanceof Words
                        || it instanceof Channel
                        || (it instanceof Input input && input.instrument() != Kind.NONE));
        return !isBefore && (isRead || ask.need() == Ask.Need.REQUIRED);
    }

    private static List<Field> fields(Set<Named> named, int places, ReadOn readOn) {
        List<Field> fields = new ArrayList<>();
        for (Named one : named) {
            if (one instanceof Input input) {
                fields.add(new Field(
                        input.label(),
                        input.unit().symbol(),
                        how(input, readOn),
                        isSize(input) ? places : 1,
                        List.of()));
            } else if (one instanceof Words words) {
                fields.add(new Field(words.label(), "", "", 1, words.allowed()));
            } else if (one instanceof Channel && !fields.contains(CURVE)) {
                fields.add(CURVE);
            }
        }
        return fields;
    }

    /** Sides of a section differ along the specimen; lengths of the set-up do not. */
    private static boolean isSize(Input input) {
        return input.instrument() == Kind.CALIPER
                && Stream.of("width", "thickness", "diameter", "wall", "remaining_width")
                        .anyMatch(it -> input.name().equals(it));
    }

    /** The step of the instrument that it is read on, else the usual one of its kind. */
    private static String how(Input input, ReadOn readOn) {
        if (input.instrument() == Kind.NONE) {
            return "";
        }
        Kind kind = input.instrument();
        Optional<KeptInstrument> chosen = readOn.of(input);
        if (chosen.isPresent()) {
            return step(
                    chosen.get().name(),
                    chosen.get().resolution(),
                    chosen.get().unit().symbol());
        }
        return step(kind.word(), kind.usual(Unit.of(kind.unit())).resolution(), kind.unit());
    }

    private static String step(String instrument, double step, String unit) {
        return instrument + ", to " + Written.number(step, 3) + "\u202f" + unit;
    }

    /** Returns the kinds of instruments of which the sheet must ask which one it was. */
    private static List<String> instruments(Set<Named> once, Set<Named> each, ReadOn readOn) {
        return Stream.concat(once.stream(), each.stream())
                .filter(it -> !(it instanceof Input input && readOn.of(input).isPresent()))
                .map(it -> it instanceof Input input
                        ? input.instrument()
                        : it instanceof Channel channel ? channel.instrument() : Kind.NONE)
                .filter(it -> it != Kind.NONE)
                .map(Kind::word)
                .distinct()
                .collect(Collectors.toList());
    }

    static String key(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
    }
}
