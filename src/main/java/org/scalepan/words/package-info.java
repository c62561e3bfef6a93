/**
 * The words of answers in the languages of the service. What is said is a {@link org.scalepan.words.Message}, a key with values;
 * a {@link org.scalepan.words.Language} makes text of it, as late as possible. The texts are in the message files of {@code
 * resources/words}, one per topic and language. Knows nothing of what is said.
 */
@NullMarked
package org.scalepan.words;

import org.jspecify.annotations.NullMarked;
