/** Farms and herds computed from their records, with break-even and sensitivity. */
@NullMarked
package org.scalepan.web.farm;

import org.jspecify.annotations.NullMarked;
