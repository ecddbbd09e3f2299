package org.twinbar.study;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.twinbar.decision.LeftOut;
import org.twinbar.exchange.Keys;
import org.twinbar.store.Entry;
import org.twinbar.store.StoreException;
import org.twinbar.study.bench.Shelf;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.Ordered;
import org.twinbar.study.judged.Photo;
import org.twinbar.study.judged.Publication;
import org.twinbar.study.judged.Reading;
import org.twinbar.study.table.Corrections;
import org.twinbar.study.table.OnPicture;

/** What the entries on a study come to. */
final class State {

    private static final JsonMapper JSON = new JsonMapper();
    private static final Set<String> TEST_KEYS = testKeys();

    private StudyFile.@Nullable Head head;
    private final List<KeptTest> tests = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private final Map<OfSpecimen, LeftOut> leftOut = new HashMap<>();
    private final Map<OfSpecimen, UUID> lastWord = new HashMap<>();
    private final Map<UUID, Map<Corrections.Cell, Corrections.Said>> corrections = new HashMap<>();
    private final Map<CellOf, Spoken> lastSpoken = new HashMap<>();
    private final PhotosTaken photos = new PhotosTaken();
    private final List<Change> history = new ArrayList<>();
    private final List<Publication> published = new ArrayList<>();
    private final MakingState making = new MakingState(photos);
    private final MovedMarks moved = new MovedMarks();

    private final Shelf shelf;

    private State(Shelf shelf) {
        this.shelf = shelf;
    }

    /** A test with its files. */
    record KeptTest(UUID id, TestSheet sheet, KeptFile table, Map<String, KeptFile> curves) {
        KeptTest {
            curves = Ordered.copy(curves);
        }

        /** Returns the test with another sheet. */
        KeptTest with(TestSheet other) {
            return new KeptTest(id, other, table, curves);
        }

        /** Returns the test with a curve that was handed in after its table. */
        KeptTest with(String name, KeptFile curve) {
            Map<String, KeptFile> more = new LinkedHashMap<>(curves);
            more.put(name, curve);
            return new KeptTest(id, sheet, table, more);
        }
    }

    /** A specimen: its code is its own within the one table that never changes. */
    record OfSpecimen(UUID test, String code) {}

    /** A cell of a test's table. */
    record CellOf(UUID test, Corrections.Cell cell) {}

    /**
     * The last entry on a cell.
     *
     * @param from what counted before it
     * @param to what counts since
     * @param pictureBefore how what counted before it was had, where that was from a picture
     * @param picture how what counts since was had
     */
    record Spoken(
            UUID entry,
            String from,
            String to,
            ZonedDateTime when,
            String who,
            Optional<OnPicture> pictureBefore,
            Optional<OnPicture> picture) {}

    /**
     * @param shelf the instruments that its tests may name
     * @throws StoreException where an entry can't be understood, or there is no study
     */
    static State of(List<Entry> entries, Shelf shelf) {
        State state = new State(shelf);
        for (Entry entry : entries) {
            try {
                state.take(entry, JSON.readTree(entry.value()));
            } catch (JsonProcessingException | RuntimeException e) {
                throw new StoreException(
                        "entry %s is damaged: %s".formatted(entry.id(), e.getMessage()));
            }
        }
        if (state.head == null) {
            throw new StoreException("there is no such study in this workspace");
        }
        return state;
    }

    private void take(Entry entry, JsonNode value) {
        making.take(entry, value);
        if (entry.aspect().equals(Aspect.STUDY.word())) {
            head = head(value);
        } else if (entry.aspect().equals(Aspect.TEST.word())) {
            tests.add(test(entry.id(), value));
        } else if (entry.aspect().equals(Aspect.CURVE.word())) {
            tests.replaceAll(
                    test -> test.id().toString().equals(value.path("test").asText())
                            ? test.with(value.path("name").asText(), file(value.path("file")))
                            : test);
        } else if (entry.aspect().equals(Aspect.READ_ON.word())) {
            tests.replaceAll(test -> ToolsOfTest.said(test, value));
            history.add(ToolsOfTest.change(entry, value));
        } else if (entry.aspect().equals(Aspect.CLAIM.word())) {
            claims.add(Claim.read("workspace", value));
        } else if (entry.aspect().equals(Aspect.LEFT_OUT.word())) {
            leaveOut(entry, value);
        } else if (entry.aspect().equals(Aspect.READING.word())) {
            correct(entry, value);
        } else if (entry.aspect().equals(Aspect.MARK.word())) {
            history.add(moved.take(entry, value));
        } else if (entry.aspect().equals(Aspect.SPECIMEN_PHOTO.word())) {
            photos.take(entry, value);
        } else if (entry.aspect().equals(Aspect.PUBLISHED.word())) {
            published.add(PublicationJson.read(entry, value));
        }
    }

    static StudyFile.Head head(JsonNode value) {
        return new StudyFile.Head(
                value.path("name").asText(),
                value.path("question").asText(),
                value.path("about").asText(),
                value.path("invented").asBoolean()
                        ? JudgedStudy.Origin.INVENTED
                        : JudgedStudy.Origin.MEASURED);
    }

    static ObjectNode json(StudyFile.Head head) {
        return object().put("name", head.name())
                .put("question", head.question())
                .put("about", head.about())
                .put("invented", head.origin() == JudgedStudy.Origin.INVENTED);
    }

    private static KeptTest test(UUID id, JsonNode value) {
        Map<String, KeptFile> curves = new LinkedHashMap<>();
        value.path("curves")
                .fields()
                .forEachRemaining(it -> curves.put(it.getKey(), file(it.getValue())));
        TestSheet sheet = TestSheet.read(Keys.of("workspace", value, TEST_KEYS));
        return new KeptTest(id, sheet, file(value.path("table")), curves);
    }

    static ObjectNode json(TestSheet sheet, KeptFile table, Map<String, KeptFile> curves) {
        ObjectNode json = sheet.json();
        json.set("table", json(table));
        ObjectNode files = json.putObject("curves");
        curves.forEach((name, file) -> files.set(name, json(file)));
        return json;
    }

    private static Set<String> testKeys() {
        Set<String> keys = new HashSet<>(TestSheet.KEYS);
        keys.addAll(List.of("table", "curves"));
        return keys;
    }

    static KeptFile file(JsonNode value) {
        return new KeptFile(
                value.path("name").asText(),
                value.path("sha256").asText(),
                value.path("bytes").asLong());
    }

    static ObjectNode json(KeptFile file) {
        return object().put("name", file.name())
                .put("sha256", file.sha256())
                .put("bytes", file.bytes());
    }

    private void leaveOut(Entry entry, JsonNode value) {
        OfSpecimen specimen = new OfSpecimen(
                UUID.fromString(value.path("test").asText()),
                value.path("specimen").asText());
        String why = entry.reason().orElse("no reason was given");
        String who = value.path("who").asText(entry.who());
        ZonedDateTime when = value.has("when")
                ? ZonedDateTime.parse(value.path("when").asText())
                : entry.at().atZone(entry.zone());
        boolean counts = value.path("counts").asBoolean();
        LeftOut.Sight sight = LeftOut.Sight.valueOf(
                value.path("sight").asText(LeftOut.Sight.AFTER_VALUE_WAS_SEEN.name()));
        lastWord.put(specimen, entry.id());
        if (counts) {
            leftOut.remove(specimen);
            history.add(new Change(specimen.code() + " counts again", when, who, why));
        } else {
            leftOut.put(specimen, new LeftOut(who, when, why, sight));
            history.add(new Change(
                    "%s was left out, %s".formatted(specimen.code(), sight.words()),
                    when,
                    who,
                    why));
        }
    }

    static ObjectNode leaveOut(OfSpecimen specimen, LeftOut.Sight sight) {
        return object().put("test", specimen.test().toString())
                .put("specimen", specimen.code())
                .put("counts", false)
                .put("sight", sight.name());
    }

    static ObjectNode takeBack(OfSpecimen specimen) {
        return object().put("test", specimen.test().toString())
                .put("specimen", specimen.code())
                .put("counts", true);
    }

    private void correct(Entry entry, JsonNode value) {
        UUID test = UUID.fromString(value.path("test").asText());
        Corrections.Cell cell = new Corrections.Cell(
                value.path("line").asInt(), value.path("column").asText());
        String from = value.path("from").asText();
        String to = value.path("to").asText();
        ZonedDateTime when = when(entry, value);
        Map<Corrections.Cell, Corrections.Said> cells =
                corrections.computeIfAbsent(test, it -> new HashMap<>());
        Corrections.Said before = cells.get(cell);
        Optional<OnPicture> picture = OnPicture.read(value);
        if (before == null && from.isBlank()) {
            cells.put(
                    cell,
                    Corrections.Said.first(new Reading.Typed(to, when, entry.who()), picture));
        } else {
            Change change = new Change(
                    "%s of %s: %s → %s"
                            .formatted(
                                    cell.header(),
                                    value.path("specimen").asText(),
                                    from.isBlank() ? "nothing" : from,
                                    to.isBlank() ? "nothing" : to),
                    entry.at().atZone(entry.zone()),
                    entry.who(),
                    entry.reason().orElse("no reason was given"));
            cells.put(
                    cell,
                    new Corrections.Said(
                            before == null ? Optional.empty() : before.typed(),
                            Optional.of(new Reading.Corrected(to, change)),
                            picture));
            history.add(change);
        }
        lastSpoken.put(
                new CellOf(test, cell),
                new Spoken(
                        entry.id(),
                        from,
                        to,
                        when,
                        entry.who(),
                        before == null ? Optional.empty() : before.picture(),
                        picture));
    }

    /** Of what waited on a phone: when it was noted there, not when it arrived. */
    private static ZonedDateTime when(Entry entry, JsonNode value) {
        Instant at = value.has("noted") ? Instant.parse(value.path("noted").asText()) : entry.at();
        return at.atZone(entry.zone());
    }

    static ObjectNode photo(OfSpecimen specimen, KeptFile file, ZonedDateTime when, String words) {
        ObjectNode json =
                object().put("test", specimen.test().toString()).put("specimen", specimen.code());
        json.set("file", json(file));
        return json.put("when", when.toString()).put("words", words);
    }

    static ObjectNode correction(CellOf cell, String specimen, String from, String to) {
        return object().put("test", cell.test().toString())
                .put("specimen", specimen)
                .put("line", cell.cell().line())
                .put("column", cell.cell().header())
                .put("from", from)
                .put("to", to);
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    StudyFile.Head head() {
        if (head == null) {
            throw new IllegalStateException("a state is handed out only with its head");
        }
        return head;
    }

    /** Returns what was published, the oldest first. */
    List<Publication> published() {
        return published;
    }

    MovedMarks moved() {
        return moved;
    }

    MakingState making() {
        return making;
    }

    List<KeptTest> tests() {
        return tests;
    }

    /** Returns the instruments that its tests may name. */
    Shelf shelf() {
        return shelf;
    }

    Optional<KeptTest> test(String method) {
        return tests.stream().filter(it -> it.sheet().method().equals(method)).findFirst();
    }

    List<Claim> claims() {
        return claims;
    }

    Optional<LeftOut> leftOut(UUID test, String code) {
        return Optional.ofNullable(leftOut.get(new OfSpecimen(test, code)));
    }

    /** Returns the last entry on whether a specimen counts. */
    Optional<UUID> lastWord(OfSpecimen specimen) {
        return Optional.ofNullable(lastWord.get(specimen));
    }

    Corrections corrections(UUID test) {
        return new Corrections(corrections.getOrDefault(test, Map.of()));
    }

    /** Returns the last entry on a cell. */
    Optional<Spoken> lastSpoken(CellOf cell) {
        return Optional.ofNullable(lastSpoken.get(cell));
    }

    /** Returns how many cells were typed or corrected. */
    int typed() {
        return lastSpoken.size();
    }

    /** Returns the photos of a specimen: those of its test, and those of the plan's specimen. */
    List<Photo> photos(OfSpecimen specimen) {
        return photos.of(specimen);
    }

    /** Returns all photos of a specimen, whatever test they were taken at. */
    List<Photo> photosOf(String code) {
        return photos.of(code);
    }

    List<Change> history() {
        return history.stream()
                .sorted(java.util.Comparator.comparing(Change::when))
                .toList();
    }
}
