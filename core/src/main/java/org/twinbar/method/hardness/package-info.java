/**
 * A cone pressed into a surface at several places: Shore D hardness.
 *
 * <p>Physics: a durometer's spring presses a cone with a force that falls as it sinks in; 100 is no
 * mark at all, 0 a depth of 2.5 mm. The scale is empirical, has no true zero that means softness
 * twice as great, and is compared by difference.
 *
 * <p>In the manner of ISO 868; thickness, places and edges are limits from memory. Departures: a
 * durometer that is held by hand, on a surface with ridges.
 *
 * <p>The package knows nothing of groups or coats. A table from Shore D to a modulus was turned
 * down: none holds for prints, whose walls give as a whole.
 */
@NullMarked
package org.twinbar.method.hardness;

import org.jspecify.annotations.NullMarked;
