/** Inventories of insect farms from their records. */
@NullMarked
package org.scalepan.production.insects;

import org.jspecify.annotations.NullMarked;
