/**
 * A judged study as the tables of a data package, and its entries as a table and back.
 *
 * <p>What was calculated is written with as many digits as read back as the same number. How a
 * package is opened and taken in is for {@link org.twinbar.study.Packages}.
 */
@NullMarked
package org.twinbar.study.packed;

import org.jspecify.annotations.NullMarked;
