package org.twinbar.specimen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;

class CrossingsTest {

    private final Mesh bar =
            StandardShapes.named("bar-80x10x4").orElseThrow().solid().mesh(0.01);

    @Test
    void findsTwoBarsThatRunThroughEachOther() {
        Mesh cross = Mesh.together(List.of(bar, bar.turned().moved(-5, -40)));
        assertThat(Soundness.of(cross).isWatertight()).isTrue();
        Crossings crossings = Crossings.of(cross);
        assertThat(crossings.pairs()).isPositive();
        assertThat(crossings.finding()).map(Finding::code).contains("mesh-crosses-itself");
    }

    @Test
    void takesNoTouchForACrossing() {
        Mesh beside = Mesh.together(List.of(bar, bar.moved(0, 10)));
        Mesh corner = Mesh.together(List.of(bar, bar.moved(80, 10)));
        assertThat(Crossings.of(beside).pairs()).isZero();
        assertThat(Crossings.of(corner).pairs()).isZero();
        assertThat(Crossings.of(Mesh.together(List.of(bar, bar))).pairs()).isZero();
    }

    /** A needle that pierces one face has one crossing for each triangle that it runs through. */
    @Test
    void countsAsByHand() {
        Mesh sheet = new Mesh(
                new double[] {0, 0, 0, 10, 0, 0, 0, 10, 0, 2, 2, -1, 2, 2, 1, 2.1, 2, 1},
                new int[] {0, 1, 2, 3, 4, 5});
        assertThat(Crossings.of(sheet).pairs()).isEqualTo(1);
        double[] aside = sheet.corners().clone();
        for (int i = 9; i < 18; i += 3) {
            aside[i] += 9;
        }
        assertThat(Crossings.of(new Mesh(aside, sheet.triangles())).pairs()).isZero();
    }

    /** The tree must show what comparing all with all shows. */
    @Test
    void findsWhatComparingAllWithAllFinds() {
        Random random = new Random(20260301);
        double[] corners = random.doubles(9 * 200, 0, 10).toArray();
        for (int i = 0; i < corners.length; i += 9) {
            for (int j = 3; j < 9; j++) {
                corners[i + j] = corners[i + j % 3] + corners[i + j] / 5;
            }
        }
        int[] triangles = new int[3 * 200];
        Arrays.setAll(triangles, it -> it);
        int all = 0;
        for (int one = 0; one < 200; one++) {
            for (int other = one + 1; other < 200; other++) {
                double[] two = Arrays.copyOf(Arrays.copyOfRange(corners, 9 * one, 9 * one + 9), 18);
                System.arraycopy(corners, 9 * other, two, 9, 9);
                all += Crossings.of(new Mesh(two, new int[] {0, 1, 2, 3, 4, 5})).pairs();
            }
        }
        assertThat(all).isGreaterThan(20);
        assertThat(Crossings.of(new Mesh(corners, triangles)).pairs()).isEqualTo(all);
    }

    @Test
    void stopsWhereThereAreTooManyToCount() {
        double[] corners = new double[9 * 60];
        int[] triangles = new int[3 * 60];
        for (int i = 0; i < 60; i++) {
            double angle = Math.PI * i / 60;
            double x = 10 * StrictMath.cos(angle);
            double y = 10 * StrictMath.sin(angle);
            double[] blade = {-x, -y, -1 - i * 0.01, x, y, -1 - i * 0.02, 0.3 * x, 0.3 * y, 2};
            System.arraycopy(blade, 0, corners, 9 * i, 9);
            Arrays.setAll(triangles, it -> it);
        }
        Crossings crossings = Crossings.of(new Mesh(corners, triangles));
        assertThat(crossings).isEqualTo(new Crossings(1000, Crossings.Extent.PART));
        assertThat(crossings.finding().orElseThrow().text()).contains("at least 1000 pairs");
    }
}
