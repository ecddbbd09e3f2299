package org.twinbar.specimen;

import java.util.ArrayList;
import java.util.List;

/**
 * Specimens laid out on a bed.
 *
 * @param specimens in the order of their places
 */
public record Plate(Bed bed, List<Lying> specimens) {

    public Plate {
        specimens = List.copyOf(specimens);
    }

    /**
     * A specimen in its place.
     *
     * @param name its code; the shape and the place where it has none
     * @param mesh where it lies
     */
    public record Lying(Bed.Spot spot, ToPrint specimen, String name, Mesh mesh) {

        /** Returns how far its middle lies from the left edge of the bed (mm). */
        public double x() {
            return (mesh.box().least(0) + mesh.box().most(0)) / 2;
        }

        /** Returns how far its middle lies from the front edge of the bed (mm). */
        public double y() {
            return (mesh.box().least(1) + mesh.box().most(1)) / 2;
        }
    }

    /**
     * Lays specimens out in their order.
     *
     * @param chordError largest distance of a chord from its arc (mm)
     * @throws ShapeException where the bed is too small, or a code has no room
     */
    public static Plate of(Bed bed, List<ToPrint> specimens, double chordError) {
        List<Mesh> meshes = specimens.stream().map(it -> it.mesh(chordError)).toList();
        List<Bed.Spot> spots = bed.lay(meshes.stream()
                .map(Mesh::box)
                .map(box -> new Bed.Footprint(box.size(0), box.size(1)))
                .toList());
        List<Lying> lying = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            Bed.Spot spot = spots.get(i);
            ToPrint specimen = specimens.get(i);
            String name = specimen.lettered()
                    .map(it -> it.lettering().code())
                    .orElse(specimen.shape().name() + " " + spot.position());
            Mesh mesh = spot.isTurned() ? meshes.get(i).turned() : meshes.get(i);
            lying.add(new Lying(spot, specimen, name, mesh.moved(spot.x(), spot.y())));
        }
        return new Plate(bed, lying);
    }
}
