/**
 * A bar on two supports, loaded in the middle: flexural strength, modulus, and the stress at the
 * deflection that ISO 178 agrees on.
 *
 * <p>Physics: σ = 3FL/(2bh²) and ε = 6sh/L² at the face in tension, E = L³m/(4bh³) from the slope
 * m; thickness enters squared and cubed, so that a coat of a few tenths makes a bar stiffer without
 * any change of material. A long deflection makes the supports pull inwards; beyond a tenth of the
 * span the factor of ASTM D790 is applied.
 *
 * <p>In the manner of ISO 178:2019 and ASTM D790-17. Departures: deflection may come from the
 * crosshead, which contains the machine and the nose that sinks in; the factor for long deflections
 * is from memory.
 *
 * <p>The package knows nothing of groups or coats. A shear correction was turned down: its modulus
 * is not known for a print, and the standards' span keeps it near 1 %.
 */
@NullMarked
package org.twinbar.method.flexure;

import org.jspecify.annotations.NullMarked;
