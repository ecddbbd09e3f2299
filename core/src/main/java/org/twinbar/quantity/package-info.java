/**
 * Units, dimensions and quantities as the trade writes them.
 *
 * <p>A unit is what stands in a column's header or behind a typed number; a dimension says which
 * units may stand for which. Numbers are converted only where people type or read: inside the core
 * a number has the unit of its description.
 *
 * <p>This package knows nothing else of Twinbar. A prefix machine (milli, kilo in front of
 * everything) was turned down: it reads {@code min} as milli-inch and {@code cd} as centi-day. The
 * table of units is written out instead.
 */
@NullMarked
package org.twinbar.quantity;

import org.jspecify.annotations.NullMarked;
