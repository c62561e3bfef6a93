/** Everything that a page to paste from says about one comparison: sentences, figures, method, and what must be disclosed. */
@org.jspecify.annotations.NullMarked
package org.scalepan.ask.brief;
