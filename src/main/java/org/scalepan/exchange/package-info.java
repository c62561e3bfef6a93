/** Questions and answers as text, without HTTP: reading and writing JSON and CSV, questions from parameters and bodies, and rows of many farms. */
@NullMarked
package org.scalepan.exchange;

import org.jspecify.annotations.NullMarked;
