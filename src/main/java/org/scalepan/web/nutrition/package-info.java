/** Contents, amino-acid scores, protein quality and prices of foods. */
@NullMarked
package org.scalepan.web.nutrition;

import org.jspecify.annotations.NullMarked;
