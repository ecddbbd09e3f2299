package org.twinbar.exchange;

import java.io.ByteArrayOutputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.twinbar.specimen.Mesh;

/** 3MF: a zip file whose part 3D/3dmodel.model holds corners, triangles and the unit as XML. */
final class ThreeMf {

    /**
     * What two million triangles take; more is no test piece, or a small file made to fill memory.
     */
    private static final long MOST_BYTES = 160L << 20;

    /** A tag with everything in it is a few hundred bytes long. */
    private static final long LONGEST_PIECE = 1L << 20;

    /** The oldest time that a zip entry can carry, so that equal meshes are equal files. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private static final String TYPES = """
            <?xml version="1.0" encoding="UTF-8"?>
            <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
            <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
            <Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/>
            </Types>
            """;

    private static final String RELATIONS = """
            <?xml version="1.0" encoding="UTF-8"?>
            <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
            <Relationship Id="rel0" Target="/3D/3dmodel.model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/>
            </Relationships>
            """;

    private ThreeMf() {}

    static byte[] bytes(List<MeshFile.Part> parts, String title) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            entry(zip, "[Content_Types].xml", TYPES);
            entry(zip, "_rels/.rels", RELATIONS);
            entry(zip, "3D/3dmodel.model", model(parts, title));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static String model(List<MeshFile.Part> parts, String title) {
        StringBuilder xml = new StringBuilder("""
                        <?xml version="1.0" encoding="UTF-8"?>
                        <model unit="millimeter" xml:lang="en" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">
                        """)
                .append("<metadata name=\"Title\">")
                .append(escaped(title))
                .append("</metadata>\n<resources>\n");
        for (int i = 0; i < parts.size(); i++) {
            xml.append("<object id=\"").append(i + 1);
            xml.append("\" type=\"model\" name=\"").append(escaped(parts.get(i).name()));
            xml.append("\"><mesh>\n");
            mesh(xml, parts.get(i).mesh());
            xml.append("</mesh></object>\n");
        }
        xml.append("</resources>\n<build>\n");
        for (int i = 0; i < parts.size(); i++) {
            xml.append("<item objectid=\"").append(i + 1).append("\"/>\n");
        }
        return xml.append("</build>\n</model>\n").toString();
    }

    private static void mesh(StringBuilder xml, Mesh mesh) {
        xml.append("<vertices>\n");
        double[] corners = mesh.corners();
        for (int i = 0; i < corners.length; i += 3) {
            xml.append("<vertex x=\"").append(corners[i]);
            xml.append("\" y=\"").append(corners[i + 1]);
            xml.append("\" z=\"").append(corners[i + 2]).append("\"/>\n");
        }
        xml.append("</vertices>\n<triangles>\n");
        int[] triangles = mesh.triangles();
        for (int i = 0; i < triangles.length; i += 3) {
            xml.append("<triangle v1=\"").append(triangles[i]);
            xml.append("\" v2=\"").append(triangles[i + 1]);
            xml.append("\" v3=\"").append(triangles[i + 2]).append("\"/>\n");
        }
        xml.append("</triangles>\n");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    static Mesh read(String file, InputStream in) throws IOException {
        // Counts what comes out of the zip file, whichever part it is in.
        try (ZipInputStream zip = new ZipInputStream(in)) {
            Bounded bounded = new Bounded(file, zip);
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().toLowerCase(Locale.ROOT).endsWith("3d/3dmodel.model")) {
                    return ThreeMfModel.read(file, bounded.asModel());
                }
                bounded.skipToEnd();
            }
        } catch (ZipException e) {
            throw Place.of(file).refuse("is a damaged zip file, so no 3MF can be read from it");
        }
        throw Place.of(file).refuse("is a zip file without 3D/3dmodel.model, so no 3MF");
    }

    /** Lets no more than a limit through. */
    private static final class Bounded extends FilterInputStream {

        private final String file;
        private long left = MOST_BYTES;
        private long sinceTag;
        private boolean isModel;

        Bounded(String file, InputStream in) {
            super(in);
            this.file = file;
        }

        @Override
        public int read() throws IOException {
            int one = super.read();
            count(one < 0 ? 0 : 1);
            return one;
        }

        @Override
        public int read(byte[] bytes, int offset, int length) throws IOException {
            int number = super.read(bytes, offset, length);
            count(Math.max(0, number));
            if (isModel) {
                lookForTags(bytes, offset, number);
            }
            return number;
        }

        /** Begins to be the model, whose pieces a reader of XML holds whole. */
        Bounded asModel() {
            isModel = true;
            return this;
        }

        private void lookForTags(byte[] bytes, int offset, int number) {
            for (int i = offset; i < offset + number; i++) {
                sinceTag = bytes[i] == '>' ? 0 : sinceTag + 1;
            }
            if (sinceTag > LONGEST_PIECE) {
                throw Place.of(file)
                        .refuse("holds a piece of XML longer than %s MiB, which no mesh has"
                                .formatted(LONGEST_PIECE >> 20));
            }
        }

        void skipToEnd() throws IOException {
            byte[] dropped = new byte[1 << 16];
            while (read(dropped, 0, dropped.length) >= 0) {
                // What is not the model is passed over, and counted.
            }
        }

        /** The zip file is closed by whoever opened it. */
        @Override
        public void close() {}

        private void count(int number) {
            left -= number;
            if (left < 0) {
                throw Place.of(file)
                        .refuse("unpacks to more than %s MiB, the limit of a 3MF file"
                                .formatted(MOST_BYTES >> 20));
            }
        }
    }
}
