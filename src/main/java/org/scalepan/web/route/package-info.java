/** What a route is: path, parameters, handler, request, format negotiation, and the cache of responses. */
@NullMarked
package org.scalepan.web.route;

import org.jspecify.annotations.NullMarked;
