/**
 * HTTP building blocks: problems, answers, request bodies, entity tags, limits and fairness between clients. Independent of any question.
 */
@NullMarked
package org.scalepan.web.http;

import org.jspecify.annotations.NullMarked;
