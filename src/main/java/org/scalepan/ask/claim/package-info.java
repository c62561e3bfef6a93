/** Claims such as "a hundred times less than beef": where they hold, where they fail, and what can be said instead. */
@org.jspecify.annotations.NullMarked
package org.scalepan.ask.claim;
