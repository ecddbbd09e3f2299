package org.twinbar.study.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;

class HandedTest {

    private static final Path CURRENT = Path.of("");

    /** Tests run in the folder of their module, which has this file. */
    @Test
    void findsFilesOfTheCurrentFolder() {
        Upload found = Handed.in(CURRENT).find("pom.xml", Place.of("specimens.csv"));
        assertThat(found.name()).isEqualTo("pom.xml");
        assertThat(found.bytes()).isNotEmpty();
    }

    @Test
    void refusesWhatLeadsOutOfTheCurrentFolder() {
        assertThatThrownBy(() -> Handed.in(CURRENT).find("../pom.xml", Place.of("specimens.csv")))
                .isInstanceOf(InputException.class)
                .hasMessage("specimens.csv: '../pom.xml' leads out of the current folder");
    }

    @Test
    void saysThatTheCurrentFolderHasNoSuchFile() {
        assertThatThrownBy(() -> Handed.in(CURRENT).find("none.csv", Place.of("specimens.csv")))
                .isInstanceOf(InputException.class)
                .hasMessage("specimens.csv: the file 'none.csv' is not in the current folder");
    }
}
