/**
 * Test methods that describe themselves, and what they make of readings.
 *
 * <p>A method says what it asks for, its settings, marks, properties and cautions, and has one pure
 * function from readings to an outcome. Forms, import, command line, charts, budgets and reports
 * are made from that description. Each method is a package below this one and an entry in
 * {@code META-INF/services/org.twinbar.method.TestMethod}; nothing else names it.
 *
 * <p>The package knows nothing of files, studies or verdicts. Annotations on a class of readings
 * were turned down: a description as a plain value can also come from a file of the person's own.
 */
@NullMarked
package org.twinbar.method;

import org.jspecify.annotations.NullMarked;
