package org.twinbar.specimen;

import java.util.Comparator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** How a specimen stands on the printer's bed; z is the height of the layers. */
public enum PrintOrientation {
    /** Lying on its wide face. */
    FLAT("flat", 0, 1, 2),
    /** Standing on its long edge. */
    EDGE("edge", 0, 2, 1),
    /** Standing on its end. */
    UPRIGHT("upright", 1, 2, 0);

    private static final String AXES = "XYZ";

    private final String word;
    private final int[] from;

    /** Which axis of the lying specimen becomes the printer's x, y and z. */
    PrintOrientation(String word, int... from) {
        this.word = word;
        this.from = from;
    }

    public String word() {
        return word;
    }

    /** Returns a lying mesh turned so, in the corner of the bed: no coordinate below zero. */
    public Mesh turn(Mesh lying) {
        Mesh.Box box = lying.box();
        double[] turned = new double[lying.corners().length];
        for (int corner = 0; corner < turned.length / 3; corner++) {
            for (int axis = 0; axis < 3; axis++) {
                double at = lying.corners()[3 * corner + from[axis]];
                // An exchange of two axes alone would mirror the specimen; on edge, y runs back.
                turned[3 * corner + axis] = this == EDGE && axis == 1
                        ? box.most(from[axis]) - at
                        : at - box.least(from[axis]);
            }
        }
        return new Mesh(turned, lying.triangles());
    }

    /**
     * Returns how a standing mesh is named: the axis along its longest side first, then the second,
     * then the shortest; XYZ flat, XZY on edge, ZXY upright. Equal sides stay in the order of the
     * axes. Source: ISO/ASTM 52921:2013, continued by ISO 17295:2023.
     */
    public static String name(Mesh standing) {
        Mesh.Box box = standing.box();
        return IntStream.range(0, 3)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer axis) -> -box.size(axis)))
                .map(axis -> AXES.substring(axis, axis + 1))
                .collect(Collectors.joining());
    }
}
