/**
 * How specimens were conditioned before a test, which several methods ask alike.
 *
 * <p>Plastics take up water from the air and give it back over days, and are softer for it; groups
 * that lay in two climates differ by that alone. ISO 291 asks for 88 hours at 23 °C and 50 % of
 * humidity, or 4 where only the temperature matters.
 *
 * <p>The package knows no method. A correction for moisture was turned down: it differs by
 * filament, and nobody measures it at home.
 */
@NullMarked
package org.twinbar.method.conditioning;

import org.jspecify.annotations.NullMarked;
