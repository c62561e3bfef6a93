/** Starts, drains and observes the server, and passes every request through one pipeline. */
@NullMarked
package org.scalepan.web.server;

import org.jspecify.annotations.NullMarked;
