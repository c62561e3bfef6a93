/** Reference farms: production systems built from published practice, computed as any farm's records are. */
@NullMarked
package org.scalepan.production.practice;

import org.jspecify.annotations.NullMarked;
