package org.twinbar.exchange.datapackage;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.exchange.InputException;

/** Packages as strangers make them, with and without ill will. */
class OpenPackageTest {

    private static final String ONE =
            "{\"resources\": [{\"name\": \"bars\", \"path\": \"bars.csv\"}]}";

    @TempDir
    Path folder;

    @Test
    void readsFolderAndZipAlike() throws IOException {
        Files.writeString(folder.resolve("datapackage.json"), ONE);
        Files.writeString(folder.resolve("bars.csv"), "specimen\nA1\n");
        Path zip = zip(Map.of("datapackage.json", ONE, "bars.csv", "specimen\nA1\n"));
        for (Path place : List.of(folder, zip)) {
            try (OpenPackage open = OpenPackage.of(place)) {
                Resource bars = open.resource("bars").orElseThrow();
                assertThat(new String(open.source(bars).bytes(), UTF_8))
                        .isEqualTo("specimen\nA1\n");
                assertThat(open.damage(bars)).isEmpty();
            }
        }
    }

    @Test
    void tellsWhichBytesAreOthers() {
        Path zip = zip(
                Map.of("datapackage.json", """
                {"resources": [
                  {"name": "a", "path": "a.csv", "bytes": 3},
                  {"name": "b", "path": "b.csv",
                   "hash": "sha256:edeaaff3f1774ad2888673770c6d64097e391bc362d7d6fb34982ddf0efd18cb"},
                  {"name": "c", "path": "c.csv", "hash": "00000000000000000000000000000000"}
                ]}
                """, "a.csv", "abcd", "b.csv", "abc\n", "c.csv", "abc"));
        try (OpenPackage open = OpenPackage.of(zip)) {
            assertThat(open.damage(open.resource("a").orElseThrow()))
                    .hasValue("a.csv has 4 bytes, datapackage.json says 3");
            // printf 'abc\n' | sha256sum
            assertThat(open.damage(open.resource("b").orElseThrow())).isEmpty();
            // printf abc | md5sum
            assertThat(open.damage(open.resource("c").orElseThrow()))
                    .hasValue(
                            "c.csv has the MD5 900150983cd2…, datapackage.json says 000000000000…");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "{} | lists no resources",
                "[] | holds no JSON object",
                "{\"resources\": [ | line 1: is not JSON",
                "{\"resources\": [], \"resources\": []} | is not JSON: Duplicate field 'resources'",
                "{\"resources\": [{\"path\": \"bars.csv\"}]} | resource 1 has no name",
                "{\"resources\": [{\"name\": \"bars\"}]} | has neither a path nor data",
                "{\"resources\": [{\"name\": \"bars\", \"path\": 7}]} | has neither a path nor data",
                "{\"resources\": [{\"name\": \"bars\", \"path\": [\"bars.csv\", \"b.csv\"]}]} | is parted into several files",
                "{\"resources\": [{\"name\": \"bars\", \"path\": \"bar.csv\"}]} | lacks its file 'bar.csv'; did you mean 'bars.csv'?",
                "{\"resources\": [{\"name\": \"bars\", \"path\": \"../bars.csv\"}]} | '../bars.csv' leads out of the package",
                "{\"resources\": [{\"name\": \"bars\", \"path\": \"a/../../bars.csv\"}]} | leads out of the package",
                "{\"resources\": [{\"name\": \"bars\", \"path\": \"/etc/passwd\"}]} | leads out of the package",
                "{\"resources\": [{\"name\": \"bars\", \"path\": \"C:\\\\bars.csv\"}]} | leads out of the package",
                "{\"resources\": [{\"name\": \"bars\", \"path\": \"~/bars.csv\"}]} | leads out of the package",
                "{\"resources\": [{\"name\": \"bars\", \"path\": \"http://club.example/bars.csv\"}]} | only files inside a package are read",
                "{\"resources\": [{\"name\": \"bars\", \"path\": \"bars.csv\", \"hash\": \"crc:12\"}]} | the hash 'crc' is none of md5, sha1, sha256",
                "{\"resources\": [{\"name\": \"bars\", \"path\": \"bars.csv\"}, {\"name\": \"bars\", \"path\": \"bars.csv\"}]} | stands twice",
            })
    void refusesDescriptor(String descriptor, String says) {
        refuses(zip(Map.of("datapackage.json", descriptor, "bars.csv", "specimen\nA1\n")), says);
    }

    @Test
    void refusesWhatIsNoPackage() throws IOException {
        refuses(folder.resolve("none.zip"), "there is no package");
        Path text = Files.writeString(folder.resolve("text.zip"), "no zip");
        refuses(text, "neither a folder nor a zip");
        refuses(zip(Map.of("bars.csv", "specimen\n")), "no datapackage.json at its top");
    }

    @Test
    void refusesNamesThatLeadOutWhereverTheyStand() {
        for (String name :
                List.of("../bars.csv", "/bars.csv", "a/../../b", "..\\bars.csv", "C:b")) {
            Map<String, String> files = new LinkedHashMap<>();
            files.put("datapackage.json", ONE);
            files.put("bars.csv", "specimen\n");
            files.put(name, "out");
            refuses(zip(files), "leads out of the package");
        }
    }

    @Test
    void refusesLinkThatLeadsOutOfFolder() throws IOException {
        Path place = Files.createDirectory(folder.resolve("linked"));
        Path secret = Files.writeString(folder.resolve("secret.csv"), "specimen\n");
        Files.writeString(place.resolve("datapackage.json"), ONE);
        Files.createSymbolicLink(place.resolve("bars.csv"), secret);
        refuses(place, "'bars.csv' leads out of the package");
    }

    @Test
    void refusesWhatGrowsTooMuch() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("datapackage.json", ONE.getBytes(UTF_8));
        files.put("bars.csv", new byte[40 << 20]);
        Path zip = Zips.ofBytes(folder.resolve("bomb.zip"), files);
        refuses(zip, "times its size when unpacked, the limit is 200 times");
    }

    @Test
    void refusesZipThatHoldsMoreThanItSays() throws IOException {
        Path zip =
                zip(Map.of("datapackage.json", ONE, "bars.csv", "specimen\n" + "A1\n".repeat(500)));
        lie(zip, "bars.csv", 10);
        assertThatThrownBy(() -> {
                    try (OpenPackage open = OpenPackage.of(zip)) {
                        open.source(open.resource("bars").orElseThrow()).bytes();
                    }
                })
                .isInstanceOf(InputException.class)
                .hasMessageContaining("bars.csv holds more than the 10 bytes that the zip says");
    }

    /** Writes another length into the zip's list of contents. */
    private static void lie(Path zip, String name, int bytes) throws IOException {
        byte[] all = Files.readAllBytes(zip);
        ByteBuffer buffer = ByteBuffer.wrap(all).order(ByteOrder.LITTLE_ENDIAN);
        for (int at = 0; at < all.length - 46; at++) {
            boolean listed = buffer.getInt(at) == 0x02014b50;
            if (listed && new String(all, at + 46, buffer.getShort(at + 28), UTF_8).equals(name)) {
                buffer.putInt(at + 24, bytes);
            }
        }
        Files.write(zip, all);
    }

    @Test
    void refusesHugeCountsAndSizes() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("datapackage.json", ONE);
        files.put("bars.csv", "specimen\nA1\nA2\n");
        Path zip = zip(files);
        refuses(zip, new Limits(1, 99, 999, 9, 999, 9), "more than 1 files, the limit");
        refuses(zip, new Limits(9, 9, 999, 9, 999, 9), "bytes, the limit of one file is 0 MiB");
        refuses(zip, new Limits(9, 99, 20, 9, 999, 9), "the limit of a package is 0 MiB");
        refuses(zip, new Limits(9, 99, 999, 9, 9, 9), "datapackage.json is larger than");
    }

    @Test
    void refusesTableThatIsNotAsTheDescriptorSays() {
        table("a,c\n1,2\n", "its columns are a, c, datapackage.json says a, b");
        table("a,b\n1\n", "line 2: has 1 cells, the table 2 columns");
        table("a,b\n1,2\n1,2\n1,2\n", "has more than 2 rows");
        table("", "is empty, its columns are missing");
        table("a,b\n\"1,2\n", "");
    }

    private void table(String csv, String says) {
        String descriptor = "{\"resources\": [{\"name\": \"t\", \"path\": \"t.csv\","
                + "\"schema\": {\"fields\": [{\"name\": \"a\"}, {\"name\": \"b\"}]}}]}";
        Path zip = zip(Map.of("datapackage.json", descriptor, "t.csv", csv));
        try (OpenPackage open = OpenPackage.of(zip, new Limits(9, 999, 9999, 9, 999, 2))) {
            Resource resource = open.resource("t").orElseThrow();
            assertThatThrownBy(() -> open.rows(resource))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining(says)
                    .hasMessageContaining("t.csv");
        }
    }

    private Path zip(Map<String, String> files) {
        return Zips.of(folder.resolve("some.zip"), files);
    }

    private static void refuses(Path place, String says) {
        refuses(place, Limits.USUAL, says);
    }

    private static void refuses(Path place, Limits limits, String says) {
        assertThatThrownBy(() -> OpenPackage.of(place, limits).close())
                .isInstanceOf(InputException.class)
                .hasMessageContaining(says)
                .hasMessageContaining(place.toString())
                .message()
                .doesNotContain("\n", "Exception");
    }
}
