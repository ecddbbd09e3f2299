/**
 * From a claim made measurable to a verdict with its reasons.
 *
 * <p>A {@link org.twinbar.decision.Question} says what is compared, which way the claim points and
 * what is worth having; {@link org.twinbar.decision.Comparing} holds the specimens against it and
 * gives a {@link org.twinbar.decision.Comparison}. The verdict reads the one default interval of
 * its kind of effect and nothing else; all that stands beside it only says whether the verdict
 * stands.
 *
 * <p>The package knows no test methods, files, tables or pages: what a specimen gave reaches it as
 * an {@link org.twinbar.decision.Observation}. Every sentence that it says is in one place,
 * {@code Wording}, where a test reads each against each verdict.
 *
 * <p><b>Turned down.</b> Choosing the interval by a pretest: it spoils the error rate. Dropping
 * doubted specimens: they are named, and a person decides. A p-value as a verdict: it knows nothing
 * of what is worth having. Scores and grades: six words say what the data can tell.
 */
@NullMarked
package org.twinbar.decision;

import org.jspecify.annotations.NullMarked;
