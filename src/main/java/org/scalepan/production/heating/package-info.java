/** Heat that a rearing room needs, by degree days. */
@NullMarked
package org.scalepan.production.heating;

import org.jspecify.annotations.NullMarked;
