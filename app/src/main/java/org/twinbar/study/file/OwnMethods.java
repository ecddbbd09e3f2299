package org.twinbar.study.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Keys;
import org.twinbar.exchange.Spelling;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Channel;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Methods;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.method.Setting;
import org.twinbar.method.TestMethod;
import org.twinbar.method.own.OwnMethod;
import org.twinbar.method.own.OwnPlan;
import org.twinbar.quantity.Numbers;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;

/** Test methods that people write down in TOML; the keys are told in docs/own-method.md. */
public final class OwnMethods {

    private static final long LARGEST_FILE = 100_000;
    private static final TomlMapper TOML = new TomlMapper();

    private static final Set<String> KEYS = Set.of(
            "name",
            "version",
            "title",
            "standard",
            "cautions",
            "input",
            "channel",
            "setting",
            "step",
            "result");
    private static final Set<String> LIMIT_KEYS = Set.of("above", "at_least", "at_most");
    private static final Set<String> INPUT_KEYS = with(
            LIMIT_KEYS,
            "name",
            "label",
            "unit",
            "instrument",
            "question",
            "optional",
            "usually_from",
            "usually_to");
    private static final Set<String> CHANNEL_KEYS = Set.of("name", "label", "unit", "instrument");
    private static final Set<String> SETTING_KEYS =
            with(LIMIT_KEYS, "name", "label", "unit", "value");
    private static final Set<String> STEP_KEYS = Set.of("name", "formula");
    private static final Set<String> RESULT_KEYS =
            Set.of("name", "label", "unit", "formula", "compare", "valid_from", "valid_to");

    private OwnMethods() {}

    /**
     * Reads a method from its file.
     *
     * @throws InputException where the file can't be read, is larger than 100 kB, or holds no sound
     *     method
     */
    public static TestMethod read(Path toml) {
        String name = toml.getFileName().toString();
        try {
            if (Files.size(toml) > LARGEST_FILE) {
                throw new InputException("%s: has %s bytes, a method may have at most %s"
                        .formatted(name, Files.size(toml), LARGEST_FILE));
            }
            return parse(name, Files.readString(toml));
        } catch (MalformedInputException e) {
            throw new InputException("%s: is no text in UTF-8".formatted(name));
        } catch (IOException e) {
            throw new InputException("%s: can't be read".formatted(toml));
        }
    }

    /**
     * Reads the methods of a folder, each from a file that ends in {@code .toml}; none where there
     * is no such folder.
     *
     * @throws InputException as {@link #read}
     */
    public static List<TestMethod> in(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(".toml"))
                    .sorted()
                    .map(OwnMethods::read)
                    .toList();
        } catch (IOException e) {
            throw new InputException("%s: can't be read".formatted(folder));
        }
    }

    /**
     * Returns the method of this name, a person's own among them.
     *
     * @throws InputException where there is none
     */
    public static TestMethod named(Methods methods, String name) {
        List<String> names =
                methods.all().stream().map(it -> it.description().name()).toList();
        return methods.named(name)
                .orElseThrow(() -> new InputException("there is no method '%s' among %s%s"
                        .formatted(name, String.join(", ", names), Spelling.hint(name, names))));
    }

    /**
     * Returns the methods with a person's own among them.
     *
     * @throws InputException where two methods have one name
     */
    public static Methods among(Methods known, List<TestMethod> own) {
        Set<String> names = new HashSet<>();
        known.all().forEach(method -> names.add(method.description().name()));
        for (TestMethod method : own) {
            if (!names.add(method.description().name())) {
                throw new InputException("there is a method '%s' already; give yours another name"
                        .formatted(method.description().name()));
            }
        }
        return known.with(own);
    }

    /**
     * Makes a method of what its file says.
     *
     * @param file its name, for messages
     * @throws InputException where it is no TOML, has a key that nobody knows or lacks one, or
     *     where a formula or its units are not sound
     */
    public static TestMethod parse(String file, String toml) {
        JsonNode root;
        try {
            root = TOML.readTree(toml);
        } catch (JsonProcessingException e) {
            throw new InputException("%s, line %s: is not TOML: %s"
                    .formatted(
                            file,
                            e.getLocation() == null ? 1 : e.getLocation().getLineNr(),
                            e.getOriginalMessage()));
        }
        Keys keys = Keys.of(file, root, KEYS);
        try {
            return OwnMethod.of(plan(file, keys));
        } catch (IllegalArgumentException e) {
            // What core refuses of a description is a sentence that lacks only the file.
            throw new InputException("%s: %s".formatted(file, e.getMessage()));
        }
    }

    private static OwnPlan plan(String file, Keys keys) {
        List<Ask> asks = new ArrayList<>();
        keys.list("input").forEach(node -> asks.add(input(file, node)));
        List<Named> channels = new ArrayList<>();
        keys.list("channel").forEach(node -> channels.add(channel(file, node)));
        if (!channels.isEmpty()) {
            asks.add(Ask.required("Which curve was recorded?", channels));
        }
        List<Setting> settings = new ArrayList<>();
        keys.list("setting").forEach(node -> settings.add(setting(file, node)));
        List<OwnPlan.Step> steps = new ArrayList<>();
        keys.list("step").forEach(node -> {
            Keys step = Keys.of(file + ", step", node, STEP_KEYS);
            steps.add(new OwnPlan.Step(step.text("name"), step.text("formula")));
        });
        List<OwnPlan.Wanted> results = new ArrayList<>();
        keys.list("result").forEach(node -> results.add(result(file, node)));
        return new OwnPlan(
                keys.text("name"),
                version(file, keys),
                keys.text("title"),
                keys.text("standard"),
                asks,
                settings,
                steps,
                results,
                keys.texts("cautions").stream().map(Caution::new).toList());
    }

    private static int version(String file, Keys keys) {
        String text = keys.text("version");
        if (!text.matches("\\d{1,6}")) {
            throw new InputException(
                    "%s: version '%s' is no whole number of 1 or more".formatted(file, text));
        }
        return Integer.parseInt(text);
    }

    private static Ask input(String file, JsonNode node) {
        Part part = Part.of(file, "input", node, INPUT_KEYS);
        Kind kind = part.instrument();
        Limits usual = part.between("usually_from", "usually_to");
        Input input = new Input(
                part.name(),
                part.label(),
                part.unit(),
                kind,
                part.limits(Limits.ABOVE_ZERO),
                usual);
        String question = part.keys()
                .optional("question")
                .orElse("What is this: %s?".formatted(input.label()));
        return part.keys().yes("optional")
                ? Ask.optional(question, List.of(input))
                : Ask.required(question, List.of(input));
    }

    private static Channel channel(String file, JsonNode node) {
        Part part = Part.of(file, "channel", node, CHANNEL_KEYS);
        return new Channel(part.name(), part.label(), part.unit(), part.instrument());
    }

    private static Setting setting(String file, JsonNode node) {
        Part part = Part.of(file, "setting", node, SETTING_KEYS);
        double value = part.number("value", part.keys().text("value"));
        return new Setting(part.name(), part.label(), part.unit(), value, part.limits(Limits.ANY));
    }

    private static OwnPlan.Wanted result(String file, JsonNode node) {
        Part part = Part.of(file, "result", node, RESULT_KEYS);
        Property property = new Property(
                part.name(),
                part.label(),
                part.unit(),
                part.scale(),
                Property.Basis.NONE,
                part.name());
        return new OwnPlan.Wanted(
                property, part.keys().text("formula"), part.between("valid_from", "valid_to"));
    }

    private static Set<String> with(Set<String> some, String... more) {
        Set<String> all = new HashSet<>(some);
        all.addAll(Arrays.asList(more));
        return Set.copyOf(all);
    }

    /** One table of the file, with what its messages begin with. */
    private record Part(String where, Keys keys, String name) {

        static Part of(String file, String kind, JsonNode node, Set<String> known) {
            Keys keys = Keys.of(file + ", " + kind, node, known);
            String name = keys.text("name");
            return new Part("%s, %s '%s'".formatted(file, kind, name), keys, name);
        }

        String label() {
            return keys.text("label");
        }

        Unit unit() {
            String text = keys.optional("unit").orElse("");
            if (text.isEmpty()) {
                return Unit.ONE;
            }
            try {
                return Unit.of(text);
            } catch (QuantityException e) {
                throw new InputException("%s: %s".formatted(where, e.getMessage()));
            }
        }

        Kind instrument() {
            String word = keys.optional("instrument").orElse(Kind.NONE.word());
            List<String> words = Arrays.stream(Kind.values()).map(Kind::word).toList();
            Kind kind = Arrays.stream(Kind.values())
                    .filter(it -> it.word().equals(word))
                    .findFirst()
                    .orElseThrow(() -> new InputException("%s: instrument '%s' is none of %s%s"
                            .formatted(
                                    where,
                                    word,
                                    String.join(", ", words),
                                    Spelling.hint(word, words))));
            try {
                kind.usual(unit());
                return kind;
            } catch (QuantityException e) {
                throw new InputException(
                        "%s: a %s does not read %s".formatted(where, word, unit().named()));
            }
        }

        Property.Scale scale() {
            String preset = unit().hasTrueZero() ? "ratio" : "difference";
            String word = keys.optional("compare").orElse(preset);
            return switch (word) {
                case "ratio" -> Property.Scale.RATIO;
                case "difference" -> Property.Scale.INTERVAL;
                default ->
                    throw new InputException(
                            "%s: compare '%s' must be ratio or difference".formatted(where, word));
            };
        }

        Limits limits(Limits preset) {
            boolean above = keys.optional("above").isPresent();
            boolean least = keys.optional("at_least").isPresent();
            boolean most = keys.optional("at_most").isPresent();
            if (above && least) {
                throw new InputException(
                        "%s: give either above or at_least, not both".formatted(where));
            }
            if (!above && !least && !most) {
                return preset;
            }
            double low = above
                    ? number("above", keys.text("above"))
                    : least ? number("at_least", keys.text("at_least")) : preset.lowest();
            double high = most ? number("at_most", keys.text("at_most")) : Double.POSITIVE_INFINITY;
            requireOrder(low, high);
            return new Limits(
                    low,
                    above ? Limits.End.EXCLUDED : least ? Limits.End.INCLUDED : preset.end(),
                    high);
        }

        Limits between(String from, String to) {
            double low = keys.optional(from)
                    .map(text -> number(from, text))
                    .orElse(Double.NEGATIVE_INFINITY);
            double high = keys.optional(to)
                    .map(text -> number(to, text))
                    .orElse(Double.POSITIVE_INFINITY);
            requireOrder(low, high);
            return Limits.between(low, high);
        }

        private void requireOrder(double low, double high) {
            if (!(low < high)) {
                throw new InputException(
                        "%s: the range from %s to %s is empty".formatted(where, low, high));
            }
        }

        double number(String key, String text) {
            try {
                return Numbers.parse(text);
            } catch (QuantityException e) {
                throw new InputException("%s: %s '%s' is no number".formatted(where, key, text));
            }
        }
    }
}
