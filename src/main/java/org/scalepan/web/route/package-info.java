/** Routes: path, parameters, handler, request, format negotiation, and the response cache. */
@NullMarked
package org.scalepan.web.route;

import org.jspecify.annotations.NullMarked;
