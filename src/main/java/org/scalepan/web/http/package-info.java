/**
 * HTTP as the service speaks it: problems, answers, request bodies, entity tags, limits, and how much one
 * client may take. It knows no question.
 */
@NullMarked
package org.scalepan.web.http;

import org.jspecify.annotations.NullMarked;
