/**
 * Pull to break: strength, modulus, yield, strain and energy from a curve, or strength alone from
 * the largest force.
 *
 * <p>Physics: nominal stress σ = F/A₀ on the section measured before the pull, nominal strain ε =
 * ΔL/L₀; a coated bar's stress is given on the section as pulled and on the section before
 * treatment, and its force per part and per gram, so that part and material can be told apart.
 *
 * <p>In the manner of ISO 527-1:2019 and ISO 527-2:2012, with ASTM D638-22 for toe compensation and
 * offset yield. Departures: force and length as good as the bench's instruments; a modulus from the
 * crosshead is called apparent, since both standards want an extensometer; strength is the largest
 * stress unless the first maximum is chosen; atmosphere and speed are the person's to keep.
 *
 * <p>The package knows nothing of groups, treatments or files. Fitting a material law to the whole
 * curve was turned down: it turns a question about readings into one about the law.
 */
@NullMarked
package org.twinbar.method.tensile;

import org.jspecify.annotations.NullMarked;
