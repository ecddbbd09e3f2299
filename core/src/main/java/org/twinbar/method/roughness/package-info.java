/**
 * Roughness of a profile that a stylus or a light traced: Ra, Rq, Rz and Rt.
 *
 * <p>Physics: a profile is form, waviness and roughness, told apart by wavelength alone. A straight
 * line or a parabola takes the form off; a Gaussian low-pass of cut-off λs takes noise and the
 * stylus's own shape off; a Gaussian mean line of cut-off λc, which lets half of a wave of length
 * λc through, takes the waviness off. What is left is averaged over sampling lengths of one λc
 * each.
 *
 * <p>In the manner of ISO 21920-2 and -3 with the filter of ISO 16610-21. Departures: the mean line
 * near the ends is made of what weights lie on the profile; Rz is the mean over sampling lengths of
 * highest peak to deepest valley, not ten points; one trace is one place, and 3 to 5 traces make a
 * face.
 *
 * <p>The package knows nothing of groups or coats. Choosing the cut-off from each profile was
 * turned down: two groups must be filtered alike, and a finding says when the standard would take
 * another one.
 */
@NullMarked
package org.twinbar.method.roughness;

import org.jspecify.annotations.NullMarked;
