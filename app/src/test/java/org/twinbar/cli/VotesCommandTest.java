package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Votes on a blind sheet, opened by its key. */
class VotesCommandTest {

    private static final int[] PLAIN = {2, 3, 2, 3};
    private static final int[] COATED = {4, 4, 3, 5};

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() {
        desk = new Desk(folder);
        List<String> key = new ArrayList<>(List.of("still,specimen,group,photo_sha256"));
        for (int i = 0; i < 4; i++) {
            key.add("%s,P%s,plain,aa".formatted(2 * i + 1, i));
            key.add("%s,C%s,coated,aa".formatted(2 * i + 2, i));
        }
        desk.file("key.csv", key.toArray(String[]::new));
    }

    private void voted(String name, int voters) {
        List<String> votes = new ArrayList<>(List.of("still,voter,vote"));
        for (int voter = 1; voter <= voters; voter++) {
            for (int i = 0; i < 4; i++) {
                votes.add("%s,v%s,%s".formatted(2 * i + 1, voter, PLAIN[i]));
                votes.add("%s,v%s,%s".formatted(2 * i + 2, voter, COATED[i]));
            }
        }
        desk.file(name, votes.toArray(String[]::new));
    }

    /** All 70 ways to deal 8 specimens, enumerated in Python 3 with SciPy's ranks: 6 are as far. */
    @Test
    void pairsAndChanceAreThoseOfAnEnumeration() {
        voted("votes.csv", 1);
        JsonNode found = desk.type("votes @votes.csv --key @key.csv --json").json();
        assertThat(found.path("pairs").asInt()).isEqualTo(16);
        assertThat(found.path("higher").asText()).isEqualTo("plain");
        assertThat(found.path("pairsHigher").asDouble()).isEqualTo(1.0);
        assertThat(found.path("p").asDouble()).isCloseTo(6.0 / 70, within(1e-12));
        assertThat(found.path("smallestP").asDouble()).isCloseTo(2.0 / 70, within(1e-12));
    }

    @Test
    void aHundredVotersOfEightSpecimensAreEightSpecimens() {
        voted("one.csv", 1);
        voted("many.csv", 100);
        JsonNode one = desk.type("votes @one.csv --key @key.csv --json").json();
        JsonNode many = desk.type("votes @many.csv --key @key.csv --json").json();
        assertThat(many.path("votes").asInt()).isEqualTo(800);
        assertThat(many.path("p").asDouble()).isEqualTo(one.path("p").asDouble());
        assertThat(desk.type("votes @many.csv --key @key.csv").done())
                .contains("'coated' was rated higher in 15 of 16 pairs", "800 votes of 100 voters")
                .contains("the votes don't tell", "nothing of what the");
    }

    @Test
    void whoVotesTwiceHasChangedTheirMind() {
        desk.file("votes.csv", "still,voter,vote", "1,ann,1", "2,ann,1", "1,ann,5", "2,bo,");
        JsonNode found = desk.type("votes @votes.csv --key @key.csv --json").json();
        assertThat(found.path("votes").asInt()).isEqualTo(2);
        assertThat(found.path("pairsHigher").asDouble()).isEqualTo(1);
    }

    @Test
    void saysWhereViewersTellTheGroupsApart() {
        desk.file(
                "votes.csv", "still,vote", "1,1", "2,5", "3,1", "4,5", "5,1", "6,4", "7,2", "8,4");
        assertThat(desk.type("votes @votes.csv --key @key.csv").done().replaceAll("\\s+", " "))
                .contains("16 of 16 pairs", "2.9", "so viewers tell the groups apart");
    }

    @Test
    void saysThatTooFewSpecimensCannotTell() {
        desk.file("votes.csv", "still,vote", "1,1", "2,5", "3,1", "4,5", "5,1", "6,5");
        assertThat(desk.type("votes @votes.csv --key @key.csv").done().replaceAll("\\s+", " "))
                .contains("with so few specimens no votes could tell the groups apart");
    }

    @Test
    void refusesWhatIsNoVote() {
        desk.file("six.csv", "still,vote", "1,6");
        desk.file("ninth.csv", "still,vote", "9,3");
        desk.file("one.csv", "still,vote", "1,3");
        desk.file("three.csv", "still,specimen,group", "1,A,a", "2,B,b", "3,C,c");
        desk.file("none.csv", "picture,vote", "1,3");
        desk.refuses("votes @six.csv --key @key.csv", "line 2", "'6' is no vote from 1 to 5");
        desk.refuses("votes @ninth.csv --key @key.csv", "'9' is no still of");
        desk.refuses("votes @one.csv --key @key.csv", "holds no vote on 'coated'");
        desk.refuses("votes @one.csv --key @three.csv", "name two of them");
        desk.refuses("votes @one.csv --key @three.csv --between a,x", "no group 'x'");
        desk.refuses("votes @none.csv --key @key.csv", "no column 'still'");
    }
}
