/**
 * From a claim in words to questions that a bench can answer.
 *
 * <p>The guide is plain records: prompts with options, and what each leads to, so that the command
 * line and the pages ask the same. Methods are found by the claims that they say they answer. The
 * package must not know how a comparison is judged. What no bench can settle leads to conditions
 * and to who decides, never to a test. Turned down: guessing a question from the words alone; a
 * person chooses, and sees what each choice leads to.
 */
@NullMarked
package org.twinbar.planning.claim;

import org.jspecify.annotations.NullMarked;
