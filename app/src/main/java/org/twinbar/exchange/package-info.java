/**
 * Tables, curves and spreadsheets in; CSV out.
 *
 * <p>A file is read as it came: encoding, delimiter, decimal mark, header and units are found from
 * its first MiB, told with {@link org.twinbar.exchange.Table#explanation()}, and each can be forced
 * by {@link org.twinbar.exchange.ReadAs}. What is wrong with a table is refused with one sentence
 * that names file, line, column and value ({@link org.twinbar.exchange.InputException}); what is
 * wrong with some rows of a curve is kept as a {@link org.twinbar.exchange.Problem}, so that a
 * value can still be had from the others.
 *
 * <p>The package knows units, but neither test methods nor the store. Turned down: guessing a
 * column's meaning from its position or its numbers; taking {@code 1,234} for either a thousand or
 * one and a bit; remembering how the last file was read, which would let one file's result depend
 * on another's.
 */
@NullMarked
package org.twinbar.exchange;

import org.jspecify.annotations.NullMarked;
