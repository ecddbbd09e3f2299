/**
 * What a person writes down in TOML, and the same keys as the store keeps them: studies, tests,
 * plans, calibrations, treatments, and test methods of their own.
 *
 * <p>A key that nobody knows is refused with its place, since what it was meant to say would be
 * lost. Nothing here reads measured data or calculates with it.
 */
@NullMarked
package org.twinbar.study.file;

import org.jspecify.annotations.NullMarked;
