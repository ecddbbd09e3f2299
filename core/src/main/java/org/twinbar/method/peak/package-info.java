/**
 * Tests whose result is one largest value: the torque that strips a printed thread, the force that
 * pulls an insert out, the force that peels a film off.
 *
 * <p>The value is read off an instrument that holds its peak, or is the peak of a recorded curve;
 * for a peel the mean of the plateau counts, since the first pull breaks the edge loose and not the
 * bond. What gave way is noted: where it was something else than what is tested, the value is only
 * a lower bound.
 *
 * <p>There is no standard for a printed thread or a heat-set insert; these follow common practice,
 * stated in full. The three share a package because they share how a peak is taken.
 *
 * <p>Turned down: a shear stress of the thread from its torque; friction takes most of a torque,
 * and how much is not known.
 */
@NullMarked
package org.twinbar.method.peak;

import org.jspecify.annotations.NullMarked;
