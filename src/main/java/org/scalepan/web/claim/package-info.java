/** Claims checked. */
@NullMarked
package org.scalepan.web.claim;

import org.jspecify.annotations.NullMarked;
