package org.twinbar.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.twinbar.specimen.Mesh;
import org.twinbar.specimen.MeshBuilder;

/**
 * STL: triangles one by one, in an unnamed unit.
 *
 * <p>Binary: 80 bytes of header, the number of triangles, then 50 bytes for each: normal, three
 * corners, two bytes of no meaning, all little-endian. Text: the words facet, vertex and so on.
 */
final class Stl {

    private static final int HEADER = 80;
    private static final int TRIANGLE = 50;

    /** A file that begins with "solid" may still be binary; its first facet tells. */
    private static final int PEEK = 1024;

    private Stl() {}

    static byte[] bytes(Mesh mesh, String title) {
        ByteBuffer out = ByteBuffer.allocate(HEADER + 4 + TRIANGLE * mesh.count())
                .order(ByteOrder.LITTLE_ENDIAN);
        byte[] header = ("Twinbar, mm: " + title).getBytes(StandardCharsets.US_ASCII);
        out.put(header, 0, Math.min(header.length, HEADER));
        out.position(HEADER);
        out.putInt(mesh.count());
        for (int triangle = 0; triangle < mesh.count(); triangle++) {
            double[] normal = mesh.normal(triangle);
            double length = Math.sqrt(
                    normal[0] * normal[0] + normal[1] * normal[1] + normal[2] * normal[2]);
            for (double along : normal) {
                out.putFloat((float) (length > 0 ? along / length : 0));
            }
            for (int corner = 0; corner < 3; corner++) {
                for (int axis = 0; axis < 3; axis++) {
                    out.putFloat((float) mesh.coordinate(triangle, corner, axis));
                }
            }
            out.putShort((short) 0);
        }
        return out.array();
    }

    /** @param in supports going back by {@value #PEEK} bytes */
    static Mesh read(String file, InputStream in) throws IOException {
        in.mark(PEEK);
        byte[] beginning = in.readNBytes(PEEK);
        in.reset();
        if (beginning.length == 0) {
            throw Place.of(file).refuse("is empty");
        }
        return isText(beginning) ? StlText.read(file, in) : binary(file, in);
    }

    private static boolean isText(byte[] beginning) {
        String text = new String(beginning, StandardCharsets.ISO_8859_1);
        return text.stripLeading().startsWith("solid")
                && text.indexOf('\0') < 0
                && (text.contains("facet") || text.contains("endsolid"));
    }

    private static Mesh binary(String file, InputStream in) throws IOException {
        byte[] head = in.readNBytes(HEADER + 4);
        if (head.length < HEADER + 4) {
            throw Place.of(file)
                    .refuse("is neither STL nor 3MF: it ends after %s bytes"
                            .formatted(head.length));
        }
        long count = Integer.toUnsignedLong(
                ByteBuffer.wrap(head).order(ByteOrder.LITTLE_ENDIAN).getInt(HEADER));
        if (count > MeshFile.MOST_TRIANGLES) {
            throw MeshFile.tooMany(file, count);
        }
        if (count == 0) {
            throw Place.of(file).refuse("has no triangles");
        }
        MeshBuilder builder = new MeshBuilder();
        byte[] bytes = new byte[TRIANGLE];
        ByteBuffer buffer = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        for (long triangle = 1; triangle <= count; triangle++) {
            if (in.readNBytes(bytes, 0, TRIANGLE) < TRIANGLE) {
                throw Place.of(file)
                        .refuse("ends in triangle %s of %s: the file is cut off or no STL"
                                .formatted(triangle, count));
            }
            builder.add(
                    place(file, buffer, 12, triangle),
                    place(file, buffer, 24, triangle),
                    place(file, buffer, 36, triangle));
        }
        return builder.build();
    }

    private static Mesh.Place place(String file, ByteBuffer buffer, int at, long triangle) {
        return new Mesh.Place(
                MeshFile.requireFinite(file, buffer.getFloat(at), triangle),
                MeshFile.requireFinite(file, buffer.getFloat(at + 4), triangle),
                MeshFile.requireFinite(file, buffer.getFloat(at + 8), triangle));
    }
}
