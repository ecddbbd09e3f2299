package org.twinbar.study;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.twinbar.exchange.Place;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Upload;

/**
 * The demo study: a sailing club's printed fittings and a coat with a leaflet of claims. All of it
 * is invented, and says so.
 */
public final class Demo {

    /** The study's name in a workspace. */
    public static final String NAME = "club-fittings";

    private static final String FOLDER = "/demo/";

    /** The same each time, so that a demo that was made already is left as it is. */
    private static final Act ACT =
            new Act(UUID.fromString("5a11b0a7-0000-4000-8000-000000000001"), "the demo");

    private Demo() {}

    /** Makes the demo study in a workspace from its raw readings, unless it is there. */
    public static StudyName into(Workspace workspace) {
        return workspace
                .find(NAME)
                .orElseGet(() -> workspace.importStudy(
                        ACT,
                        StudyFile.parse(
                                "study.toml",
                                new String(
                                        bytes("study.toml", Place.of("study.toml")),
                                        StandardCharsets.UTF_8)),
                        (name, from) -> Upload.of(name, bytes(name, from))));
    }

    private static byte[] bytes(String name, Place from) {
        try (InputStream in = Demo.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw from.refuse("the demo has no file '%s'".formatted(name));
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw from.refuse("the demo's file '%s' can't be read".formatted(name));
        }
    }
}
