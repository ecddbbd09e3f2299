package org.twinbar.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StoreTest {

    @TempDir
    Path folder;

    @Test
    void givesBackWhatWasEnteredAfterReopening() {
        Entry first = Entries.said("A03", "9.98");
        Entry second = Entries.said("A04", "{\"mm\": 10.02}");
        try (Store store = Store.open(folder)) {
            store.append(List.of(first, second));
        }
        try (Store store = Store.open(folder)) {
            assertThat(store.about("A03")).containsExactly(first);
            assertThat(store.of("width")).containsExactly(first, second);
            assertThat(store.about("A05")).isEmpty();
        }
    }

    @Test
    void keepsWhatWasCorrected() {
        Entry first = Entries.said("A03", "9.89");
        Entry correction = Entries.correcting(first, "9.98", "digits were swapped");
        try (Store store = Store.open(folder)) {
            store.append(List.of(first));
            store.append(List.of(correction));
            assertThat(store.about("A03")).containsExactly(first, correction);
        }
    }

    @Test
    void storesRetryOnce() {
        Entry entry = Entries.said("A03", "9.98");
        Entry again = new Entry(
                entry.id(),
                entry.subject(),
                entry.aspect(),
                entry.value(),
                entry.at().plusSeconds(5),
                entry.zone(),
                entry.who(),
                entry.reason(),
                entry.supersedes());
        try (Store store = Store.open(folder)) {
            store.append(List.of(entry));
            store.append(List.of(again, Entries.said("A04", "1")));
            assertThat(store.about("A03")).containsExactly(entry);
            assertThat(store.about("A04")).hasSize(1);
        }
    }

    @Test
    void rejectsOtherWordsUnderAnIdentityThatIsTaken() {
        Entry entry = Entries.said("A03", "9.98");
        try (Store store = Store.open(folder)) {
            store.append(List.of(entry));
            assertThatThrownBy(() -> store.append(List.of(
                            Entries.said("A04", "1"), Entries.said(entry.id(), "A03", "9.97"))))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining(entry.id().toString())
                    .hasMessageContaining("something else");
            assertThat(store.of("width")).containsExactly(entry);
        }
    }

    @Test
    void writesAllOrNothing() {
        try (Store store = Store.open(folder)) {
            assertThatThrownBy(() -> store.append(
                            List.of(Entries.said("A03", "9.98"), Entries.said("A04", "not JSON"))))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("nothing was written");
            assertThat(store.of("width")).isEmpty();
        }
    }

    @Test
    void rejectsCorrectionOfNothingOfItsKind() {
        Entry first = Entries.said("A03", "9.98");
        Entry other = Entries.said("A04", "9.98");
        Entry across = new Entry(
                UUID.randomUUID(),
                "A03",
                "width",
                "1",
                Entries.NOON,
                Entries.ZONE,
                "the sailing club",
                Optional.of("mixed up"),
                Optional.of(other.id()));
        try (Store store = Store.open(folder)) {
            store.append(List.of(first, other));
            assertThatThrownBy(() -> store.append(List.of(across)))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("same subject and aspect");
            assertThat(store.about("A03")).containsExactly(first);
        }
    }

    @Test
    void rejectsCorrectionWithoutReason() {
        Entry first = Entries.said("A03", "9.98");
        assertThatThrownBy(() -> new Entry(
                        UUID.randomUUID(),
                        "A03",
                        "width",
                        "1",
                        Entries.NOON,
                        Entries.ZONE,
                        "the sailing club",
                        Optional.empty(),
                        Optional.of(first.id())))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("reason");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE entry SET value = '1'",
                "DELETE FROM entry",
                "INSERT OR REPLACE INTO entry SELECT arrival, id, subject, aspect, '1', entered_at,"
                        + " zone, who, reason, supersedes FROM entry",
                "REPLACE INTO entry SELECT arrival, 'b' || substr(id, 2), subject, aspect, '1',"
                        + " entered_at, zone, who, reason, supersedes FROM entry",
            })
    void refusesToChangeEntriesWhoeverAsks(String sql) throws SQLException {
        Entry entry = Entries.said("A03", "9.98");
        try (Store store = Store.open(folder)) {
            store.append(List.of(entry));
        }
        try (Connection other = database();
                Statement statement = other.createStatement()) {
            assertThatThrownBy(() -> statement.executeUpdate(sql))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("enter a correction instead");
        }
        try (Store store = Store.open(folder)) {
            assertThat(store.of("width")).containsExactly(entry);
        }
    }

    @Test
    void saysWhichEntryIsDamaged() throws SQLException {
        Entry entry = Entries.said("A03", "9.98");
        try (Store store = Store.open(folder)) {
            store.append(List.of(entry));
        }
        try (Connection other = database();
                Statement statement = other.createStatement()) {
            statement.executeUpdate("DROP TRIGGER entry_keeps_its_words");
            statement.executeUpdate("UPDATE entry SET zone = 'Nowhere/At all'");
        }
        try (Store store = Store.open(folder)) {
            assertThatThrownBy(() -> store.about("A03"))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining(entry.id().toString())
                    .hasMessageContaining("damaged");
        }
    }

    @Test
    void letsTwoWritersInTogether() throws Exception {
        int each = 40;
        ExecutorService pool = Executors.newFixedThreadPool(2);
        try {
            List<Future<?>> writers = new ArrayList<>();
            for (String name : List.of("left", "right")) {
                writers.add(pool.submit(() -> {
                    try (Store store = Store.open(folder)) {
                        for (int i = 0; i < each; i++) {
                            store.append(List.of(Entries.said(name, Integer.toString(i))));
                        }
                    }
                }));
            }
            for (Future<?> writer : writers) {
                writer.get();
            }
        } finally {
            pool.shutdownNow();
        }
        try (Store store = Store.open(folder)) {
            assertThat(store.about("left")).hasSize(each);
            assertThat(store.about("right")).hasSize(each);
        }
    }

    @Test
    void bringsAnOlderWorkspaceUpToDate() throws SQLException {
        Entry entry = Entries.said("A03", "9.98");
        try (Store store = Store.open(folder)) {
            store.append(List.of(entry));
        }
        Migrations later = new Migrations(
                2,
                List.of(
                        "classpath:org/twinbar/store/migrations",
                        "classpath:org/twinbar/store/later"));
        try (Store store = Store.open(folder, later)) {
            assertThat(store.of("width")).containsExactly(entry);
        }
        try (Connection other = database();
                Statement statement = other.createStatement()) {
            assertThat(statement.executeQuery("SELECT words FROM note").next()).isTrue();
        }
        assertThatThrownBy(() -> Store.open(folder))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("newer Twinbar");
    }

    @Test
    void knowsItsNewestMigration() throws IOException {
        Path migrations = Path.of("src/main/resources/org/twinbar/store/migrations");
        try (var files = Files.list(migrations)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .hasSize(Migrations.KNOWN.latest())
                    .anyMatch(name -> name.startsWith("V" + Migrations.KNOWN.latest() + "__"));
        }
    }

    @Test
    void refusesFileThatIsNoDatabase() throws IOException {
        Files.writeString(
                folder.resolve("workspace.db"), "Dear diary, today we sailed. ".repeat(99));
        assertThatThrownBy(() -> Store.open(folder))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining(folder.toString())
                .hasMessageContaining("not a workspace");
    }

    @Test
    void refusesFolderThatIsFile() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        assertThatThrownBy(() -> Store.open(file))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("can't be written to");
    }

    private Connection database() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("workspace.db"));
    }
}
