package org.twinbar.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.twinbar.study.calculation.Planned;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.Photo;
import org.twinbar.study.judged.Registered;

/**
 * A photo that may stand for a specimen in a film, with what it must not show to who votes on it.
 *
 * @param code of the specimen
 * @param group that it belongs to
 * @param file as it came
 * @param bytes what the file holds, read when asked for
 */
public record Still(String code, String group, KeptFile file, Supplier<byte[]> bytes) {

    /**
     * Returns the newest photo of each specimen that counts and whose group is known; none while
     * the key of a blind study is closed.
     */
    static List<Still> of(JudgedStudy judged, State state, Function<KeptFile, byte[]> files) {
        Map<String, Still> stills = new LinkedHashMap<>();
        for (JudgedSpecimen specimen : judged.specimens()) {
            if (specimen.counts() && !specimen.group().equals(Planned.KEY_CLOSED)) {
                newest(state.photosOf(specimen.code()))
                        .ifPresent(file -> stills.putIfAbsent(
                                specimen.code(),
                                new Still(
                                        specimen.code(),
                                        specimen.group(),
                                        file,
                                        () -> files.apply(file))));
            }
        }
        for (Registered registered : judged.making().specimens()) {
            registered
                    .group()
                    .ifPresent(group -> newest(state.photosOf(registered.code()))
                            .ifPresent(file -> stills.putIfAbsent(
                                    registered.code(),
                                    new Still(
                                            registered.code(),
                                            group.name(),
                                            file,
                                            () -> files.apply(file)))));
        }
        return new ArrayList<>(stills.values());
    }

    private static Optional<KeptFile> newest(List<Photo> photos) {
        return photos.stream().max(Comparator.comparing(Photo::when)).map(Photo::file);
    }
}
