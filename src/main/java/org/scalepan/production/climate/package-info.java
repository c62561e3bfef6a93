/** Climate of a place: monthly means, degree days and the climate zones of the IPCC. */
@NullMarked
package org.scalepan.production.climate;

import org.jspecify.annotations.NullMarked;
