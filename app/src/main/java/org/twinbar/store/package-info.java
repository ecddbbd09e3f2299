/**
 * The workspace folder: one table of entries in SQLite, and raw files named by their digest.
 *
 * <p>Entries are only ever added. Whatever {@code append} and {@code keep} have returned from
 * survives a kill and a power cut: the database is written through with full synchronous, a raw
 * file is forced to disk and moved into place whole. Triggers hold the table to it against every
 * program that opens the file.
 *
 * <p>The package is the only user of SQL. It knows nothing of what entries mean: subjects, aspects
 * and values are text here. Turned down: a table for each kind of thing (a correction would have to
 * be written into each one), raw files inside the database (a person should find what they measured
 * with a file browser), and a connection pool (one writer at a time is what SQLite has anyway).
 */
@NullMarked
package org.twinbar.store;

import org.jspecify.annotations.NullMarked;
