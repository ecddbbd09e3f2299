package org.twinbar.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.twinbar.report.kit.Palette;

/** Colours that a person wants for pictures, as a TOML file with a table for each light. */
final class ThemeFile {

    private static final List<Palette> LIGHTS = List.of(Palette.LIGHT, Palette.DARK);

    private ThemeFile() {}

    /** @throws UsageException where it can't be read, or a colour can't be drawn with */
    static List<Palette> read(Path file) {
        try {
            return read(file, new TomlMapper().readTree(Files.readString(file)));
        } catch (JsonProcessingException e) {
            throw new UsageException("%s is not TOML: %s".formatted(file, e.getOriginalMessage()));
        } catch (IOException e) {
            throw new UsageException("the theme %s can't be read".formatted(file));
        } catch (IllegalArgumentException e) {
            throw new UsageException("%s: %s".formatted(file, e.getMessage()));
        }
    }

    private static List<Palette> read(Path file, JsonNode root) {
        Map<String, Palette> palettes = new LinkedHashMap<>();
        LIGHTS.forEach(light -> palettes.put(light.word(), light));
        root.fields().forEachRemaining(light -> {
            Palette known = palettes.get(light.getKey());
            if (known == null || !light.getValue().isObject()) {
                throw new UsageException("%s: '%s' must be a table [light] or [dark]"
                        .formatted(file, light.getKey()));
            }
            Map<String, String> colours = new LinkedHashMap<>();
            light.getValue()
                    .fields()
                    .forEachRemaining(
                            it -> colours.put(it.getKey(), it.getValue().asText()));
            palettes.put(light.getKey(), known.with(colours));
        });
        return new ArrayList<>(palettes.values());
    }
}
