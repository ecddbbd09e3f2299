package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Three invented studies of annealed bars, asked what they say side by side. */
class ArchiveCommandTest {

    @TempDir
    static Path folder;

    private static Desk desk;

    @BeforeAll
    static void keep() {
        desk = new Desk(folder);
        study("pla", "PLA", new double[] {1000, 1040, 960, 1010}, 1.10);
        study("petg", "PETG", new double[] {900, 950, 870, 910}, 1.30);
        study("abs", "ABS", new double[] {800, 850, 780, 805}, 1.02);
        desk.file(
                "dry.csv",
                "specimen,group,material,orientation,load_N",
                "D1,plain,PLA,upright,10",
                "D2,plain,PLA,upright,11",
                "D3,dried,PLA,upright,10",
                "D4,dried,PLA,upright,12");
        desk.type("study import --workspace @club --name dry --method results --specimens @dry.csv"
                + " --claim dry --property load --control plain --expect higher");
    }

    private static void study(String name, String material, double[] forces, double gain) {
        List<String> lines = new ArrayList<>();
        lines.add("specimen,group,material,orientation,area_mm2,mass_g,cost,peak_force_N");
        for (int i = 0; i < forces.length; i++) {
            lines.add("P%s,plain,%s,upright,40,8,0.20,%s".formatted(i, material, forces[i]));
            lines.add("T%s,annealed,%s,upright,40,8,0.25,%s"
                    .formatted(i, material, gain * forces[i] + (i % 2 == 0 ? 4 : -4)));
        }
        desk.file(name + ".csv", lines.toArray(String[]::new));
        assertThat(desk.type("study import --workspace @club --name " + name
                                + " --method tensile --specimens @" + name
                                + ".csv --claim stronger --property peak_force --control plain"
                                + " --expect higher --claimed 10%")
                        .status())
                .isZero();
    }

    @Test
    void tellsWhichMaterialGainedMostFromAnnealingUpright() {
        String asked = "archive --workspace @club --property peak_force --group annealed"
                + " --where orientation=upright";
        JsonNode gains = desk.type(asked + " --json").json().path("gains");
        assertThat(gains.findValuesAsText("study")).containsExactly("petg", "pla", "abs");
        assertThat(gains.at("/0/estimate").asDouble()).isCloseTo(1.30, within(0.01));
        assertThat(gains.at("/0/alike/material").asText()).isEqualTo("PETG");
        String text = desk.type(asked).out();
        assertThat(text.lines().skip(1).findFirst().orElseThrow()).startsWith("petg");
        assertThat(text.replaceAll("[\\s\\p{Zs}]+", " "))
                .contains("Largest force changed most from 'annealed': +30 % (95 % interval")
                .contains("in material PETG (the study 'petg'). Next comes +10 %")
                .contains("Their intervals lie apart, so the first gained more.");
        assertThat(text).contains("Not alike in all:", "'material' differs: ABS; PETG; PLA.");
    }

    @Test
    void filtersByTestTreatmentAndFactor() {
        assertThat(desk.type("archive --workspace @club --where material=pla --json")
                        .json()
                        .path("gains")
                        .findValuesAsText("study"))
                .containsExactlyInAnyOrder("pla", "dry");
        assertThat(desk.type("archive --workspace @club --method results --json")
                        .json()
                        .path("gains")
                        .findValuesAsText("treated"))
                .containsExactly("dried");
        assertThat(desk.type("archive --workspace @club --group painted").out())
                .contains("No study of this workspace holds anything like that.");
    }

    @Test
    void poolsTheUsualScatterWithinGroups() {
        JsonNode scatter = desk.type(
                        "archive --workspace @club --property peak_force --scatter --json")
                .json()
                .path("scatter");
        JsonNode pla = null;
        for (JsonNode each : scatter) {
            pla = each.path("material").asText().equals("PLA") ? each : pla;
        }
        // Worked by hand: s² of each group over its squared mean, three degrees of freedom each.
        double plain = cv(1000, 1040, 960, 1010);
        double annealed = cv(1104, 1140, 1060, 1107);
        assertThat(pla.path("cv").asDouble())
                .isCloseTo(Math.sqrt((plain * plain + annealed * annealed) / 2), within(1e-12));
        assertThat(pla.path("df").asInt()).isEqualTo(6);
    }

    private static double cv(double... values) {
        double mean = java.util.Arrays.stream(values).average().orElseThrow();
        double squares = java.util.Arrays.stream(values)
                .map(x -> (x - mean) * (x - mean))
                .sum();
        return Math.sqrt(squares / (values.length - 1)) / mean;
    }

    @Test
    void takesStudiesTogetherAndSaysWhatDiffers() {
        JsonNode together = desk.type("archive --workspace @club --property peak_force"
                        + " --group annealed --together --json")
                .json();
        double fixed = together.at("/fixed/estimate").asDouble();
        double random = together.at("/random/estimate").asDouble();
        assertThat(fixed).isBetween(1.02, 1.30);
        assertThat(together.at("/random/high").asDouble()
                        - together.at("/random/low").asDouble())
                .isGreaterThan(together.at("/fixed/high").asDouble()
                        - together.at("/fixed/low").asDouble());
        assertThat(random).isCloseTo((1.10 + 1.30 + 1.02) / 3, within(0.02));
        assertThat(together.path("heterogeneity").asDouble()).isGreaterThan(0.8);
        assertThat(desk.type("archive --workspace @club --property peak_force --group annealed"
                                + " --together")
                        .out())
                .contains("one effect in all studies", "effects that differ", "a further study");
    }

    @Test
    void setsMeansBesideEachOtherPerGramAndPerCost() {
        JsonNode means = desk.type("archive --workspace @club --property peak_force --means"
                        + " --where material=PLA --group plain --per cost --json")
                .json()
                .path("means");
        assertThat(means.at("/0/mean").asDouble()).isCloseTo(1002.5 / 0.2, within(1e-9));
        String against = desk.type("archive --workspace @club --property peak_force --means"
                        + " --against force_per_mass")
                .out();
        assertThat(against).contains("annealed", "material=PLA", "± is half of the mean's");
        assertThat(against).contains("N/g");
    }

    @Test
    void drawsOnePropertyAgainstAnother() throws Exception {
        desk.type("archive --workspace @club --property peak_force --means --where material=PLA"
                        + " --against force_per_mass --out @against.svg")
                .done();
        String svg = java.nio.file.Files.readString(folder.resolve("against.svg"));
        assertThat(svg)
                .contains("Largest force in N against Largest force per gram", "pla, annealed");
        desk.refuses(
                "archive --workspace @club --property peak_force --means --out @x.svg",
                "--out goes with --against");
        desk.refuses(
                "archive --workspace @club --property load --means --against peak_force --out @x.svg",
                "no group has both load and peak_force");
    }

    @Test
    void refusesWhatIsNotAlikeOrMakesNoSense() {
        desk.refuses("archive --workspace @club --together", "only like is taken together");
        desk.refuses("archive --workspace @club --means --together", "say one of");
        desk.refuses("archive --workspace @club --per cost", "--per goes with --means");
        desk.refuses(
                "archive --workspace @club --method results --together",
                "1 of the gains found has a finite interval");
        desk.refuses(
                "archive --workspace @club --means --per material",
                "has 'PLA' for its material, must be a number above zero");
        desk.refuses("archive --workspace @elsewhere", "no workspace folder");
    }
}
