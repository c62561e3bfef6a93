/**
 * Computes footprints bottom-up from a farm's own records: an inventory of flows a year, of the same form for insect farms and herds, so
 * that both are compared on one basis and a factor that both use is drawn once.
 */
@NullMarked
package org.scalepan.production;

import org.jspecify.annotations.NullMarked;
