package org.twinbar.specimen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;

class MeshTest {

    private final Mesh bar =
            StandardShapes.named("bar-80x10x4").orElseThrow().solid().mesh(0.01);

    @Test
    void measuresABarExactly() {
        assertThat(bar.count()).isEqualTo(12);
        assertThat(bar.volume()).isCloseTo(3200, within(1e-9));
        assertThat(bar.area()).isCloseTo(2 * (800 + 320 + 40), within(1e-9));
        assertThat(bar.box().size(0)).isEqualTo(80);
    }

    @Test
    void findsTheHoleOfAMissingTriangle() {
        Mesh open = new Mesh(bar.corners(), Arrays.copyOf(bar.triangles(), 33));
        Soundness soundness = Soundness.of(open);
        assertThat(soundness.openEdges()).isEqualTo(3);
        assertThat(soundness.isWatertight()).isFalse();
        assertThat(soundness.findings(open)).extracting(Finding::code).containsExactly("mesh-open");
    }

    @Test
    void findsATriangleThatLooksInwards() {
        int[] turned = bar.triangles().clone();
        int first = turned[0];
        turned[0] = turned[1];
        turned[1] = first;
        Soundness soundness = Soundness.of(new Mesh(bar.corners(), turned));
        assertThat(soundness.turnedEdges()).isEqualTo(3);
        assertThat(soundness.openEdges()).isZero();
    }

    @Test
    void findsDoubledTrianglesAndInsideOut() {
        int[] doubled = Arrays.copyOf(bar.triangles(), 39);
        System.arraycopy(bar.triangles(), 0, doubled, 36, 3);
        assertThat(Soundness.of(new Mesh(bar.corners(), doubled)).crowdedEdges())
                .isEqualTo(3);
        int[] inward = bar.triangles().clone();
        for (int i = 0; i < inward.length; i += 3) {
            int first = inward[i];
            inward[i] = inward[i + 1];
            inward[i + 1] = first;
        }
        Mesh insideOut = new Mesh(bar.corners(), inward);
        assertThat(Soundness.of(insideOut).findings(insideOut))
                .extracting(Finding::code)
                .containsExactly("mesh-inside-out");
        assertThat(insideOut.volume()).isCloseTo(-3200, within(1e-9));
    }

    @Test
    void refusesWhatIsNoMesh() {
        assertThatThrownBy(() -> new Mesh(new double[9], new int[] {0, 1, 3}))
                .isInstanceOf(ShapeException.class)
                .hasMessage("A triangle names corner 3 of 3.");
        assertThatThrownBy(() -> new MeshBuilder().build())
                .isInstanceOf(ShapeException.class)
                .hasMessage("A mesh has at least one triangle of three corners.");
        assertThatThrownBy(() ->
                        StandardShapes.named("disc-50x3").orElseThrow().solid().mesh(0))
                .isInstanceOf(ShapeException.class)
                .hasMessage("The chord error must lie from 0.0001 to 1 mm, not at 0.0 mm.");
    }
}
