package org.twinbar.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * A workspace folder that is open.
 *
 * <p>Several threads and several programs may use one workspace at once; a writer waits for another
 * up to {@value #LONGEST_WAIT_MS} ms.
 */
public final class Store implements AutoCloseable {

    private static final int LONGEST_WAIT_MS = 10_000;
    private static final String COLUMNS =
            "id, subject, aspect, value, entered_at, zone, who, reason, supersedes";

    private final Path folder;
    private final Handle handle;
    private final RawFiles files;
    private final Arrivals arrivals = new Arrivals();

    private Store(Path folder, Handle handle, RawFiles files) {
        this.folder = folder;
        this.handle = handle;
        this.files = files;
    }

    /**
     * Opens a workspace, and makes it where there is none.
     *
     * @throws StoreException where the folder can't be written to, or isn't a workspace that this
     *     program knows
     */
    public static Store open(Path folder) {
        return open(folder, Migrations.KNOWN);
    }

    static Store open(Path folder, Migrations migrations) {
        try {
            Files.createDirectories(folder);
            SQLiteDataSource source = source(folder.resolve("workspace.db"));
            Handle handle = Jdbi.create(source).open();
            try {
                migrations.run(handle, source, folder);
                return new Store(folder, handle, new RawFiles(folder.resolve("files")));
            } catch (RuntimeException | IOException e) {
                handle.close();
                throw e;
            }
        } catch (IOException e) {
            throw new StoreException("the folder %s can't be written to".formatted(folder), e);
        } catch (JdbiException e) {
            throw new StoreException("%s is not a workspace: %s".formatted(folder, cause(e)), e);
        }
    }

    private static SQLiteDataSource source(Path database) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.setBusyTimeout(LONGEST_WAIT_MS);
        config.enforceForeignKeys(true);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + database);
        return source;
    }

    public Path folder() {
        return folder;
    }

    public RawFiles files() {
        return files;
    }

    /**
     * Adds entries, all or none; they are on disk when this returns. Those that are here already
     * with the same words are left as they are: they were sent again.
     *
     * @throws StoreException where an entry's value is no JSON, its identity is another entry's, or
     *     it supersedes nothing of its kind
     */
    public synchronized void append(List<Entry> entries) {
        try {
            handle.useTransaction(open -> {
                List<Entry> fresh =
                        entries.stream().filter(entry -> isFresh(open, entry)).toList();
                if (fresh.isEmpty()) {
                    return;
                }
                PreparedBatch batch = open.prepareBatch(
                        "INSERT INTO entry (" + COLUMNS + ") VALUES"
                                + " (:id, :subject, :aspect, :value, :at, :zone, :who, :reason, :supersedes)");
                for (Entry entry : fresh) {
                    batch.bind("id", entry.id().toString())
                            .bind("subject", entry.subject())
                            .bind("aspect", entry.aspect())
                            .bind("value", entry.value())
                            .bind("at", entry.at().toString())
                            .bind("zone", entry.zone().getId())
                            .bind("who", entry.who())
                            .bind("reason", entry.reason().orElse(null))
                            .bind(
                                    "supersedes",
                                    entry.supersedes().map(UUID::toString).orElse(null))
                            .add();
                }
                batch.execute();
            });
        } catch (JdbiException e) {
            throw new StoreException(
                    "nothing was written to %s: %s".formatted(folder, cause(e)), e);
        }
    }

    private static boolean isFresh(Handle open, Entry entry) {
        Optional<Entry> here = open.createQuery("SELECT " + COLUMNS + " FROM entry WHERE id = :id")
                .bind("id", entry.id().toString())
                .map((row, context) -> entry(row))
                .findOne();
        if (here.isPresent() && !here.get().isRetriedBy(entry)) {
            throw new StoreException(
                    "entry %s is here already and says something else".formatted(entry.id()));
        }
        return here.isEmpty();
    }

    /** Returns all entries on a subject, in the order in which they arrived. */
    public synchronized List<Entry> about(String subject) {
        return query("subject = :wanted", subject);
    }

    /** Returns all entries of an aspect, on any subject, in the order in which they arrived. */
    public synchronized List<Entry> of(String aspect) {
        return query("aspect = :wanted", aspect);
    }

    /**
     * Returns the place of the last entry on a subject among all entries; 0 where there is none. As
     * long as it stays the same, so does all that {@link #about} returns.
     */
    public synchronized long lastAbout(String subject) {
        try {
            return arrivals.lastAbout(handle, subject);
        } catch (JdbiException e) {
            throw unreadable(e);
        }
    }

    /** Returns the same of an aspect, on any subject. */
    public synchronized long lastOf(String aspect) {
        try {
            return arrivals.lastOf(handle, aspect);
        } catch (JdbiException e) {
            throw unreadable(e);
        }
    }

    private List<Entry> query(String where, String wanted) {
        try {
            return handle.createQuery("SELECT " + COLUMNS + " FROM entry WHERE " + where
                            + " ORDER BY arrival")
                    .bind("wanted", wanted)
                    .map((row, context) -> entry(row))
                    .list();
        } catch (JdbiException e) {
            throw unreadable(e);
        }
    }

    private StoreException unreadable(JdbiException e) {
        return new StoreException("can't read %s: %s".formatted(folder, cause(e)), e);
    }

    private static Entry entry(ResultSet row) throws SQLException {
        String id = row.getString("id");
        try {
            return new Entry(
                    UUID.fromString(id),
                    row.getString("subject"),
                    row.getString("aspect"),
                    row.getString("value"),
                    Instant.parse(row.getString("entered_at")),
                    ZoneId.of(row.getString("zone")),
                    row.getString("who"),
                    Optional.ofNullable(row.getString("reason")),
                    Optional.ofNullable(row.getString("supersedes")).map(UUID::fromString));
        } catch (DateTimeException | IllegalArgumentException | StoreException e) {
            throw new StoreException("entry %s is damaged: %s".formatted(id, e.getMessage()), e);
        }
    }

    private static String cause(Throwable thrown) {
        Throwable deepest = thrown;
        while (deepest.getCause() != null) {
            deepest = deepest.getCause();
        }
        return Objects.requireNonNullElse(deepest.getMessage(), deepest.toString());
    }

    @Override
    public synchronized void close() {
        handle.close();
    }
}
