/** The nutritional value of foods: contents on one basis, amino-acid scores, protein quality, the price of protein. */
@NullMarked
package org.scalepan.ask.nutrition;

import org.jspecify.annotations.NullMarked;
