/** Many farms and herds in one request, computed in blocks on all processors and answered in order. */
@NullMarked
package org.scalepan.web.bulk;

import org.jspecify.annotations.NullMarked;
