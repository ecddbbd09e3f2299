/**
 * A test method of a person's own: inputs with units, formulas over them, properties with units.
 *
 * <p>A {@link org.twinbar.method.own.OwnPlan} says what is asked for and how each property follows;
 * {@link org.twinbar.method.own.OwnMethod#of} checks it once, units through every formula included,
 * and makes a test method of it that forms, budgets, charts and reports treat as any other.
 *
 * <p>A formula is ordinary mathematics and nothing else: a library parses it, and what it parsed is
 * rewritten into {@link org.twinbar.method.own.Term} from a closed list of operators and functions,
 * which calculates with doubles in SI units. So a formula reaches no file, class, clock or network,
 * has no loop, and ends after as many steps as it has signs. Length, depth and number of its parts
 * are limited.
 *
 * <p>The package knows no files; who writes a plan down, and how, is others' business. Turned down:
 * letting the library evaluate (it has strings, dates, random numbers and a clock, its trigonometry
 * is not the same on every machine, and decimal arithmetic of unlimited size can be made to take
 * forever); a scripting language; conditions within a formula, which make a result jump while an
 * error moves it.
 */
@NullMarked
package org.twinbar.method.own;

import org.jspecify.annotations.NullMarked;
