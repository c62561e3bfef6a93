/** The pages, the guides, the example spreadsheets, and the description of the interface. */
@NullMarked
package org.scalepan.web.site;

import org.jspecify.annotations.NullMarked;
