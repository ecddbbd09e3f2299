package org.twinbar.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RawFilesTest {

    private static final byte[] CURVE = "time_s,force_N\n0,0\n1,50\n".getBytes(UTF_8);

    @TempDir
    Path folder;

    private RawFiles files;

    @BeforeEach
    void open() throws IOException {
        files = new RawFiles(folder);
    }

    @Test
    void givesBackTheSameBytes() {
        RawFiles.Kept kept = files.keep(CURVE);
        assertThat(kept.bytes()).isEqualTo(CURVE.length);
        assertThat(files.read(kept.digest())).isEqualTo(CURVE);
        assertThat(files.verified(kept.digest())).hasBinaryContent(CURVE);
    }

    /** Expected: the digest of "abc" in FIPS 180-2, appendix B.1. */
    @Test
    void namesFileByItsSha256() {
        assertThat(files.keep("abc".getBytes(UTF_8)).digest().hex())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void keepsTheSameFileOnce() throws IOException {
        files.keep(CURVE);
        files.keep(CURVE);
        assertThat(regularFiles()).hasSize(1);
    }

    @Test
    void noticesThatFileWasChanged() throws IOException {
        Digest digest = files.keep(CURVE).digest();
        Path place = files.verified(digest);
        Files.writeString(place, "time_s,force_N\n0,0\n1,90\n");
        assertThatThrownBy(() -> files.read(digest))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining(digest.hex())
                .hasMessageContaining("no longer holds what was read");
        assertThatThrownBy(() -> files.verified(digest)).isInstanceOf(StoreException.class);
        assertThatThrownBy(() -> files.keep(CURVE)).isInstanceOf(StoreException.class);
    }

    @Test
    void saysThatFileIsGone() throws IOException {
        Digest digest = files.keep(CURVE).digest();
        Files.delete(files.verified(digest));
        assertThatThrownBy(() -> files.read(digest))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining(digest.hex());
    }

    @Test
    void leavesNothingBehindWhenAnUploadBreaksOff() throws IOException {
        @SuppressWarnings("InputStreamSlowMultibyteRead") // slow is what a line is
        InputStream breaking = new InputStream() {
            private int left = 100_000;

            @Override
            public int read() throws IOException {
                if (left-- <= 0) {
                    throw new IOException("the line went dead");
                }
                return 'x';
            }
        };
        assertThatThrownBy(() -> files.keep(breaking)).isInstanceOf(StoreException.class);
        assertThat(regularFiles()).isEmpty();
    }

    @Test
    void refusesNameThatIsNoDigest() {
        assertThatThrownBy(() -> new Digest("../../etc/passwd"))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("not a SHA-256");
    }

    private java.util.List<Path> regularFiles() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }
}
