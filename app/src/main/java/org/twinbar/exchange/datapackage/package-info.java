/**
 * Frictionless Data Packages: tables with their schemas, files as they came, and one descriptor
 * that a stranger's tools read too.
 *
 * <p>A package is written to a zip or a folder, the same bytes each time; and read from either,
 * with limits, for it comes from strangers: nothing is ever unpacked to a disk by the names in it.
 * The package knows no study: what the tables mean is the business of {@code study}. Turned down: a
 * library for this standard, which follows addresses on the network and unpacks what it is given.
 */
@NullMarked
package org.twinbar.exchange.datapackage;

import org.jspecify.annotations.NullMarked;
