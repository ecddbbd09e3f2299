package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.exchange.MeshFile;
import org.twinbar.specimen.Bed;
import org.twinbar.specimen.Mesh;

/** Specimens laid out on a bed. */
record Plate(Maker maker, Bed bed, List<Lying> specimens) {

    /**
     * A specimen in its place.
     *
     * @param name its code; the shape and the position where it has none
     */
    record Lying(Bed.Spot spot, String name, Mesh mesh) {
        double x() {
            return (mesh.box().least(0) + mesh.box().most(0)) / 2;
        }

        double y() {
            return (mesh.box().least(1) + mesh.box().most(1)) / 2;
        }
    }

    static Plate of(Maker maker, Bed bed, List<Optional<String>> codes) {
        List<Maker.Made> all = codes.stream().map(maker::make).toList();
        List<Bed.Spot> spots = bed.lay(most(all, 0), most(all, 1), all.size());
        List<Lying> specimens = new ArrayList<>();
        for (Bed.Spot spot : spots) {
            Maker.Made made = all.get(spot.position() - 1);
            String name = made.lettered()
                    .map(it -> it.lettering().code())
                    .orElse(maker.shape().name() + " " + spot.position());
            Mesh mesh = spot.isTurned() ? made.mesh().turned() : made.mesh();
            specimens.add(new Lying(spot, name, mesh.moved(spot.x(), spot.y())));
        }
        return new Plate(maker, bed, specimens);
    }

    List<MeshFile.Part> parts() {
        return specimens.stream()
                .map(it -> new MeshFile.Part(it.name(), it.mesh()))
                .toList();
    }

    /** Returns where the middle of each lies, from the front left corner of the bed. */
    String csv() {
        StringBuilder csv = new StringBuilder("specimen,position,x_mm,y_mm\n");
        for (Lying one : specimens) {
            csv.append(one.name()).append(',');
            csv.append(one.spot().position()).append(',');
            csv.append(rounded(one.x())).append(',');
            csv.append(rounded(one.y())).append('\n');
        }
        return csv.toString();
    }

    /** A raised code may stand out of a face that does not lie on the bed. */
    private static double most(List<Maker.Made> all, int axis) {
        return all.stream().mapToDouble(it -> it.mesh().box().size(axis)).max().orElseThrow();
    }

    /** A hundredth of a millimetre is more than any bed is true to. */
    private static double rounded(double millimetres) {
        return Math.rint(millimetres * 100) / 100;
    }
}
