/** Reads the named values of a question, of a request or of a file of the library, and collects what is wrong with them. */
@NullMarked
package org.scalepan.input;

import org.jspecify.annotations.NullMarked;
