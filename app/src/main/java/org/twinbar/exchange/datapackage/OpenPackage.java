package org.twinbar.exchange.datapackage;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Source;
import org.twinbar.exchange.Spelling;

/**
 * A package that is open for reading: a zip or a folder with a {@code datapackage.json}. It comes
 * from a stranger, so everything in it is held against limits before it is used.
 */
public final class OpenPackage implements AutoCloseable {

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final Path place;
    private final Contents contents;
    private final Limits limits;
    private final JsonNode descriptor;
    private final List<Resource> resources;

    private OpenPackage(
            Path place,
            Contents contents,
            Limits limits,
            JsonNode descriptor,
            List<Resource> resources) {
        this.place = place;
        this.contents = contents;
        this.limits = limits;
        this.descriptor = descriptor;
        this.resources = resources;
    }

    /**
     * Opens a package.
     *
     * @throws InputException where it is neither a zip nor a folder, breaks a limit, has a name
     *     that leads out, or its descriptor is none
     */
    public static OpenPackage of(Path place) {
        return of(place, Limits.USUAL);
    }

    static OpenPackage of(Path place, Limits limits) {
        Contents contents = Contents.of(place, limits);
        try {
            JsonNode descriptor = descriptor(place, contents, limits);
            return new OpenPackage(
                    place, contents, limits, descriptor, resources(place, contents, descriptor));
        } catch (RuntimeException e) {
            contents.close();
            throw e;
        }
    }

    private static JsonNode descriptor(Path place, Contents contents, Limits limits) {
        if (!contents.paths().contains(Descriptor.FILE)) {
            throw new InputException(
                    "%s has no datapackage.json at its top, so it is no data package"
                            .formatted(place));
        }
        try (InputStream in = contents.open(Descriptor.FILE)) {
            byte[] bytes = in.readNBytes(limits.descriptorBytes() + 1);
            if (bytes.length > limits.descriptorBytes()) {
                throw new InputException("%s: datapackage.json is larger than %s MiB"
                        .formatted(place, limits.descriptorBytes() >> 20));
            }
            JsonNode json = JSON.readTree(bytes);
            if (!json.isObject()) {
                throw new InputException(
                        "%s: datapackage.json holds no JSON object".formatted(place));
            }
            return json;
        } catch (JsonProcessingException e) {
            throw new InputException("%s: datapackage.json, line %s: is not JSON: %s"
                    .formatted(
                            place,
                            e.getLocation() == null ? 1 : e.getLocation().getLineNr(),
                            e.getOriginalMessage().replaceAll("\\s+", " ")));
        } catch (IOException e) {
            throw unreadable(place, Descriptor.FILE);
        }
    }

    private static List<Resource> resources(Path place, Contents contents, JsonNode descriptor) {
        JsonNode list = descriptor.path("resources");
        if (!list.isArray() || list.isEmpty()) {
            throw new InputException(
                    "%s: datapackage.json lists no resources; a package needs at least one"
                            .formatted(place));
        }
        List<Resource> resources = new ArrayList<>();
        Set<String> names = new HashSet<>();
        int number = 0;
        for (JsonNode each : list) {
            number++;
            String name = each.path("name").asText("");
            String where = "%s: resource %s"
                    .formatted(place, name.isBlank() ? String.valueOf(number) : "'" + name + "'");
            if (name.isBlank()) {
                throw new InputException(where + " has no name");
            }
            if (!names.add(name)) {
                throw new InputException(where + " stands twice in datapackage.json");
            }
            if (!each.has("data")) {
                resources.add(resource(where, name, contents, each));
            }
        }
        return resources;
    }

    private static Resource resource(String where, String name, Contents contents, JsonNode json) {
        JsonNode paths = json.path("path");
        JsonNode one = paths.isArray() && paths.size() == 1 ? paths.get(0) : paths;
        if (!one.isTextual()) {
            throw new InputException(where
                    + (paths.isArray()
                            ? " is parted into several files; Twinbar reads those of one file"
                            : " has neither a path nor data"));
        }
        String path = one.asText();
        if (path.matches("(?i)[a-z][a-z0-9+.-]+://.*")) {
            throw new InputException(
                    "%s lies at '%s'; only files inside a package are read".formatted(where, path));
        }
        if (Contents.leadsOut(path)) {
            throw new InputException(
                    "%s: the path '%s' leads out of the package".formatted(where, path));
        }
        if (!contents.paths().contains(path)) {
            throw new InputException("%s: the package lacks its file '%s'%s"
                    .formatted(where, path, Spelling.hint(path, contents.paths())));
        }
        List<String> columns = new ArrayList<>();
        json.path("schema")
                .path("fields")
                .forEach(field -> columns.add(field.path("name").asText()));
        JsonNode hash = json.path("hash");
        if (hash.isTextual() && !hash.asText().isBlank()) {
            Hash.parse(where, hash.asText());
        }
        JsonNode bytes = json.path("bytes");
        return new Resource(
                name,
                path,
                json.path("title").asText(path),
                hash.isTextual() && !hash.asText().isBlank()
                        ? Optional.of(hash.asText())
                        : Optional.empty(),
                bytes.canConvertToLong() && bytes.isNumber()
                        ? OptionalLong.of(bytes.asLong())
                        : OptionalLong.empty(),
                columns);
    }

    /** Returns what stands in the descriptor under a key; missing where nothing does. */
    public JsonNode own(String key) {
        return descriptor.path(key);
    }

    public Optional<String> text(String key) {
        return Optional.of(descriptor.path(key).asText("").strip()).filter(it -> !it.isEmpty());
    }

    public Path place() {
        return place;
    }

    /** Returns the files that the descriptor tells of; data inside the descriptor are no file. */
    public List<Resource> resources() {
        return resources;
    }

    public Optional<Resource> resource(String name) {
        return resources.stream().filter(it -> it.name().equals(name)).findFirst();
    }

    /** Returns the file at a path of the package, listed in the descriptor or not. */
    public Optional<Source> file(String path) {
        return contents.paths().contains(path)
                ? Optional.of(Source.of(path, () -> contents.open(path)))
                : Optional.empty();
    }

    public Source source(Resource resource) {
        return file(resource.path()).orElseThrow();
    }

    public List<String> paths() {
        return contents.sorted();
    }

    /**
     * Says what is wrong with the bytes of a resource; nothing where they are what the descriptor
     * says, or it says nothing.
     */
    public Optional<String> damage(Resource resource) {
        try {
            long length = 0;
            if (resource.bytes().isPresent()) {
                try (InputStream in = contents.open(resource.path())) {
                    length = in.transferTo(java.io.OutputStream.nullOutputStream());
                }
                if (length != resource.bytes().getAsLong()) {
                    return Optional.of("%s has %s bytes, datapackage.json says %s"
                            .formatted(resource.path(), length, resource.bytes().getAsLong()));
                }
            }
            if (resource.hash().isPresent()) {
                Hash wanted = Hash.parse(resource.path(), resource.hash().get());
                Hash found = wanted.of(contents.open(resource.path()));
                if (!found.equals(wanted)) {
                    return Optional.of("%s has the %s %s…, datapackage.json says %s…"
                            .formatted(
                                    resource.path(),
                                    wanted.algorithm(),
                                    found.hex().substring(0, 12),
                                    shortened(wanted.hex())));
                }
            }
            return Optional.empty();
        } catch (IOException e) {
            throw unreadable(place, resource.path());
        }
    }

    private static String shortened(String hex) {
        return hex.substring(0, Math.min(12, hex.length()));
    }

    /**
     * Reads a table whose columns the descriptor tells of.
     *
     * @return its rows, cells in the order of the columns
     * @throws InputException where its columns are other ones, a row is short or long, or it is no
     *     CSV in UTF-8
     */
    public List<List<String>> rows(Resource table) {
        Place here = Place.of(place + ": " + table.path());
        List<List<String>> rows = new ArrayList<>();
        try (Reader text = new InputStreamReader(
                        contents.open(table.path()),
                        StandardCharsets.UTF_8
                                .newDecoder()
                                .onMalformedInput(CodingErrorAction.REPORT)
                                .onUnmappableCharacter(CodingErrorAction.REPORT));
                CsvReader<CsvRecord> csv = CsvReader.builder()
                        .skipEmptyLines(true)
                        .allowExtraFields(true)
                        .allowMissingFields(true)
                        .ofCsvRecord(text)) {
            for (CsvRecord row : csv) {
                List<String> cells = row.getFields();
                if (rows.isEmpty() && !cells.equals(table.columns())) {
                    throw here.refuse("its columns are %s, datapackage.json says %s"
                            .formatted(
                                    String.join(", ", cells), String.join(", ", table.columns())));
                }
                if (cells.size() != table.columns().size()) {
                    throw here.line((int) row.getStartingLineNumber())
                            .refuse("has %s cells, the table %s columns"
                                    .formatted(cells.size(), table.columns().size()));
                }
                rows.add(cells);
                if (rows.size() > limits.rows() + 1) {
                    throw here.refuse("has more than %s rows".formatted(limits.rows()));
                }
            }
        } catch (IOException | UncheckedIOException | CsvParseException e) {
            throw here.refuse("is no table in CSV and UTF-8");
        }
        if (rows.isEmpty()) {
            throw here.refuse("is empty, its columns are missing");
        }
        return rows.subList(1, rows.size());
    }

    private static InputException unreadable(Path place, String path) {
        return new InputException("%s: %s can't be read".formatted(place, path));
    }

    @Override
    public void close() {
        contents.close();
    }
}
