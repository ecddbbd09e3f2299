package org.twinbar.web;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.exchange.InputException;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Named;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.table.BlankTable;

/**
 * The form that begins a test by hand, made from the description of its method.
 *
 * @param asks what the method asks, each reading once
 */
public record NewTest(Description description, List<Question> asks) {

    /** How a reading may be had, as the form names it; a number says how often it is typed. */
    static final String SAME = "same";

    static final String NOT_ASKED = "no";

    /** More repeats than this are pasted as a table rather than typed. */
    private static final int MOST_TIMES = 9;

    public NewTest {
        asks = List.copyOf(asks);
    }

    /** What is asked, and the readings that answer it. */
    public record Question(String words, boolean needed, List<Reading> readings) {
        public Question {
            readings = List.copyOf(readings);
        }
    }

    /**
     * A reading that may be typed.
     *
     * @param usual how it is had unless a person says otherwise
     */
    public record Reading(Named named, String usual) {

        public String name() {
            return named.name();
        }

        public String label() {
            return named.label();
        }

        public boolean isNumber() {
            return named instanceof Input;
        }

        public String unit() {
            return named instanceof Input input ? input.unit().symbol() : "";
        }

        /** Returns the instrument that it is read on; empty where it is none. */
        public String instrument() {
            return named instanceof Input input && input.instrument() != Kind.NONE
                    ? input.instrument().word()
                    : "";
        }
    }

    static NewTest of(Description description) {
        Set<Named> seen = new HashSet<>();
        List<Question> asks = new ArrayList<>();
        for (Ask ask : description.asks()) {
            List<Named> way = ask.ways().stream()
                    .filter(it -> it.stream().noneMatch(Channel.class::isInstance))
                    .findFirst()
                    .orElse(List.of());
            boolean needed = ask.need() == Ask.Need.REQUIRED;
            List<Reading> readings = new ArrayList<>();
            for (Named named : ask.ways().stream().flatMap(List::stream).toList()) {
                if (!(named instanceof Channel) && seen.add(named)) {
                    boolean usual = needed && way.contains(named);
                    boolean once = ask.times() == Ask.Times.ONCE;
                    readings.add(new Reading(named, usual ? once ? SAME : "1" : NOT_ASKED));
                }
            }
            if (!readings.isEmpty()) {
                asks.add(new Question(ask.question(), needed, readings));
            }
        }
        return new NewTest(description, asks);
    }

    /** Whether some of what the method needs can only come from a curve. */
    public boolean needsCurve() {
        return description.asks().stream()
                .filter(ask -> ask.need() == Ask.Need.REQUIRED)
                .anyMatch(ask -> ask.ways().stream()
                        .allMatch(way -> way.stream().anyMatch(Channel.class::isInstance)));
    }

    /** Returns how a reading is to be had by the form, as chosen or as usual. */
    public String how(Reading reading, Form form) {
        return form.said("how-" + reading.name()).orElse(reading.usual());
    }

    /** @throws InputException where the form says what can't be */
    List<BlankTable.Asked> typed(Form form) {
        List<BlankTable.Asked> typed = new ArrayList<>();
        for (Reading reading : readings()) {
            String how = how(reading, form);
            if (!how.equals(SAME) && !how.equals(NOT_ASKED)) {
                typed.add(new BlankTable.Asked(reading.named(), times(reading, how)));
            }
        }
        return typed;
    }

    private static int times(Reading reading, String how) {
        if (!how.matches("[1-" + MOST_TIMES + "]")) {
            throw new InputException("%s: '%s' is not how often it is read, 1 to %s times"
                    .formatted(reading.label(), how, MOST_TIMES));
        }
        return Integer.parseInt(how);
    }

    /**
     * Returns what is the same for all specimens.
     *
     * @throws InputException where it was to be, and no value was given
     */
    TestSheet sheet(Form form) {
        Map<String, String> set = new LinkedHashMap<>();
        for (Reading reading : readings()) {
            if (how(reading, form).equals(SAME)) {
                set.put(
                        reading.name(),
                        form.said("value-" + reading.name())
                                .orElseThrow(() -> new InputException(
                                        "%s is the same for all specimens, so its value is needed"
                                                .formatted(reading.label()))));
            }
        }
        TestSheet sheet = TestSheet.of(description.name()).withSet(set);
        Optional<String> things = form.said("things");
        return things.map(sheet::calling).orElse(sheet);
    }

    private List<Reading> readings() {
        return asks.stream().flatMap(ask -> ask.readings().stream()).toList();
    }
}
