/** Insect farms from their notebook. */
@NullMarked
package org.scalepan.production.insects;

import org.jspecify.annotations.NullMarked;
