package org.twinbar.study.judged;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.exchange.Keys;

/**
 * A question as a person asks it: words and sizes as they wrote them, not yet held against a
 * property and its unit.
 *
 * @param property name or column of what is compared
 * @param terms what else was said; what wasn't is left to the property
 * @param where factors that a specimen must have to take part, such as {@code orientation = flat}
 * @param treated the groups held against the control; all others where none is named
 * @param intervals asked for beside the default one
 * @param by factors each of whose levels gets a comparison of its own
 */
public record Asked(
        String property,
        Map<Term, String> terms,
        Map<String, String> where,
        List<String> treated,
        List<String> intervals,
        List<String> by) {

    /** What a question may say. */
    public enum Term {
        /** The untreated group; a level needs none. */
        CONTROL,
        /**
         * {@code higher}, {@code lower} or {@code same}; higher where it isn't said. A rate needs
         * it said, {@code slower} and {@code faster} too.
         */
        EXPECT,
        /** Smallest change worth having, as a size. */
        WORTH,
        /** Size that the claim names. */
        CLAIMED,
        /** Which number; from the property where it isn't said. */
        EFFECT,
        /** The factor that parts specimens into print runs, mixes, oven loads or pairs. */
        BLOCK,
        /** The factor that names what was treated independently. */
        UNIT,
        /** The factor that tells when a specimen was tested. */
        ORDER,
        /** The factor that tells where on the plate it was printed, or two parted by a comma. */
        POSITION,
        /** The factor that holds amounts, for a straight line over them. */
        TREND,
        /** The level that parts must clear. */
        AT,
        /** The share of parts that must clear it. */
        OF,
        /** The column that says whether it happened, for a rate. */
        EVENT,
        /** Smallest step of the values. */
        RESOLUTION,
        /** Of everything drawn at random; 1 where it isn't said. */
        SEED;

        /** Returns the key of a study file, and the option of the command line. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Keys of a question in a study file. */
    public static final Set<String> KEYS = Stream.concat(
                    Stream.of("property", "where", "treated", "interval", "by"),
                    Arrays.stream(Term.values()).map(Term::key))
            .collect(Collectors.toUnmodifiableSet());

    public Asked {
        Map<Term, String> inOrder = new EnumMap<>(Term.class);
        inOrder.putAll(terms);
        terms = Ordered.copy(inOrder);
        where = Ordered.copy(where);
        treated = List.copyOf(treated);
        intervals = List.copyOf(intervals);
        by = List.copyOf(by);
    }

    /**
     * Returns the question whether a property is higher; a control is said {@link #with} a term.
     */
    public static Asked of(String property) {
        return new Asked(property, Map.of(), Map.of(), List.of(), List.of(), List.of());
    }

    static Asked read(Keys keys) {
        Map<Term, String> terms = new EnumMap<>(Term.class);
        for (Term term : Term.values()) {
            keys.optional(term.key()).ifPresent(text -> terms.put(term, text));
        }
        return new Asked(
                keys.text("property"),
                terms,
                keys.map("where"),
                keys.texts("treated"),
                keys.texts("interval"),
                keys.texts("by"));
    }

    public Asked with(Term term, String text) {
        Map<Term, String> more = new LinkedHashMap<>(terms);
        more.put(term, text);
        return new Asked(property, more, where, treated, intervals, by);
    }

    public Asked where(String factor, String level) {
        Map<String, String> more = new LinkedHashMap<>(where);
        more.put(factor, level);
        return new Asked(property, terms, more, treated, intervals, by);
    }

    /** Returns the question of specimens that have all of these factors. */
    public Asked where(Map<String, String> levels) {
        Asked narrowed = this;
        for (Map.Entry<String, String> level : levels.entrySet()) {
            narrowed = narrowed.where(level.getKey(), level.getValue());
        }
        return narrowed;
    }

    public Asked treated(List<String> groups) {
        return new Asked(property, terms, where, groups, intervals, by);
    }

    public Asked beside(List<String> moreIntervals) {
        return new Asked(property, terms, where, treated, moreIntervals, by);
    }

    public Asked by(List<String> factors) {
        return new Asked(property, terms, where, treated, intervals, factors);
    }

    public Optional<String> said(Term term) {
        return Optional.ofNullable(terms.get(term));
    }

    ObjectNode json() {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("property", property);
        terms.forEach((term, text) -> json.put(term.key(), text));
        if (!where.isEmpty()) {
            ObjectNode table = json.putObject("where");
            where.forEach(table::put);
        }
        putList(json, "treated", treated);
        putList(json, "interval", intervals);
        putList(json, "by", by);
        return json;
    }

    private static void putList(ObjectNode json, String key, List<String> texts) {
        if (!texts.isEmpty()) {
            var list = json.putArray(key);
            texts.forEach(list::add);
        }
    }
}
