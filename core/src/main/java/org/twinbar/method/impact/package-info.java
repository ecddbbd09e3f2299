/**
 * A swinging hammer breaks the specimen: the energy that it took, per section and per width of
 * notch.
 *
 * <p>Physics: W = M_H·(cos β − cos α) less friction, M_H = m·g·l_c being the moment of the hanging
 * hammer, α the angle of release and β that of the rise; from heights read at a radius r, W =
 * (M_H/r)·(H₀ − H₁). The mass of the hammer with heights of the striker is the commonest mistake of
 * a home bench, so the moment is what is asked for: by a scale under the arm, by mass and centre of
 * mass, or known.
 *
 * <p>In the manner of ISO 179-1:2010 (Charpy), ISO 180:2019 (Izod) and ASTM D256-10, friction after
 * ISO 13802:2015 and D256 annex A2 (both as METHODS C.2, the schemes from memory). Departures: a
 * hammer of one's own, its speed and losses as they are; notches as they were made.
 *
 * <p>The package knows nothing of groups; that means are taken only within one break type is for
 * those who take means. Force on the striker over time was turned down: no home bench samples it.
 */
@NullMarked
package org.twinbar.method.impact;

import org.jspecify.annotations.NullMarked;
