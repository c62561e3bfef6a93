/** Starts and drains the server, exposes metrics, and passes every request through one pipeline. */
@NullMarked
package org.scalepan.web.server;

import org.jspecify.annotations.NullMarked;
