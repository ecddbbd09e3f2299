/** Where the program begins: wires the doors to the use cases, and does nothing else. */
@NullMarked
package org.twinbar.app;

import org.jspecify.annotations.NullMarked;
