package org.twinbar.specimen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.twinbar.finding.Finding;
import org.twinbar.finding.Finding.Kind;

/**
 * Whether a mesh encloses a body.
 *
 * <p>In a closed and oriented surface every edge is run through once in each direction.
 *
 * @param openEdges edges that one triangle has alone
 * @param turnedEdges edges that two triangles run through in the same direction
 * @param crowdedEdges edges of more than two triangles
 * @param flatTriangles triangles without area
 */
public record Soundness(int openEdges, int turnedEdges, int crowdedEdges, int flatTriangles) {

    private static final Kind OPEN = Kind.serious(
            "mesh-open",
            "The mesh is open at %s edges, so that it encloses no volume: mend it before printing, and take its area with care.");
    private static final Kind TURNED = Kind.serious(
            "mesh-turned",
            "%s edges of the mesh lie between triangles that look to opposite sides, so that its volume is wrong.");
    private static final Kind CROWDED = Kind.warning(
            "mesh-crowded",
            "%s edges of the mesh have more than two triangles: bodies touch or faces are doubled, and area that is not on the outside may be counted.");
    private static final Kind INSIDE_OUT = Kind.warning(
            "mesh-inside-out",
            "The mesh is turned inside out; its volume is given without the sign.");

    /** Returns what holds of a mesh. */
    public static Soundness of(Mesh mesh) {
        int[] triangles = mesh.triangles();
        // Both ends and the direction in one number, so that sorting brings an edge's uses
        // together.
        long[] uses = new long[triangles.length];
        int flat = 0;
        for (int triangle = 0; triangle < mesh.count(); triangle++) {
            double[] normal = mesh.normal(triangle);
            flat += normal[0] == 0 && normal[1] == 0 && normal[2] == 0 ? 1 : 0;
            for (int side = 0; side < 3; side++) {
                long from = triangles[3 * triangle + side];
                long to = triangles[3 * triangle + (side + 1) % 3];
                uses[3 * triangle + side] = (Math.min(from, to) << 32)
                        | (Math.max(from, to) << 1)
                        | (from < to ? 0 : 1);
            }
        }
        Arrays.sort(uses);
        return counted(uses, flat);
    }

    private static Soundness counted(long[] uses, int flat) {
        int open = 0;
        int turned = 0;
        int crowded = 0;
        for (int i = 0; i < uses.length; ) {
            int end = i;
            int backwards = 0;
            while (end < uses.length && uses[end] >> 1 == uses[i] >> 1) {
                backwards += (int) (uses[end] & 1);
                end++;
            }
            int all = end - i;
            open += all == 1 ? 1 : 0;
            turned += all == 2 && backwards != 1 ? 1 : 0;
            crowded += all > 2 ? 1 : 0;
            i = end;
        }
        return new Soundness(open, turned, crowded, flat);
    }

    /** Whether the mesh encloses a volume: closed, oriented, no edge shared by more than two. */
    public boolean isWatertight() {
        return openEdges == 0 && turnedEdges == 0 && crowdedEdges == 0;
    }

    /** Returns what a person should know of the mesh. */
    public List<Finding> findings(Mesh mesh) {
        List<Finding> findings = new ArrayList<>();
        if (openEdges > 0) {
            findings.add(OPEN.with(openEdges));
        }
        if (turnedEdges > 0) {
            findings.add(TURNED.with(turnedEdges));
        }
        if (crowdedEdges > 0) {
            findings.add(CROWDED.with(crowdedEdges));
        }
        if (isWatertight() && mesh.volume() < 0) {
            findings.add(INSIDE_OUT.with());
        }
        return findings;
    }
}
