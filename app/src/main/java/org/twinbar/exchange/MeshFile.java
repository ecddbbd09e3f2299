package org.twinbar.exchange;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.twinbar.finding.Finding;
import org.twinbar.finding.Finding.Kind;
import org.twinbar.specimen.Crossings;
import org.twinbar.specimen.Mesh;
import org.twinbar.specimen.Soundness;

/** Meshes as files: STL, binary and text, and 3MF. */
public final class MeshFile {

    /** Two million triangles are 100 MB of STL, far past what a test piece or a fitting needs. */
    static final int MOST_TRIANGLES = 2_000_000;

    /** Smaller than this, a part is likely given in metres or inches (mm); common practice. */
    private static final double LEAST_SIZE = 1;

    /** Larger than this, a part is likely given in micrometres (mm); common practice. */
    private static final double MOST_SIZE = 2000;

    private static final Kind NO_UNIT = Kind.note(
            "mesh-unit-taken", "An STL file names no unit; its numbers were taken as millimetres.");
    private static final Kind ODD_SIZE = Kind.warning(
            "mesh-unit-doubtful",
            "The mesh is %s mm long at most, which no home printer makes: is it in another unit?");

    private MeshFile() {}

    /** How a mesh is written. */
    public enum Format {
        STL("stl"),
        THREE_MF("3mf");

        private final String ending;

        Format(String ending) {
            this.ending = ending;
        }

        /**
         * Returns the format that a file name asks for.
         *
         * @throws InputException where it ends neither in .stl nor in .3mf
         */
        public static Format of(String fileName) {
            for (Format format : values()) {
                if (fileName.toLowerCase(Locale.ROOT).endsWith("." + format.ending)) {
                    return format;
                }
            }
            throw Place.of(fileName)
                    .refuse("a mesh is written as .stl or .3mf, and the name ends in neither");
        }
    }

    /** A body in its place, with the name that it is called by. */
    public record Part(String name, Mesh mesh) {}

    /**
     * A mesh as it was read, in mm, with what a person should know of it.
     *
     * @param soundness whether it encloses a volume
     */
    public record Read(Mesh mesh, Soundness soundness, List<Finding> findings) {}

    /**
     * Reads a mesh; 3MF is told from STL by its first bytes.
     *
     * @throws InputException where it is none, is cut off, or is larger than a mesh may be
     */
    public static Read read(Source source) {
        try (InputStream in = new BufferedInputStream(source.open(), 1 << 16)) {
            in.mark(4);
            boolean zipped = in.read() == 'P' && in.read() == 'K';
            in.reset();
            Mesh mesh = zipped ? ThreeMf.read(source.name(), in) : Stl.read(source.name(), in);
            return read(mesh, zipped);
        } catch (IOException e) {
            throw source.unreadable(e);
        }
    }

    /** Returns the bytes of a mesh file; the title goes where the format has room for it. */
    public static byte[] bytes(Mesh mesh, Format format, String title) {
        return bytes(List.of(new Part(title, mesh)), format, title);
    }

    /** Returns the bytes of a file of several bodies: an object each in 3MF, one mesh in STL. */
    public static byte[] bytes(List<Part> parts, Format format, String title) {
        return format == Format.STL
                ? Stl.bytes(Mesh.together(parts.stream().map(Part::mesh).toList()), title)
                : ThreeMf.bytes(parts, title);
    }

    private static Read read(Mesh mesh, boolean hasUnit) {
        List<Finding> findings = new ArrayList<>();
        if (!hasUnit) {
            findings.add(NO_UNIT.with());
        }
        double longest = 0;
        for (int axis = 0; axis < 3; axis++) {
            longest = Math.max(longest, mesh.box().size(axis));
        }
        if (longest < LEAST_SIZE || longest > MOST_SIZE) {
            findings.add(ODD_SIZE.with(String.format(Locale.ROOT, "%.3g", longest)));
        }
        Soundness soundness = Soundness.of(mesh);
        findings.addAll(soundness.findings(mesh));
        Crossings.of(mesh).finding().ifPresent(findings::add);
        return new Read(mesh, soundness, findings);
    }

    static InputException tooMany(String file, long triangles) {
        return Place.of(file)
                .refuse("%s triangles are more than the limit of %s for a mesh"
                        .formatted(
                                triangles == Long.MAX_VALUE ? "its" : Long.toString(triangles),
                                MOST_TRIANGLES));
    }

    /** Returns the coordinate, which a place in space must have. */
    static double requireFinite(String file, double coordinate, long triangle) {
        if (!Double.isFinite(coordinate)) {
            throw Place.of(file)
                    .refuse("triangle %s has a corner that is not at a finite place"
                            .formatted(triangle));
        }
        return coordinate;
    }
}
