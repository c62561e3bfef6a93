/**
 * Herds and flocks by the IPCC guidelines, volume 4, chapters 10 and 11: the 2019 Refinement, or 2006 where asked for, never mixed in
 * one chain.
 */
@NullMarked
package org.scalepan.production.herd;

import org.jspecify.annotations.NullMarked;
