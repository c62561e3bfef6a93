/**
 * Makes footprints bottom-up from a farm's own records: an inventory of flows a year, the same for a bin of larvae and a herd of
 * cattle, so that both are measured with one basis and a factor that serves both is drawn once.
 */
@NullMarked
package org.scalepan.production;

import org.jspecify.annotations.NullMarked;
