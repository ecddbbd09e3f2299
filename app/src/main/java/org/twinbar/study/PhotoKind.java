package org.twinbar.study;

import java.util.Arrays;
import java.util.Optional;
import org.twinbar.exchange.Place;
import org.twinbar.study.table.Upload;

/** Kinds of photos that a phone's camera makes and a browser shows, known by their first bytes. */
public enum PhotoKind {
    JPEG("image/jpeg", 0, 0xff, 0xd8, 0xff),
    PNG("image/png", 0, 0x89, 'P', 'N', 'G'),
    WEBP("image/webp", 8, 'W', 'E', 'B', 'P'),
    HEIC("image/heic", 4, 'f', 't', 'y', 'p', 'h', 'e', 'i');

    private final String type;
    private final int from;
    private final int[] first;

    PhotoKind(String type, int from, int... first) {
        this.type = type;
        this.from = from;
        this.first = first;
    }

    /** Returns the media type. */
    public String type() {
        return type;
    }

    public static Optional<PhotoKind> find(byte[] bytes) {
        return Arrays.stream(values()).filter(kind -> kind.begins(bytes)).findFirst();
    }

    /** @throws org.twinbar.exchange.InputException where it is none */
    static PhotoKind of(Upload photo) {
        return find(photo.bytes())
                .orElseThrow(() -> Place.of(photo.name())
                        .refuse("is not a photo: JPEG, PNG, WebP and HEIC are taken"));
    }

    private boolean begins(byte[] bytes) {
        if (bytes.length < from + first.length) {
            return false;
        }
        for (int i = 0; i < first.length; i++) {
            if ((bytes[from + i] & 0xff) != first[i]) {
                return false;
            }
        }
        return true;
    }
}
