package org.twinbar.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;

/**
 * Brings a database to the form that this program knows.
 *
 * <p>Starting Flyway costs a quarter of a second, so it is asked only where its history is behind.
 */
record Migrations(int latest, List<String> locations) {

    static final Migrations KNOWN =
            new Migrations(1, List.of("classpath:org/twinbar/store/migrations"));

    private static final Object ONE_AT_A_TIME = new Object();

    /**
     * Migrates where needed.
     *
     * @throws StoreException where a newer program has written the workspace
     */
    void run(Handle handle, DataSource source, Path folder) {
        if (version(handle) == latest) {
            return;
        }
        // Flyway takes no lock on SQLite; two programs that open a new workspace would both build
        // it.
        synchronized (ONE_AT_A_TIME) {
            try (FileChannel file = FileChannel.open(
                            folder.resolve("migrating.lock"),
                            StandardOpenOption.CREATE,
                            StandardOpenOption.WRITE);
                    FileLock lock = file.lock()) {
                int found = version(handle);
                if (found > latest) {
                    throw new StoreException(
                            "%s was written by a newer Twinbar: its form is %s, this one knows %s"
                                    .formatted(folder, found, latest));
                }
                if (found < latest && lock.isValid()) {
                    Flyway.configure()
                            .dataSource(source)
                            .locations(locations.toArray(String[]::new))
                            .load()
                            .migrate();
                }
            } catch (IOException e) {
                throw new StoreException("can't lock " + folder + " to bring it up to date", e);
            }
        }
    }

    private static int version(Handle handle) {
        boolean none = handle.createQuery(
                        "SELECT count(*) FROM sqlite_schema WHERE name = 'flyway_schema_history'")
                .mapTo(Integer.class)
                .one()
                .equals(0);
        return none
                ? 0
                : handle.createQuery("SELECT coalesce(max(CAST(version AS INTEGER)), 0)"
                                + " FROM flyway_schema_history WHERE success")
                        .mapTo(Integer.class)
                        .one();
    }
}
