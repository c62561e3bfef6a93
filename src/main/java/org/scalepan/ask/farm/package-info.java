/** Questions to a farm or herd: its estimate, its key figures, break-even and sensitivity. */
@NullMarked
package org.scalepan.ask.farm;

import org.jspecify.annotations.NullMarked;
